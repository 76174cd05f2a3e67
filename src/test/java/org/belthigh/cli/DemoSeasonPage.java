package org.belthigh.cli;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.decide.Outcome;
import org.belthigh.intake.Club;
import org.belthigh.intake.Event;
import org.belthigh.lab.LearningChild;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;
import org.belthigh.model.Skill;
import org.belthigh.plan.Day;
import org.belthigh.plan.HoldLine;
import org.belthigh.plan.Item;
import org.belthigh.plan.PlannedWeek;
import org.belthigh.plan.PlayerPlan;
import org.belthigh.words.Words;

/** {@code docs/demo-season.md}: a played season, told to a coach. */
final class DemoSeasonPage {
  private static final String LANGUAGE = "en";
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMM d", Locale.US);
  private static final String DIP = "PRG-011";
  private static final int WEEK = 7;
  private static final int SKILLS_WITHIN = 3;

  private final DemoSeason.Played season;
  private final Curriculum curriculum;
  private final Words words;
  private final DemoSeasonFigures figures;
  private final List<DemoSeasonFigures.Look> looks;
  private final StringBuilder page = new StringBuilder();

  DemoSeasonPage(DemoSeason.Played season, Curriculum curriculum, Words words) {
    this.season = season;
    this.curriculum = curriculum;
    this.words = words;
    this.figures = new DemoSeasonFigures(season, curriculum);
    this.looks = figures.looks();
  }

  /** A child whose weeks are told, and why this one. */
  record Story(String player, String why) {}

  /** The whole page. */
  String text(List<Story> stories, String command) {
    line("# A season of the demo club, week by week");
    line("");
    line("Made by `" + command + "`; do not edit.");
    line("");
    line(
        "The club of `demo-players` is played from its first Monday to its last Sunday: a plan is"
            + " made, the children do it, the logs go into the club folder, and the next plan reads"
            + " them. **Children, tosses, outings and reports are simulated. No child is real, and"
            + " no figure here was measured on a field.** Each child has a true skill that the tool"
            + " never sees; it grows with practice, slowly, as usual or fast. The page shows how the"
            + " plans behave, not how children learn.");
    counts();
    months();
    climb();
    line("");
    line("## Three children");
    line("");
    line(
        "The sentences are those of the plans. A skill is named in the weeks in which its decision"
            + " is another one than the week before.");
    stories.forEach(this::story);
    odd();
    return page.toString();
  }

  private void line(String text) {
    page.append(text).append('\n');
  }

  private String say(Phrase phrase) {
    return words.say(phrase, LANGUAGE);
  }

  private static String row(Object... cells) {
    return java.util.Arrays.stream(cells)
        .map(Object::toString)
        .collect(Collectors.joining(" | ", "| ", " |"));
  }

  private void counts() {
    long held =
        season.weeks().stream()
            .flatMap(w -> w.plan().players().stream())
            .mapToLong(p -> p.holds().size())
            .sum();
    line("");
    line("## In figures");
    line("");
    line(row("what", "count"));
    line(row("---", "---"));
    line(row("plans, the last one for the week after the season", season.weeks().size()));
    line(row("children", season.children().size()));
    line(row("decisions", looks.size()));
    line(row("of them: move up", count(Outcome.MOVE_UP)));
    line(row("keep going", count(Outcome.KEEP_GOING)));
    line(row("firm up", count(Outcome.FIRM_UP)));
    line(row("not seen enough", count(Outcome.NOT_SEEN_ENOUGH)));
    line(row("holds in the plans, a child's hold once in each plan", held));
    line(row("planned days with work", days().size()));
    line(
        row(
            "tosses logged",
            figures.sum(w -> tosses(w, season.children().keySet().stream().toList()))));
    line(row("outings and bullpens", season.pitched().size()));
    line(
        row(
            "outings with more pitches than the tool had said",
            season.pitched().stream().filter(p -> p.pitches() > p.allowed()).count()));
    line(row("plans looked through by the auditor", season.weeks().size()));
    line(row("findings of the auditor", figures.sum(w -> w.found().size())));
    line(
        row(
            "faults in reading the folder",
            figures.sum(w -> (int) w.faults().stream().filter(f -> f.isFault()).count())));
  }

  private long count(Outcome outcome) {
    return looks.stream().filter(l -> l.is(outcome)).count();
  }

  private record Worked(PlayerPlan plan, Day day) {}

