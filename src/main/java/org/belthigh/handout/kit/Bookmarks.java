package org.belthigh.handout.kit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;

/** Bookmarks in a tree; one that only groups others leads to the first of them. */
final class Bookmarks {
  private final PDDocumentOutline outline = new PDDocumentOutline();
  private final Map<List<String>, PDOutlineItem> groups = new HashMap<>();
  private int count;

  void add(List<String> path, PDPage page) {
    PDOutlineNode parent = outline;
    for (int depth = 1; depth < path.size(); depth++) {
      PDOutlineNode above = parent;
      List<String> prefix = path.subList(0, depth);
      parent = groups.computeIfAbsent(prefix, names -> item(above, names, page));
    }
    item(parent, path, page);
  }

  private PDOutlineItem item(PDOutlineNode parent, List<String> path, PDPage page) {
    PDPageFitDestination destination = new PDPageFitDestination();
    destination.setPage(page);
    PDOutlineItem item = new PDOutlineItem();
    item.setTitle(path.get(path.size() - 1));
    item.setDestination(destination);
    parent.addLast(item);
    count++;
    return item;
  }

  int count() {
    return count;
  }

  PDDocumentOutline outline() {
    outline.openNode();
    return outline;
  }
}
