package org.belthigh.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.belthigh.audit.Papers;

/** The prints in the folder of a plan; one is read at a time. */
final class PaperFolder implements Papers {
  private static final int DEEPEST = 4;

  private final Path folder;

  PaperFolder(Path folder) {
    this.folder = folder;
  }

  @Override
  public SortedSet<String> paths() {
    try (Stream<Path> files = Files.walk(folder, DEEPEST)) {
      SortedSet<String> paths = new TreeSet<>();
      files
          .filter(Files::isRegularFile)
          .map(f -> folder.relativize(f).toString().replace('\\', '/'))
          .filter(p -> p.endsWith(".pdf") && !p.startsWith("."))
          .forEach(paths::add);
      return paths;
    } catch (IOException | UncheckedIOException e) {
      return new TreeSet<>();
    }
  }

  @Override
  public Optional<byte[]> bytes(String path) {
    try {
      Path file = folder.resolve(path).normalize();
      return file.startsWith(folder.normalize()) && Files.isRegularFile(file)
          ? Optional.of(Files.readAllBytes(file))
          : Optional.empty();
    } catch (IOException | InvalidPathException e) {
      return Optional.empty();
    }
  }
}
