package org.belthigh.handout.kit;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The faces as embedded, subsetted fonts of one document. */
final class Fonts {
  private final Map<Face, PDType0Font> embedded = new HashMap<>();

  Fonts(PDDocument document) throws IOException {
    for (Face face : Face.ALL) {
      embedded.put(face, PDType0Font.load(document, face.font(), true));
    }
  }

  PDType0Font of(Face face) {
    return embedded.get(face);
  }
}
