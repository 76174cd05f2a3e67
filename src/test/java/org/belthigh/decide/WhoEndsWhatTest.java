package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Unusable;
import org.belthigh.intake.Wellness;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every kind of complaint against everybody who may be written down as having ended it, read from
 * files as people write them, against {@code holds/who-ends-what.md}, a table that a nurse can
 * read. The source of the table is the club folder's page.
 */
class WhoEndsWhatTest {
  private static final LocalDate AFTER = LocalDate.of(2027, 4, 7);

  @TempDir private Path club;

  /** One field of the table. */
  private record Field(String player, String by, String kind, String says) {
    String complaint(String day) {
      return day + "," + player + "," + kind + ",,,";
    }

    String end(String day) {
      return by.equals("symptom-free")
          ? day + "," + player + ",symptom-free,,,"
          : day + "," + player + ",cleared," + kind + "," + (by.equals("nothing") ? "" : by) + ",";
    }
  }

  /** What is written down for a player, in this order: complaints c and ends e, by day of April. */
  private enum Rows {
    AS_TOLD(false, "c1 e6"),
    BACKWARDS(false, "e6 c1"),
    CLEARED_TWICE(false, "e6 c1 e5"),
    CLEARED_TWICE_ON_ONE_DAY(false, "e6 e6 c1"),
    COMPLAINED_TWICE(false, "c3 e6 c1"),
    SAME_DAY(true, "c6 e6"),
    SAME_DAY_BACKWARDS(true, "e6 c6"),
    AGAIN_ON_THE_DAY_OF_THE_CLEARANCE(true, "c1 e6 c6"),
    AGAIN_ON_THAT_DAY_AND_WRITTEN_FIRST(true, "c6 e6 c1"),
    AGAIN_ON_THAT_DAY_CLEARED_TWICE(true, "e6 c6 c1 e6"),
    CLEARED_BEFORE_IT_BEGAN(true, "e3 c4");

    private final boolean holdsAnyway;
    private final String rows;

    Rows(boolean holdsAnyway, String rows) {
      this.holdsAnyway = holdsAnyway;
      this.rows = rows;
    }

    private Stream<String> of(Field field) {
      return Arrays.stream(rows.split(" ", -1))
          .map(
              row -> {
                String day = "2027-04-0" + row.charAt(1);
                return row.charAt(0) == 'c' ? field.complaint(day) : field.end(day);
              });
    }
  }

  private static List<Field> table() throws IOException {
    List<List<String>> lines =
        Files.readAllLines(Path.of("src/test/resources/holds/who-ends-what.md")).stream()
            .filter(l -> l.startsWith("|") && !l.startsWith("|--"))
            .map(l -> Arrays.stream(l.substring(1).split("\\|", -1)).map(String::strip).toList())
            .toList();
    List<Field> fields = new ArrayList<>();
    List<String> kinds = lines.get(0).subList(1, 6);
    for (List<String> line : lines.subList(1, lines.size())) {
      for (int k = 0; k < kinds.size(); k++) {
        String player = "p" + (100 + fields.size());
        fields.add(new Field(player, line.get(0), kinds.get(k), line.get(k + 1)));
      }
    }
    assertThat(fields).hasSize(42 * 5);
    return fields;
  }

  private ClubRecord read(List<Field> fields, List<String> wellness) throws Exception {
    Files.writeString(
        club.resolve("club.yaml"),
        """
        name: Test Club
        paper: letter
        languages: [en]
        rule_book: pitch-smart-2018
        season: {first: "2027-03-01", last: "2027-05-24"}
        groups:
          - {id: u10, name: Under 10, age: [9, 10]}
        """);
    write(
        "roster.csv",
        "id,first_name,born,bats,group",
        fields.stream().map(f -> f.player() + ",Kid" + f.player() + ",2017-05-05,R,u10").toList());
    write("wellness.csv", "date,player,kind,clears,by,note", wellness);
    try {
      return Intake.read(club, RuleCase.CATALOGUE);
    } catch (Unusable e) {
      throw new IllegalStateException(e.problems().toString(), e);
    }
  }

  private void write(String file, String heading, List<String> rows) throws IOException {
    Files.writeString(
        club.resolve(file),
        Stream.concat(Stream.of(heading), rows.stream()).collect(Collectors.joining("\n")) + "\n");
  }

  @ParameterizedTest
  @EnumSource(Rows.class)
  void who_ends_what_is_as_the_table_says(Rows written) throws Exception {
    List<Field> fields = table();
    ClubRecord record = read(fields, fields.stream().flatMap(written::of).toList());

    List<Hold> holds = new Holds(RuleCase.CATALOGUE).of(record, AFTER);

    for (Field field : fields) {
      List<Hold> own = holds.stream().filter(h -> h.player().equals(field.player())).toList();
      if (field.says().equals("ends") && !written.holdsAnyway) {
        assertThat(own).as("%s %s", written, field).isEmpty();
      } else {
        assertThat(own.stream().anyMatch(Hold::stopsSwinging)).as("%s %s", written, field).isTrue();
        assertThat(own.stream().anyMatch(Hold::stopsThrowing)).as("%s %s", written, field).isTrue();
        assertThat(own).as("%s %s", written, field).allMatch(h -> h.until().isEmpty());
      }
    }
  }

