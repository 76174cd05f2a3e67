package org.belthigh.catalogue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.belthigh.files.Fields;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Ball;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Feed;
import org.belthigh.model.Grain;
import org.belthigh.model.LocalText;
import org.belthigh.model.Place;
import org.belthigh.model.Skill;

/**
 * Reads one curriculum: {@code curricula/*.yaml}, or a file of the user's. What the parts say of
 * each other is for {@link CurriculumChecks}.
 */
final class CurriculumFile {
  static final int YOUNGEST = 7;
  static final int OLDEST = 18;
  private static final int START_COUNT = 12;

  private final Places places;

  CurriculumFile(Places places) {
    this.places = places;
  }

  Curriculum read(Fields f) {
    String id = f.text("id");
    places.note("curriculum", id, f);
    Map<String, LocalText> gear = new LinkedHashMap<>();
    f.each("gear", g -> Map.entry(g.text("id"), g.localText("name")))
        .forEach(g -> gear.putIfAbsent(g.getKey(), g.getValue()));
    Map<Skill, Curriculum.Ladder> ladders = new EnumMap<>(Skill.class);
    for (Curriculum.Ladder ladder : f.each("skills", this::ladder)) {
      ladders.put(ladder.skill(), ladder);
    }
    refuseMissingSkills(f, ladders.keySet());
    Map<String, Drill> drills =
        f.each("drills", this::drill).stream()
            .collect(Collectors.toMap(Drill::id, d -> d, (a, b) -> a, LinkedHashMap::new));
    return new Curriculum(
        id, f.text("version"), Status.of(f), f.localText("title"), ladders, drills, gear);
  }

  private static void refuseMissingSkills(Fields f, Set<Skill> read) {
    Set<Skill> missing = EnumSet.allOf(Skill.class);
    missing.removeAll(read);
    if (!missing.isEmpty()) {
      f.refuse(
          "skills",
          "no whole ladder can be read for "
              + missing.stream().map(Skill::id).collect(Collectors.joining(", ")),
          "a curriculum has one ladder for each of see, choose, drive, send",
          "Add the ladder, or correct the faults named inside it.");
    }
  }

  private Curriculum.Ladder ladder(Fields f) {
    Skill skill = f.word("id", Skill.class);
    places.note("skill", skill.id(), f);
    List<Step> steps = new ArrayList<>();
    int[] rung = {0};
    steps.addAll(f.each("ladder", s -> step(s, skill, ++rung[0])));
    if (steps.isEmpty()) {
      f.refuse(
          "ladder",
          "there is no step that can be read",
          "a ladder has at least one step",
          "Add a step.");
    }
    return new Curriculum.Ladder(skill, f.localText("name"), steps);
  }

  private Step step(Fields f, Skill skill, int rung) {
    String id = f.text("id");
    places.note("step", id, f);
    Optional<int[]> start = f.pair("start_ages", YOUNGEST, OLDEST);
    Step.Measured measured = f.word("measure", Step.Measured.class);
    return new Step(
        id,
        skill,
        rung,
        f.localText("name"),
        f.localText("aim"),
        f.localText("cue"),
        f.localText("easy_cue"),
        letGo(f, measured),
        measured,
        grain(f, measured),
        f.whole("from_age", YOUNGEST, OLDEST),
        f.optionalWhole("judged_from", YOUNGEST, OLDEST),
        start.map(s -> OptionalInt.of(s[0])).orElse(OptionalInt.empty()),
        start.map(s -> OptionalInt.of(s[1])).orElse(OptionalInt.empty()),
        f.texts("needs"),
        f.whole("tosses", 1, 500),
        bars(f, measured),
        f.texts("drills"));
  }

  private static Optional<Step.LetGo> letGo(Fields f, Step.Measured measured) {
    Optional<Step.LetGo> words =
        f.inside("let_go", w -> new Step.LetGo(w.localText("aim"), w.localText("cue")));
    if (words.isPresent() && measured != Step.Measured.TAKES_AND_CHASES) {
      f.refuse(
          "let_go",
          "the key stands at a " + measured.id() + " step",
          "let_go belongs to takes-and-chases steps alone",
          "Take the key out.");
    }
    return words;
  }

  private static Optional<Grain> grain(Fields f, Step.Measured measured) {
    Optional<Grain> grain = f.optionalWord("grain", Grain.class);
    boolean called = measured == Step.Measured.ZONE_CALL;
    if (called != grain.isPresent()) {
      f.refuse(
          "grain",
          called ? "the key is missing" : "the key stands at a " + measured.id() + " step",
          "grain belongs to every zone-call step and to no other",
          called ? "Add 'grain: strike', row, column or nine." : "Take the key out.");
    }
    return grain;
  }

