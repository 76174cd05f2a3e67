package org.belthigh.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import java.io.PrintWriter;
import java.io.UncheckedIOException;

/** JSON as we print it: two blanks of indent, line feeds on every system. */
final class Json {
  private static final ObjectWriter WRITER =
      new ObjectMapper()
          .writer(
              new DefaultPrettyPrinter()
                  .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                  .withArrayIndenter(new DefaultIndenter("  ", "\n")));

  private Json() {}

  static String text(JsonNode node) {
    try {
      return WRITER.writeValueAsString(node) + "\n";
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  static void print(JsonNode node, PrintWriter out) {
    out.print(text(node));
  }
}
