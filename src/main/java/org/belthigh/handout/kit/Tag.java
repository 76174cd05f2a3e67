package org.belthigh.handout.kit;

import java.util.Locale;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;

/** An element of the structure tree; children and content stand in reading order. */
final class Tag {
  private final String type;
  private final COSDictionary element = new COSDictionary();
  private COSBase onlyKid;
  private COSArray kids;

  Tag(String type) {
    this.type = type;
    element.setItem(COSName.TYPE, Names.of("StructElem"));
    element.setItem(COSName.S, Names.of(type));
  }

  /** A new last child. */
  Tag child(String childType) {
    Tag child = new Tag(childType);
    adopt(child);
    return child;
  }

  /** Takes an element that has no parent yet as the last child. */
  void adopt(Tag child) {
    child.element.setItem(COSName.P, element);
    addKid(child.element);
  }

  /** A check box on paper, as a print field that stands for {@code alternate}. */
  Tag checkBox(String alternate) {
    Tag box = child("Form").alternate(alternate);
    COSDictionary attributes = attributes("PrintField");
    attributes.setItem(Names.of("Role"), Names.of("cb"));
    attributes.setItem(Names.of("checked"), Names.of("off"));
    attributes.setString(Names.of("Desc"), alternate);
    box.element.setItem(COSName.A, attributes);
    return box;
  }

  /** A line to write on, as a print field. */
  Tag writingLine(String alternate) {
    Tag line = child("Form").alternate(alternate);
    COSDictionary attributes = attributes("PrintField");
    attributes.setItem(Names.of("Role"), Names.of("tv"));
    attributes.setString(Names.of("Desc"), alternate);
    line.element.setItem(COSName.A, attributes);
    return line;
  }

  /** A header cell for its {@code Column} or its {@code Row}. */
  Tag headerCell(String scope) {
    Tag cell = child("TH");
    COSDictionary attributes = attributes("Table");
    attributes.setItem(Names.of("Scope"), Names.of(scope));
    cell.element.setItem(COSName.A, attributes);
    return cell;
  }

  /** A data cell, or a header cell, that runs over several columns. */
  Tag spanning(int columns) {
    if (columns > 1) {
      COSDictionary attributes = element.getCOSDictionary(COSName.A);
      if (attributes == null) {
        attributes = attributes("Table");
        element.setItem(COSName.A, attributes);
      }
      attributes.setInt("ColSpan", columns);
    }
    return this;
  }

  /** A list whose labels are {@code Disc}, {@code Decimal} or {@code None}. */
  Tag list(String numbering) {
    Tag list = child("L");
    COSDictionary attributes = attributes("List");
    attributes.setItem(Names.of("ListNumbering"), Names.of(numbering));
    list.element.setItem(COSName.A, attributes);
    return list;
  }

  Tag alternate(String text) {
    if (text.isBlank()) {
      throw new IllegalArgumentException(
          "alternate text of a " + type + " is blank; it must say what the drawing says.");
    }
    element.setString(COSName.ALT, text);
    return this;
  }

  Tag language(Locale language) {
    element.setString(COSName.LANG, language.toLanguageTag());
    return this;
  }

  Tag title(String title) {
    element.setString(COSName.T, title);
    return this;
  }

  /** The place of a figure on its page, in PDF coordinates. */
  void boundingBox(double left, double bottom, double right, double top) {
    COSDictionary attributes = attributes("Layout");
    COSArray box = new COSArray();
    for (double edge : new double[] {left, bottom, right, top}) {
      box.add(new COSFloat(Math.round(edge * 100) / 100f));
    }
    attributes.setItem(COSName.BBOX, box);
    attributes.setItem(Names.of("Placement"), Names.of("Block"));
    element.setItem(COSName.A, attributes);
  }

  /** Adds marked content {@code id} of {@code page}. */
  void claim(COSDictionary page, int id) {
    if (element.getItem(COSName.PG) == null) {
      element.setItem(COSName.PG, page);
    }
    if (element.getCOSDictionary(COSName.PG) == page) {
      addKid(COSInteger.get(id));
    } else {
      COSDictionary reference = new COSDictionary();
      reference.setDirect(true);
      reference.setItem(COSName.TYPE, Names.of("MCR"));
      reference.setItem(COSName.PG, page);
      reference.setInt(COSName.MCID, id);
      addKid(reference);
    }
  }

  String type() {
    return type;
  }

  COSDictionary element() {
    return element;
  }

  /** One kid stands by itself, more of them in an array: most elements have one. */
  private void addKid(COSBase kid) {
    if (onlyKid == null) {
      onlyKid = kid;
      element.setItem(COSName.K, kid);
      return;
    }
    if (kids == null) {
      kids = new COSArray();
      kids.add(onlyKid);
      element.setItem(COSName.K, kids);
    }
    kids.add(kid);
  }

  private static COSDictionary attributes(String owner) {
    COSDictionary attributes = new COSDictionary();
    attributes.setDirect(true);
    attributes.setItem(COSName.O, Names.of(owner));
    return attributes;
  }
}