  private List<Worked> days() {
    List<Worked> days = new ArrayList<>();
    for (DemoSeason.Week week : season.weeks()) {
      for (PlayerPlan plan : week.plan().players()) {
        plan.days().stream()
            .filter(d -> !d.items().isEmpty())
            .forEach(d -> days.add(new Worked(plan, d)));
      }
    }
    return days;
  }

  private static int tosses(DemoSeason.Week week, List<String> players) {
    return players.stream()
        .flatMap(p -> week.tosses().getOrDefault(p, Map.of()).values().stream())
        .mapToInt(n -> n)
        .sum();
  }

  private void months() {
    line("");
    line("## Month by month");
    line("");
    line(
        "Plans count in the month of their Monday. *Firmed up* counts skills that come to firm-up"
            + " from another decision, *dips* the decisions for an easy week. Nobody ever goes down"
            + " a step.");
    for (Club.Group group : season.club().club().groups()) {
      List<String> players = figures.players(group.id());
      line("");
      line(
          row(
              group.name(),
              "practices",
              "game days",
              "tosses logged",
              "steps up",
              "firmed up",
              "dips",
              "children not in full work",
              "days pitched",
              "pitches"));
      line("| --- |" + " --- |".repeat(9));
      for (Month month : List.of(Month.MARCH, Month.APRIL, Month.MAY)) {
        month(group.id(), month, players);
      }
    }
  }

  private void month(String group, Month month, List<String> players) {
    List<DemoSeason.Week> weeks =
        season.weeks().stream().filter(w -> w.monday().getMonth() == month).toList();
    List<DemoSeasonFigures.Look> own =
        looks.stream()
            .filter(l -> l.group().equals(group) && l.week().monday().getMonth() == month)
            .toList();
    long held =
        weeks.stream()
            .flatMap(w -> w.plan().players().stream())
            .filter(p -> p.who().group().equals(group))
            .filter(p -> p.holds().stream().anyMatch(h -> h.until().isEmpty()))
            .map(p -> p.who().id())
            .distinct()
            .count();
    List<DemoSeason.Pitched> pitched =
        season.pitched().stream()
            .filter(p -> players.contains(p.player()) && p.day().getMonth() == month)
            .toList();
    line(
        row(
            month.getDisplayName(TextStyle.FULL, Locale.US),
            events(group, month, List.of(Event.Kind.PRACTICE, Event.Kind.EVALUATION)),
            events(group, month, List.of(Event.Kind.GAME, Event.Kind.TOURNAMENT)),
            weeks.stream().mapToInt(w -> tosses(w, players)).sum(),
            own.stream().mapToInt(DemoSeasonFigures.Look::climbed).sum(),
            own.stream()
                .filter(
                    l ->
                        l.is(Outcome.FIRM_UP)
                            && !before(l).filter(b -> b.is(Outcome.FIRM_UP)).isPresent())
                .count(),
            own.stream().filter(l -> l.by(DIP)).count(),
            held,
            pitched.size(),
            pitched.stream().mapToInt(DemoSeason.Pitched::pitches).sum()));
  }

  private long events(String group, Month month, List<Event.Kind> kinds) {
    return season.club().events().stream()
        .filter(e -> e.group().filter(group::equals).isPresent() && kinds.contains(e.kind()))
        .filter(e -> e.date().getMonth() == month)
        .count();
  }

  private Optional<DemoSeasonFigures.Look> before(DemoSeasonFigures.Look look) {
    return looks.stream()
        .filter(l -> l.player().equals(look.player()) && l.line().skill() == look.line().skill())
        .filter(l -> l.week().monday().equals(look.week().monday().minusDays(WEEK)))
        .findFirst();
  }

  private void climb() {
    line("");
    line("## Who climbed");
    line("");
    line(
        "Steps up over the season, all four skills together, the mean of the children who learn at"
            + " that pace. The tool never sees the pace. *Order* is the rank correlation of steps"
            + " with the true skill that was gained: 1 where the order is the same, 0 for chance.");
    line("");
    line(row("group", "slow", "usual", "fast", "order"));
    line("| --- | --- | --- | --- | --- |");
    for (Club.Group group : season.club().club().groups()) {
      List<String> players = figures.players(group.id());
      Map<LearningChild.Pace, Double> means = figures.climbed(players);
      line(
          row(
              group.name(),
              number(means.get(LearningChild.Pace.SLOW)),
              number(means.get(LearningChild.Pace.USUAL)),
              number(means.get(LearningChild.Pace.FAST)),
              String.format(Locale.ROOT, "%.2f", figures.rankCorrelation(players))));
    }
    line("");
    line(row("steps up", "see", "choose", "drive", "send"));
    line("| --- | --- | --- | --- | --- |");
    for (Club.Group group : season.club().club().groups()) {
      List<String> cells = new ArrayList<>(List.of(group.name()));
      for (Skill skill : Skill.values()) {
        cells.add(Integer.toString(ups(group.id(), skill)));
      }
      line(row(cells.toArray()));
    }
  }

