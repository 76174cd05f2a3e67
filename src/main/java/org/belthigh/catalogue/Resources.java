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
import java.util.function.Predicate;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/**
 * The YAML files that travel in the jar. They are listed from the jar (or the class folder) itself,
 * so that no list of them has to be kept by hand.
 */
final class Resources {
  private static final List<String> FOLDERS = List.of("rules/", "curricula/");

  private Resources() {}

  /** The text of every file, by its path with forward slashes, in alphabetical order. */
  static SortedMap<String, String> all() {
    Predicate<String> ours = name -> FOLDERS.stream().anyMatch(name::startsWith);
    SortedMap<String, String> texts = new TreeMap<>();
    for (String name : names()) {
      if (ours.test(name) && name.endsWith(".yaml")) {
        texts.put(name, text(name));
      }
    }
    return Collections.unmodifiableSortedMap(texts);
  }

  private static List<String> names() {
    Path home = home();
    try {
      return Files.isDirectory(home) ? inFolder(home) : inJar(home);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path home() {
    try {
      return Path.of(Resources.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException("The program does not know where it lies", e);
    }
  }

  private static List<String> inFolder(Path home) throws IOException {
    try (Stream<Path> files = Files.walk(home)) {
      return files.map(f -> home.relativize(f).toString().replace('\\', '/')).toList();
    }
  }

  private static List<String> inJar(Path home) throws IOException {
    try (JarFile jar = new JarFile(home.toFile())) {
      return jar.stream().map(entry -> entry.getName()).toList();
    }
  }

  private static String text(String name) {
    try (InputStream in = Resources.class.getClassLoader().getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
