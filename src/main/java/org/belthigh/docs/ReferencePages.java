package org.belthigh.docs;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.belthigh.catalogue.Catalogue;

/** All pages that are written from the catalogue. Same catalogue, same bytes. */
public final class ReferencePages {
  private ReferencePages() {}

  /** The text of each page, in Markdown, by file name. */
  public static SortedMap<String, String> of(Catalogue catalogue) {
    SortedMap<String, String> pages = new TreeMap<>();
    pages.put("drills.md", new DrillsPage(catalogue, "en").text());
    pages.put("es/ejercicios.md", new DrillsPage(catalogue, "es").text());
    pages.put("rules.md", new RulesPage(catalogue).text());
    pages.put("parameters.md", new ParametersPage(catalogue).text());
    pages.put("sources.md", new SourcesPage(catalogue).text());
    return Collections.unmodifiableSortedMap(pages);
  }
}
