package org.belthigh.privacy;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.belthigh.files.Folder;
import org.belthigh.files.Output;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Player;
import org.belthigh.model.Origin;

/**
 * Takes one child out of a club folder: every row of the roster, the logs and the other tables, and
 * of what was handed out. All else stays byte for byte. What it must leave to a person it names.
 */
public final class Forgetting {
  /** The larger is no table that we read. */
  private static final long MOST_BYTES = Folder.MOST_BYTES;

  private static final int DEEPEST = 40;
  private static final Set<String> NAME_COLUMNS =
      Set.of("first_name", "last_name", "name", "nombre", "apellido", "apellidos");
  private static final Set<String> NUMBER_COLUMNS =
      Set.of("number", "jersey", "no", "#", "número", "numero");

  /** Rows of one file, by the lines they begin on. */
  public record Rows(String file, List<Integer> lines) {
    public Rows {
      lines = List.copyOf(lines);
    }

    /** Such as {@code 3, 7-9}. */
    public String ranges() {
      List<String> parts = new ArrayList<>();
      for (int from = 0, to; from < lines.size(); from = to + 1) {
        to = from;
        while (to + 1 < lines.size() && lines.get(to + 1) == lines.get(to) + 1) {
          to++;
        }
        parts.add(from == to ? "" + lines.get(from) : lines.get(from) + "-" + lines.get(to));
      }
      return String.join(", ", parts);
    }
  }

  private final String id;
  private final Path club;
  private final Optional<Player> player;

  /** Lines by file that the reading found to be about the child. */
  private final Map<String, Set<Integer>> read = new TreeMap<>();

  /** Lines by file that are about others too. */
  private final Map<String, Set<Integer>> shared = new TreeMap<>();

  private final Map<String, byte[]> rewritten = new LinkedHashMap<>();
  private final List<Rows> rows = new ArrayList<>();
  private final List<Rows> byHand = new ArrayList<>();
  private final List<Rows> mentions = new ArrayList<>();
  private final List<String> unseen = new ArrayList<>();
  private final Set<String> ownNames = new TreeSet<>();
  private final Set<String> ownNumbers = new TreeSet<>();

  private Forgetting(Path club, String id, Optional<ClubRecord> record) {
    this.club = club;
    this.id = id;
    this.player =
        record.flatMap(r -> r.players().stream().filter(p -> p.id().equals(id)).findFirst());
    record.ifPresent(this::trace);
  }

  /**
   * Looks for the child; nothing is written.
   *
   * @param record the folder as it is read, by which rows are found that name the child otherwise
   *     than by id; empty where it cannot be read
   * @throws IOException if a file cannot be read
   */
  public static Forgetting of(Path club, String id, Optional<ClubRecord> record)
      throws IOException {
    Forgetting forgetting = new Forgetting(club, id, record);
    forgetting.look();
    return forgetting;
  }

  /** The rows that are taken out. */
  public List<Rows> rows() {
    return List.copyOf(rows);
  }

  /** Where the child stands in a form that is left to a person; no lines: the whole file. */
  public List<Rows> byHand() {
    return List.copyOf(byHand);
  }

  /** Rows of others in which the child's name stands, or that of a namesake. */
  public List<Rows> mentions() {
    return List.copyOf(mentions);
  }

  /** Files that cannot be looked into; the child may stand in them. */
  public List<String> unseen() {
    return List.copyOf(unseen);
  }

  /** Whether nothing was found of the child. */
  public boolean isEmpty() {
    return rows.isEmpty() && byHand.isEmpty();
  }

  /** Writes the files without the child, all of them or none. */
  public void carryOut(Output output) {
    rewritten.forEach(output::put);
    output.commit();
  }

  private void trace(ClubRecord record) {
    record.tosses().forEach(t -> trace(t.player(), t.origin()));
    record.tallies().forEach(t -> trace(t.player(), t.origin()));
    record.outings().forEach(o -> trace(o.player(), o.origin()));
    record.wellness().forEach(w -> trace(w.player(), w.origin()));
    record.otherSports().forEach(o -> trace(o.player(), o.origin()));
    record.placements().forEach(p -> trace(p.player(), p.origin()));
    record.unread().stream()
        .filter(u -> u.player().isPresent())
        .forEach(u -> trace(u.player().get(), u.origin()));
  }

  private void trace(String about, Origin origin) {
    String folder = Folder.of(club).shown() + "/";
    if (origin.file().startsWith(folder)) {
      (about.equals(id) ? read : shared)
          .computeIfAbsent(origin.file().substring(folder.length()), f -> new TreeSet<>())
          .add(origin.line());
    }
  }

