package org.belthigh.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * {@code docs/gallery.md}: the first page of every print in both languages, from the demo club.
 *
 * <p>The pictures are the pages that a person looked at and approved: a print that looks otherwise
 * fails, and the message names a picture of the change. {@code -Dbelthigh.accept=true} takes the
 * prints as they are now. How much a machine may differ, and why: {@link PagePicture}.
 */
class GalleryTest {
  private static final Path PAGE = Path.of("docs/gallery.md");
  private static final Path ALOUD = Path.of("docs/screen-reader.md");
  private static final Path PICTURES = Path.of("docs/pictures/gallery");
  private static final List<String> LANGUAGES = List.of("en", "es");
  private static final Path CHANGES = Path.of("target/changed-pages");
  static final int DOTS_PER_INCH = 56;
  private static final long MOST_BYTES = 1_000_000;
  private static final boolean ACCEPT = Boolean.getBoolean("belthigh.accept");
  private static final String NEXT_STEP =
      "each picture shows, from the left: as approved, as it is now, and in red where they differ."
          + " Maybe the change is meant; then look at it and accept it with"
          + " mvn test -Dtest=GalleryTest -Dbelthigh.accept=true";

  /** In which form a print is shown: as usual, or as some families and clubs ask for it. */
  private enum Form {
    USUAL("letter", "", ""),
    A4("a4", "-a4", " on A4"),
    LARGE("letter", "-large", " in large print");

    private final String paper;
    private final String ending;
    private final String words;

    Form(String paper, String ending, String words) {
      this.paper = paper;
      this.ending = ending;
      this.words = words;
    }

    Handouts handouts() {
      Handouts usual = new Handouts(SamplePlans.WORDS);
      return this == LARGE ? usual.large() : usual;
    }
  }

  /**
   * A print whose first page is shown.
   *
   * @param print what is asked for to have it
   * @param name of its pictures
   * @param file where it is printed, without its ending
   * @param title what it is for
   */
  private record Shown(Print print, String name, String file, String title, Form form) {
    Shown(Print print, String file, String title) {
      this(print, print.id(), file, title, Form.USUAL);
    }

    Shown in(Form other) {
      return new Shown(
          print, name + other.ending, file, title.replaceFirst(":.*", "") + other.words, other);
    }

    Path picture(String language) {
      return PICTURES.resolve(name + "-" + language + ".png");
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
              "Toss lists: where to toss to at each station",
              Form.USUAL),
          new Shown(Print.CLIPBOARD, "u10/clipboard", "Cards for the clipboard: two to a sheet"),
          new Shown(Print.GUIDE, "u10/guide", "How to read your card: one page for families"),
          new Shown(Print.ARM, "u10/arm", "Arm sheet: who may pitch and catch"),
          new Shown(Print.LOG, "u10/log", "Log sheet: blank, one drill"),
          new Shown(
              Print.OWN_LOG, "u10/own-log/p01-2027-04-05", "Log sheet: blank, one player's week"),
          new Shown(Print.OVERVIEW, "u10/overview", "Overview: the coordinator, one age group"),
          new Shown(Print.EMERGENCY, "u10/emergency", "Emergency sheet: one a place"),
          new Shown(
              Print.EVALUATION, "u10/evaluation", "Evaluation day: how it runs (boxes follow)"),
          new Shown(Print.SEASON, "u10/season/p01-2027-04-05", "Season report: one player"),
          new Shown(Print.PACKET, "u10/packet", "Packet: its cover, with the contents"));

  /** The sheets that are full: where paper and type make a difference. */
  private static List<Shown> shown() {
    Stream<Shown> a4 = READ_ALOUD.stream().map(shown -> shown.in(Form.A4));
    Stream<Shown> large = READ_ALOUD.stream().limit(2).map(shown -> shown.in(Form.LARGE));
    return Stream.of(READ_ALOUD.stream(), OTHERS.stream(), a4, large)
        .flatMap(shown -> shown)
        .toList();
  }

