package org.belthigh.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.handout.kit.Conformance;
import org.belthigh.handout.kit.Pdf;
import org.belthigh.handout.kit.PdfLint;
import org.belthigh.handout.kit.Section;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Unusable;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
import org.belthigh.plan.PracticeSheet;
import org.belthigh.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** Practice, arm, overview and log sheets of the demo, of a crowded club and of an empty group. */
class TeamPrintsTest {
  /** Words that a sheet on a fence may say only in the fixed lines that keep everybody safe. */
  private static final List<String> MEDICAL =
      List.of(
          "pain",
          "sore",
          "hurt",
          "injur",
          "concussion",
          "headache",
          "symptom",
          " ill ",
          "illness",
          "sick",
          "dizzy",
          "doctor",
          "clinic",
          "therap",
          "dolor",
          "duele",
          "lesión",
          "conmoción",
          "enferm",
          "médic",
          "síntoma",
          "mareo");

  private static final LocalDate MONDAY = LocalDate.of(2027, 4, 5);
  private static final Path DEMO = Path.of("demo-players");
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final Words WORDS = words();

  @TempDir private static Path folder;

  private static Words words() {
    Map<String, LocalText> reasons = new LinkedHashMap<>();
    CATALOGUE.rules().forEach((id, rule) -> reasons.put(id, rule.reason()));
    return Words.load(reasons);
  }

