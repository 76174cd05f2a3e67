package org.belthigh.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.belthigh.handout.kit.Conformance;
import org.belthigh.handout.kit.PdfLint;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Unusable;
import org.belthigh.plan.EvaluationSheet;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/**
 * Emergency sheet, guide, evaluation day, cover: of a club that says next to nothing, of the demo,
 * and of one that says too much.
 */
class WallPrintsTest {
  private static final Path DEMO = Path.of("demo-players");
  private static final String LONG = "Maximiliana-Esperanza de la Santísima Trinidad";

  @TempDir private static Path folder;

  /** How much the club folder says. */
  enum Folder {
    EMPTY,
    TYPICAL,
    EXTREME
  }

  static Stream<Arguments> everything() {
    return SamplePlans.onEverySheet(Folder.values());
  }

  @ParameterizedTest(name = "{0}, {1}, {2}")
  @MethodSource("everything")
  void sheets_for_the_wall_follow_both_standards(String paper, String language, Folder club) {
    Map<String, byte[]> prints =
        print(
            club,
            paper,
            language,
            EnumSet.of(Print.EMERGENCY, Print.GUIDE, Print.EVALUATION, Print.ARM, Print.PACKET));

    assertThat(prints)
        .containsOnlyKeys(
            "u10/emergency.pdf",
            "u10/guide.pdf",
            "u10/evaluation.pdf",
            "u10/arm.pdf",
            "u10/packet.pdf");
    prints.forEach(
        (path, pdf) -> {
          assertThat(PdfLint.faults(pdf)).as(path).isEmpty();
          assertThat(Conformance.faults(pdf, PDFAFlavour.PDFUA_1)).as(path).isEmpty();
          assertThat(Conformance.faults(pdf, PDFAFlavour.PDFA_2_A)).as(path).isEmpty();
        });
    Pattern second = Pattern.compile("(page 1 of|página 1 de) [2-9]");
    assertThat(text(prints.get("u10/guide.pdf"))).doesNotContainPattern(second);
    if (club != Folder.EXTREME) {
      assertThat(text(prints.get("u10/emergency.pdf"))).doesNotContainPattern(second);
    }
  }

  @Test
  void a_place_has_its_own_emergency_sheet_with_what_the_file_says() {
    String text = text(alone(Folder.TYPICAL, Print.EMERGENCY));

    assertThat(text)
        .contains("Emergency: Landing Field", "Emergency: Mill Shed Cage")
        .contains("Call 911", "40 Old Landing Road", "Snack shed", "head coach on duty")
        .contains("555-0142", "Not back after a hit to the head: CDC");
  }

  @Test
  void what_the_file_does_not_say_is_a_line_to_fill_in() {
    String text = text(alone(Folder.EMPTY, Print.EMERGENCY));

    assertThat(text)
        .contains("Emergency sheet", "Call 911, or this number:", "Say where you are:")
        .contains("The AED is here:", "The way in for the ambulance:")
        .doesNotContain("Also tell");
  }

  @Test
  void families_get_the_guide_in_their_own_language() throws IOException {
    byte[] pdf = print(DEMO, "letter", Optional.empty(), Set.of(Print.GUIDE)).get("u10/guide.pdf");

    assertThat(text(pdf)).contains("How to read your card", "Cómo leer su tarjeta");
  }

  @Test
  void two_evaluators_have_the_same_ten_tosses_for_each_hitter() {
    Plan plan = plan(DEMO, "letter", Optional.of("en"));
    String text = text(alone(Folder.TYPICAL, Print.EVALUATION));

    assertThat(plan.groups().get(0).evaluation().script()).hasSize(10);
    assertThat(text).contains("Evaluation day: evaluator 1", "Evaluation day: evaluator 2");
    long batting =
        plan.groups().get(0).evaluation().hitters().stream()
            .filter(h -> h.may() == EvaluationSheet.May.SWING)
            .count();
    assertThat(text.split("tips over", -1)).hasSize(1 + 2 * ((int) batting + 2));
  }

  @Test
  void who_is_held_does_not_bat_on_an_evaluation_day() {
    Plan plan = plan(DEMO, "letter", Optional.of("en"));

    assertThat(plan.groups())
        .anyMatch(
            g -> g.evaluation().hitters().stream().anyMatch(h -> !h.may().id().equals("swing")));
    assertThat(text(alone(Folder.TYPICAL, Print.EVALUATION))).contains("not today");
  }

