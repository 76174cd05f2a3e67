package org.belthigh.handout.kit;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;

/** From a page's marked content back to its structure elements; a number tree in leaves of 64. */
final class ParentTree {
  private static final int LEAF = 64;

  private final List<List<Tag>> pages = new ArrayList<>();

  /** Adds the next page's tags by marked-content id; gives the page's key. */
  int add(List<Tag> claimed) {
    pages.add(claimed);
    return pages.size() - 1;
  }

  int size() {
    return pages.size();
  }

  COSDictionary dictionary() {
    COSArray leaves = new COSArray();
    for (int from = 0; from < pages.size(); from += LEAF) {
      leaves.add(leaf(from, Math.min(from + LEAF, pages.size())));
    }
    COSDictionary root = new COSDictionary();
    root.setItem(COSName.KIDS, leaves);
    return root;
  }

  private COSDictionary leaf(int fromInclusive, int toExclusive) {
    COSArray numbers = new COSArray();
    for (int page = fromInclusive; page < toExclusive; page++) {
      COSArray elements = new COSArray();
      pages.get(page).forEach(tag -> elements.add(tag.element()));
      numbers.add(COSInteger.get(page));
      numbers.add(elements);
    }
    COSArray limits = new COSArray();
    limits.add(COSInteger.get(fromInclusive));
    limits.add(COSInteger.get(toExclusive - 1L));
    COSDictionary leaf = new COSDictionary();
    leaf.setItem(COSName.LIMITS, limits);
    leaf.setItem(COSName.NUMS, numbers);
    return leaf;
  }
}