  private static List<Step.Bar> bars(Fields f, Step.Measured measured) {
    return switch (measured) {
      case ZONE_CALL -> List.of(bar(f, Step.Counted.CALLS));
      case HARD_HIT -> List.of(bar(f, Step.Counted.HARD_HITS));
      case FIELD_CALL -> List.of(bar(f, Step.Counted.SENT));
      case TAKES_AND_CHASES ->
          List.of(bar(f, Step.Counted.TAKES, "take"), bar(f, Step.Counted.CHASES, "chase"));
    };
  }

  private static Step.Bar bar(Fields f, Step.Counted counted) {
    return new Step.Bar(counted, f.text("mark"), f.text("floor"));
  }

  private static Step.Bar bar(Fields f, Step.Counted counted, String which) {
    return new Step.Bar(counted, ofPair(f, "mark", which), ofPair(f, "floor", which));
  }

  private static String ofPair(Fields f, String key, String which) {
    Optional<Map<String, String>> pair =
        f.inside(key, p -> Map.of("take", p.text("take"), "chase", p.text("chase")));
    if (pair.isEmpty() && !f.has(key)) {
      return f.text(key);
    }
    return pair.map(p -> p.get(which)).orElse("?");
  }

  private Drill drill(Fields f) {
    String id = f.text("id");
    places.note("drill", id, f);
    boolean swing = f.flag("swing", true);
    int reps = f.whole("reps", 1, 100);
    int[] people = people(f);
    return new Drill(
        id,
        f.localText("name"),
        f.word("skill", Skill.class),
        f.word("kind", DrillKind.class),
        f.localText("setup"),
        f.localText("cue"),
        f.localText("write"),
        swing,
        f.flag("logged", true),
        balls(f),
        f.word("feed", Feed.class),
        feet(f),
        f.optionalWhole("decision_ms", 200, 2000),
        mix(f),
        f.optionalWord("fields", Drill.Fields.class),
        f.optionalWhole("start_count", 1, 50).orElse(START_COUNT),
        reps,
        f.whole("swings", 0, 100),
        f.whole("minutes", 1, 60),
        f.number("per_minute", 0.1, 60),
        people[0],
        people[1],
        f.texts("gear"),
        f.word("safety", Drill.Safety.class),
        variant(f, "easier"),
        variant(f, "harder"),
        f.optionalLocalText("adapt"));
  }

  private static int[] people(Fields f) {
    return f.inside("people", p -> new int[] {p.whole("adults", 0, 6), p.whole("helpers", 0, 6)})
        .orElseGet(
            () -> {
              if (!f.has("people")) {
                f.text("people");
              }
              return new int[] {0, 0};
            });
  }

  private static Map<Place, Ball> balls(Fields f) {
    Map<Place, Ball> balls = new EnumMap<>(Place.class);
    f.inside(
        "ball",
        group -> {
          for (Place place : List.of(Place.FIELD, Place.CAGE, Place.HOME)) {
            group.optionalWord(place.id(), Ball.class).ifPresent(b -> balls.put(place, b));
          }
          return balls;
        });
    Set<String> named = balls.keySet().stream().map(Place::id).collect(Collectors.toSet());
    if (!named.equals(Set.copyOf(f.texts("places"))) || named.isEmpty()) {
      f.refuse(
          "places",
          f.texts("places")
              + " stands beside balls for "
              + balls.keySet().stream().map(Place::id).toList(),
          "each place has its ball, and each ball its place",
          "Name the same places under 'ball' and 'places'.");
    }
    return balls;
  }

  private static Map<AgeBand, Integer> feet(Fields f) {
    Map<AgeBand, Integer> feet = new EnumMap<>(AgeBand.class);
    if (!f.has("feet")) {
      f.text("feet");
    }
    f.inside(
        "feet",
        ages -> {
          for (AgeBand band : AgeBand.values()) {
            feet.put(band, ages.whole(band.id(), 0, 70));
          }
          return feet;
        });
    return feet;
  }

  private static Drill.Mix mix(Fields f) {
    if (!f.has("mix")) {
      f.text("mix");
    }
    return f.inside(
            "mix",
            m ->
                new Drill.Mix(
                    m.whole("low", 0, 100),
                    m.whole("belt", 0, 100),
                    m.whole("high", 0, 100),
                    m.whole("ball", 0, 100)))
        .orElse(new Drill.Mix(0, 100, 0, 0));
  }

  private static Drill.Variant variant(Fields f, String key) {
    if (!f.has(key)) {
      f.text(key);
    }
    return f.inside(key, v -> new Drill.Variant(v.optionalText("drill"), v.localText("text")))
        .orElse(new Drill.Variant(Optional.empty(), LocalText.of("?", "?")));
  }
}
