package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.Set;
import java.util.TreeMap;
import org.belthigh.handout.Filed;
import org.belthigh.handout.Print;

/** The list of the PDFs that one run wrote; it keeps their sizes and digests, not their bytes. */
final class PrintedFiles {
  /** The key of {@code plan.json} that holds it. */
  static final String KEY = "files";

  /** The key that holds the pictures of first pages. */
  static final String PICTURES = "pictures";

  private final TreeMap<String, ObjectNode> files = new TreeMap<>();
  private final TreeMap<String, ObjectNode> pictures = new TreeMap<>();

  /** Notes a finished print. */
  void note(Filed filed, byte[] pdf) {
    files.put(filed.path(), node(filed, filed.path(), pdf));
  }

  /** Notes the picture of a print, which lies beside it. */
  void picture(Filed filed, String path, byte[] png) {
    pictures.put(path, node(filed, path, png));
  }

  private static ObjectNode node(Filed filed, String path, byte[] pdf) {
    return JsonNodeFactory.instance
        .objectNode()
        .put("path", path)
        .put("bytes", pdf.length)
        .put("sha256", Fingerprint.of(pdf))
        .put("sheet", filed.sheet())
        .put("group", filed.group())
        .put("player", filed.player().orElse(null))
        .put("date", filed.date().map(LocalDate::toString).orElse(null));
  }

  /** Puts what was asked for and the list into {@code plan}, in path order. */
  void into(ObjectNode plan, Set<Print> prints) {
    ArrayNode asked = plan.putArray("prints");
    prints.stream().sorted().forEach(print -> asked.add(print.id()));
    ArrayNode list = plan.putArray(KEY);
    files.values().forEach(list::add);
    ArrayNode seen = plan.putArray(PICTURES);
    pictures.values().forEach(seen::add);
  }
}