  private int ups(String group, Skill skill) {
    return looks.stream()
        .filter(l -> l.group().equals(group) && l.line().skill() == skill)
        .mapToInt(DemoSeasonFigures.Look::climbed)
        .sum();
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  private void story(Story story) {
    PlayerPlan first = season.weeks().get(0).of(story.player());
    line("");
    line("### " + first.who().name() + ", " + first.who().age() + ": " + story.why());
    for (DemoSeason.Week week : season.weeks()) {
      line("");
      line("**" + DAY.format(week.monday()) + ".** " + told(week, story.player()));
    }
  }

  private String told(DemoSeason.Week week, String player) {
    PlayerPlan plan = week.of(player);
    List<String> told = new ArrayList<>();
    plan.back().ifPresent(b -> told.add(say(b.sentence())));
    plan.weeks().get(0).says().ifPresent(s -> told.add(say(s)));
    for (DemoSeasonFigures.Look look : looks) {
      if (look.player().equals(player)
          && look.week().monday().equals(week.monday())
          && news(look)) {
        told.add(say(look.line().because()));
      }
    }
    for (HoldLine hold : plan.holds()) {
      told.add(
          hold.until().isEmpty()
              ? say(hold.open())
              : say(hold.open()) + " Throwing rests up to " + DAY.format(hold.until().get()) + ".");
    }
    told.add(work(plan));
    LocalDate end = week.monday().plusDays(WEEK);
    season.pitched().stream()
        .filter(p -> p.player().equals(player))
        .filter(p -> !p.day().isBefore(week.monday()) && p.day().isBefore(end))
        .forEach(
            p ->
                told.add(
                    "*Then: "
                        + p.pitches()
                        + (p.kind().equals("game")
                            ? " pitches in the game of "
                            : " pitches in the bullpen of ")
                        + DAY.format(p.day())
                        + "; "
                        + p.allowed()
                        + " were allowed.*"));
    season.reports().stream()
        .filter(r -> r.player().equals(player))
        .filter(r -> !r.from().isBefore(week.monday()) && r.from().isBefore(end))
        .forEach(r -> told.add("*Then: a report on " + DAY.format(r.from()) + ".*"));
    return told.stream().distinct().collect(Collectors.joining(" "));
  }

  private boolean news(DemoSeasonFigures.Look look) {
    Optional<DemoSeasonFigures.Look> before = before(look);
    boolean seen = !look.is(Outcome.NOT_SEEN_ENOUGH);
    return seen
        && before
            .filter(b -> b.line().rules().get(0).equals(look.line().rules().get(0)))
            .filter(b -> b.rung() == look.rung())
            .isEmpty();
  }

  /** The week's drills, those of practice and those at home. */
  private String work(PlayerPlan plan) {
    String field = drills(plan, false);
    String home = drills(plan, true);
    String practice = field.isEmpty() ? "No hitting work at practice." : "Practice: " + field + ".";
    return practice + (home.isEmpty() ? "" : " Home: " + home + ".");
  }

  private String drills(PlayerPlan plan, boolean home) {
    return plan.days().stream()
        .filter(d -> (d.place() == Place.HOME) == home)
        .flatMap(d -> d.items().stream())
        .map(i -> curriculum.drill(i.drill()).name().in(LANGUAGE))
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private void odd() {
    line("");
    line("## What looks odd");
    line("");
    line("Counted, not judged away; some of it is the plan's, some the simulation's.");
    line("");
    for (Club.Group group : season.club().club().groups()) {
      oddIn(group);
    }
    line(
        "- Firm-up comes and goes: "
            + looks.stream()
                .filter(l -> !l.is(Outcome.FIRM_UP) && l.climbed() == 0)
                .filter(l -> before(l).filter(b -> b.is(Outcome.FIRM_UP)).isPresent())
                .count()
            + " times a skill leaves it on the same step, as old tosses fade. Nobody changes steps"
            + " by it.");
    line(
        "- Around the tournament Under 14 has no bats at practice: practices and tournament together"
            + " are more hours than a week should have, one for each year of age. The overview asks"
            + " to leave out a practice; in this season nobody does.");
    line(
        "- Under 10 moves slowly in choose. Both halves have to be proved there, and balls to let go"
            + " are one toss in three; a practice has two or three other drills.");
    line(
        "- All children here do what the sheet says, write 85 of 100 visits down, and learn by"
            + " visits alone, however many tosses a visit has. Real ones will not.");
  }

  private void oddIn(Club.Group group) {
    List<String> players = figures.players(group.id());
    List<Item> items =
        days().stream()
            .filter(d -> players.contains(d.plan().who().id()))
            .flatMap(d -> d.day().items().stream())
            .toList();
    long unwritten = items.stream().filter(i -> !curriculum.drill(i.drill()).logged()).count();
    line(
        "- "
            + group.name()
            + ": "
            + Math.round(100.0 * unwritten / items.size())
            + " of 100 planned visits are to drills of which nothing is written down. Logged per child"
            + " in the season: "
            + java.util.Arrays.stream(Skill.values())
                .map(s -> s.id() + " " + Math.round(logged(players, s) / (double) players.size()))
                .collect(Collectors.joining(", "))
            + " tosses; steps up per child: "
            + java.util.Arrays.stream(Skill.values())
                .map(s -> s.id() + " " + number(ups(group.id(), s) / (double) players.size()))
                .collect(Collectors.joining(", "))
            + ". "
            + waits(group.id()));
    line("- " + group.name() + ": " + without(group.id()));
  }

  private long logged(List<String> players, Skill skill) {
    return season.weeks().stream()
        .flatMap(w -> players.stream().map(p -> w.tosses().getOrDefault(p, Map.of())))
        .mapToInt(m -> m.getOrDefault(skill, 0))
        .sum();
  }

  /** How many children end the season further in truth than on paper. */
  private String waits(String group) {
    List<String> behind = new ArrayList<>();
    for (Skill skill : Skill.values()) {
      long count =
          figures.players(group).stream()
              .filter(
                  p -> {
                    List<DemoSeasonFigures.Look> own = figures.looks(p, skill);
                    int rung = own.get(own.size() - 1).rung();
                    return season.children().get(p).ability(skill) >= rung + 2;
                  })
              .count();
      behind.add(skill.id() + " " + count);
    }
    return "A whole step or more past the mark of where they stand at the end, by the hidden skill: "
        + String.join(", ", behind)
        + " children.";
  }

  private String without(String group) {
    List<String> weeks =
        season.weeks().stream()
            .filter(
                w ->
                    w.plan().players().stream()
                        .anyMatch(p -> p.weeks().get(0).kind() != PlannedWeek.Kind.TIME_OFF))
            .filter(
                w ->
                    w.plan().players().stream()
                        .filter(p -> p.who().group().equals(group))
                        .noneMatch(p -> p.days().stream().anyMatch(d -> !d.items().isEmpty())))
            .map(w -> DAY.format(w.monday()))
            .toList();
    return (weeks.isEmpty()
            ? "every week of the season has some work"
            : "no hitting work at all in the week of " + String.join(", ", weeks))
        + "; in "
        + stretches(group)
        + " cases a child goes "
        + SKILLS_WITHIN
        + " weeks of two sessions or more without a planned visit to one of the skills.";
  }

  /** Three weeks running with two sessions and more, and none of them with that skill. */
  private long stretches(String group) {
    long found = 0;
    for (String player : figures.players(group)) {
      List<PlayerPlan> full =
          season.weeks().stream()
              .map(w -> w.of(player))
              .filter(p -> p.days().stream().filter(d -> !d.items().isEmpty()).count() > 1)
              .toList();
      for (Skill skill : Skill.values()) {
        for (int w = 0; w + SKILLS_WITHIN <= full.size(); w++) {
          boolean met =
              full.subList(w, w + SKILLS_WITHIN).stream()
                  .flatMap(p -> p.days().stream())
                  .flatMap(d -> d.items().stream())
                  .anyMatch(i -> i.skill() == skill);
          found += met ? 0 : 1;
        }
      }
    }
    return found;
  }
}
