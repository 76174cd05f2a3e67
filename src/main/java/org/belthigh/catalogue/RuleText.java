package org.belthigh.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A rule as it is written in {@code rules/<pack>/<pack>.drl}.
 *
 * @param says the words above it; empty where there are none
 * @param conditions one text each, white space closed up
 * @param drl the rule from its first line to {@code end}
 */
public record RuleText(String says, List<String> conditions, String drl) {
  private static final Pattern RULE =
      Pattern.compile(
          "(?ms)^((?://[^\\n]*\\n)*)(rule \"([^\"]+)\"\\nwhen\\n(.*?)^then\\n.*?^end)$");

  private static final String CONDITION = "(?m)^ {4}(?=[^ )])";

  public RuleText {
    conditions = List.copyOf(conditions);
  }

  /**
   * The text of {@code rule}.
   *
   * @throws IllegalStateException if the file of its pack is missing or has no such rule
   */
  public static RuleText of(RuleEntry rule) {
    Matcher found = RULE.matcher(pack(rule.pack()));
    while (found.find()) {
      if (found.group(3).equals(rule.id())) {
        return new RuleText(
            found.group(1).replaceAll("(?m)^// ?", "").replace('\n', ' ').strip(),
            conditions(found.group(4)),
            found.group(2));
      }
    }
    throw new IllegalStateException(
        "rules/" + rule.pack() + "/" + rule.pack() + ".drl has no rule " + rule.id());
  }

  /** Every id in the file of a pack, in its order. */
  static List<String> ids(String pack) {
    List<String> ids = new ArrayList<>();
    Matcher found = RULE.matcher(pack(pack));
    while (found.find()) {
      ids.add(found.group(3));
    }
    return ids;
  }

  private static List<String> conditions(String when) {
    return Pattern.compile(CONDITION)
        .splitAsStream(when)
        .map(text -> text.strip().replaceAll("\\s+", " "))
        .filter(text -> !text.isEmpty())
        .collect(Collectors.toList());
  }

  /** What the rule looks for and matches no fact by: its conditions with not, exists and sums. */
  public List<String> lookedFor() {
    return conditions.stream().filter(c -> c.matches("(?s)(not|exists|accumulate)\\b.*")).toList();
  }

  private static String pack(String pack) {
    String name = "rules/" + pack + "/" + pack + ".drl";
    try (InputStream in = RuleText.class.getClassLoader().getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing: the jar was not built whole");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
