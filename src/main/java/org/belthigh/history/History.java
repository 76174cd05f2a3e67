package org.belthigh.history;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.belthigh.files.Csv;
import org.belthigh.files.Folder;
import org.belthigh.files.Output;
import org.belthigh.files.Table;
import org.belthigh.model.Problem;

/**
 * The plans that a club was handed, oldest first.
 *
 * <p>Each plan leaves {@code history/DATE-days.csv} and {@code history/DATE-steps.csv}; another
 * plan of the same day {@code DATE-2-days.csv} and so on, so that nothing is written over. A plan
 * that is made again, the same to the byte, leaves nothing new. Ids only, no names.
 */
public final class History {
  private static final String FOLDER = "history";
  private static final Pattern NAME =
      Pattern.compile("history/(\\d{4}-\\d{2}-\\d{2})(?:-(\\d{1,4}))?-steps\\.csv");
  private static final List<String> DAYS =
      List.of("date", "player", "place", "drill", "reps", "swings", "minutes");
  private static final List<String> STEPS = List.of("player", "skill", "step", "decision");

  private final List<Handed> plans;

  private History(List<Handed> plans) {
    this.plans = plans;
  }

  /** A club without one. */
  public static History none() {
    return new History(List.of());
  }

  /** One with these plans, oldest first. */
  public static History of(List<Handed> plans) {
    return new History(List.copyOf(plans));
  }

  /**
   * The plans handed out before {@code from}; what came later is not known yet on that day.
   *
   * @param club the club folder
   * @param problems is told of what cannot be read and is left out, each as a remark
   */
  public static History before(Path club, LocalDate from, Consumer<Problem> problems) {
    Folder folder = Folder.of(club);
    return new History(
        entries(folder, from).stream()
            .map(e -> read(folder, e.day(), e.stem(), problems))
            .toList());
  }

  /**
   * Names, within the club folder, of the files that {@link #before} reads: oldest plan first.
   *
   * @param club the club folder
   */
  public static List<String> files(Path club, LocalDate from) {
    Folder folder = Folder.of(club);
    return entries(folder, from).stream()
        .flatMap(e -> Stream.of(e.stem() + "days.csv", e.stem() + "steps.csv"))
        .filter(folder::has)
        .toList();
  }

  /** A plan that is kept; its two files begin with {@code stem}. */
  private record Entry(LocalDate day, int number, String stem) {}

  private static List<Entry> entries(Folder folder, LocalDate from) {
    List<Entry> entries = new ArrayList<>();
    for (String name : folder.names(FOLDER)) {
      Matcher parts = NAME.matcher(name);
      if (parts.matches()) {
        day(parts.group(1))
            .filter(d -> d.isBefore(from))
            .ifPresent(
                d ->
                    entries.add(
                        new Entry(
                            d,
                            parts.group(2) == null ? 1 : Integer.parseInt(parts.group(2)),
                            name.substring(0, name.length() - "steps.csv".length()))));
      }
    }
    entries.sort(Comparator.comparing(Entry::day).thenComparingInt(Entry::number));
    return entries;
  }

  private static Handed read(
      Folder folder, LocalDate day, String stem, Consumer<Problem> problems) {
    return new Handed(
        day,
        rows(folder, stem + "days.csv", DAYS, History::session, problems),
        rows(folder, stem + "steps.csv", STEPS, History::stood, problems));
  }

  private static <T> List<T> rows(
      Folder folder,
      String name,
      List<String> columns,
      Function<Table.Row, T> reader,
      Consumer<Problem> problems) {
    if (!folder.has(name)) {
      return List.of();
    }
    Consumer<Problem> remark = problem -> problems.accept(remark(problem));
    Optional<Table> table =
        folder.text(name, remark).flatMap(text -> Csv.parse(text, folder.shown(name), remark));
    if (table.isEmpty() || !table.get().expect(columns, List.of(), remark)) {
      return List.of();
    }
    List<T> rows = new ArrayList<>();
    for (Table.Row row : table.get().rows()) {
      try {
        rows.add(reader.apply(row));
      } catch (DateTimeException | NumberFormatException e) {
        problems.accept(
            Problem.warning(
                row.origin(),
                "",
                "the row cannot be read and is left out",
                "history is written by belthigh",
                "Maybe it was changed by hand."));
      }
    }
    return rows;
  }

  /** Nothing of the input is set aside: the plan only knows less of what went before. */
  private static Problem remark(Problem problem) {
    return Problem.warning(
        problem.origin(), problem.subject(), problem.found(), problem.allowed(), problem.maybe());
  }

  private static Handed.Session session(Table.Row row) {
    return new Handed.Session(
        LocalDate.parse(row.get("date")),
        row.get("player"),
        row.get("place"),
        row.get("drill"),
        Integer.parseInt(row.get("reps")),
        Integer.parseInt(row.get("swings")),
        Integer.parseInt(row.get("minutes")));
  }

  private static Handed.Stood stood(Table.Row row) {
    return new Handed.Stood(
        row.get("player"), row.get("skill"), row.get("step"), row.get("decision"));
  }

  private static Optional<LocalDate> day(String text) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** All plans, oldest first. */
  public List<Handed> plans() {
    return plans;
  }

  /** The newest plan that {@code player} was handed. */
  public Optional<Handed> last(String player) {
    return Stream.iterate(plans.size() - 1, i -> i >= 0, i -> i - 1)
        .map(plans::get)
        .filter(p -> p.has(player))
        .findFirst();
  }

  /**
   * Keeps {@code handed} in the club folder, beside what is there.
   *
   * @return the path of the new entry within the folder; empty where the same plan is kept already
   * @throws IOException if what is there cannot be read
   * @throws org.belthigh.files.Unwritable if the folder cannot be written to
   */
  public static Optional<String> keep(Path club, Handed handed) throws IOException {
    try (Output output = Output.into(club)) {
      return keep(output, handed);
    }
  }

  /** The same where the club folder is open for output already. */
  public static Optional<String> keep(Output club, Handed handed) throws IOException {
    byte[] days = csv(DAYS, handed.sessions(), History::cells);
    byte[] steps = csv(STEPS, handed.steps(), History::cells);
    for (int number = 1; ; number++) {
      String stem = FOLDER + "/" + handed.from() + (number == 1 ? "" : "-" + number);
      Path stepsFile = club.folder().resolve(stem + "-steps.csv");
      if (same(stepsFile, steps) && same(club.folder().resolve(stem + "-days.csv"), days)) {
        return Optional.empty();
      }
      if (!Files.exists(stepsFile)) {
        club.put(stem + "-days.csv", days);
        // by its name it is moved last: an entry without it was cut off, and is not read
        club.put(stem + "-steps.csv", steps);
        club.commit();
        return Optional.of(stem);
      }
    }
  }

  private static boolean same(Path file, byte[] bytes) throws IOException {
    return Files.exists(file) && Arrays.equals(Files.readAllBytes(file), bytes);
  }

  private static <T> byte[] csv(List<String> head, List<T> rows, Function<T, List<String>> cells) {
    List<List<String>> table = new ArrayList<>();
    table.add(head);
    rows.forEach(row -> table.add(cells.apply(row)));
    return Csv.text(table).getBytes(StandardCharsets.UTF_8);
  }

  private static List<String> cells(Handed.Session s) {
    return List.of(
        s.date().toString(),
        s.player(),
        s.place(),
        s.drill(),
        Integer.toString(s.reps()),
        Integer.toString(s.swings()),
        Integer.toString(s.minutes()));
  }

  private static List<String> cells(Handed.Stood s) {
    return List.of(s.player(), s.skill(), s.step(), s.decision());
  }
}
