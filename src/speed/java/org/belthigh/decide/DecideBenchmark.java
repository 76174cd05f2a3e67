package org.belthigh.decide;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.belthigh.intake.ClubRecord;
import org.belthigh.lab.MadeUpLeague;
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
  private List<Object> facts;

  /** Reads the club, and refuses to compare two things that decide differently. */
  @Setup
  public void read() {
    club = Stock.club(CLUB);
    progress = new Progress(Stock.CATALOGUE);
    facts = progress.facts(club, MadeUpLeague.PLAN_DAY);
    if (!Set.copyOf(rules()).equals(Set.copyOf(byHand()))) {
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
    return RuleBase.shared().fire(facts);
  }

  /** The floor: the same verdicts from the same facts, written out as conditions. */
  @Benchmark
  public List<Verdict> byHand() {
    return HandWritten.verdicts(facts);
  }
}
