package org.belthigh.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HistoryTest {
  private static final LocalDate MONDAY = LocalDate.of(2027, 4, 5);
  private static final Handed PLAN = plan(MONDAY, "p01", "see-3");

  @TempDir private Path club;
  private final List<Problem> problems = new ArrayList<>();

  private static Handed plan(LocalDate from, String player, String step) {
    return new Handed(
        from,
        List.of(new Handed.Session(from.plusDays(1), player, "home", "zone-call", 18, 0, 12)),
        List.of(new Handed.Stood(player, "see", step, "keep-going")));
  }

  private History before(LocalDate day) {
    return History.before(club, day, problems::add);
  }

  private List<String> files() throws IOException {
    try (var files = Files.list(club.resolve("history"))) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void what_is_kept_is_read_again() throws IOException {
    assertThat(History.keep(club, PLAN)).hasValue("history/2027-04-05");

    assertThat(before(MONDAY.plusDays(1)).plans()).containsExactly(PLAN);
    assertThat(problems).isEmpty();
  }

  @Test
  void an_old_day_gives_the_old_answer() throws IOException {
    History.keep(club, PLAN);
    History.keep(club, plan(MONDAY.plusDays(7), "p01", "see-4"));

    assertThat(before(MONDAY).plans()).isEmpty();
    assertThat(before(MONDAY.plusDays(7)).last("p01")).hasValue(PLAN);
    assertThat(History.files(club, MONDAY)).isEmpty();
    assertThat(History.files(club, MONDAY.plusDays(7)))
        .containsExactly("history/2027-04-05-days.csv", "history/2027-04-05-steps.csv");
  }

  @Test
  void the_same_plan_is_kept_once_and_another_of_that_day_beside_it() throws IOException {
    History.keep(club, PLAN);

    assertThat(History.keep(club, PLAN)).isEmpty();
    assertThat(History.keep(club, plan(MONDAY, "p01", "see-4"))).hasValue("history/2027-04-05-2");
    assertThat(files())
        .containsExactly(
            "2027-04-05-2-days.csv",
            "2027-04-05-2-steps.csv",
            "2027-04-05-days.csv",
            "2027-04-05-steps.csv");
    assertThat(before(MONDAY.plusDays(1)).last("p01").orElseThrow().steps().get(0).step())
        .isEqualTo("see-4");
  }

  /** A plan of some players leaves the others with what they were handed before. */
  @Test
  void each_player_has_the_newest_plan_that_names_them() throws IOException {
    History.keep(club, PLAN);
    Handed other = plan(MONDAY, "p02", "see-1");
    History.keep(club, other);

    History history = before(MONDAY.plusDays(3));

    assertThat(history.last("p01")).hasValue(PLAN);
    assertThat(history.last("p02")).hasValue(other);
    assertThat(history.last("p03")).isEmpty();
  }

  @Test
  void a_run_that_was_cut_off_leaves_nothing_that_is_read() throws IOException {
    History.keep(club, PLAN);
    Files.delete(club.resolve("history/2027-04-05-steps.csv"));

    assertThat(before(MONDAY.plusDays(1)).plans()).isEmpty();
    assertThat(History.keep(club, PLAN)).hasValue("history/2027-04-05");
    assertThat(before(MONDAY.plusDays(1)).plans()).containsExactly(PLAN);
  }

  @Test
  void what_cannot_be_read_is_said_and_the_rest_goes_on() throws IOException {
    History.keep(club, PLAN);
    Path days = club.resolve("history/2027-04-05-days.csv");
    Files.writeString(days, Files.readString(days) + "soon,p01,home,zone-call,x,0,12\n");
    Files.writeString(club.resolve("history/2027-13-05-steps.csv"), "player\n");
    Files.writeString(club.resolve("history/notes.csv"), "anything\n");

    assertThat(before(MONDAY.plusDays(1)).plans()).containsExactly(PLAN);
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).isFault()).isFalse();
    assertThat(problems.get(0).text()).contains("2027-04-05-days.csv line 3");
  }

  @Test
  void an_odd_id_cannot_break_the_table() throws IOException {
    Handed odd = plan(MONDAY, "p,\"1\"", "see-3");
    History.keep(club, odd);

    assertThat(before(MONDAY.plusDays(1)).plans()).containsExactly(odd);
  }
}
