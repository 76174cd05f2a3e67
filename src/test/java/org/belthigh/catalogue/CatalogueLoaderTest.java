package org.belthigh.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CatalogueLoaderTest {
  private static final SortedMap<String, String> FILES = Resources.all();

  /**
   * One thing put wrong.
   *
   * @param old stands in the file, and is replaced where it stands first after {@code anchor}
   * @param expected the whole message
   */
  private record Fault(String file, String anchor, String old, String wrong, String expected) {
    @Override
    public String toString() {
      return expected;
    }
  }

  @Test
  void what_travels_with_the_program_has_no_fault() {
    assertThat(CatalogueLoader.load().problems()).extracting(Problem::text).isEmpty();
    assertThat(CatalogueLoader.load().value()).isPresent();
  }

  @Test
  void the_list_in_the_jar_names_every_file_that_travels() {
    assertThat(Resources.listed()).containsExactlyInAnyOrderElementsOf(FILES.keySet());
  }

  @Test
  void a_drill_is_logged_where_its_words_ask_for_writing() {
    Curriculum curriculum = CatalogueLoader.load().orThrow().curricula().get("belthigh-2027");

    assertThat(curriculum.drills().values())
        .allSatisfy(
            d ->
                assertThat(d.logged())
                    .as(d.id())
                    .isEqualTo(!d.write().in("en").startsWith("Nothing to write")));
  }

  @ParameterizedTest
  @MethodSource("faults")
  void a_fault_names_file_line_found_allowed_and_next_step(Fault fault) {
    SortedMap<String, String> files = new TreeMap<>(FILES);
    files.put(fault.file(), broken(files.get(fault.file()), fault));

    CatalogueLoader.Result<Catalogue> result = CatalogueLoader.load(files);

    assertThat(result.value()).isEmpty();
    assertThat(result.problems())
        .extracting(p -> withoutPlace(p.text()))
        .contains(fault.expected());
    assertThat(result.problems()).allMatch(p -> p.origin().line() > 0);
    assertThat(result.problems()).anyMatch(p -> p.origin().file().equals(fault.file()));
  }

  private static String broken(String text, Fault fault) {
    int from = text.indexOf(fault.anchor());
    int at = text.indexOf(fault.old(), from);
    assertThat(from).as("anchor %s", fault.anchor()).isNotNegative();
    assertThat(at).as("text %s", fault.old()).isNotNegative();
    return text.substring(0, at) + fault.wrong() + text.substring(at + fault.old().length());
  }

  /** Lines move when a file is edited; that they are there is checked beside. */
  private static String withoutPlace(String text) {
    return text.replaceFirst(" line [0-9]+( column [0-9]+)?", "");
  }

  static List<Fault> faults() {
    String curriculum = "curricula/belthigh-2027.yaml";
    String book = "rules/books/pitch-smart-2018.yaml";
    String arm = "rules/parameters/arm.yaml";
    String rules = "rules/arm/rules.yaml";
    return List.of(
        new Fault(
            arm,
            "",
            "value: 7",
            "value: 31",
            arm
                + ", value: '31' is no such number; value must be a number from 1.0 to 30.0.\n"
                + "Maybe the point is missing or a comma stands in its place."),
        new Fault(
            arm,
            "",
            "unit: days",
            "unit: day",
            arm
                + ", unit: 'day' is not a unit; unit must be one of share, count, days, months, hours,"
                + " minutes, swings, tosses, players, years, feet, inches, nats, degrees, milliseconds.\n"
                + "Choose one of these, or add it to rules/units.yaml."),
        new Fault(
            arm,
            "",
            "source: common-practice",
            "source: common-practise",
            arm
                + ", values: there is no source 'common-practise'; it must be the id of a source"
                + " that exists.\nMaybe 'common-practice' is meant."),
        new Fault(
            arm,
            "",
            "value: 7",
            "by_age: {\"7-8\": 7}\n        value: 7",
            arm
                + ", value: value and by_age stand together; give one value for all ages, or by_age"
                + " with one for each age band.\n"
                + "Write value: … or by_age: {\"7-8\": …, … \"17-18\": …}."),
        new Fault(
            arm,
            "",
            "      - from: \"2014-01-01\"",
            "      - {from: \"2014-01-01\", value: 8, source: common-practice, evidence: judgement}\n"
                + "      - from: \"2014-01-01\"",
            arm
                + ", values: a value from 2014-01-01 follows one from 2014-01-01; values stand"
                + " oldest first, and no two begin on one day.\nGive each value its own day."),
        new Fault(
            arm,
            "",
            "status: reviewed",
            "status: done",
            arm
                + ", status: 'done' is not known; status must be one of draft, reviewed, retired.\n"
                + "Choose one of these."),
        new Fault(
            arm,
            "",
            "    unit: days",
            "    colour: red\n    unit: days",
            arm
                + ", colour: this key is not known here; known keys are id, bounds, values,"
                + " description, unit, status, checked_on.\nTake the key out."),
        new Fault(
            book,
            "ages: [9, 10]",
            "ages: [9, 10]",
            "ages: [10, 10]",
            book
                + ", bands: ages 8 and 10 follow each other; bands stand youngest first, without"
                + " gap or overlap, so the next begins at 9.\n"
                + "Correct the ages of one of the two bands."),
        new Fault(
            book,
            "ages: [9, 10]",
            "{from: 21, to: 35",
            "{from: 20, to: 35",
            book
                + ", rest: a row begins at 20 pitches; rows begin at 1 and go on without gap or"
                + " overlap, so this one begins at 21.\n"
                + "Correct where the row begins, or where the one before it ends."),
        new Fault(
            book,
            "ages: [9, 10]",
            "{from: 1, to: 20",
            "{from: 2, to: 20",
            book
                + ", rest: a row begins at 2 pitches; rows begin at 1 and go on without gap or"
                + " overlap, so this one begins at 1.\n"
                + "Correct where the row begins, or where the one before it ends."),
        new Fault(
            book,
            "ages: [7, 8]",
            "to: 50",
            "to: 49",
            book
                + ", rest: the last row ends at 49; the last row is open or ends at the most pitches"
                + " of a day, 50.\nLeave out 'to' in the last row."),
        new Fault(
            book,
            "ages: [9, 10]",
            "to: 65, days: 3",
            "days: 3",
            book
                + ", rest: the row from 51 ends nowhere; only the last row may be open, and a row"
                + " ends where it begins or later.\nWrite the most pitches of the row as 'to'."),
        new Fault(
            book,
            "ages: [9, 10]",
            "to: 65, days: 3",
            "to: 65, days: 1",
            book
                + ", rest: 1 days follow 2; more pitches never need less rest.\n"
                + "Correct the days of one of the two rows."),
        new Fault(
            book,
            "",
            "age: actual",
            "age: actuel",
            book
                + ", age: 'actuel' is not known; age must be one of actual, league-age, division, high-school.\n"
                + "Maybe 'actual' is meant."),
        new Fault(
            rules,
            "",
            "id: ARM-002",
            "id: ARM-001",
            rules
                + ", id: there is a rule 'ARM-001' already, at rules/arm/rules.yaml line 4 column 5;"
                + " each id may stand once.\nGive one of the two another id."),
        new Fault(
            rules,
            "",
            "id: ARM-002",
            "id: arm-2",
            rules
                + ", id: 'arm-2' is no rule id; a rule id is three or four capitals, a hyphen and"
                + " three digits.\nWrite it as ARM-001."),
        new Fault(
            rules,
            "",
            "ask-after-days]",
            "ask-after-day]",
            rules
                + ", reads: there is no parameter 'ask-after-day'; it must be the id of a parameter"
                + " that exists.\nMaybe 'ask-after-days' is meant."),
        new Fault(
            "rules/precedence.yaml",
            "",
            "- PRG-010",
            "- PRG-110",
            "rules/precedence.yaml, precedence: there is no rule 'PRG-110'; it must be the id of a"
                + " rule that exists.\nMaybe 'PRG-010' is meant."),
        new Fault(
            curriculum,
            "- id: see-1",
            "start_ages: [7, 8]",
            "start_ages: [7, 9]",
            curriculum
                + ", start_ages: players begin here from age 9; along a ladder start ages cover 7 to"
                + " 18 without gap or overlap, so here from 10.\n"
                + "Correct the start ages of this step or of the one before."),
        new Fault(
            curriculum,
            "- id: see-1",
            "needs: []",
            "needs: [see-3]",
            curriculum
                + ", needs: the step comes before itself; what a step needs lies lower on its"
                + " ladder, or on another without a way back.\nTake one of [see-3] out."),
        new Fault(
            curriculum,
            "- id: see-1",
            "needs: []",
            "needs: [see-33]",
            curriculum
                + ", needs: there is no step 'see-33'; it must be the id of a step that exists.\n"
                + "Maybe 'see-3' is meant."),
        new Fault(
            curriculum,
            "- id: see-1",
            "drills: [stand-in-call",
            "drills: [tee-countdown, stand-in-call",
            curriculum
                + ", drills: drill 'tee-countdown' belongs to the skill drive; a step's drills"
                + " belong to its own skill, see.\nName another drill, or correct the drill's"
                + " skill."),
        new Fault(
            curriculum,
            "- id: see-1",
            "grain: strike",
            "grain: nine",
            curriculum
                + ", from_age: all nine spots are asked for from age 7; nine spots are asked for"
                + " from age 11 on.\nRaise from_age, or ask for a height or a side only."),
        new Fault(
            curriculum,
            "- id: see-1",
            "mark: see-1-mark",
            "mark: see-1-floor",
            curriculum
                + ", mark: see-1-floor and see-1-floor do not part at ages 7-8; the mark lies above"
                + " the floor at every age.\nCorrect one of the two parameters."),
        new Fault(
            curriculum,
            "- id: drive-1",
            "measure: hard-hit",
            "measure: field-call",
            curriculum
                + ", measure: a step of the skill drive is counted as field-call; steps of this"
                + " skill are counted as hard-hit.\nWrite 'measure: hard-hit'."),
        new Fault(
            curriculum,
            "- id: see-1",
            "drills: [stand-in-call, catch-the-strikes, ",
            "drills: [",
            curriculum
                + ", drills: no drill of the step is counted as zone-call; at least one drill of a"
                + " step has rows that count for it.\nAdd a drill that proves the step."),
        new Fault(
            curriculum,
            "- id: choose-6",
            ", count-cards]",
            "]",
            curriculum
                + ", id: no step and no other drill names 'count-cards'; each drill is used.\n"
                + "Name it in a step of the skill choose, or take it out."),
        new Fault(
            curriculum,
            "- id: stand-in-call",
            "per_minute: 5",
            "per_minute: 1",
            curriculum
                + ", reps: 12 tosses in 8 minutes; at 1.0 a minute there is time for 8.\n"
                + "Correct reps, minutes or per_minute."),
        new Fault(
            curriculum,
            "- id: stand-in-call",
            "home: plastic",
            "home: baseball",
            curriculum
                + ", ball: at home a baseball is used; at home the ball is plastic, foam or none.\n"
                + "Write 'home: plastic', or take home out of the places."),
        new Fault(
            curriculum,
            "- id: tee-countdown",
            "    kind: countdown",
            "    swings_per_week: 999\n    kind: countdown",
            curriculum
                + ", swings_per_week: this key is not known here; known keys are id, swing, reps, people,"
                + " name, skill, kind, setup, cue, write, logged, ball, places, feed, feet, decision_ms, mix,"
                + " fields,"
                + " start_count, swings, minutes, per_minute, gear, safety, easier, harder, adapt.\n"
                + "Take the key out."),
        new Fault(
            curriculum,
            "- id: tee-countdown",
            "adults: 1",
            "adults: 0",
            curriculum
                + ", people: a bat is swung and no adult is there; wherever a bat is swung there is"
                + " at least 1 adult.\nWrite 'people: {adults: 1, helpers: …}'."),
        new Fault(
            curriculum,
            "- id: stand-in-call",
            "adults: 1",
            "adults: 0",
            curriculum
                + ", people: the ball comes by front-toss and no adult is there; an adult tosses;"
                + " children do not toss to a hitter.\nWrite 'people: {adults: 1, helpers: …}'."),
        new Fault(
            curriculum,
            "- id: tee-countdown",
            "gear: [tee, bat, helmet, ",
            "gear: [tee, bat, ",
            curriculum
                + ", gear: no helmet is among it; wherever a bat is swung or a ball comes the hitter"
                + " wears a helmet.\nAdd helmet to the gear."),
        new Fault(
            curriculum,
            "- id: flip-countdown",
            "gear: [screen, bat",
            "gear: [bat",
            curriculum
                + ", gear: a hard ball is tossed and no screen is among it; who tosses a hard ball"
                + " stands behind a screen.\nAdd screen to the gear, or name a soft ball."),
        new Fault(
            curriculum,
            "- id: front-toss-home",
            "\"13-14\": 20",
            "\"13-14\": 19",
            curriculum
                + ", feet: at ages 13-14 the ball comes from 19 ft without a screen; at 13 and older"
                + " it comes from 20 ft or more.\n"
                + "Write 20 there, or add screen to the gear and take home out."),
        new Fault(
            curriculum,
            "- id: stand-in-call",
            "swings: 0",
            "swings: 3",
            curriculum
                + ", swings: 3 swings of 12 tosses, with swing: false; swings are 1 to the number of"
                + " tosses, or 0 where no bat is swung.\nCorrect swing, reps or swings."),
        new Fault(
            curriculum,
            "- id: stand-in-call",
            "places: [field, cage, home]",
            "places: [field, cage]",
            curriculum
                + ", places: [field, cage] stands beside balls for [field, cage, home]; each place"
                + " has its ball, and each ball its place.\n"
                + "Name the same places under 'ball' and 'places'."),
        new Fault(
            curriculum,
            "- id: stand-in-call",
            "gear: [target",
            "gear: [targets",
            curriculum
                + ", gear: there is no gear 'targets'; it must be the id of a gear that exists.\n"
                + "Maybe 'target' is meant."),
        new Fault(
            curriculum,
            "- id: stand-in-call",
            "ball: 50}",
            "ball: 40}",
            curriculum
                + ": A mix adds up to 100, but 15+20+15+40 do not; the values must agree with each"
                + " other.\nCorrect the value that is named."));
  }

  @Test
  void a_missing_ladder_is_a_fault() {
    String text =
        FILES.get("curricula/belthigh-2027.yaml").replace("  - id: send\n", "  - id: see\n");

    List<Problem> problems =
        CatalogueLoader.check("my.yaml", text, CatalogueLoader.load().orThrow());

    assertThat(problems)
        .extracting(p -> withoutPlace(p.text()))
        .contains(
            "my.yaml, skills: no whole ladder can be read for send; a curriculum has one ladder for"
                + " each of see, choose, drive, send.\n"
                + "Add the ladder, or correct the faults named inside it.");
  }

  @Test
  void a_file_that_belongs_nowhere_is_a_fault() {
    SortedMap<String, String> files = new TreeMap<>(FILES);
    files.put("rules/other.yaml", "a: b");

    assertThat(CatalogueLoader.load(files).problems())
        .extracting(Problem::text)
        .containsExactly(
            "rules/other.yaml: the file belongs to no part of the catalogue; parts are"
                + " rules/parameters/, rules/books/, rules/heat/, rules/PACK/rules.yaml and curricula/.\n"
                + "Move it into one of these folders.");
  }

  @Test
  void a_rule_book_of_the_users_is_told_from_a_curriculum_by_its_keys() {
    Catalogue catalogue = CatalogueLoader.load().orThrow();
    String book = FILES.get("rules/books/little-league-reg-vi.yaml");

    assertThat(CatalogueLoader.looksLikeOne(book)).isTrue();
    assertThat(CatalogueLoader.looksLikeOne("name: Club\ngroups: []\n")).isFalse();
    assertThat(CatalogueLoader.check("book.yaml", book, catalogue)).isEmpty();
    assertThat(
            CatalogueLoader.check(
                "curriculum.yaml", FILES.get("curricula/belthigh-2027.yaml"), catalogue))
        .isEmpty();
  }

  @Test
  void an_unknown_unit_file_or_an_empty_one_is_said_and_nothing_is_half_loaded() {
    SortedMap<String, String> files = new TreeMap<>(FILES);
    files.put("rules/sources.yaml", "");

    CatalogueLoader.Result<Catalogue> result = CatalogueLoader.load(files);

    assertThat(result.value()).isEmpty();
    assertThat(result.problems())
        .extracting(Problem::text)
        .containsExactly(
            "rules/sources.yaml: the file is empty; it must hold the keys of the documentation.\n"
                + "Maybe it was saved before anything was typed.");
  }
}
