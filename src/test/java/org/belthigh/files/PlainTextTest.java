package org.belthigh.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlainTextTest {
  private static final String NAME = "Peña, Ñandú";

  @ParameterizedTest
  @ValueSource(strings = {"UTF-8", "windows-1252"})
  void letters_with_accents_are_told_by_their_bytes(String charset) {
    PlainText plain = PlainText.of(NAME.getBytes(Charset.forName(charset))).orElseThrow();

    assertThat(plain.text()).isEqualTo(NAME);
    assertThat(plain.charset()).isEqualTo(Charset.forName(charset));
  }

  @Test
  void a_mark_is_no_part_of_the_text() {
    for (Charset charset :
        new Charset[] {
          StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE
        }) {
      assertThat(PlainText.of(("\uFEFF" + NAME).getBytes(charset)).orElseThrow().text())
          .isEqualTo(NAME);
    }
  }

  @Test
  void noise_is_no_text() {
    assertThat(PlainText.of(new byte[] {'a', 0})).isEmpty();
    assertThat(PlainText.of(new byte[] {(byte) 0xF1, 7})).isEmpty();
    assertThat(PlainText.of(new byte[] {(byte) 0x81})).isEmpty();
    assertThat(PlainText.of(new byte[] {(byte) 0xFF, (byte) 0xFE, 'a'})).isEmpty();
  }

  @Test
  void hidden_characters_are_found_and_letters_of_all_scripts_are_not() {
    assertThat(Blanks.hidden("Ñandú 王 \uD83D\uDE00 O’Neil\n")).isEqualTo(-1);
    assertThat(Blanks.hidden("a\u202Eb")).isEqualTo(0x202E);
    assertThat(Blanks.hidden("a\u0007")).isEqualTo(7);
    assertThat(Blanks.hidden("\uD83D")).isEqualTo(0xD83D);
    assertThat(Blanks.strip("\u00A0\uFEFF a b \u200B")).isEqualTo("a b");
  }
}
