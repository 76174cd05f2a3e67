package org.belthigh.handout.kit;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.pdfbox.cos.COSName;

/**
 * The few names that tags are made of. PDFBox keeps its names too, but by weak references that it
 * has a cleaner for, and a page asks for them a thousand times.
 */
final class Names {
  private static final Map<String, COSName> KNOWN = new ConcurrentHashMap<>();

  private Names() {}

  /** The name {@code name}, which comes from our own code and no file. */
  static COSName of(String name) {
    return KNOWN.computeIfAbsent(name, COSName::getPDFName);
  }
}