  private void look() throws IOException {
    List<Path> files = files();
    if (player.isEmpty()) {
      for (Path file : files) {
        ownRow(file);
      }
    }
    for (Path file : files) {
      String name = club.relativize(file).toString().replace('\\', '/');
      if (names(file)) {
        byHand.add(new Rows(name, List.of()));
      } else if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
        unseen.add(name);
      } else {
        look(name, Files.readAllBytes(file));
      }
    }
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> all = Files.walk(club, DEEPEST, new FileVisitOption[0])) {
      return all.filter(f -> !Files.isDirectory(f))
          .filter(f -> !club.relativize(f).toString().startsWith("."))
          .sorted()
          .toList();
    }
  }

  /** A print that is named after the child. */
  private boolean names(Path file) {
    return file.getFileName().toString().startsWith(id + "-week-");
  }

  private void look(String name, byte[] bytes) {
    if (isWorkbook(bytes)) {
      lookInWorkbook(name, bytes);
      return;
    }
    Set<Integer> traced = read.getOrDefault(name, Set.of());
    if (!RawTable.isText(bytes)) {
      unseen.add(name);
      return;
    }
    if (!RawTable.isText(bytes) || !isTable(name)) {
      lookForHand(name, bytes, traced);
      return;
    }
    RawTable table = RawTable.of(bytes);
    Set<Integer> lines = new HashSet<>(traced);
    lines.removeAll(shared.getOrDefault(name, Set.of()));
    table.of(id).forEach(r -> lines.add(r.line()));
    List<Integer> gone =
        table.all().stream().map(RawTable.Line::line).filter(lines::contains).toList();
    if (!gone.isEmpty()) {
      rows.add(new Rows(name, gone));
      rewritten.put(name, table.without(r -> lines.contains(r.line())));
    }
    List<Integer> left = traced.stream().filter(line -> !lines.contains(line)).toList();
    if (!left.isEmpty()) {
      byHand.add(new Rows(name, left));
    }
    mentions(name, table, r -> !lines.contains(r.line()));
  }

  private static boolean isWorkbook(byte[] bytes) {
    return bytes.length > 1 && bytes[0] == 'P' && bytes[1] == 'K';
  }

  private void lookInWorkbook(String name, byte[] bytes) {
    try {
      RawWorkbook book = RawWorkbook.of(bytes);
      Map<String, Set<Integer>> gone = new TreeMap<>();
      for (String sheet : book.sheets()) {
        String shown = name + " sheet " + sheet;
        Set<Integer> lines = new TreeSet<>(read.getOrDefault(shown, Set.of()));
        lines.removeAll(shared.getOrDefault(shown, Set.of()));
        lines.addAll(of(id, book.lines(sheet)));
        gone.put(sheet, lines);
        if (!lines.isEmpty()) {
          rows.add(new Rows(shown, List.copyOf(lines)));
        }
      }
      book.empty((sheet, line) -> gone.get(sheet).contains(line));
      for (String sheet : book.sheets()) {
        leftInSheet(name + " sheet " + sheet, book.lines(sheet));
      }
      if (book.elsewhere(word(id)) || names().stream().anyMatch(book::elsewhere)) {
        byHand.add(new Rows(name + " (a note, a list or a name outside of the cells)", List.of()));
      }
      if (gone.values().stream().anyMatch(lines -> !lines.isEmpty())) {
        rewritten.put(name, book.bytes());
      }
    } catch (IOException e) {
      unseen.add(name);
    }
  }

  /** What of the child stands in the rows of a sheet that are left. */
  private void leftInSheet(String shown, List<RawWorkbook.Line> lines) {
    List<Integer> byId = linesWith(lines, List.of(word(id)));
    if (!byId.isEmpty()) {
      byHand.add(new Rows(shown, byId));
    }
    List<Integer> byName = new ArrayList<>(linesWith(lines, names()));
    byName.removeAll(byId);
    if (!byName.isEmpty()) {
      (player.isEmpty() ? byHand : mentions).add(new Rows(shown, byName));
    }
  }

  private static List<Integer> linesWith(List<RawWorkbook.Line> lines, List<Pattern> words) {
    return lines.stream()
        .filter(
            l ->
                l.cells().values().stream()
                    .anyMatch(c -> words.stream().anyMatch(w -> w.matcher(c).find())))
        .map(RawWorkbook.Line::number)
        .toList();
  }

  /** Rows of a sheet whose player, by the header's word, is the child. */
  private static List<Integer> of(String id, List<RawWorkbook.Line> lines) {
    int column = -1;
    List<Integer> found = new ArrayList<>();
    for (RawWorkbook.Line line : lines) {
      if (column < 0) {
        column = column(line, RawTable::isPlayer);
      } else if (line.cells().getOrDefault(column, "").equals(id)) {
        found.add(line.number());
      }
    }
    return found;
  }

  private static int column(RawWorkbook.Line header, Predicate<String> means) {
    return header.cells().entrySet().stream()
        .filter(c -> means.test(c.getValue()))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(-1);
  }

  /**
   * What the child is called by the roster's own row, where that row was set aside as faulty: then
   * the reading knows neither name nor number.
   */
  private void ownRow(Path file) throws IOException {
    if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
      return;
    }
    byte[] bytes = Files.readAllBytes(file);
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    if (isWorkbook(bytes)) {
      try {
        RawWorkbook book = RawWorkbook.of(bytes);
        book.sheets().forEach(sheet -> ownRow(dense(book.lines(sheet))));
      } catch (IOException e) {
        // it is named among those that cannot be looked into
      }
    } else if (name.startsWith("roster.") && RawTable.isText(bytes)) {
      ownRow(RawTable.of(bytes).all().stream().map(RawTable.Line::cells).toList());
    }
  }

  private static List<List<String>> dense(List<RawWorkbook.Line> lines) {
    return lines.stream()
        .map(
            l ->
                Stream.iterate(0, i -> i <= Collections.max(l.cells().keySet()), i -> i + 1)
                    .map(i -> l.cells().getOrDefault(i, ""))
                    .toList())
        .toList();
  }

  private void ownRow(List<List<String>> table) {
    List<String> header = List.of();
    for (List<String> cells : table) {
      if (header.isEmpty()) {
        header = cells.stream().anyMatch(RawTable::isPlayer) ? cells : header;
      } else if (cells.stream().anyMatch(id::equals)) {
        for (int i = 0; i < Math.min(header.size(), cells.size()); i++) {
          String head = header.get(i).toLowerCase(Locale.ROOT);
          if (cells.get(i).isBlank()) {
            continue;
          }
          if (NAME_COLUMNS.contains(head)) {
            ownNames.add(cells.get(i));
          } else if (NUMBER_COLUMNS.contains(head)) {
            ownNumbers.add(cells.get(i));
          }
        }
      }
    }
  }

  private static boolean isTable(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return Stream.of(".csv", ".tsv", ".txt").anyMatch(lower::endsWith);
  }

  /** A file whose form we do not write: the reader knows its rows, or the id stands in its text. */
  private void lookForHand(String name, byte[] bytes, Set<Integer> traced) {
    Set<Integer> lines = new TreeSet<>(traced);
    if (RawTable.isText(bytes)) {
      RawTable text = RawTable.of(bytes);
      Pattern word = word(id);
      text.all().stream()
          .filter(r -> r.cells().stream().anyMatch(c -> word.matcher(c).find()))
          .forEach(r -> lines.add(r.line()));
      mentions(name, text, r -> !lines.contains(r.line()));
    }
    if (!lines.isEmpty()) {
      byHand.add(new Rows(name, lines.stream().filter(line -> line > 0).toList()));
    }
  }

  private void mentions(String name, RawTable table, Predicate<RawTable.Line> looked) {
    List<Pattern> words = new ArrayList<>(names());
    if (isTable(name) && RawTable.playerColumn(header(table)) < 0) {
      ownNumbers.forEach(n -> words.add(Pattern.compile("^#?" + Pattern.quote(n) + "(?!\\S)")));
    }
    List<Integer> lines =
        table.all().stream()
            .filter(looked)
            .filter(
                r ->
                    r.cells().stream()
                        .anyMatch(c -> words.stream().anyMatch(w -> w.matcher(c).find())))
            .map(RawTable.Line::line)
            .toList();
    if (!lines.isEmpty()) {
      // without a row that can be read, nothing tells the child from a namesake: a person must look
      (player.isEmpty() ? byHand : mentions).add(new Rows(name, lines));
    }
  }

  private static List<String> header(RawTable table) {
    return table.all().stream()
        .map(RawTable.Line::cells)
        .filter(cells -> RawTable.playerColumn(cells) >= 0)
        .findFirst()
        .orElse(List.of());
  }

  /** The child's names, as words to look for. */
  private List<Pattern> names() {
    return Stream.concat(
            player.stream()
                .flatMap(p -> Stream.concat(Stream.of(p.firstName()), p.lastName().stream())),
            ownNames.stream())
        .map(Forgetting::word)
        .toList();
  }

  private static Pattern word(String text) {
    return Pattern.compile(
        "(?<![\\p{L}\\p{N}_-])" + Pattern.quote(text) + "(?![\\p{L}\\p{N}_-])",
        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }
}