  private static byte[] print(Plan plan, Shown shown) {
    Set<Print> wanted =
        shown.print() == Print.PACKET ? EnumSet.allOf(Print.class) : EnumSet.of(shown.print());
    Map<String, byte[]> prints = new TreeMap<>();
    shown.form().handouts().print(plan, wanted, prints::put);
    return prints.get(shown.file() + ".pdf");
  }

  @Test
  void every_print_is_shown_in_both_languages() throws IOException {
    if (ACCEPT) {
      Files.writeString(PAGE, page());
    }

    assertThat(shown().stream().map(Shown::print).collect(Collectors.toSet()))
        .containsExactlyInAnyOrder(Print.values());
    assertThat(PAGE).hasContent(page());
    try (Stream<Path> pictures = Files.list(PICTURES)) {
      assertThat(pictures)
          .containsExactlyInAnyOrderElementsOf(
              shown().stream().flatMap(s -> LANGUAGES.stream().map(s::picture)).toList());
    }
  }

  @Test
  void the_pictures_are_small() throws IOException {
    try (Stream<Path> pictures = Files.list(PICTURES)) {
      assertThat(pictures.mapToLong(picture -> picture.toFile().length()).sum())
          .isLessThan(MOST_BYTES);
    }
  }

  @ParameterizedTest
  @MethodSource("languages")
  void every_print_looks_as_it_was_approved(String language) throws IOException {
    List<String> changes = new ArrayList<>();
    for (Form form : Form.values()) {
      Plan plan = plan(language, form);
      for (Shown shown : shown().stream().filter(s -> s.form() == form).toList()) {
        PagePicture now = PagePicture.read(Preview.png(print(plan, shown), DOTS_PER_INCH));
        Path approved = shown.picture(language);
        if (ACCEPT) {
          accept(now, approved);
        } else {
          change(now, approved).ifPresent(changes::add);
        }
      }
    }

    assertThat(changes).as(NEXT_STEP).isEmpty();
  }

  static List<String> languages() {
    return LANGUAGES;
  }

  /** A picture that shows the same page stays as it is, so that one more machine changes none. */
  private static void accept(PagePicture now, Path approved) throws IOException {
    Files.createDirectories(PICTURES);
    if (Files.notExists(approved) || !PagePicture.read(Files.readAllBytes(approved)).like(now)) {
      Files.write(approved, now.png());
    }
  }

  /** What is said of a page that looks otherwise than approved; its picture is left to look at. */
  private static Optional<String> change(PagePicture now, Path approved) throws IOException {
    if (Files.notExists(approved)) {
      return Optional.of(approved + " is missing");
    }
    PagePicture before = PagePicture.read(Files.readAllBytes(approved));
    if (before.like(now)) {
      return Optional.empty();
    }
    Path shown = CHANGES.resolve(approved.getFileName());
    Files.createDirectories(CHANGES);
    Files.write(shown, before.beside(now));
    return Optional.of(approved + " looks otherwise now: see " + shown);
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
    Plan plan = plan("en", Form.USUAL);
    for (Shown shown : READ_ALOUD) {
      List<String> lines = ReadAloud.lines(print(plan, shown));
      assertThat(lines).hasSizeGreaterThan(20);
      page.append("\n## ").append(shown.title()).append("\n\n```text\n");
      lines.forEach(line -> page.append(line).append('\n'));
      page.append("```\n");
    }
    if (ACCEPT) {
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
            children are invented. The build fails when a print looks otherwise. Drawn by
            `mvn test -Dtest=GalleryTest -Dbelthigh.accept=true`.
            """);
    for (Shown shown : shown()) {
      page.append("\n## ").append(shown.title()).append("\n\n");
      page.append("| English | Spanish |\n|---|---|\n|");
      for (String language : LANGUAGES) {
        page.append(
            " ![%s, %s](pictures/gallery/%s) |"
                .formatted(shown.title(), language, shown.picture(language).getFileName()));
      }
      page.append('\n');
    }
    return page.toString();
  }

  private static Plan plan(String language, Form form) {
    return SamplePlans.demo(2, Set.of("u10"), Set.of(), form.paper, Optional.of(language));
  }
}
