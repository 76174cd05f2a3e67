package org.belthigh.sending;

import java.nio.charset.StandardCharsets;

/**
 * The lines of an iCalendar file: CR LF at their ends, folded at 75 octets, text escaped.
 *
 * <p>Source: RFC 5545, sections 3.1 and 3.3.11.
 */
final class IcsText {
  private static final int LONGEST = 75;

  private final StringBuilder text = new StringBuilder();

  /** A line whose value stands as it is, such as a date. */
  IcsText line(String name, String value) {
    int octets = 0;
    String whole = name + ":" + value;
    for (int at = 0; at < whole.length(); ) {
      int c = whole.codePointAt(at);
      int size = Character.toString(c).getBytes(StandardCharsets.UTF_8).length;
      if (octets + size > LONGEST) {
        text.append("\r\n ");
        octets = 1;
      }
      text.appendCodePoint(c);
      octets += size;
      at += Character.charCount(c);
    }
    text.append("\r\n");
    return this;
  }

  /** A line of text for people. */
  IcsText words(String name, String value) {
    return line(
        name,
        value
            .replace("\\", "\\\\")
            .replace(";", "\\;")
            .replace(",", "\\,")
            .replace("\r", "")
            .replace("\n", "\\n"));
  }

  byte[] bytes() {
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
