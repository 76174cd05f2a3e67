package org.belthigh.files;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The text of a file, without a byte-order mark, and how its bytes were read.
 *
 * @param charset UTF-8 unless the bytes say otherwise
 */
public record PlainText(String text, Charset charset) {
  private static final Charset WINDOWS = Charset.forName("windows-1252");
  private static final String MARK = "\uFEFF";

  /**
   * The text that {@code bytes} hold: UTF-8 where they are that, UTF-16 where they begin with its
   * mark, else Windows-1252 as older spreadsheets write it. Empty where they are no text: with NUL
   * in it, or with other control characters and no UTF-8.
   */
  public static Optional<PlainText> of(byte[] bytes) {
    if (startsWith(bytes, 0xFF, 0xFE)) {
      return whole(bytes, StandardCharsets.UTF_16LE).filter(PlainText::isText);
    }
    if (startsWith(bytes, 0xFE, 0xFF)) {
      return whole(bytes, StandardCharsets.UTF_16BE).filter(PlainText::isText);
    }
    return whole(bytes, StandardCharsets.UTF_8)
        .or(() -> whole(bytes, WINDOWS).filter(PlainText::isText))
        .filter(plain -> plain.text.indexOf('\0') < 0);
  }

  private static boolean startsWith(byte[] bytes, int first, int second) {
    return bytes.length > 1 && bytes[0] == (byte) first && bytes[1] == (byte) second;
  }

  private static Optional<PlainText> whole(byte[] bytes, Charset charset) {
    try {
      String text = charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return Optional.of(new PlainText(text.startsWith(MARK) ? text.substring(1) : text, charset));
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }

  /** Whether no control characters but tabs and line ends stand in it, as they would in noise. */
  private static boolean isText(PlainText plain) {
    return plain.text.chars().allMatch(c -> c >= ' ' || c == '\t' || c == '\n' || c == '\r');
  }
}
