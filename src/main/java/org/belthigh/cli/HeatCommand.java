package org.belthigh.cli;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.HeatTable;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.catalogue.Source;
import org.belthigh.heat.HeatCheck;
import org.belthigh.heat.HeatIndex;
import org.belthigh.model.AgeBand;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code belthigh heat}: what the heat means for a practice, by each table. */
@Command(
    name = "heat",
    mixinStandardHelpOptions = true,
    description = "What the heat means for a practice: breaks, minutes, helmets, or none at all.",
    footer = {
      "",
      "Examples:",
      "  belthigh heat --wbgt 87.5 --region 2 --acclimatised 20",
      "  belthigh heat --temp 92 --humidity 55 --sun --age 10",
      "  belthigh heat --temp 33 --humidity 55 --celsius",
      "",
      "A reading on the field is better than a forecast. What is not given is taken on the careful",
      "side: region 1, 12 or younger, not used to the heat. Your league's own rule comes first."
    })
final class HeatCommand implements Callable<Integer> {
  private static final double COLDEST = -40;
  private static final double HOTTEST = 140;

  /** Nobody asks about heat below that many degrees Fahrenheit, which is more than any Celsius. */
  private static final double FAHRENHEIT_FROM = 60;

  private final Clock clock;

  @Spec private CommandSpec spec;

  @Option(
      names = "--wbgt",
      paramLabel = "DEGREES",
      description = "Wet-bulb globe temperature on the field.")
  private Double wbgt;

  @Option(names = "--temp", paramLabel = "DEGREES", description = "Air temperature in the shade.")
  private Double temperature;

  @Option(
      names = "--humidity",
      paramLabel = "PERCENT",
      description = "Relative humidity, 0 to 100.")
  private Double humidity;

  @Option(names = "--celsius", description = "Degrees are Celsius.")
  private boolean celsius;

  @Option(
      names = "--fahrenheit",
      description = "Degrees are Fahrenheit; needed only where a number could be either.")
  private boolean fahrenheit;

  @Option(names = "--sun", description = "The field lies in the sun.")
  private boolean sun;

  @Option(names = "--age", paramLabel = "YEARS", description = "Age of the youngest player.")
  private Integer age;

  @Option(
      names = "--region",
      paramLabel = "1|2|3",
      description = "Heat region: 1 the mildest summers, 3 the hottest; 1 unless said.")
  private Integer region;

  @Option(
      names = "--acclimatised",
      paramLabel = "DAYS",
      description = "Days that the players have been active in the heat.")
  private Integer daysInHeat;

  HeatCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() {
    refuseOddOptions();
    Catalogue catalogue = CatalogueLoader.load().orThrow();
    HeatCheck check = new HeatCheck(catalogue, LocalDate.now(clock));
    HeatCheck.Who who = new HeatCheck.Who(maybe(age), maybe(region), maybe(daysInHeat), sun);
    PrintWriter out = spec.commandLine().getOut();
    List<HeatCheck.Answer> answers;
    if (wbgt != null) {
      answers = check.wbgt(fahrenheit(wbgt), who);
      out.println("Wet-bulb globe temperature " + degrees(answers.get(0).degrees()));
    } else {
      answers = check.heatIndex(fahrenheit(temperature), humidity, who);
      index(catalogue, answers.get(0), who, out);
    }
    out.println(taken(check, who));
    answers.forEach(a -> print(catalogue, a, out));
    summary(answers, out);
    return Belthigh.OK;
  }

  private void index(
      Catalogue catalogue, HeatCheck.Answer answer, HeatCheck.Who who, PrintWriter out) {
    out.println(
        "Heat index "
            + degrees(answer.degrees())
            + ", by "
            + name(catalogue, "s32")
            + "; it holds"
            + " for shade and is no wet-bulb globe temperature.");
    int adds =
        (int) catalogue.parameter("heat-sun-adds").on(LocalDate.now(clock)).at(AgeBand.AGE_9_10);
    out.println(
        who.sun()
            ? "In full sun it can feel up to " + adds + " °F hotter: one row harsher is taken."
            : "Full sun adds up to " + adds + " °F: say --sun where the field has no shade.");
  }

  private static String taken(HeatCheck check, HeatCheck.Who who) {
    List<String> parts = new ArrayList<>();
    parts.add(who.age().isPresent() ? "youngest " + who.age().getAsInt() : "age not given: young");
    parts.add(
        who.region().isPresent()
            ? "region " + who.region().getAsInt()
            : "region not given: the strictest, 1");
    parts.add(check.newcomers(who) ? "not yet used to the heat" : "used to the heat");
    return "Taken: " + String.join("; ", parts) + ".";
  }

