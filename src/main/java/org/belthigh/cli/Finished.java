package org.belthigh.cli;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.belthigh.files.Folder;
import org.belthigh.files.Output;
import org.belthigh.history.History;

/**
 * Which clubs of a league are finished: {@code OUT/.finished/CLUB.json}, written after the club's
 * last file lies in place and taken away before the club is planned anew. It holds fingerprints of
 * what went in and of each file that came out, so that a club counts as finished only while both
 * are as they were. May be shared by threads.
 */
final class Finished {
  private static final String FOLDER = ".finished";
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Path out;

  Finished(Path out) {
    this.out = out;
  }

  /**
   * All that a club's prints depend on: this version, the order, every file of the club folder that
   * may be read. A file that is not read counts too, since it may be remarked on.
   */
  static String input(Path club, PlanOrder order) {
    Folder folder = Folder.of(club);
    Fingerprint print = new Fingerprint().with(Belthigh.VERSION).with(order.toString());
    Stream.of(
            entered(folder),
            logs(folder),
            order.history() ? History.files(club, order.from()) : Stream.<String>empty().toList())
        .flatMap(names -> names.stream())
        .forEach(
            name -> print.with(name).with(folder.bytes(name, problem -> {}).orElse(new byte[0])));
    return print.text();
  }

  /** What people put into the club folder, and not what runs leave there. */
  private static List<String> entered(Folder folder) {
    return folder.entries("").orElse(List.of()).stream()
        .filter(name -> !name.startsWith(".") && !name.equals("history"))
        .toList();
  }

  private static List<String> logs(Folder folder) {
    return folder.entries("").orElse(List.of()).stream()
        .filter(name -> name.equalsIgnoreCase("logs"))
        .flatMap(name -> folder.entries(name).orElse(List.of()).stream())
        .toList();
  }

  /** The exit status with which the club was finished; empty where it must be planned. */
  Optional<Integer> status(String club, String input) {
    try {
      JsonNode kept = JSON.readTree(file(club).toFile());
      Map<String, String> files =
          JSON.convertValue(kept.path("files"), new TypeReference<TreeMap<String, String>>() {});
      boolean same =
          input.equals(kept.path("input").asText())
              && kept.path("status").isInt()
              && files != null
              && files.entrySet().stream().allMatch(f -> lies(club, f.getKey(), f.getValue()));
      return same ? Optional.of(kept.get("status").intValue()) : Optional.empty();
    } catch (IOException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private boolean lies(String club, String path, String fingerprint) {
    return Fingerprint.of(out.resolve(club).resolve(path)).equals(Optional.ofNullable(fingerprint));
  }

  /** The club is about to be planned anew: until it is, its files may be old and new. */
  void forget(String club) throws IOException {
    Files.deleteIfExists(file(club));
  }

  /**
   * The club is finished.
   *
   * @param files each file of it, by its path in the club's output, with its fingerprint
   * @throws org.belthigh.files.Unwritable if that cannot be written down
   */
  synchronized void note(String club, String input, int status, Map<String, String> files) {
    ObjectNode kept = JSON.createObjectNode();
    kept.put("club", club).put("version", Belthigh.VERSION);
    kept.put("input", input).put("status", status);
    ObjectNode all = kept.putObject("files");
    files.forEach(all::put);
    try (Output output = Output.into(out.resolve(FOLDER))) {
      output.put(club + ".json", Json.text(kept).getBytes(StandardCharsets.UTF_8));
      output.commit();
    }
  }

  private Path file(String club) {
    return out.resolve(FOLDER).resolve(club + ".json");
  }
}
