package org.belthigh.speed;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.openjdk.jmh.runner.RunnerException;

/**
 * Measures everything, writes {@code docs/speed.md}, and says which ratios moved against the page
 * that was there: {@code mvn -Pspeed verify}, a quarter of an hour on a quiet machine. {@code
 * -Dspeed.large=true} adds 100,000 players; {@code -Dspeed.quick=true} only shows that all runs,
 * and writes beside the build.
 */
public final class SpeedRun {
  private static final Path PAGE = Path.of("docs/speed.md");
  private static final Path TRIAL = Path.of("target/speed/speed.md");

  private SpeedRun() {}

  /** Takes no arguments; run in the project's folder. */
  public static void main(String[] args) throws IOException, RunnerException {
    Files.createDirectories(TRIAL.getParent());
    Settings settings = Settings.told();
    double before = load();
    List<Row> rows = new ArrayList<>();
    // processes first, while the machine is as it was found
    Processes processes = new Processes(settings);
    rows.addAll(processes.cold());
    rows.addAll(processes.leagues());
    rows.addAll(new Warm(settings).rows());
    String command = "mvn -Pspeed verify" + (settings.large() ? " -Dspeed.large=true" : "");
    List<String> kept = settings.large() ? List.of() : SpeedPage.large(PAGE);
    String text = SpeedPage.text(machine(before, load()), command, rows, kept);
    Path page = Settings.quick() ? TRIAL : PAGE;
    List<String> moved = moved(text);
    Files.writeString(page, text);
    System.out.println(text);
    System.out.println("Written to " + page + ". Ratios that moved:");
    System.out.println(moved.isEmpty() ? "none" : String.join("\n", moved));
  }

  private static List<String> moved(String text) throws IOException {
    Path now = Files.writeString(TRIAL, text);
    return SpeedPage.moved(SpeedPage.ratios(PAGE), SpeedPage.ratios(now));
  }

  private static double load() {
    return ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
  }

  private static String machine(double before, double after) throws IOException {
    return String.join(
        "\n",
        "- Machine: "
            + Runtime.getRuntime().availableProcessors()
            + " cores ("
            + processor()
            + "), "
            + System.getProperty("os.name")
            + " "
            + System.getProperty("os.arch"),
        "- Load of the system: "
            + Sample.number(before)
            + " before, "
            + Sample.number(after)
            + " after; "
            + LocalDate.now(ZoneOffset.UTC),
        "- Java "
            + System.getProperty("java.vm.version")
            + "; "
            + System.getProperty("speed.versions", "versions unknown"));
  }

  private static String processor() throws IOException {
    Path info = Path.of("/proc/cpuinfo");
    if (!Files.exists(info)) {
      return "not named";
    }
    return Files.readAllLines(info).stream()
        .filter(line -> line.startsWith("model name"))
        .map(line -> line.substring(line.indexOf(':') + 1).strip())
        .findFirst()
        .orElse("not named");
  }
}
