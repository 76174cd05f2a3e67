package org.belthigh.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Step;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Player;
import org.belthigh.lab.MadeUpLeague;
import org.belthigh.model.Skill;
import org.belthigh.speed.Stock;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Decisions for a club of 300 in one batch: whole, the rules alone with every verdict traced to its
 * rule, and the same verdicts by hand.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@State(Scope.Benchmark)
public class DecideBenchmark {
  private static final int CLUB = 300;

  private ClubRecord club;
  private Progress progress;
  private List<Standing> standings;

  /** Reads the club, and refuses to compare two things that decide differently. */
  @Setup
  public void read() {
    club = Stock.club(CLUB);
    progress = new Progress(Stock.CATALOGUE);
    standings = standings(club, MadeUpLeague.PLAN_DAY);
    if (!rules().equals(byHand())) {
      throw new IllegalStateException("By hand it is not decided as by the rules");
    }
  }

  /** From tosses to decisions with their reasons. */
  @Benchmark
  public Map<String, List<SkillDecision>> decide() {
    return progress.decide(club, MadeUpLeague.PLAN_DAY);
  }

  /** From facts to verdicts. */
  @Benchmark
  public List<Verdict> rules() {
    return RuleBase.shared().fire(standings);
  }

  /** The floor: the same verdicts from the same facts, written out as conditions. */
  @Benchmark
  public List<Verdict> byHand() {
    return HandWritten.verdicts(standings);
  }

  private static List<Standing> standings(ClubRecord club, LocalDate asOf) {
    ClubRecord known = club.upTo(asOf);
    Curriculum curriculum = Stock.CATALOGUE.curricula().get(club.club().curriculum());
    Journal journal = new Journal(known);
    List<Standing> standings = new ArrayList<>();
    for (Player player : known.players()) {
      Map<Skill, Step> behind = new EnumMap<>(Skill.class);
      for (Skill skill : Skill.values()) {
        Walk walk =
            new Walk(
                    Stock.CATALOGUE,
                    curriculum,
                    player,
                    skill,
                    club.club().seasonFirst(),
                    asOf,
                    behind)
                .along(journal.of(player.id()));
        standings.add(walk.standing());
        behind.put(skill, walk.step());
      }
    }
    return standings;
  }
}
