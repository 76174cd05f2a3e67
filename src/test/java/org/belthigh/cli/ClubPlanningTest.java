package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.handout.Handouts;
import org.belthigh.handout.Print;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;
import org.belthigh.plan.Planner;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClubPlanningTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final PlanOrder ORDER =
      new PlanOrder(
          LocalDate.of(2027, 4, 5),
          1,
          Set.of(),
          Set.of("p01"),
          Set.of(),
          Optional.empty(),
          Optional.empty(),
          EnumSet.of(Print.CARD),
          false,
          false,
          false,
          false);
  private static final Problem BROKEN =
      Problem.fault(
          Origin.of("plan.json", 7),
          "",
          "40 swings on one day",
          "30 at most",
          "Maybe the planner is wrong.");
  private static final Handouts.Tray FULL =
      (path, bytes) -> {
        throw new IllegalStateException("no room in the tray");
      };

  private static final ClubPlanning.SecondPair BLIND =
      (file, json, record) -> {
        throw new IllegalArgumentException("cannot read");
      };

  @TempDir private Path folder;
  private Path club;
  private Path out;

  @BeforeEach
  void copyTheDemo() throws IOException {
    club = Runs.cleanDemo(folder);
    out = folder.resolve("out");
  }

  @Test
  void a_plan_that_breaks_a_limit_is_told_and_leaves_no_file_behind() throws IOException {
    ClubPlanning planning =
        new ClubPlanning(CATALOGUE, ORDER, (file, json, record) -> List.of(BROKEN));

    ClubPlanning.Planned planned = planning.plan(club, out, (path, bytes) -> {});

    StringWriter err = new StringWriter();
    assertThat(planned.tell(new PrintWriter(err))).isEqualTo(Belthigh.OUR_FAULT);
    assertThat(err.toString()).contains("40 swings on one day").contains("Nothing was printed");
    assertThat(out).doesNotExist();
  }

  @Test
  void the_limit_is_told_before_a_print_that_fails() throws IOException {
    ClubPlanning planning =
        new ClubPlanning(CATALOGUE, ORDER, (file, json, record) -> List.of(BROKEN));

    assertThat(planning.plan(club, out, FULL).broken()).containsExactly(BROKEN);
    assertThat(out).doesNotExist();
  }

  @Test
  void eyes_that_fail_are_told_as_what_they_are_and_leave_no_file_behind() {
    ClubPlanning planning = new ClubPlanning(CATALOGUE, ORDER, BLIND);

    assertThatThrownBy(() -> planning.plan(club, out, (path, bytes) -> {}))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("cannot read");
    assertThat(out).doesNotExist();
  }

  @Test
  void a_print_that_fails_is_told_before_eyes_that_fail_too() {
    ClubPlanning planning = new ClubPlanning(CATALOGUE, ORDER, BLIND);

    assertThatThrownBy(() -> planning.plan(club, out, FULL)).hasMessage("no room in the tray");
  }

  @Test
  void what_is_loaded_ahead_can_be_loaded() {
    assertThatCode(Planner::warm).doesNotThrowAnyException();
    assertThatCode(Handouts::warm).doesNotThrowAnyException();
  }

  @Test
  void a_print_that_fails_leaves_no_file_behind() {
    ClubPlanning planning = new ClubPlanning(CATALOGUE, ORDER);

    assertThatThrownBy(() -> planning.plan(club, out, FULL)).hasMessage("no room in the tray");
    assertThat(out).doesNotExist();
  }

  @Test
  void a_plan_that_keeps_all_limits_is_there_with_its_prints() throws IOException {
    Set<String> paths = new TreeSet<>();

    ClubPlanning.Planned planned =
        new ClubPlanning(CATALOGUE, ORDER).plan(club, out, (path, bytes) -> paths.add(path));

    assertThat(planned.broken()).isEmpty();
    assertThat(paths).containsExactly("plan.json", "u10/cards/p01-week-2027-04-05.pdf");
    assertThat(paths).allSatisfy(path -> assertThat(out.resolve(path)).isNotEmptyFile());
  }
}
