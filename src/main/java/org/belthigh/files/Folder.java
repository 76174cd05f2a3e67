package org.belthigh.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/**
 * A folder that a user named, and the text files in it.
 *
 * <p>Never follows a link out of the folder, and never reads more than {@link #MOST_BYTES} of one
 * file.
 */
public final class Folder {
  /** The largest file that is read, which takes some thirty times as much memory: 16 MiB. */
  public static final long MOST_BYTES = 16L << 20;

  /** The largest YAML file, which people type by hand: 1 MiB. */
  private static final long MOST_BYTES_YAML = 1L << 20;

  private final Path path;

  /** Files that are read from elsewhere, by the name that they stand in for. */
  private final Map<String, Path> elsewhere;

  private Folder(Path path, Map<String, Path> elsewhere) {
    this.path = path;
    this.elsewhere = elsewhere;
  }

  /** The folder at {@code path}, named in messages just as it is given here. */
  public static Folder of(Path path) {
    return new Folder(path, Map.of());
  }

  /** The same folder with another file, which the user named too, in place of {@code name}. */
  public Folder with(String name, Path file) {
    return new Folder(path, Map.of(name, file));
  }

  private Path at(String name) {
    return elsewhere.getOrDefault(name, path.resolve(name));
  }

  /** Whether there is such a folder and it can be read. */
  public boolean readable() {
    return Files.isDirectory(path) && Files.isReadable(path);
  }

  /** How messages name {@code name} in this folder: {@code demo-players/logs/march.csv}. */
  public String shown(String name) {
    return at(name).toString().replace('\\', '/');
  }

  /** How messages name the folder itself. */
  public String shown() {
    return path.toString().replace('\\', '/');
  }

  /** Whether there is a file of that name. */
  public boolean has(String name) {
    return Files.exists(at(name), LinkOption.NOFOLLOW_LINKS);
  }

  /**
   * Names of the files in {@code subfolder}, sorted, hidden ones left out; none where it is not.
   */
  public List<String> names(String subfolder) {
    Path where = path.resolve(subfolder);
    if (!Files.isDirectory(where)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(where)) {
      return files
          .filter(f -> !Files.isDirectory(f))
          .map(f -> f.getFileName().toString())
          .filter(n -> !n.startsWith(".") && !n.startsWith("~$"))
          .sorted()
          .map(n -> subfolder.isEmpty() ? n : subfolder + "/" + n)
          .toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  /** Whether that is a folder itself. */
  public boolean isFolder(String name) {
    return Files.isDirectory(at(name));
  }

  /**
   * Names of all that stands right in {@code subfolder}, folders too, sorted, hidden ones left out;
   * empty where it cannot be listed.
   */
  public Optional<List<String>> entries(String subfolder) {
    try (Stream<Path> all = Files.list(path.resolve(subfolder))) {
      return Optional.of(
          all.map(f -> f.getFileName().toString())
              .filter(n -> !n.startsWith(".") && !n.startsWith("~$"))
              .sorted()
              .map(n -> subfolder.isEmpty() ? n : subfolder + "/" + n)
              .toList());
    } catch (IOException | UncheckedIOException e) {
      return Optional.empty();
    }
  }

  /**
   * The text of a file, and how its bytes were read; empty, with a fault told to {@code problems},
   * where it cannot be read, lies outside the folder, is too large, or is no text.
   */
  public Optional<PlainText> plain(String name, Consumer<Problem> problems) {
    Optional<byte[]> bytes = bytes(name, problems);
    Optional<PlainText> text = bytes.flatMap(PlainText::of);
    if (bytes.isPresent() && text.isEmpty()) {
      problems.accept(noText(name, bytes.get()));
    }
    return text;
  }

  /** The text of a file as {@link #plain}, but of UTF-8 alone. */
  public Optional<String> text(String name, Consumer<Problem> problems) {
    Optional<byte[]> bytes = bytes(name, problems);
    Optional<String> text =
        bytes
            .flatMap(PlainText::of)
            .filter(plain -> plain.charset().equals(StandardCharsets.UTF_8))
            .map(PlainText::text);
    if (bytes.isPresent() && text.isEmpty()) {
      problems.accept(noText(name, bytes.get()));
    }
    return text;
  }

  private Problem noText(String name, byte[] bytes) {
    boolean zipped = bytes.length > 1 && bytes[0] == 'P' && bytes[1] == 'K';
    return zipped
        ? fault(
            name,
            "the file is a workbook under another name",
            "it must be plain text in UTF-8",
            "Maybe its name should end in .xlsx; or save it from the spreadsheet as \"CSV UTF-8\".")
        : fault(
            name,
            "the file is not UTF-8 text",
            "it must be plain text in UTF-8",
            name.endsWith(".csv")
                ? "Maybe save it again from the spreadsheet as \"CSV UTF-8\"."
                : "Maybe it is a file of another kind, or it was damaged.");
  }

  /** The bytes of a file; empty, with a fault told to {@code problems}, as {@link #text}. */
  public Optional<byte[]> bytes(String name, Consumer<Problem> problems) {
    try {
      return whole(name, problems);
    } catch (IOException e) {
      problems.accept(
          fault(
              name,
              "the file cannot be read",
              "it must be a readable file",
              "Maybe it is open in another program, or its permissions forbid it."));
      return Optional.empty();
    }
  }

  private Optional<byte[]> whole(String name, Consumer<Problem> problems) throws IOException {
    Path real = at(name).toRealPath();
    if (!elsewhere.containsKey(name) && !real.startsWith(path.toRealPath())) {
      problems.accept(
          fault(
              name,
              "it is a link to a file outside the folder",
              "every file must lie in the folder",
              "Maybe copy the file itself into the folder."));
      return Optional.empty();
    }
    if (!Files.isRegularFile(real) && !Files.isDirectory(real)) {
      problems.accept(
          fault(
              name,
              "this is a device or a pipe, no file",
              "it must be a plain file",
              "Maybe a file of that name should stand here: move this one away."));
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(real)) {
      long most = most(name);
      byte[] bytes = in.readNBytes((int) most + 1);
      if (bytes.length > most) {
        problems.accept(
            fault(
                name,
                "the file is larger than " + (most >> 20) + " MiB",
                "a file of this kind must be at most " + (most >> 20) + " MiB",
                "Maybe split it into one file a month, or a quote is missing at a value's end."));
        return Optional.empty();
      }
      return Optional.of(bytes);
    }
  }

  private static long most(String name) {
    return name.endsWith(".yaml") || name.endsWith(".yml") ? MOST_BYTES_YAML : MOST_BYTES;
  }

  private Problem fault(String name, String found, String allowed, String maybe) {
    return Problem.fault(Origin.of(shown(name)), "", found, allowed, maybe);
  }
}