  private static void print(Catalogue catalogue, HeatCheck.Answer answer, PrintWriter out) {
    HeatTable table = answer.table();
    out.println();
    out.println(table.id() + ": " + table.organisation() + ", " + table.edition() + sure(table));
    out.println("  " + says(answer.row()));
    if (answer.harsher()) {
      out.println(
          "  One row harsher than the reading: 12 or younger, in the sun, or new to the heat"
              + " (ours, common practice).");
    }
    out.println(
        "  Source: "
            + table.sources().stream()
                .map(s -> name(catalogue, s))
                .collect(Collectors.joining("; ")));
  }

  private static String sure(HeatTable table) {
    return table.status() == RuleBook.Status.CONFIRMED
        ? ""
        : "; only the value at which it cancels was read";
  }

  private static String name(Catalogue catalogue, String id) {
    Source source = catalogue.source(id);
    return source.shortName() + " (" + id + ")";
  }

  /** What a row means for a hitting practice. */
  static String says(HeatTable.Row row) {
    if (row.cancel()) {
      return "No practice outdoors." + note(row);
    }
    List<String> parts = new ArrayList<>();
    if (row.breaks() > 0) {
      parts.add(row.breaks() + " breaks of " + row.breakMinutes() + " minutes in each hour");
    }
    if (row.restAnHour() > 0) {
      parts.add(row.restAnHour() + " minutes of rest in each hour");
    }
    row.mostMinutes().ifPresent(m -> parts.add("at most " + m + " minutes in all"));
    if (!row.gear()) {
      parts.add(
          "no helmets, and without a helmet no bats and no hitting against a moving ball (ours)");
    }
    String all = parts.isEmpty() ? "No change." : capital(String.join("; ", parts)) + ".";
    return all + note(row);
  }

  private static String note(HeatTable.Row row) {
    return row.note().isEmpty() ? "" : " " + capital(row.note()) + ".";
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private static void summary(List<HeatCheck.Answer> answers, PrintWriter out) {
    HeatCheck.Answer strictest = HeatCheck.strictest(answers);
    out.println();
    boolean differ =
        answers.stream().map(HeatCheck.Answer::row).map(HeatCommand::says).distinct().count() > 1;
    out.println(
        (differ ? "The tables differ; take the strictest, " : "By ")
            + strictest.table().id()
            + ": "
            + says(strictest.row()));
    out.println("Read again every 30 minutes. Anyone who feels unwell stops, and is cooled first.");
  }

  private double fahrenheit(double given) {
    return celsius ? HeatIndex.fahrenheit(given) : given;
  }

  private static String degrees(double fahrenheit) {
    return String.format(Locale.ROOT, "%.1f °F (%.1f °C)", fahrenheit, (fahrenheit - 32) * 5 / 9);
  }

  private static OptionalInt maybe(Integer number) {
    return number == null ? OptionalInt.empty() : OptionalInt.of(number);
  }

  private void refuseOddOptions() {
    askWhichDegrees(wbgt);
    askWhichDegrees(temperature);
    boolean air = temperature != null && humidity != null;
    if (wbgt != null && (temperature != null || humidity != null)) {
      refuse("give --wbgt, or --temp with --humidity, not both; the two are never compared");
    }
    if (wbgt == null && !air) {
      refuse("give --wbgt, or --temp together with --humidity");
    }
    between("--humidity", humidity, 0, 100);
    between("--wbgt", wbgt == null ? null : fahrenheit(wbgt), COLDEST, HOTTEST);
    between("--temp", temperature == null ? null : fahrenheit(temperature), COLDEST, HOTTEST);
    between("--region", region == null ? null : region.doubleValue(), 1, 3);
    between("--age", age == null ? null : age.doubleValue(), 4, 99);
    between("--acclimatised", daysInHeat == null ? null : daysInHeat.doubleValue(), 0, 366);
  }

  private void askWhichDegrees(Double given) {
    if (celsius && fahrenheit) {
      refuse("give --celsius or --fahrenheit, not both");
    }
    if (given != null && !celsius && !fahrenheit && given < FAHRENHEIT_FROM) {
      refuse(
          "which degrees are the "
              + number(given)
              + "? Say --celsius or --fahrenheit."
              + "\n"
              + number(given)
              + " °C are "
              + number(HeatIndex.fahrenheit(given))
              + " °F.");
    }
  }

  private static String number(double degrees) {
    return BigDecimal.valueOf(degrees)
        .setScale(1, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  private void between(String option, Double value, double least, double most) {
    if (value != null && !(value >= least && value <= most)) {
      refuse(option + " must be " + (int) least + " to " + (int) most + ", not " + value);
    }
  }

  private void refuse(String message) {
    throw new ParameterException(spec.commandLine(), message);
  }
}