  @Test
  void the_cover_says_on_which_page_each_sheet_begins() throws IOException {
    Map<String, byte[]> prints = print(DEMO, "letter", Optional.of("en"), Print.usual());
    byte[] packet = prints.get("u10/packet.pdf");

    List<String> lines = text(packet, 1).lines().toList();
    String arms = line(lines, "Arm sheet");
    int page = Integer.parseInt(arms.substring(arms.lastIndexOf(' ') + 1));
    assertThat(text(packet, page)).contains("Who may pitch and catch");
    assertThat(text(packet, page - 1)).doesNotContain("Who may pitch and catch");
    assertThat(prints).containsKeys("u10/arm.pdf", "u10/log.pdf", "u10/emergency.pdf");
  }

  private static String line(List<String> lines, String start) {
    return lines.stream().filter(l -> l.startsWith(start)).findFirst().orElseThrow();
  }

  @Test
  void only_what_is_asked_for_is_printed() {
    assertThat(print(Folder.EMPTY, "letter", "en", Set.of(Print.ARM)))
        .containsOnlyKeys("u10/arm.pdf");
    assertThat(print(Folder.EMPTY, "letter", "en", Set.of(Print.PACKET)))
        .containsOnlyKeys("u10/packet.pdf");
    assertThat(print(Folder.EMPTY, "letter", "en", Set.of(Print.CARD)))
        .containsOnlyKeys("u10/cards/a1-week-2027-04-05.pdf");
  }

  private static byte[] alone(Folder club, Print print) {
    return print(club, "letter", "en", Set.of(print)).get("u10/" + print.id() + ".pdf");
  }

  private static Map<String, byte[]> print(
      Folder club, String paper, String language, Set<Print> prints) {
    try {
      Path where = club == Folder.TYPICAL ? DEMO : written(club);
      Map<String, byte[]> all = print(where, paper, Optional.of(language), prints);
      all.keySet().removeIf(path -> !path.startsWith("u10/"));
      return all;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, byte[]> print(
      Path club, String paper, Optional<String> language, Set<Print> prints) throws IOException {
    Map<String, byte[]> all = new TreeMap<>();
    new Handouts(SamplePlans.WORDS).print(plan(club, paper, language), prints, all::put);
    return all;
  }

  private static Plan plan(Path club, String paper, Optional<String> language) {
    try {
      return new Planner(SamplePlans.CATALOGUE)
          .plan(
              Intake.read(club, SamplePlans.CATALOGUE),
              new PlanRequest(
                  SamplePlans.MONDAY, 1, Set.of(), Set.of(), Optional.of(paper), language));
    } catch (Unusable e) {
      throw new IllegalStateException(e.problems().toString(), e);
    }
  }

  private static Path written(Folder club) throws IOException {
    boolean much = club == Folder.EXTREME;
    Path where = Files.createDirectories(folder.resolve(club.name()));
    Files.writeString(
        where.resolve("club.yaml"),
        """
        name: %s
        rule_book: pitch-smart-2018
        season: {first: "2027-03-01", last: "2027-05-24"}
        groups:
          - {id: u10, name: Under 10, age: [9, 10]}
        """
                .formatted(much ? "Example Club of the Long River Valley" : "Two Files")
            + (much ? places() : ""));
    Files.write(
        where.resolve("roster.csv"),
        Stream.concat(
                Stream.of("id,first_name,born,bats,number,group"),
                IntStream.rangeClosed(1, much ? 30 : 1)
                    .mapToObj(
                        i -> "a%d,%s,2017-01-05,S,%d,u10".formatted(i, much ? LONG : "Ada", i)))
            .toList());
    return where;
  }

  private static String places() {
    String text = "behind the old school, past the second gate and the long hedge, ".repeat(2);
    return """
        places:
          - {id: field, name: "Field %s", kind: field, address: "%s", aed: "%s", note: "%s"}
        emergency: {call: "911", who: "%s", note: "%s"}
        """
        .formatted(text, text, text, text, text, text);
  }

  private static String text(byte[] pdf) {
    return text(pdf, 0);
  }

  /** The words of one page; of all for page 0. */
  private static String text(byte[] pdf, int page) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper stripper = new PDFTextStripper();
      if (page > 0) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
      }
      return stripper.getText(document);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