  @Test
  void what_does_not_end_a_stop_is_said() throws Exception {
    List<Field> fields = table();
    ClubRecord record = read(fields, fields.stream().flatMap(Rows.AS_TOLD::of).toList());

    List<Hold> holds = new Holds(RuleCase.CATALOGUE).of(record, AFTER);

    for (Field field : fields) {
      if (field.says().equals("holds")) {
        assertThat(holds)
            .filteredOn(h -> h.player().equals(field.player()))
            .as("%s", field)
            .isNotEmpty()
            .allMatch(h -> h.notes().size() == 1);
      }
      assertThat(faults(record, field, fields))
          .as("%s", field)
          .isEqualTo(field.says().equals("refused") ? 1 : 0);
    }
  }

  /** Faults on the row that is meant to end the complaint of {@code field}: the second of two. */
  private static long faults(ClubRecord record, Field field, List<Field> fields) {
    int line = 2 * fields.indexOf(field) + 3;
    return record.problems().stream()
        .filter(Problem::isFault)
        .filter(p -> p.origin().line() == line)
        .count();
  }

  @Test
  void a_complaint_of_the_day_of_a_clearance_is_asked_about() throws Exception {
    List<Field> fields = table();
    ClubRecord record =
        read(fields, fields.stream().flatMap(Rows.AGAIN_ON_THE_DAY_OF_THE_CLEARANCE::of).toList());

    List<Hold> holds = new Holds(RuleCase.CATALOGUE).of(record, AFTER);

    for (Field field : fields.stream().filter(f -> f.says().equals("ends")).toList()) {
      assertThat(holds)
          .filteredOn(h -> h.player().equals(field.player()))
          .as("%s", field)
          .isNotEmpty()
          .allMatch(h -> h.notes().stream().anyMatch(n -> n.rule().equals("HLD-013")))
          .allMatch(h -> h.from().equals(LocalDate.of(2027, 4, 6)));
      assertThat(record.problems())
          .filteredOn(p -> p.origin().line() == 3 * fields.indexOf(field) + 4)
          .extracting(Problem::found)
          .as("%s", field)
          .anyMatch(found -> found.contains("is of the same day as"));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          doctor            | Maybe physician, if it was a medical doctor.
          la doctora        | Maybe physician, if it was a medical doctor.
          Dra. Soto         | Maybe physician, if it was a medical doctor.
          team physician    | Maybe physician.
          nurse             | Maybe nurse-practitioner, if that is the title.
          Enfermera escolar | Maybe nurse-practitioner, if that is the title.
          trainer           | Maybe athletic-trainer, if it was one with a licence, or coach.
          entrenador físico | Maybe athletic-trainer, if it was one with a licence, or coach.
          asistente médico  | Maybe physician-assistant, if that is the title.
          kinesióloga       | Maybe physical-therapist, if that is the title.
          """)
  void a_word_that_can_mean_more_than_one_is_answered_with_the_role(String by, String maybe)
      throws Exception {
    Field field = new Field("p100", by, "illness", "refused");

    ClubRecord record = read(List.of(field), Rows.AS_TOLD.of(field).toList());

    assertThat(record.problems())
        .filteredOn(Problem::isFault)
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.found()).isEqualTo("'" + by + "' is not clear");
              assertThat(fault.maybe()).isEqualTo(maybe);
            });
  }

  private static IntStream seeds() {
    return IntStream.range(0, 20);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void the_order_of_rows_never_changes_a_stop(int seed) throws Exception {
    List<Field> fields = table();
    Random random = new Random(seed);
    List<String> rows = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      Field field = fields.get(random.nextInt(fields.size()));
      Field other = fields.get(random.nextInt(fields.size()));
      String day = "2027-04-0" + (1 + random.nextInt(6));
      Field same = new Field(field.player(), other.by(), other.kind(), "");
      rows.add(random.nextBoolean() ? same.complaint(day) : same.end(day));
    }
    ClubRecord record = read(fields, rows);
    Holds holds = new Holds(RuleCase.CATALOGUE);
    List<Hold> told = holds.of(record, AFTER);

    List<Wellness> shuffled = new ArrayList<>(record.wellness());
    Collections.shuffle(shuffled, random);
    Collections.shuffle(rows, random);

    assertThat(told).isNotEmpty();
    assertThat(holds.of(record.withReports(List.of(), shuffled, record.unread()), AFTER))
        .isEqualTo(told);
    assertThat(holds.of(read(fields, rows), AFTER)).isEqualTo(told);
  }
}
