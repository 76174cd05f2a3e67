package org.belthigh.lab;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.Step;
import org.belthigh.files.Csv;
import org.belthigh.intake.Player;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Bats;
import org.belthigh.model.Place;
import org.belthigh.model.Side;
import org.belthigh.model.Skill;
import org.belthigh.plan.Item;

/** One club of a {@link MadeUpLeague}: its groups, children and files. */
final class MadeUpClub {
  private static final String CURRICULUM = "belthigh-2027";
  private static final LocalDate FIRST = LocalDate.of(2027, 3, 1);
  private static final LocalDate LAST = LocalDate.of(2027, 5, 23);
  private static final LocalDate TOURNAMENT = LocalDate.of(2027, 4, 24);
  private static final LocalDate BREAK = LocalDate.of(2027, 5, 3);
  private static final int GROUP = 14;
  private static final int PITCHERS_A_GAME = 3;
  private static final double COMES = 0.88;
  private static final List<String> SYLLABLES =
      List.of("ba", "do", "fi", "ka", "lo", "mi", "na", "pe", "ru", "so", "ta", "vi", "wen", "zo");

  private final String name;
  private final SplittableRandom random;
  private final Catalogue catalogue;
  private final Curriculum curriculum;
  private final List<Group> groups = new ArrayList<>();
  private final List<Child> children = new ArrayList<>();

  /** Practises on two days a week and plays on Saturdays. */
  private record Group(String id, AgeBand band, Set<DayOfWeek> practice, int tossers) {}

  private record Child(Player player, Group group, LearningChild learns, Map<Skill, Step> stands) {}

  MadeUpClub(String name, int size, SplittableRandom random, Catalogue catalogue) {
    this.name = name;
    this.random = random;
    this.catalogue = catalogue;
    this.curriculum = catalogue.curricula().get(CURRICULUM);
    int count = Math.max(1, Math.round(size / (float) GROUP));
    for (int g = 0; g < count; g++) {
      Group group = group(g);
      groups.add(group);
      for (int i = MadeUpLeague.share(size, count, g); i > 0; i--) {
        children.add(child(group, children.size() + 1));
      }
    }
  }

