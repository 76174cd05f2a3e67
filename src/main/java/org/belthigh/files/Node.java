package org.belthigh.files;

import java.util.List;
import java.util.Map;
import org.belthigh.model.Origin;

/** A piece of a YAML file that remembers where it stood. */
public sealed interface Node {
  /** Line and column of its first character. */
  Origin origin();

  /** How a message names what was found: the text itself, "a list" or "a group of keys". */
  String shown();

  /** One value, as written. */
  record Scalar(String text, Origin origin) implements Node {
    private static final int LONGEST = 60;

    @Override
    public String shown() {
      return text.isEmpty()
          ? "nothing"
          : "'" + (text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text) + "'";
    }
  }

  /** A list. */
  record Items(List<Node> items, Origin origin) implements Node {
    public Items {
      items = List.copyOf(items);
    }

    @Override
    public String shown() {
      return "a list";
    }
  }

  /**
   * Keys with their values, in file order.
   *
   * @param keys where each key stood
   */
  record Entries(Map<String, Node> values, Map<String, Origin> keys, Origin origin)
      implements Node {
    @Override
    public String shown() {
      return "a group of keys";
    }
  }
}
