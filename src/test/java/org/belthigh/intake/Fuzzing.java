package org.belthigh.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.belthigh.audit.Audit;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.files.Csv;
import org.belthigh.files.PlainText;
import org.belthigh.files.Table;
import org.belthigh.files.Workbook;
import org.belthigh.files.Xlsx;
import org.belthigh.files.Yaml;
import org.belthigh.files.YamlTable;
import org.belthigh.model.Problem;

/**
 * Feeds every reader with broken bytes, made from sound and faulty files by seed: the same seed
 * breaks in the same way. Each execution must end, soon, with problems that can be printed.
 */
final class Fuzzing {
  /** More of the processor than this is a hang; the clock on the wall counts other work too. */
  private static final long SLOW_NANOS = 5_000_000_000L;

  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();
  private static final int LONGEST = 20_000;
  private static final int KEPT = 400;
  private static final String[] PIECES = {
    "\"",
    ",",
    ";",
    "\t",
    "|",
    "\n",
    "\r\n",
    "\r",
    "'",
    ":",
    "- ",
    "{",
    "}",
    "[",
    "]",
    "&a ",
    "*a",
    "!!int ",
    "---\n",
    "#",
    "%",
    "@",
    "=1+1",
    "+",
    "\\",
    "../",
    "\u0000",
    "\u001B[31m",
    "\uFEFF",
    "\u202E",
    "\u200B",
    "\u00A0",
    "é",
    "\uD83D\uDE00",
    "99999999999999999999",
    "-1",
    "1e999",
    "NaN",
    "1,5",
    "3/8/2027",
    "31/12/2027",
    "2027-02-30",
    "46454",
    "sep=;\n",
    "total",
    "sí",
    "p01",
    "ana",
    "guest Sam 10 R\n",
    "2027-03-08 u10\n",
    "zone-call\n",
    "rf: 5h=",
    "7/10",
    "PK\u0003\u0004",
    "<!DOCTYPE a>",
    "\"a\":",
    "null",
    "true"
  };

  private final Catalogue small = TestCatalogue.small();
  private final Catalogue shipped = CatalogueLoader.load().orThrow();
  private final Bearings bearings;
  private final Map<String, Function<byte[], List<Problem>>> readers = new TreeMap<>();

  /** What each reader is given to begin with; it stays, or a long run would end in noise. */
  private final Map<String, List<byte[]>> samples = new TreeMap<>();

  /** What was broken and is broken further, by reader; bounded. */
  private final Map<String, List<byte[]>> broken = new TreeMap<>();

  private final Random random;
  private long used;

  Fuzzing(long seed) {
    random = new Random(seed);
    ClubRecord club = club();
    bearings =
        new Bearings(
            club.club(),
            small.curricula().get("small"),
            new Bearings.Drills(small.curricula().get("small")),
            RosterRows.byId(club.players()),
            Map.of(),
            List.of(),
            List.of());
    addReaders();
    for (String name : readers.keySet()) {
      samples.put(name, List.copyOf(samplesOf(name)));
      broken.put(name, new ArrayList<>());
    }
  }

