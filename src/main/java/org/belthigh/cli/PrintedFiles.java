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

  private final TreeMap<String, ObjectNode> files = new TreeMap<>();

  /** Notes a finished print. */
  void note(Filed filed, byte[] pdf) {
    ObjectNode node =
        JsonNodeFactory.instance
            .objectNode()
            .put("path", filed.path())
            .put("bytes", pdf.length)
            .put("sha256", Fingerprint.of(pdf))
            .put("sheet", filed.sheet())
            .put("group", filed.group())
            .put("player", filed.player().orElse(null))
            .put("date", filed.date().map(LocalDate::toString).orElse(null));
    files.put(filed.path(), node);
  }

  /** Puts what was asked for and the list into {@code plan}, in path order. */
  void into(ObjectNode plan, Set<Print> prints) {
    ArrayNode asked = plan.putArray("prints");
    prints.stream().sorted().forEach(print -> asked.add(print.id()));
    ArrayNode list = plan.putArray(KEY);
    files.values().forEach(list::add);
  }
}
