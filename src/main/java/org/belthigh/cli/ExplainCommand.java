package org.belthigh.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.decide.ArmStatus;
import org.belthigh.decide.Arms;
import org.belthigh.decide.Ground;
import org.belthigh.decide.Grounds;
import org.belthigh.decide.Hold;
import org.belthigh.decide.Holds;
import org.belthigh.decide.Progress;
import org.belthigh.decide.SkillDecision;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.LaterRow;
import org.belthigh.model.Problem;
import org.belthigh.plan.DrillAnswer;
import org.belthigh.plan.Planner;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code belthigh explain}: why, in a few plain lines, or with the whole chain behind them. */
@Command(
    name = "explain",
    mixinStandardHelpOptions = true,
    description = "Why, in a few plain lines; with --all tosses, measures, marks, rules, decision.",
    footer = {
      "",
      "Example:",
      "  belthigh explain demo-players p02 --as-of 2027-04-05",
      "  belthigh explain demo-players p02 --as-of 2027-04-05 --all",
      "  belthigh explain demo-players p02 --as-of 2027-04-05 --drill tee-belt-high",
      "  belthigh explain my-club \"Sam O.\""
    })
final class ExplainCommand implements Callable<Integer> {
  @Mixin private ClubOptions club;
  @Spec private CommandSpec spec;

  @Parameters(
      index = "1",
      paramLabel = "PLAYER",
      description = "The player: id, shirt number or name.")
  private String player;

  @Option(names = "--as-of", paramLabel = "DATE", description = "Last day to count; today.")
  private LocalDate asOf;

  @Option(
      names = "--all",
      description = "The whole chain: tosses, measures, marks with their source, rules, decision.")
  private boolean all;

  @Option(
      names = "--drill",
      paramLabel = "DRILL",
      description = "Why not this drill: its id or name. At the next practice and at home.")
  private String drill;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  @Override
  public Integer call() {
    LocalDate day = asOf == null ? club.today() : asOf;
    ClubRecord record = club.read();
    String id = club.named(List.of(player)).iterator().next();
    return drill == null ? decisions(record, id, day) : drill(record, id, day);
  }

  /** Why what was decided was. */
  private int decisions(ClubRecord record, String id, LocalDate day) {
    List<SkillDecision> decisions = new Progress(club.catalogue()).decide(record, day).get(id);
    List<Hold> holds =
        new Holds(club.catalogue())
            .of(record.upTo(day), day).stream().filter(h -> h.player().equals(id)).toList();
    Explanation explanation =
        new Explanation(club.catalogue(), club.words(), record.upTo(day), day);
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      Json.print(explanation.json(id, decisions, holds, grounds(record, id, day)), out);
    } else if (all) {
      explanation.text(id, decisions, holds, grounds(record, id, day)).forEach(out::println);
    } else {
      ArmStatus arm =
          new Arms(club.catalogue())
              .on(record, day).stream()
                  .filter(s -> s.player().equals(id))
                  .findFirst()
                  .orElseThrow();
      explanation.plain(id, decisions, holds, arm).forEach(out::println);
    }
    return ClubOptions.report(record, day, spec.commandLine().getErr());
  }

  private List<Ground> grounds(ClubRecord record, String id, LocalDate day) {
    return new Grounds(club.catalogue()).of(record, id, day);
  }

  /** Why not that drill. */
  private int drill(ClubRecord record, String id, LocalDate day) {
    Curriculum curriculum = club.catalogue().curricula().get(record.club().curriculum());
    String asked = DrillExplanation.named(curriculum, drill);
    List<Problem> problems = new ArrayList<>();
    DrillAnswer answer =
        new Planner(club.catalogue())
            .whyNot(record, id, asked, day, club.history(day, problems::add));
    DrillExplanation explanation =
        new DrillExplanation(club.catalogue(), club.words(), record.player(id), day, answer);
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      Json.print(explanation.json(), out);
    } else {
      explanation.lines(all).forEach(out::println);
    }
    problems.addAll(0, record.problems());
    problems.addAll(LaterRow.remarks(record, day));
    return ClubOptions.report(problems, spec.commandLine().getErr());
  }
}
