package org.belthigh.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.belthigh.handout.kit.ReadAloud;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Unusable;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
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

  /** Each print with its file, and what it is for. */
  private static final Map<Print, List<String>> PRINTS = prints();

  private static Map<Print, List<String>> prints() {
    Map<Print, List<String>> prints = new LinkedHashMap<>();
    prints.put(Print.CARD, List.of("u10/cards/p01-week-2027-04-05", "Card: one player, one week"));
    prints.put(
        Print.HOME,
        List.of("u10/cards/p01-week-2027-04-05", "Home sheet: the parent's side of it"));
    prints.put(Print.GUIDE, List.of("u10/guide", "How to read your card: one page for families"));
    prints.put(
        Print.PRACTICE,
        List.of("u10/practice-2027-04-06", "Practice sheet: one coach, one practice"));
    prints.put(Print.ARM, List.of("u10/arm", "Arm sheet: who may pitch and catch"));
    prints.put(Print.LOG, List.of("u10/log", "Log sheet: blank, one drill"));
    prints.put(Print.OVERVIEW, List.of("u10/overview", "Overview: the coordinator, one age group"));
    prints.put(Print.EMERGENCY, List.of("u10/emergency", "Emergency sheet: one a place"));
    prints.put(
        Print.EVALUATION, List.of("u10/evaluation", "Evaluation day: how it runs (boxes follow)"));
    prints.put(Print.SEASON, List.of("u10/season/p01-2027-04-05", "Season report: one player"));
    prints.put(Print.PACKET, List.of("u10/packet", "Packet: its cover, with the contents"));
    return prints;
  }

  private static String picture(Print print, String language) {
    return print.id() + "-" + language + ".png";
  }

  @Test
  void every_print_is_shown_in_both_languages() throws IOException, Unusable {
    if (Boolean.getBoolean("belthigh.accept")) {
      draw();
    }

    assertThat(PRINTS.keySet()).containsExactlyInAnyOrder(Print.values());
    assertThat(PAGE).hasContent(page());
    long bytes = 0;
    for (Print print : Print.values()) {
      for (String language : LANGUAGES) {
        Path picture = PICTURES.resolve(picture(print, language));
        assertThat(picture).isNotEmptyFile();
        bytes += Files.size(picture);
      }
    }
    assertThat(bytes).isLessThan(MOST_BYTES);
  }

  /** The card, the home sheet and the practice sheet as a screen reader goes through them. */
  @Test
  void what_a_screen_reader_says_is_shown_in_its_order() throws IOException, Unusable {
    StringBuilder page =
        new StringBuilder(
            """
            # What a screen reader says

            Three prints of the [gallery](gallery.md), line by line in the order in which a screen reader
            meets them: H1 to H3 are headings, TH and TD cells of a table, Figure a picture told in words.
            Written by `mvn test -Dtest=GalleryTest -Dbelthigh.accept=true`; do not edit.
            """);
    for (Print print : List.of(Print.CARD, Print.HOME, Print.PRACTICE)) {
      Map<String, byte[]> prints = new TreeMap<>();
      new Handouts(SamplePlans.WORDS).print(plan("en"), EnumSet.of(print), prints::put);
      List<String> lines = ReadAloud.lines(prints.get(PRINTS.get(print).get(0) + ".pdf"));
      assertThat(lines).hasSizeGreaterThan(20);
      page.append("\n## ").append(PRINTS.get(print).get(1)).append("\n\n```text\n");
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
    PRINTS.forEach(
        (print, told) -> {
          page.append("\n## ").append(told.get(1)).append("\n\n");
          page.append("| English | Spanish |\n|---|---|\n|");
          for (String language : LANGUAGES) {
            page.append(
                " ![%s, %s](pictures/gallery/%s) |"
                    .formatted(told.get(1), language, picture(print, language)));
          }
          page.append('\n');
        });
    return page.toString();
  }

  private static void draw() throws IOException, Unusable {
    Files.createDirectories(PICTURES);
    Files.writeString(PAGE, page());
    for (String language : LANGUAGES) {
      Plan plan = plan(language);
      for (Print print : Print.values()) {
        Set<Print> wanted = print == Print.PACKET ? EnumSet.allOf(Print.class) : EnumSet.of(print);
        Map<String, byte[]> prints = new TreeMap<>();
        new Handouts(SamplePlans.WORDS).print(plan, wanted, prints::put);
        byte[] pdf = prints.get(PRINTS.get(print).get(0) + ".pdf");
        Files.write(PICTURES.resolve(picture(print, language)), Preview.png(pdf, DOTS_PER_INCH));
      }
    }
  }

  private static Plan plan(String language) throws Unusable {
    return new Planner(SamplePlans.CATALOGUE)
        .plan(
            Intake.read(Path.of("demo-players"), SamplePlans.CATALOGUE),
            new PlanRequest(
                    SamplePlans.MONDAY,
                    2,
                    Set.of("u10"),
                    Set.of(),
                    Optional.of("letter"),
                    Optional.of(language))
                .withSeasonReports());
  }
}
