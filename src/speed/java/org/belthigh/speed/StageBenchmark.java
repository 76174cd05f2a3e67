package org.belthigh.speed;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Unusable;
import org.belthigh.measure.Measures;
import org.belthigh.measure.PlayerMeasures;
import org.belthigh.plan.Plan;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Reading, measuring and planning a club, and reading its logs with the CSV library alone. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@State(Scope.Benchmark)
public class StageBenchmark {
  static final int CLUB = 300;
  static final int GROUP = 14;

  private Path folder;
  private ClubRecord club;
  private ClubRecord group;

  /** Reads what is measured. */
  @Setup
  public void read() {
    folder = Stock.folder(CLUB);
    club = Stock.club(CLUB);
    group = Stock.club(GROUP);
  }

  /** The whole folder of 300 players: nearly all of it is logs, a toss a row. */
  @Benchmark
  public ClubRecord intake() throws Unusable {
    return Intake.read(folder, Stock.CATALOGUE);
  }

  /** The floor: the same logs, every cell taken out of every row, and nothing understood. */
  @Benchmark
  public long csvAlone() throws IOException {
    long cells = 0;
    try (Stream<Path> logs = Files.list(folder.resolve("logs"))) {
      for (Path log : logs.toList()) {
        String text = Files.readString(log, StandardCharsets.UTF_8);
        for (CsvRecord row : CsvReader.builder().ofCsvRecord(text)) {
          for (int i = 0; i < row.getFieldCount(); i++) {
            cells += row.getField(i).length();
          }
        }
      }
    }
    return cells;
  }

  /** The measures of 300 players. */
  @Benchmark
  public List<PlayerMeasures> measure() {
    return Measures.of(club);
  }

  /** Six weeks of one group of 14. */
  @Benchmark
  public Plan plan() {
    return Stock.plan(group);
  }
}
