package org.belthigh.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/** Tells whether bytes are the same as before: their SHA-256, in 64 lower-case hex digits. */
final class Fingerprint {
  private final MessageDigest digest;

  Fingerprint() {
    try {
      digest = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java has SHA-256", e);
    }
  }

  /** That of {@code bytes} alone. */
  static String of(byte[] bytes) {
    Fingerprint print = new Fingerprint();
    print.digest.update(bytes);
    return print.text();
  }

  /** That of a file; empty where it cannot be read. */
  static Optional<String> of(Path file) {
    try {
      return Optional.of(of(Files.readAllBytes(file)));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Takes one more part in; where one part ends and the next begins counts too. */
  Fingerprint with(byte[] part) {
    digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(0, part.length));
    digest.update(part);
    return this;
  }

  /** The same for a text. */
  Fingerprint with(String part) {
    return with(part.getBytes(StandardCharsets.UTF_8));
  }

  /** The digits of all that was taken in; only once. */
  String text() {
    return HexFormat.of().formatHex(digest.digest());
  }
}
