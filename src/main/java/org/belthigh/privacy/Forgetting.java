package org.belthigh.privacy;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
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

  private static final int DEEPEST = 4;

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
    for (Path file : files()) {
      String name = club.relativize(file).toString().replace('\\', '/');
      if (names(file)) {
        byHand.add(new Rows(name, List.of()));
      } else if (Files.size(file) <= MOST_BYTES) {
        look(name, Files.readAllBytes(file));
      }
    }
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> all = Files.walk(club, DEEPEST, new FileVisitOption[0])) {
      return all.filter(Files::isRegularFile)
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
    Set<Integer> traced = read.getOrDefault(name, Set.of());
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
    List<Pattern> words =
        player.stream()
            .flatMap(p -> Stream.concat(Stream.of(p.firstName()), p.lastName().stream()))
            .map(Forgetting::word)
            .toList();
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
      mentions.add(new Rows(name, lines));
    }
  }

  private static Pattern word(String text) {
    return Pattern.compile(
        "(?<![\\p{L}\\p{N}_-])" + Pattern.quote(text) + "(?![\\p{L}\\p{N}_-])",
        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }
}
