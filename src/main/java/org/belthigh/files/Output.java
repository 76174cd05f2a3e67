package org.belthigh.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A set of files that is written beside its folder and moved in place when it is complete, each
 * file whole: a reader finds the old one or the new one, never half of one. What another program
 * put into the folder stays.
 */
public final class Output implements AutoCloseable {
  private final Path folder;
  private final Path beside;
  private final Set<String> paths = new LinkedHashSet<>();

  private Output(Path folder, Path beside) {
    this.folder = folder;
    this.beside = beside;
  }

  /**
   * An output into {@code folder}, which need not be there yet.
   *
   * @throws IOException if nothing can be written beside it
   */
  public static Output into(Path folder) throws IOException {
    Path whole = folder.toAbsolutePath().normalize();
    Path parent = whole.getParent();
    if (parent == null || Files.isRegularFile(whole)) {
      throw new IOException("'" + folder + "' is not a folder that can be written");
    }
    Files.createDirectories(parent);
    return new Output(whole, Files.createTempDirectory(parent, ".belthigh-"));
  }

  /**
   * Keeps a file for {@link #commit}.
   *
   * @param path relative to the folder, with forward slashes; it may not lead out of it
   */
  public void put(String path, byte[] bytes) {
    Path target = beside.resolve(path).normalize();
    if (!target.startsWith(beside) || target.equals(beside)) {
      throw new IllegalArgumentException("The path '" + path + "' leads out of the output folder");
    }
    try {
      Files.createDirectories(target.getParent());
      Files.write(target, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    paths.add(path);
  }

  /** How many files were put. */
  public int files() {
    return paths.size();
  }

  /** Moves every file in place. */
  public void commit() throws IOException {
    for (String path : paths) {
      Path target = folder.resolve(path);
      Files.createDirectories(target.getParent());
      Files.move(
          beside.resolve(path),
          target,
          StandardCopyOption.REPLACE_EXISTING,
          StandardCopyOption.ATOMIC_MOVE);
    }
  }

  /** Takes away what was not moved. */
  @Override
  public void close() throws IOException {
    if (!Files.exists(beside)) {
      return;
    }
    try (Stream<Path> left = Files.walk(beside)) {
      List<Path> deepestFirst = left.sorted(Comparator.reverseOrder()).toList();
      for (Path path : deepestFirst) {
        Files.delete(path);
      }
    }
  }
}
