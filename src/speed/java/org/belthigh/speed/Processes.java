package org.belthigh.speed;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.belthigh.lab.MadeUpLeague;

/** Rows that are whole processes, by the launcher. */
final class Processes {
  private static final Path LAUNCHER = Path.of("target/belthigh").toAbsolutePath();
  private static final Path FOLDER = Path.of("target/speed");
  private static final Path OUT = FOLDER.resolve("out");
  private static final Set<Integer> DONE = Set.of(0, 3);
  private static final String FROM = MadeUpLeague.PLAN_DAY.toString();
  private static final double MIB = 1024;

  private static final List<String> ONE_CORE = List.of("taskset", "-c", "0");
  private static final List<String> TWO_CORES = List.of("taskset", "-c", "0,1");

  private final Settings settings;

  Processes(Settings settings) {
    this.settings = settings;
  }

  /**
   * One run.
   *
   * @param seconds wall
   * @param peak memory of the process at its highest, in MiB; empty where the system does not say
   */
  private record Run(double seconds, OptionalDouble peak) {}

  /** One player, the demo club, and what stands beside them. */
  List<Row> cold() {
    List<String> hello =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xshare:auto",
            "-XX:+UseSerialGC",
            "-XX:TieredStopAtLevel=1",
            "-cp",
            "target/test-classes",
            Hello.class.getName());
    List<String> card = List.of("demo-players", "--player", "p01", "--prints", "card,home");
    Map<String, List<Double>> seconds = new LinkedHashMap<>();
    // in turn, so that a busy moment does not fall on one of them alone
    for (int i = 0; i < settings.coldRuns(); i++) {
      note(seconds, "hello", run(hello, Map.of()).seconds());
      note(seconds, "card", run(plan(card), Map.of()).seconds());
      note(seconds, "demo", run(plan(List.of("demo-players")), Map.of()).seconds());
      note(seconds, "writing", writing());
    }
    Sample floor = Sample.of(seconds.get("hello"));
    Sample one = Sample.of(seconds.get("card"));
    Sample demo = Sample.of(seconds.get("demo"));
    Sample writing = Sample.of(seconds.get("writing"));
    String beside = "a JVM that says hello: " + floor.times(1e3).text(" ms");
    return List.of(
        Row.beside(
                "one card and home sheet, cold",
                one.text(" s"),
                beside,
                one.median() / floor.median())
            .with(Row.Target.atMost(0.6, one.median(), "0.6 s")),
        Row.beside(
                "demo club, 6 weeks, all prints, cold",
                demo.text(" s"),
                beside,
                demo.median() / floor.median())
            .with(Row.Target.atMost(1.5, demo.median(), "1.5 s")),
        Row.beside(
            "demo club, beside writing its files",
            demo.text(" s"),
            "writing the same bytes: " + writing.times(1e3).text(" ms"),
            demo.median() / writing.median()));
  }

  private static void note(Map<String, List<Double>> seconds, String what, double value) {
    seconds.computeIfAbsent(what, w -> new ArrayList<>()).add(value);
  }

  private static List<String> plan(List<String> what) {
    List<String> command = new ArrayList<>(List.of(LAUNCHER.toString(), "plan"));
    command.addAll(what);
    command.addAll(List.of("--out", OUT.toString(), "--from", FROM, "--no-history"));
    return command;
  }

  /** Seconds for writing again what the last run left, file by file. */
  private static double writing() {
    try (Stream<Path> all = Files.walk(OUT)) {
      Map<Path, byte[]> files = new LinkedHashMap<>();
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(OUT.resolve("again").resolve(OUT.relativize(file)), Files.readAllBytes(file));
      }
      long begun = System.nanoTime();
      for (Map.Entry<Path, byte[]> file : files.entrySet()) {
        Files.createDirectories(file.getKey().getParent());
        Files.write(file.getKey(), file.getValue());
      }
      return (System.nanoTime() - begun) / 1e9;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A league on two cores and on one; and a very large one where it is asked for. */
  List<Row> leagues() {
    List<Run> two = league(settings.league(), "-Xmx256m", binds() ? TWO_CORES : List.of());
    Sample both = seconds(two);
    String name = String.format(java.util.Locale.ROOT, "%,d players", settings.league());
    List<Row> rows = new ArrayList<>();
    rows.add(
        Row.alone(
                name + ", 6 weeks, all prints, cold", both.text(" s") + ", 256 MB heap" + peak(two))
            .with(Row.Target.atMost(8, both.median(), "8 s in 256 MB")));
    if (binds()) {
      Sample single = seconds(league(settings.league(), "-Xmx256m", ONE_CORE));
      rows.add(
          Row.beside(
                  name + ", on two cores",
                  both.text(" s"),
                  "bound to one of them: " + single.text(" s"),
                  single.median() / both.median())
              .with(Row.Target.atLeast(1.7, single.median() / both.median(), "1.7 or more")));
    }
    if (settings.large()) {
      List<Run> large = league(Settings.LARGE, "-Xmx384m", List.of());
      double ratio = seconds(large).median() / Settings.LARGE / (both.median() / settings.league());
      rows.add(
          Row.beside(
                  SpeedPage.LARGE,
                  seconds(large).times(1e3 / Settings.LARGE).text(" ms")
                      + ", 384 MB heap"
                      + peak(large),
                  "among " + name + ": " + both.times(1e3 / settings.league()).text(" ms"),
                  ratio)
              .with(Row.Target.atMost(1.1, ratio, "1.1 or less, in 384 MB")));
    }
    return rows;
  }

  /** Whether a process can be bound to one core, compilers, collector and all. */
  private static boolean binds() {
    try {
      List<String> trial = new ArrayList<>(ONE_CORE);
      trial.add("true");
      return new ProcessBuilder(trial).start().waitFor() == 0;
    } catch (IOException e) {
      return false; // no such program here
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * Again and again until there are enough, or the time for it is over.
   *
   * @param bound stands before the command
   */
  private List<Run> league(int players, String heap, List<String> bound) {
    List<String> command = new ArrayList<>(bound);
    command.addAll(plan(List.of("--league", Stock.league(players).toString())));
    // a long run: the second compiler pays
    Map<String, String> options = Map.of("BELTHIGH_JAVA_OPTS", heap + " -XX:TieredStopAtLevel=4");
    List<Run> runs = new ArrayList<>();
    double spent = 0;
    while (runs.isEmpty() || (runs.size() < settings.leagueRuns() && spent < Settings.BUDGET)) {
      Run run = run(command, options);
      runs.add(run);
      spent += run.seconds();
    }
    return runs;
  }

  private static Sample seconds(List<Run> runs) {
    return Sample.of(runs.stream().map(Run::seconds).toList());
  }

  private static String peak(List<Run> runs) {
    return runs.stream().flatMapToDouble(run -> run.peak().stream()).max().stream()
        .mapToObj(mib -> ", " + Sample.number(mib) + " MiB of memory at most")
        .findFirst()
        .orElse("");
  }

  private static Run run(List<String> command, Map<String, String> options) {
    try {
      empty(OUT);
      File log = FOLDER.resolve("log.txt").toFile();
      ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
      builder.environment().putAll(options);
      long begun = System.nanoTime();
      Process process = builder.redirectOutput(log).start();
      OptionalDouble peak = OptionalDouble.empty();
      while (!process.waitFor(50, TimeUnit.MILLISECONDS)) {
        OptionalDouble now = peak(process.pid());
        peak = now.isPresent() ? now : peak;
      }
      double seconds = (System.nanoTime() - begun) / 1e9;
      if (!DONE.contains(process.exitValue())) {
        throw new IllegalStateException(command + " failed:\n" + Files.readString(log.toPath()));
      }
      return new Run(seconds, peak);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("The run was interrupted", e);
    }
  }

  /** Where the system keeps it, the most memory that a process has had so far. */
  private static OptionalDouble peak(long process) {
    try {
      return Files.readAllLines(Path.of("/proc", process + "", "status")).stream()
          .filter(line -> line.startsWith("VmHWM:"))
          .mapToDouble(line -> Double.parseDouble(line.replaceAll("[^0-9]", "")) / MIB)
          .findFirst();
    } catch (IOException e) {
      return OptionalDouble.empty();
    }
  }

  private static void empty(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(each);
      }
    }
  }
}
