package org.belthigh.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.belthigh.decide.DecideBenchmark;
import org.belthigh.handout.Print;
import org.belthigh.plan.Plan;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.util.Statistics;

/** Rows of warm code, by JMH. */
final class Warm {
  private static final double MICROS = 1e-3;
  private static final double MILLIS = 1e-6;
  private static final double KIB = 1024;

  private final Map<String, Sample> nanos = new HashMap<>();

  /** Runs every benchmark. */
  Warm(Settings settings) throws RunnerException {
    // made before the JVMs that measure look for it
    Stock.league(StageBenchmark.CLUB);
    Stock.league(StageBenchmark.GROUP);
    TimeValue time = TimeValue.milliseconds(settings.millis());
    var options =
        new OptionsBuilder()
            .include(StageBenchmark.class.getName())
            .include(DecideBenchmark.class.getName())
            .include(PageBenchmark.class.getName())
            .forks(settings.forks())
            .warmupIterations(settings.warmUps())
            .warmupTime(time)
            .measurementIterations(settings.iterations())
            .measurementTime(time)
            .jvmArgsAppend("-Djava.awt.headless=true", "-XX:+UseSerialGC", "-Xmx1g")
            .build();
    for (RunResult result : new Runner(options).run()) {
      Statistics all = result.getPrimaryResult().getStatistics();
      nanos.put(
          result.getPrimaryResult().getLabel(),
          new Sample(all.getPercentile(50), all.getMin(), all.getMax()));
    }
  }

  private Sample a(String benchmark, long things) {
    return nanos.get(benchmark).times(1.0 / things);
  }

  /** The rows, from tosses to paper. */
  List<Row> rows() throws IOException {
    Plan plan = Stock.plan(Stock.club(StageBenchmark.GROUP));
    List<byte[]> packet = Paper.documents(plan, Stock.words(), Print.PACKET);
    int pages = Paper.pages(packet);
    return List.of(
        intake(),
        Row.alone("measure, a player", a("measure", StageBenchmark.CLUB).times(MICROS).text(" µs")),
        decide(),
        rules(),
        Row.alone(
            "plan 6 weeks, a player of a group of 14",
            a("plan", StageBenchmark.GROUP).times(MILLIS).text(" ms")),
        page(pages),
        bytes(packet, pages),
        peer("OpenPDF", "cardsByOpenPdf", 2),
        peer("openhtmltopdf", "cardsByHtml", 20));
  }

  private Row intake() throws IOException {
    long rows = rowsOf(Stock.folder(StageBenchmark.CLUB).resolve("logs"));
    Sample ours = a("intake", rows);
    Sample floor = a("csvAlone", rows);
    double ratio = ours.median() / floor.median();
    double aSecond = 1e9 / ours.median();
    return Row.beside(
            "read a toss row",
            ours.text(" ns") + ", " + Sample.number(aSecond) + " rows/s",
            "the CSV library alone: " + floor.text(" ns"),
            ratio)
        .with(
            Row.Target.atLeast(500_000, aSecond, "500,000 rows/s")
                .and(Row.Target.atMost(3, ratio, "3 or less")));
  }

  private static long rowsOf(Path logs) throws IOException {
    long rows = 0;
    try (Stream<Path> files = Files.list(logs)) {
      for (Path file : files.toList()) {
        try (Stream<String> lines = Files.lines(file)) {
          rows += lines.count() - 1;
        }
      }
    }
    return rows;
  }

  private Row decide() {
    Sample ours = a("decide", StageBenchmark.CLUB).times(MICROS);
    double rules = a("rules", StageBenchmark.CLUB).median() * MICROS;
    double hand = a("byHand", StageBenchmark.CLUB).median() * MICROS;
    double byHand = ours.median() - rules + hand;
    double ratio = ours.median() / byHand;
    return Row.beside(
            "decide, a player",
            ours.text(" µs"),
            "with the rules written by hand: " + Sample.number(byHand) + " µs",
            ratio)
        .with(Row.Target.atMost(10, ratio, "10 or less"));
  }

  private Row rules() {
    Sample rules = a("rules", StageBenchmark.CLUB).times(MICROS);
    Sample hand = a("byHand", StageBenchmark.CLUB).times(MICROS);
    double ratio = rules.median() / hand.median();
    return Row.beside(
            "of that the rules alone",
            rules.text(" µs"),
            "the same verdicts by hand: " + hand.text(" µs"),
            ratio)
        .with(Row.Target.atMost(10, ratio, "10 or less"));
  }

  private Row page(int pages) {
    Sample ours = a("packet", pages).times(MILLIS);
    Sample floor = a("deflateAlone", pages).times(MILLIS);
    double ratio = ours.median() / floor.median();
    return Row.beside(
            "print a tagged page",
            ours.text(" ms"),
            "deflating its bytes: " + floor.text(" ms"),
            ratio)
        .with(Row.Target.atMost(3, ratio, "3 or less"));
  }

  private static Row bytes(List<byte[]> packet, int pages) {
    long all = packet.stream().mapToLong(document -> document.length).sum();
    double kib = all / KIB / pages;
    return Row.alone(
            "bytes of a page in a packet", Sample.number(kib) + " KiB, " + pages + " pages")
        .with(Row.Target.atMost(6, kib, "6 KiB"));
  }

  private Row peer(String name, String benchmark, double target) {
    Sample ours = a("cards", StageBenchmark.GROUP).times(MILLIS);
    Sample theirs = a(benchmark, StageBenchmark.GROUP).times(MILLIS);
    double ratio = theirs.median() / ours.median();
    return Row.beside(
            "print a card, beside " + name,
            ours.text(" ms"),
            name + ": " + theirs.text(" ms"),
            ratio)
        .with(Row.Target.atLeast(target, ratio, Sample.number(target) + " or more"));
  }
}
