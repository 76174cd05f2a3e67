package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.decide.Outcome;
import org.belthigh.lab.LearningChild;
import org.belthigh.model.Problem;
import org.belthigh.model.Skill;
import org.belthigh.plan.Day;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The demo club's season, week by week with simulated children. After a change of what plans say:
 * {@code mvn test -Dtest=DemoSeasonTest -Dbelthigh.accept=true}.
 */
class DemoSeasonTest {
  private static final String COMMAND = "mvn test -Dtest=DemoSeasonTest -Dbelthigh.accept=true";
  private static final long SEED = 20270301;
  private static final Path PAGE = Path.of("docs", "demo-season.md");
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final Curriculum CURRICULUM = CATALOGUE.curricula().get("belthigh-2027");
  private static final List<DemoSeasonPage.Story> STORIES =
      List.of(
          new DemoSeasonPage.Story("p26", "a switch hitter who learns fast"),
          new DemoSeasonPage.Story("p20", "a pitcher with a sore arm in April"),
          new DemoSeasonPage.Story("p11", "a slow learner in whom April is a slump"));

  private static DemoSeason.Played season;
  private static DemoSeasonFigures figures;

  @BeforeAll
  static void play(@TempDir Path folder) throws Exception {
    season = new DemoSeason(CATALOGUE, folder, SEED).play(Path.of("demo-players"));
    figures = new DemoSeasonFigures(season, CURRICULUM);
  }

  @Test
  void the_page_is_not_stale() throws Exception {
    String text =
        new DemoSeasonPage(season, CURRICULUM, ClubOptions.words(CATALOGUE)).text(STORIES, COMMAND);
    if (Boolean.getBoolean("belthigh.accept")) {
      Files.writeString(PAGE, text);
    }

    assertThat(Files.readString(PAGE)).as("%s; accept with %s", PAGE, COMMAND).isEqualTo(text);
  }

  @Test
  void no_row_is_a_fault_and_the_auditor_finds_nothing() {
    assertThat(season.weeks()).hasSize(13);
    assertThat(season.weeks())
        .allSatisfy(
            week -> {
              assertThat(week.faults()).noneMatch(Problem::isFault);
              assertThat(week.found()).isEmpty();
            });
  }

  @Test
  void a_coach_s_word_does_not_end_what_a_physician_must_end() {
    DemoSeason.Week between =
        season.weeks().stream()
            .filter(w -> w.monday().equals(LocalDate.of(2027, 3, 29)))
            .findFirst()
            .orElseThrow();

    assertThat(between.of("p10").holds()).isNotEmpty();
    assertThat(between.of("p10").days()).allSatisfy(d -> assertThat(d.items()).isEmpty());
  }

  @Test
  void the_same_seed_writes_the_same_folder(@TempDir Path one, @TempDir Path two) throws Exception {
    new DemoSeason(CATALOGUE, one, SEED).play(Path.of("demo-players"), 1);
    new DemoSeason(CATALOGUE, two, SEED).play(Path.of("demo-players"), 1);

    assertThat(files(one)).isEqualTo(files(two)).containsKeys("throws.csv", "wellness.csv");
  }

  private static Map<String, String> files(Path folder) throws Exception {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(file).toString(), Files.readString(file));
      }
    }
    return files;
  }

  @Test
  void nobody_pitches_more_than_the_tool_says() {
    // fewer than the games offer: whoever must be asked first does not pitch, and nobody asks here
    assertThat(season.pitched()).hasSizeGreaterThan(60);
    assertThat(season.pitched()).allMatch(p -> p.pitches() <= p.allowed());
  }

  @Test
  void steps_climb_one_at_a_time_and_never_go_down() {
    assertThat(figures.looks()).allMatch(l -> l.climbed() == 0 || l.climbed() == 1);
    assertThat(figures.looks().stream().mapToInt(DemoSeasonFigures.Look::climbed).sum())
        .isBetween(28, 28 * 3);
  }

  /** Else a child would find itself on a step of which no card ever said why. */
  @Test
  void every_step_up_is_told_on_a_card() {
    assertThat(figures.looks().stream().filter(l -> l.climbed() > 0))
        .allMatch(l -> l.is(Outcome.MOVE_UP));
  }

  /** To and fro between firm-up and other decisions is rare: less than once in 25 looks. */
  @Test
  void firm_ups_come_are_few_and_do_not_flicker() {
    List<DemoSeasonFigures.Look> looks = figures.looks();
    long firm = looks.stream().filter(l -> l.is(Outcome.FIRM_UP)).count();
    long turns = 0;
    for (int i = 1; i < looks.size(); i++) {
      boolean same =
          looks.get(i).player().equals(looks.get(i - 1).player())
              && looks.get(i).line().skill() == looks.get(i - 1).line().skill();
      turns +=
          same && looks.get(i).is(Outcome.FIRM_UP) != looks.get(i - 1).is(Outcome.FIRM_UP) ? 1 : 0;
    }

    assertThat(firm).isBetween(1L, looks.size() / 10L);
    assertThat(turns).isLessThan(looks.size() / 25);
  }

  @Test
  void who_learns_fast_gets_further_than_who_learns_slowly() {
    List<String> all = Stream.of("u10", "u14").flatMap(g -> figures.players(g).stream()).toList();
    Map<LearningChild.Pace, Double> means = figures.climbed(all);

    assertThat(figures.rankCorrelation(all)).isGreaterThan(0.4);
    assertThat(means.get(LearningChild.Pace.FAST))
        .isGreaterThan(means.get(LearningChild.Pace.SLOW) + 0.5);
  }

  /** In 28 children times 4 skills times 13 weeks; a group's circuit cannot serve every wish. */
  @Test
  void hardly_any_skill_waits_longer_than_three_weeks() {
    for (String player : season.children().keySet()) {
      for (Skill skill : Skill.values()) {
        int wait = 0;
        int longest = 0;
        for (DemoSeason.Week week : season.weeks()) {
          List<Day> days =
              week.of(player).days().stream().filter(d -> !d.items().isEmpty()).toList();
          boolean met =
              days.stream().flatMap(d -> d.items().stream()).anyMatch(i -> i.skill() == skill);
          wait = met ? 0 : days.size() > 1 ? wait + 1 : wait;
          longest = Math.max(longest, wait);
        }
        assertThat(longest).as("%s, %s", player, skill.id()).isLessThan(4);
      }
    }
  }
}
