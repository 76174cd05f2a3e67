package org.belthigh.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.handout.kit.ReadAloud;
import org.belthigh.plan.Plan;
import org.junit.jupiter.api.Test;

/**
 * {@code docs/gallery.md}: the first page of every print in both languages, from the demo club.
 *
 * <p>Written anew with {@code -Dbelthigh.accept=true}; without it the test asks that page and
 * pictures are all there. Pictures are not compared, since machines draw letters differently.
 */
class GalleryTest {
  private static final Path PAGE = Path.of("docs/gallery.md");
  private static final Path ALOUD = Path.of("docs/screen-reader.md");
  private static final Path PICTURES = Path.of("docs/pictures/gallery");
  private static final List<String> LANGUAGES = List.of("en", "es");
  private static final int DOTS_PER_INCH = 56;
  private static final long MOST_BYTES = 1_500_000;

  /**
   * A print whose first page is shown.
   *
   * @param print what is asked for to have it
   * @param name of its pictures
   * @param file where it is printed, without its ending
   * @param title what it is for
   */
  private record Shown(Print print, String name, String file, String title) {
    Shown(Print print, String file, String title) {
      this(print, print.id(), file, title);
    }

    String picture(String language) {
      return name + "-" + language + ".png";
    }
  }

  private static final String CARDS = "u10/cards/p01-week-2027-04-05";

  private static final List<Shown> READ_ALOUD =
      List.of(
          new Shown(Print.CARD, CARDS, "Card: one player, one week"),
          new Shown(Print.HOME, CARDS, "Home sheet: the parent's side of it"),
          new Shown(
              Print.PRACTICE,
              "u10/practice-2027-04-06",
              "Practice sheet: one coach, one practice"));

  private static final List<Shown> OTHERS =
      List.of(
          new Shown(
              Print.PRACTICE,
              "tosses",
              "u10/tosses-2027-04-06",
              "Toss lists: where to toss to at each station"),
          new Shown(Print.GUIDE, "u10/guide", "How to read your card: one page for families"),
          new Shown(Print.ARM, "u10/arm", "Arm sheet: who may pitch and catch"),
          new Shown(Print.LOG, "u10/log", "Log sheet: blank, one drill"),
          new Shown(Print.OVERVIEW, "u10/overview", "Overview: the coordinator, one age group"),
          new Shown(Print.EMERGENCY, "u10/emergency", "Emergency sheet: one a place"),
          new Shown(
              Print.EVALUATION, "u10/evaluation", "Evaluation day: how it runs (boxes follow)"),
          new Shown(Print.SEASON, "u10/season/p01-2027-04-05", "Season report: one player"),
          new Shown(Print.PACKET, "u10/packet", "Packet: its cover, with the contents"));

  private static List<Shown> shown() {
    return Stream.of(READ_ALOUD, OTHERS).flatMap(List::stream).toList();
  }

  private static byte[] print(Plan plan, Shown shown) {
    Set<Print> wanted =
        shown.print() == Print.PACKET ? EnumSet.allOf(Print.class) : EnumSet.of(shown.print());
    Map<String, byte[]> prints = new TreeMap<>();
    new Handouts(SamplePlans.WORDS).print(plan, wanted, prints::put);
    return prints.get(shown.file() + ".pdf");
  }

  @Test
  void every_print_is_shown_in_both_languages() throws IOException {
    if (Boolean.getBoolean("belthigh.accept")) {
      draw();
    }

    assertThat(shown().stream().map(Shown::print).collect(Collectors.toSet()))
        .containsExactlyInAnyOrder(Print.values());
    assertThat(PAGE).hasContent(page());
    long bytes = 0;
    for (Shown shown : shown()) {
      for (String language : LANGUAGES) {
        Path picture = PICTURES.resolve(shown.picture(language));
        assertThat(picture).isNotEmptyFile();
        bytes += Files.size(picture);
      }
    }
    assertThat(bytes).isLessThan(MOST_BYTES);
  }

  /** The card, the home sheet and the practice sheet as a screen reader goes through them. */
  @Test
  void what_a_screen_reader_says_is_shown_in_its_order() throws IOException {
    StringBuilder page =
        new StringBuilder(
            """
            # What a screen reader says

            Three prints of the [gallery](gallery.md), line by line in the order in which a screen reader
            meets them: H1 to H3 are headings, TH and TD cells of a table, Figure a picture told in words.
            Written by `mvn test -Dtest=GalleryTest -Dbelthigh.accept=true`; do not edit.
            """);
    Plan plan = plan("en");
    for (Shown shown : READ_ALOUD) {
      List<String> lines = ReadAloud.lines(print(plan, shown));
      assertThat(lines).hasSizeGreaterThan(20);
      page.append("\n## ").append(shown.title()).append("\n\n```text\n");
      lines.forEach(line -> page.append(line).append('\n'));
      page.append("```\n");
    }
    if (Boolean.getBoolean("belthigh.accept")) {
      Files.writeString(ALOUD, page);
    }

    assertThat(Files.readString(ALOUD)).isEqualTo(page.toString());
  }

  private static String page() {
    StringBuilder page =
        new StringBuilder(
            """
            # Gallery

            The first page of every print, of the demo club's Under 10 in the week from April 5, 2027. All
            children are invented. Drawn by `mvn test -Dtest=GalleryTest -Dbelthigh.accept=true`.
            """);
    for (Shown shown : shown()) {
      page.append("\n## ").append(shown.title()).append("\n\n");
      page.append("| English | Spanish |\n|---|---|\n|");
      for (String language : LANGUAGES) {
        page.append(
            " ![%s, %s](pictures/gallery/%s) |"
                .formatted(shown.title(), language, shown.picture(language)));
      }
      page.append('\n');
    }
    return page.toString();
  }

  private static void draw() throws IOException {
    Files.createDirectories(PICTURES);
    Files.writeString(PAGE, page());
    for (String language : LANGUAGES) {
      Plan plan = plan(language);
      for (Shown shown : shown()) {
        Files.write(
            PICTURES.resolve(shown.picture(language)),
            Preview.png(print(plan, shown), DOTS_PER_INCH));
      }
    }
  }

  private static Plan plan(String language) {
    return SamplePlans.demo(2, Set.of("u10"), Set.of(), "letter", Optional.of(language));
  }
}