  private static ClubRecord club() {
    try {
      Path folder = Files.createTempDirectory("fuzzing");
      return TestClub.in(folder).read();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void addReaders() {
    OtherRows others = new OtherRows(bearings);
    sheet("roster.csv", () -> Sheet.of(RosterRows.COLUMNS, new RosterRows(bearings.club())::row));
    sheet("calendar.csv", () -> Sheet.of(CalendarRows.COLUMNS, new CalendarRows(bearings)::row));
    sheet("throws.csv", this::outings);
    sheet(
        "wellness.csv",
        () ->
            Sheet.of(
                SafetyRows.WELLNESS_COLUMNS,
                new SafetyRows(bearings, TestCatalogue.WHO_ENDS)::wellness));
    sheet("other.csv", () -> Sheet.of(OtherRows.SPORT_COLUMNS, others::sport));
    sheet("coach.csv", () -> Sheet.of(OtherRows.PLACEMENT_COLUMNS, others::placement));
    sheet("logs", () -> new Logs().sheet(false, bearings));
    sheet("tallies", () -> new Logs().sheet(true, bearings));
    readers.put("logs.txt", this::shortLog);
    readers.put("throws.yaml", this::yaml);
    readers.put("throws.xlsx", this::workbook);
    readers.put("club.yaml", this::clubFile);
    readers.put("check/curriculum", bytes -> check(bytes, "x.yaml"));
    readers.put("check/rule-book", bytes -> check(bytes, "x.yaml"));
    readers.put("check/plan", this::plan);
  }

  private void sheet(String name, java.util.function.Supplier<Sheet<?>> sheet) {
    readers.put(
        name,
        bytes -> {
          List<Problem> problems = new ArrayList<>();
          PlainText.of(bytes)
              .flatMap(plain -> Csv.parse(plain, "x.csv", problems::add))
              .ifPresent(table -> rows(table, sheet.get(), problems));
          return problems;
        });
  }

  private void rows(Table raw, Sheet<?> sheet, List<Problem> problems) {
    Reading reading = Reading.of(raw, sheet, Optional.empty());
    if (reading.table().expect(sheet.required(), sheet.optional(), problems::add)) {
      Notes notes = new Notes();
      for (Table.Row row : reading.table().rows()) {
        Cells cells = Cells.of(row, notes, reading);
        cells.refuseHidden(sheet.columns());
        used += sheet.row().apply(cells).isPresent() ? 1 : 0;
      }
      problems.addAll(notes.all());
    }
    reading.remark().ifPresent(problems::add);
  }

  private List<Problem> shortLog(byte[] bytes) {
    ShortLog log =
        new ShortLog(
            "x.txt",
            new Bearings.Drills(bearings.curriculum()),
            bearings.club(),
            List.of(),
            Optional.of(Dates.Order.DAY_FIRST));
    PlainText.of(bytes).ifPresent(plain -> log.read(plain.text()));
    log.marks().write(bearings::called);
    List<Problem> problems = new ArrayList<>(log.problems());
    problems.addAll(log.marks().problems());
    Logs logs = new Logs();
    rows(log.marks().tosses(), logs.sheet(false, bearings), problems);
    rows(log.marks().tallies(), logs.sheet(true, bearings), problems);
    logs.tosses();
    logs.tallies(problems);
    problems.addAll(logs.remarks());
    return problems;
  }

  private List<Problem> yaml(byte[] bytes) {
    List<Problem> problems = new ArrayList<>();
    PlainText.of(bytes)
        .flatMap(plain -> YamlTable.parse(plain.text(), "x.yaml", problems))
        .ifPresent(table -> rows(table, outings(), problems));
    return problems;
  }

  private Sheet<?> outings() {
    return Sheet.of(
        SafetyRows.OUTING_COLUMNS, new SafetyRows(bearings, TestCatalogue.WHO_ENDS)::outing);
  }

  private List<Problem> workbook(byte[] bytes) {
    List<Problem> problems = new ArrayList<>();
    Workbook.parse(bytes, "x.xlsx", problems::add)
        .flatMap(book -> book.table("throws", true, problems::add))
        .ifPresent(table -> rows(table, outings(), problems));
    return problems;
  }

  private List<Problem> clubFile(byte[] bytes) {
    List<Problem> problems = new ArrayList<>();
    PlainText.of(bytes)
        .flatMap(plain -> Yaml.read("club.yaml", plain.text(), problems))
        .ifPresent(node -> new ClubFile(small, Optional.empty()).read(node, problems));
    return problems;
  }

  private List<Problem> check(byte[] bytes, String file) {
    return PlainText.of(bytes)
        .map(plain -> CatalogueLoader.check(file, plain.text(), shipped))
        .orElse(List.of());
  }

  private List<Problem> plan(byte[] bytes) {
    return PlainText.of(bytes)
        .map(plain -> new Audit(shipped).alone("plan.json", plain.text()))
        .orElse(List.of());
  }

  private static List<byte[]> samplesOf(String reader) {
    List<byte[]> samples = new ArrayList<>();
    Path bad = Path.of("src/test/resources/bad");
    samples.addAll(small(bad.resolve(reader.equals("tallies") ? "logs" : reader)));
    samples.addAll(small(Path.of("demo-players").resolve(reader)));
    switch (reader) {
      case "logs.txt" ->
          samples.add(
              bytes(
                  "2027-03-08 u10 by Kim\nzone-call foam 18\np01 45 5h bb\nfield-call\n2 rf: 5h=\n"));
      case "tallies" ->
          samples.add(
              bytes(
                  "date,player,drill,measure,made,of\n2027-03-08,p01,countdown,countdown,9,12\n"));
      case "throws.xlsx" ->
          samples.add(
              Xlsx.of(
                      "throws",
                      List.of(
                          Xlsx.texts("date", "player", "pitches"),
                          List.of(Xlsx.day(46454), Xlsx.text("p01"), Xlsx.number("5"))))
                  .bytes());
      case "check/rule-book" -> samples.addAll(small(Path.of("rules/books")));
      default -> samples.add(bytes("a: {b: [c, d]}\n"));
    }
    return samples;
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static List<byte[]> small(Path where) {
    try (Stream<Path> files = Files.exists(where) ? Files.walk(where) : Stream.of()) {
      List<byte[]> all = new ArrayList<>();
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        if (!file.toString().endsWith(".txt") && Files.size(file) < LONGEST) {
          all.add(Files.readAllBytes(file));
        }
      }
      return all;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** How many rows were sound all the same. */
  long used() {
    return used;
  }

  /** How many bytes are kept to be broken further, for who asks whether memory grows. */
  long kept() {
    return broken.values().stream().flatMap(List::stream).mapToLong(bytes -> bytes.length).sum();
  }

  /** The readers, by the file that each reads. */
  List<String> readers() {
    return List.copyOf(readers.keySet());
  }

  /**
   * One execution of one reader.
   *
   * @throws AssertionError if it broke down, took too long, or told what cannot be printed
   */
  void execute(String reader) {
    List<byte[]> further = broken.get(reader);
    byte[] input = mutated(reader);
    feed(reader, input);
    if (random.nextInt(50) == 0 && input.length < LONGEST) {
      if (further.size() < KEPT) {
        further.add(input);
      } else {
        further.set(random.nextInt(KEPT), input);
      }
    }
  }

  /** Gives {@code input} to one reader. */
  void feed(String reader, byte[] input) {
    long start = CLOCK.getCurrentThreadCpuTime();
    try {
      for (Problem problem : readers.get(reader).apply(input)) {
        if (problem.text().chars().anyMatch(c -> c < ' ' && c != '\n')) {
          throw new IllegalStateException("a message holds a control character");
        }
      }
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
      throw new AssertionError(
          reader + " breaks on " + java.util.HexFormat.of().formatHex(input), e);
    }
    if (CLOCK.getCurrentThreadCpuTime() - start > SLOW_NANOS) {
      throw new AssertionError(reader + " is slow on " + java.util.HexFormat.of().formatHex(input));
    }
  }

  private byte[] mutated(String reader) {
    byte[] bytes = some(reader);
    int times = 1 + random.nextInt(4);
    for (int i = 0; i < times; i++) {
      bytes = mutated(bytes, reader);
    }
    return bytes.length > LONGEST ? Arrays.copyOf(bytes, LONGEST) : bytes;
  }

  /** A file to break: two in three of those to begin with. */
  private byte[] some(String reader) {
    List<byte[]> further = broken.get(reader);
    List<byte[]> from = further.isEmpty() || random.nextInt(3) > 0 ? samples.get(reader) : further;
    return from.get(random.nextInt(from.size()));
  }

  private byte[] mutated(byte[] bytes, String reader) {
    int at = random.nextInt(bytes.length + 1);
    int to = Math.min(bytes.length, at + random.nextInt(1 + random.nextInt(64)));
    byte[] piece =
        switch (random.nextInt(6)) {
          case 0 -> new byte[] {(byte) random.nextInt(256)};
          case 1 -> Arrays.copyOfRange(bytes, at, to);
          case 2 -> other(reader);
          case 3 -> new byte[0];
          default -> bytes(PIECES[random.nextInt(PIECES.length)]);
        };
    boolean over = random.nextBoolean();
    return joined(bytes, at, piece, over ? Math.max(at, to) : at);
  }

  private byte[] other(String reader) {
    byte[] other = some(reader);
    int from = random.nextInt(other.length + 1);
    return Arrays.copyOfRange(other, from, Math.min(other.length, from + 200));
  }

  private static byte[] joined(byte[] bytes, int at, byte[] piece, int rest) {
    byte[] all = new byte[at + piece.length + bytes.length - rest];
    System.arraycopy(bytes, 0, all, 0, at);
    System.arraycopy(piece, 0, all, at, piece.length);
    System.arraycopy(bytes, rest, all, at + piece.length, bytes.length - rest);
    return all;
  }
}