  static Stream<Arguments> papers() {
    return Stream.of("letter", "a4")
        .flatMap(paper -> Stream.of("en", "es").map(language -> Arguments.of(paper, language)));
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("papers")
  void sheets_of_the_demo_follow_the_standards(String paper, String language) {
    Plan plan = plan(DEMO, paper, language);

    plan.groups().forEach(g -> check(plan, g));
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("papers")
  void sheets_of_a_crowded_club_and_an_empty_group_follow_the_standards(
      String paper, String language) {
    Plan plan = plan(crowded(), paper, language);

    assertThat(plan.groups()).hasSize(2);
    plan.groups().forEach(g -> check(plan, g));
  }

  private static void check(Plan plan, GroupPlan group) {
    byte[] pdf = bound(plan, all(plan, group));

    assertThat(Conformance.faults(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
    assertThat(Conformance.faults(pdf, PDFAFlavour.PDFA_2_A)).isEmpty();
    assertThat(PdfLint.faults(pdf)).isEmpty();
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("papers")
  void a_practice_of_fourteen_takes_two_pages(String paper, String language) {
    Plan plan = plan(DEMO, paper, language);

    for (GroupPlan group : plan.groups()) {
      assertThat(group.practices()).isNotEmpty();
      for (PracticeSheet sheet : group.practices()) {
        assertThat(PracticePrint.of(plan, group, sheet, WORDS).pageCount())
            .as("%s %s", group.id(), sheet.date())
            .isLessThanOrEqualTo(2);
      }
    }
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("papers")
  void one_adult_and_rain_take_one_page_more(String paper, String language) {
    Plan plan = plan(DEMO, paper, language);
    GroupPlan group = plan.groups().get(0);

    assertThat(group.practices()).isNotEmpty();
    for (PracticeSheet sheet : group.practices()) {
      assertThat(sheet.otherWays()).isNotEmpty();
      assertThat(OtherWaysPrint.of(plan, group, sheet, WORDS).pageCount()).isEqualTo(1);
    }
  }

  /** What one adult can run: one bat at a time, and no more swings than planned. */
  @Test
  void with_one_adult_one_bat_swings_at_a_time_and_nobody_swings_more() {
    for (GroupPlan group : plan(DEMO, "letter", "en").groups()) {
      for (PracticeSheet sheet : group.practices()) {
        int usual = swings(sheet.rotations());
        for (PracticeSheet.OtherWay way : sheet.otherWays()) {
          assertThat(swings(way.rotations())).isBetween(1, usual);
        }
        assertThat(sheet.oneAdult().rotations())
            .allSatisfy(
                r ->
                    assertThat(r.posts().stream().filter(p -> p.swingsEach() > 0).count())
                        .isLessThanOrEqualTo(1));
      }
    }
  }

  /** Most swings of a group. */
  private static int swings(List<PracticeSheet.Rotation> rotations) {
    return rotations.stream()
        .flatMap(r -> r.posts().stream())
        .collect(
            Collectors.groupingBy(
                PracticeSheet.Post::squad, Collectors.summingInt(PracticeSheet.Post::swingsEach)))
        .values()
        .stream()
        .max(Integer::compare)
        .orElse(0);
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("papers")
  void an_arm_sheet_of_seven_and_a_log_of_fourteen_take_one_page(String paper, String language) {
    Plan plan = plan(DEMO, paper, language);
    GroupPlan group = plan.groups().get(0);

    assertThat(group.arms().rows()).hasSize(7);
    assertThat(ArmPrint.of(plan, group, WORDS).pageCount()).isEqualTo(1);
    assertThat(LogPrint.of(plan, group, WORDS))
        .isNotEmpty()
        .allSatisfy(log -> assertThat(log.pageCount()).isEqualTo(1));
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("papers")
  void no_last_name_stands_on_any_team_print(String paper, String language) throws Unusable {
    Plan plan = plan(DEMO, paper, language);
    List<String> lastNames =
        Intake.read(DEMO, CATALOGUE).players().stream()
            .flatMap(p -> p.lastName().stream())
            .toList();

    assertThat(lastNames).hasSizeGreaterThan(20);
    for (GroupPlan group : plan.groups()) {
      String text = PdfLint.words(bound(plan, all(plan, group)));
      assertThat(text).doesNotContain(lastNames);
    }
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("papers")
  void a_held_player_is_named_without_a_cause(String paper, String language) {
    Plan plan = plan(DEMO, paper, language);

    assertThat(plan.players()).anyMatch(p -> !p.holds().isEmpty());
    for (GroupPlan group : plan.groups()) {
      String text = PdfLint.words(bound(plan, onTheFence(plan, group)));
      for (String fixed : fixedLines(group, language)) {
        text = text.replace(fixed, "");
      }
      assertThat(text.toLowerCase(Locale.ROOT)).doesNotContain(MEDICAL);
    }
  }

  /** Lines that are there for everybody, whoever is or is not held. */
  private static List<String> fixedLines(GroupPlan group, String language) {
    List<Phrase> fixed = new ArrayList<>(group.arms().cautions());
    group.practices().forEach(p -> fixed.addAll(p.weather()));
    fixed.add(Phrase.of("practice.safety.source"));
    fixed.add(Phrase.of("practice.held.ask"));
    return fixed.stream().map(p -> WORDS.say(p, language)).toList();
  }

  @Test
  void the_timetable_names_group_drill_and_dose_and_every_player_stands_in_a_group() {
    Plan plan = plan(DEMO, "letter", "en");
    GroupPlan group = plan.groups().get(0);
    PracticeSheet sheet = group.practices().get(0);

    String text = PdfLint.words(bound(plan, List.of(PracticePrint.of(plan, group, sheet, WORDS))));

    assertThat(text).contains("Station 1: Adult 1", "Hitting starts at", "Not today: Rubén 3");
    sheet.squads().forEach(s -> assertThat(text).contains("Group " + s.letter()));
    assertThat(sheet.squads().stream().flatMap(s -> s.players().stream()))
        .hasSize(13)
        .allSatisfy(p -> assertThat(text).contains(p.name()));
    sheet.usualDrills().forEach(d -> assertThat(text).contains(d.setup().in("en")));
  }

  @Test
  void marks_of_log_sheets_are_signs_that_the_font_has() {
    Plan plan = plan(DEMO, "letter", "en");

    String text = PdfLint.words(bound(plan, LogPrint.of(plan, plan.groups().get(0), WORDS)));

    assertThat(text).contains("Tick: called right").doesNotContain("?");
  }

  @Test
  void a_group_without_arms_says_so() {
    Plan plan = plan(crowded(), "letter", "en");
    GroupPlan empty = plan.groups().get(1);

    String text = PdfLint.words(bound(plan, List.of(ArmPrint.of(plan, empty, WORDS))));

    assertThat(empty.overview().rows()).isEmpty();
    assertThat(text).contains("Nobody in this group is listed as a pitcher or catcher.");
  }

  private static List<Section> all(Plan plan, GroupPlan group) {
    List<Section> sections = new ArrayList<>(onTheFence(plan, group));
    sections.add(OverviewPrint.of(plan, group, WORDS));
    return sections;
  }

  /** The sheets that others see. */
  private static List<Section> onTheFence(Plan plan, GroupPlan group) {
    List<Section> sections = new ArrayList<>();
    group.practices().forEach(p -> sections.add(PracticePrint.of(plan, group, p, WORDS)));
    group.practices().stream()
        .filter(p -> !p.otherWays().isEmpty())
        .forEach(p -> sections.add(OtherWaysPrint.of(plan, group, p, WORDS)));
    sections.add(ArmPrint.of(plan, group, WORDS));
    sections.addAll(LogPrint.of(plan, group, WORDS));
    return sections;
  }

  private static byte[] bound(Plan plan, List<Section> sections) {
    Locale language = Locale.forLanguageTag(plan.language());
    try (Pdf pdf = Pdf.of("Team", language, plan.from(), "team")) {
      sections.forEach(pdf::add);
      return pdf.bytes();
    }
  }

  private static Plan plan(Path club, String paper, String language) {
    try {
      ClubRecord record = Intake.read(club, CATALOGUE);
      PlanRequest request =
          new PlanRequest(MONDAY, 1, Set.of(), Set.of(), Optional.of(paper), Optional.of(language));
      return new Planner(CATALOGUE).plan(record, request);
    } catch (Unusable e) {
      throw new IllegalStateException(e.problems().toString(), e);
    }
  }

  /** Two dozen players with long names in one group, five adults, and a group of nobody. */
  private static Path crowded() {
    List<String> roster =
        new ArrayList<>(
            List.of("id,first_name,last_name,born,bats,throws,number,group,pitches,catches,needs"));
    for (int i = 0; i < 24; i++) {
      roster.add(
          "q%02d,Maximiliana-Esperanza-%s,Long,2015-0%d-11,%s,R,%d,u12,yes,yes,"
                  .formatted(i, (char) ('A' + i), 1 + i % 9, "RLS".charAt(i % 3), 70 + i)
              + "reads signs and points instead of calling; sits near the bench with a friend");
    }
    try {
      Path club = Files.createDirectories(folder.resolve("crowded"));
      Files.write(club.resolve("roster.csv"), roster);
      Files.write(
          club.resolve("calendar.csv"),
          List.of(
              "date,group,kind,start,minutes,hitting_minutes,adults,place,note",
              "2027-04-06,u12,practice,17:30,120,60,5,field,",
              "2027-04-08,u12,practice,17:30,90,30,1,field,"));
      Files.write(
          club.resolve("club.yaml"),
          List.of(
              "name: Example Club of the Long River Valley and Its Many Neighbors",
              "paper: letter",
              "languages: [en, es]",
              "rule_book: pitch-smart-2018",
              "curriculum: belthigh-2027",
              "season: {first: \"2027-03-01\", last: \"2027-05-24\"}",
              "groups:",
              "  - {id: u12, name: Under 12 of the Long River Valley, age: [11, 12], tossers: 5}",
              "  - {id: u8, name: Under 8, age: [7, 8], tossers: 1}",
              "places:",
              "  - {id: field, name: Field behind the old school, kind: field, stations: 6}"));
      return club;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
