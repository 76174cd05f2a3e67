package org.belthigh.files;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * Reads YAML into {@link Node}s. Every scalar stays text as written, so that the two YAML versions
 * cannot read a date or a "no" differently; anchors and aliases are refused, so that no file can
 * grow while it is read.
 */
public final class Yaml {
  private static final String SIMPLE_KEY = "while scanning a simple key";
  private static final int DEEPEST = 40;
  private static final int LONGEST = 10_000;
  private static final YAMLFactory FACTORY =
      YAMLFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(DEEPEST)
                  .maxStringLength(100_000)
                  .build())
          .build();

  private final String file;
  private final YAMLParser parser;
  private final List<Problem> problems;

  private Yaml(String file, YAMLParser parser, List<Problem> problems) {
    this.file = file;
    this.parser = parser;
    this.problems = problems;
  }

  /**
   * The file's one document.
   *
   * @param file how messages name it
   * @param problems receives what is wrong
   * @return empty where the text is empty or no YAML
   */
  public static Optional<Node> read(String file, String text, List<Problem> problems) {
    if (text.isBlank()) {
      problems.add(
          Problem.fault(
              Origin.of(file),
              "",
              "the file is empty",
              "it must hold the keys of the documentation",
              "Maybe it was saved before anything was typed."));
      return Optional.empty();
    }
    try (YAMLParser parser = FACTORY.createParser(text)) {
      Yaml reader = new Yaml(file, parser, problems);
      parser.nextToken();
      Node node = reader.node();
      if (parser.nextToken() != null) {
        problems.add(
            Problem.fault(
                reader.here(),
                "",
                "a second document begins here",
                "a file must hold one",
                "Maybe a line --- is one too many."));
      }
      return Optional.of(node);
    } catch (StreamConstraintsException e) {
      problems.add(
          Problem.fault(
              Origin.of(file),
              "",
              "this is nested too deep or a value is too long",
              "groups must be nested at most " + DEEPEST + " deep",
              "Maybe the blanks at the line's start grow where they should not."));
      return Optional.empty();
    } catch (JsonProcessingException e) {
      problems.add(
          Problem.fault(
              slip(file, e),
              "",
              "this is not YAML (" + firstLine(why(e)) + ")",
              "a key, a colon, a blank and a value belong on each line",
              "Maybe a colon, a quote or the blanks at the line's start are off."));
      return Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Where the slip is: for a key without its colon where the key begins, not where the parser gave
   * up looking for it.
   */
  private static Origin slip(String file, JsonProcessingException e) {
    if (e.getCause() instanceof MarkedYAMLException marked && marked.getProblemMark() != null) {
      boolean key = SIMPLE_KEY.equals(marked.getContext()) && marked.getContextMark() != null;
      Mark mark = key ? marked.getContextMark() : marked.getProblemMark();
      return new Origin(file, mark.getLine() + 1, mark.getColumn() + 1);
    }
    return at(file, e.getLocation());
  }

  private static String why(JsonProcessingException e) {
    return e.getCause() instanceof MarkedYAMLException marked && marked.getProblem() != null
        ? marked.getProblem()
        : e.getOriginalMessage();
  }

  private static String firstLine(String message) {
    return message.lines().findFirst().orElse("").strip();
  }

  private static Origin at(String file, JsonLocation location) {
    return location == null
        ? Origin.of(file)
        : new Origin(file, Math.max(0, location.getLineNr()), Math.max(0, location.getColumnNr()));
  }

  private Origin here() {
    return at(file, parser.currentTokenLocation());
  }

  private Node node() throws IOException {
    Origin origin = here();
    JsonToken token = parser.currentToken();
    if (token == null) {
      return new Node.Scalar("", origin);
    }
    if (parser.isCurrentAlias()) {
      problems.add(
          Problem.fault(
              origin,
              "",
              "an alias (*) stands here",
              "each value must be written out",
              "Write the value again in place of the alias."));
      return new Node.Scalar("", origin);
    }
    return switch (token) {
      case START_OBJECT -> entries(tagless(origin));
      case START_ARRAY -> items(tagless(origin));
      case VALUE_NULL -> new Node.Scalar("", origin);
      default -> scalar(parser.getText(), origin);
    };
  }

  /** {@code origin}; a fault where a tag stands before a list or a group. */
  private Origin tagless(Origin origin) throws IOException {
    if (parser.getTypeId() != null) {
      problems.add(
          Problem.fault(
              origin,
              "",
              "a tag (!) stands here",
              "a list or a group of keys must be plain",
              "Take the tag out."));
    }
    return origin;
  }

  private Node scalar(String text, Origin origin) throws IOException {
    if (text.length() > LONGEST || parser.getTypeId() != null) {
      boolean tagged = parser.getTypeId() != null;
      problems.add(
          Problem.fault(
              origin,
              "",
              tagged ? "a tag (!) stands here" : "the value is longer than " + LONGEST + " letters",
              "a value must be plain text",
              tagged ? "Take the tag out." : "Maybe a quote is missing at its end."));
    }
    int hidden = Blanks.hidden(text);
    if (hidden >= 0) {
      problems.add(
          Problem.fault(
              origin,
              "",
              String.format(Locale.ROOT, "the hidden character U+%04X stands here", hidden),
              "a value must hold only what can be seen",
              "Maybe type the value anew."));
    }
    return new Node.Scalar(text, origin);
  }

  private Node entries(Origin origin) throws IOException {
    Map<String, Node> values = new LinkedHashMap<>();
    Map<String, Origin> keys = new LinkedHashMap<>();
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String key = parser.currentName();
      Origin keyOrigin = here();
      parser.nextToken();
      Node value = node();
      if (values.putIfAbsent(key, value) == null) {
        keys.put(key, keyOrigin);
      } else {
        problems.add(
            Problem.fault(
                keyOrigin,
                key,
                "the key stands here again, first on line " + keys.get(key).line(),
                "each key may stand once",
                "Keep one of the two."));
      }
    }
    return new Node.Entries(values, keys, origin);
  }

  private Node items(Origin origin) throws IOException {
    List<Node> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(node());
    }
    return new Node.Items(items, origin);
  }
}
