package org.belthigh.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The YAML files that travel in the jar. They are listed from the class folder, or by a list that
 * the build makes of it: a jar of all libraries has 15,000 entries, too many to be looked through
 * at each start.
 */
final class Resources {
  private static final List<String> FOLDERS = List.of("rules/", "curricula/");
  private static final String LIST = "catalogue.list";

  private Resources() {}

  /** The text of every file, by its path with forward slashes, in alphabetical order. */
  static SortedMap<String, String> all() {
    Path home = home();
    SortedMap<String, String> texts = new TreeMap<>();
    for (String name : Files.isDirectory(home) ? inFolder(home) : listed()) {
      texts.put(name, text(name));
    }
    return Collections.unmodifiableSortedMap(texts);
  }

  private static Path home() {
    try {
      return Path.of(Resources.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException("The program does not know where it lies", e);
    }
  }

  private static List<String> inFolder(Path home) {
    try (Stream<Path> files = Files.walk(home)) {
      return files
          .map(f -> home.relativize(f).toString().replace('\\', '/'))
          .filter(name -> FOLDERS.stream().anyMatch(name::startsWith) && name.endsWith(".yaml"))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The list that the build made. */
  static List<String> listed() {
    return text(LIST).lines().toList();
  }

  private static String text(String name) {
    try (InputStream in = Resources.class.getClassLoader().getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing: the jar was not built whole");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