  private Group group(int index) {
    // from 9-10 upwards first, as clubs have it; then round again
    AgeBand band = AgeBand.values()[(index + 1) % AgeBand.values().length];
    String id = "u" + band.to() + "-" + (1 + index / AgeBand.values().length);
    Set<DayOfWeek> practice =
        index % 2 == 0
            ? EnumSet.of(DayOfWeek.TUESDAY, DayOfWeek.THURSDAY)
            : EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY);
    return new Group(id, band, practice, 1 + random.nextInt(3));
  }

  private boolean chance(double share) {
    return random.nextDouble() < share;
  }

  private <T> T one(List<T> things) {
    return things.get(random.nextInt(things.size()));
  }

  private Child child(Group group, int number) {
    int age = group.band().from() + random.nextInt(2);
    Player player =
        new Player(
            String.format(Locale.ROOT, "made-up-%03d", number),
            firstName(),
            Optional.empty(),
            FIRST.minusYears(age).minusDays(90 + random.nextInt(270)),
            chance(0.7) ? Bats.RIGHT : chance(0.8) ? Bats.LEFT : Bats.SWITCH,
            Optional.of(chance(0.85) ? Side.RIGHT : Side.LEFT),
            OptionalInt.of(1 + number % 99),
            group.id(),
            chance(0.35),
            chance(0.15),
            Optional.empty(),
            OptionalDouble.empty(),
            chance(0.2) ? "es" : "en",
            homeDays(),
            Optional.empty(),
            false);
    Map<Skill, Step> begins = new EnumMap<>(Skill.class);
    curriculum.ladders().forEach((skill, ladder) -> begins.put(skill, ladder.start(age)));
    LearningChild.Pace pace = one(List.of(LearningChild.Pace.values()));
    return new Child(
        player, group, new LearningChild(catalogue, pace, begins, LAST, random.split()), begins);
  }

  private String firstName() {
    String low = one(SYLLABLES) + one(SYLLABLES) + (chance(0.3) ? one(SYLLABLES) : "");
    return low.substring(0, 1).toUpperCase(Locale.ROOT) + low.substring(1);
  }

  private Set<DayOfWeek> homeDays() {
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    if (chance(0.5)) {
      for (int i = 2 + random.nextInt(3); i > 0; i--) {
        days.add(one(List.of(DayOfWeek.values())));
      }
    }
    return days;
  }

  /** Writes the club's files into {@code folder}, which is there. */
  void write(Path folder) throws IOException {
    Files.writeString(folder.resolve("club.yaml"), settings());
    csv(folder.resolve("roster.csv"), roster());
    csv(folder.resolve("calendar.csv"), calendar());
    csv(folder.resolve("throws.csv"), outings());
    csv(folder.resolve("wellness.csv"), reports());
    csv(folder.resolve("other.csv"), otherSport());
    Path logs = Files.createDirectories(folder.resolve("logs"));
    for (Group group : groups) {
      csv(logs.resolve(group.id() + "-march.csv"), log(group));
    }
  }

  private static void csv(Path file, List<List<String>> rows) throws IOException {
    Files.writeString(file, Csv.text(rows));
  }

  private String settings() {
    StringBuilder text = new StringBuilder();
    text.append("# A club that is made up, and so is everybody in it.\n");
    text.append("name: Made-Up ").append(name).append('\n');
    text.append("paper: letter\nlanguages: [en, es]\nrule_book: pitch-smart-2018\n");
    text.append("curriculum: ").append(CURRICULUM).append('\n');
    text.append("season: {first: \"").append(FIRST).append("\", last: \"");
    text.append(LAST).append("\"}\ngroups:\n");
    for (Group g : groups) {
      text.append("  - {id: ").append(g.id()).append(", name: Group ").append(g.id());
      text.append(", age: [").append(g.band().from()).append(", ").append(g.band().to());
      text.append("], tossers: ").append(g.tossers()).append("}\n");
    }
    text.append("equipment: {tees: 3, screens: 2, nets: 2, plastic_balls: 48}\n");
    text.append("places:\n  - {id: field, name: Field, kind: field, stations: 4}\n");
    return text.toString();
  }

  private List<List<String>> roster() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "id",
            "first_name",
            "born",
            "bats",
            "throws",
            "number",
            "group",
            "pitches",
            "catches",
            "language",
            "home_days"));
    for (Child child : children) {
      Player p = child.player();
      rows.add(
          List.of(
              p.id(),
              p.firstName(),
              p.born().toString(),
              p.bats().letter(),
              p.throwsWith().orElseThrow().letter(),
              Integer.toString(p.number().orElseThrow()),
              p.group(),
              p.pitches() ? "yes" : "no",
              p.catches() ? "yes" : "no",
              p.language(),
              p.homeDays().stream()
                  .sorted()
                  .map(d -> d.name().substring(0, 3).toLowerCase(Locale.ROOT))
                  .collect(Collectors.joining(" "))));
    }
    return rows;
  }

  private List<List<String>> calendar() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("date", "group", "kind", "start", "minutes", "hitting_minutes", "place"));
    for (LocalDate day : FIRST.datesUntil(LAST.plusDays(1)).toList()) {
      if (day.equals(BREAK)) {
        rows.add(List.of(day.toString(), "all", "break", "", "", "", ""));
      } else if (day.equals(TOURNAMENT)) {
        rows.add(List.of(day.toString(), "all", "tournament", "09:00", "360", "", "field"));
      } else {
        groups.forEach(group -> event(group, day, rows));
      }
    }
    return rows;
  }

  private static void event(Group group, LocalDate day, List<List<String>> rows) {
    if (group.practice().contains(day.getDayOfWeek())) {
      rows.add(List.of(day.toString(), group.id(), "practice", "17:30", "90", "40", "field"));
    } else if (day.getDayOfWeek() == DayOfWeek.SATURDAY) {
      rows.add(List.of(day.toString(), group.id(), "game", "10:00", "120", "", "field"));
    }
  }

  private static List<LocalDate> known() {
    return FIRST.datesUntil(MadeUpLeague.PLAN_DAY).toList();
  }

  private List<Child> of(Group group) {
    return children.stream().filter(c -> c.group().equals(group)).toList();
  }

  private List<List<String>> outings() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("date", "player", "pitches", "kind"));
    for (Group group : groups) {
      List<Child> pitchers = of(group).stream().filter(c -> c.player().pitches()).toList();
      int turn = 0;
      for (LocalDate day : known()) {
        if (day.getDayOfWeek() == DayOfWeek.SATURDAY) {
          for (int i = Math.min(PITCHERS_A_GAME, pitchers.size()); i > 0; i--) {
            String who = pitchers.get(turn++ % pitchers.size()).player().id();
            String pitches = Integer.toString(10 + random.nextInt(30));
            rows.add(List.of(day.toString(), who, pitches, "game"));
          }
        }
      }
    }
    return rows;
  }

  private List<List<String>> reports() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("date", "player", "kind"));
    for (Child child : children) {
      if (chance(0.1)) {
        LocalDate day = one(known());
        rows.add(List.of(day.toString(), child.player().id(), "illness"));
        rows.add(List.of(day.plusDays(3).toString(), child.player().id(), "symptom-free"));
      } else if (chance(0.03)) {
        rows.add(List.of(one(known()).toString(), child.player().id(), "arm-pain"));
      }
    }
    return rows;
  }

  private List<List<String>> otherSport() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("date", "player", "hours", "what"));
    for (Child child : children) {
      if (chance(0.2)) {
        for (LocalDate day : known()) {
          if (day.getDayOfWeek() == DayOfWeek.FRIDAY) {
            rows.add(List.of(day.toString(), child.player().id(), "1.5", "other sport"));
          }
        }
      }
    }
    return rows;
  }

  /** A drill of one skill at each practice, the skills in turn; who is there differs. */
  private List<List<String>> log(Group group) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(LoggedVisit.COLUMNS);
    int practice = 0;
    for (LocalDate day : known()) {
      if (group.practice().contains(day.getDayOfWeek())) {
        Skill skill = Skill.values()[practice++ % Skill.values().length];
        for (Child child : of(group)) {
          if (chance(COMES)) {
            rows.addAll(visit(child, skill, day));
          }
        }
      }
    }
    return rows;
  }

  private List<List<String>> visit(Child child, Skill skill, LocalDate day) {
    Optional<Item> item = item(child, skill);
    if (item.isEmpty()) {
      return List.of();
    }
    return new LoggedVisit(curriculum, child.learns(), child.player(), random)
        .rows(item.get(), day, Place.FIELD, child.stands(), 1, true, "coach");
  }

  /** The first drill of the child's step that is done on the field and written down. */
  private Optional<Item> item(Child child, Skill skill) {
    Step step = child.stands().get(skill);
    return step.drills().stream()
        .map(curriculum::drill)
        .filter(d -> d.at(Place.FIELD) && d.logged())
        .findFirst()
        .map(d -> item(d, step, child.group().band()));
  }

  private static Item item(Drill drill, Step step, AgeBand band) {
    return new Item(
        drill.id(),
        step.skill(),
        step.id(),
        drill.balls().get(Place.FIELD),
        drill.feed(),
        drill.feet().getOrDefault(band, 0),
        drill.reps(),
        drill.swings(),
        drill.minutes());
  }
}
