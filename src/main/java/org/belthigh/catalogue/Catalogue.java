package org.belthigh.catalogue;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Everything we know before a club is read, checked as a whole: every id resolves, every value lies
 * within its bounds, no two values share a date.
 *
 * @param precedence rule ids, the one that wins first
 * @param growth stature for age
 * @param heatTables what to change in a practice by heat
 * @param whoEnds whose word ends which complaint
 */
public record Catalogue(
    Map<String, Source> sources,
    Map<String, Parameter> parameters,
    Map<String, RuleBook> ruleBooks,
    Map<String, RuleEntry> rules,
    List<String> precedence,
    Map<String, Curriculum> curricula,
    Growth growth,
    Map<String, HeatTable> heatTables,
    WhoEnds whoEnds) {
  public Catalogue {
    sources = sorted(sources);
    parameters = sorted(parameters);
    ruleBooks = sorted(ruleBooks);
    rules = sorted(rules);
    precedence = List.copyOf(precedence);
    curricula = sorted(curricula);
    heatTables = sorted(heatTables);
  }

  /** A catalogue without heat tables, in which nobody ends anything. */
  public Catalogue(
      Map<String, Source> sources,
      Map<String, Parameter> parameters,
      Map<String, RuleBook> ruleBooks,
      Map<String, RuleEntry> rules,
      List<String> precedence,
      Map<String, Curriculum> curricula,
      Growth growth) {
    this(
        sources,
        parameters,
        ruleBooks,
        rules,
        precedence,
        curricula,
        growth,
        Map.of(),
        WhoEnds.NOBODY);
  }

  /** The same with one more curriculum. */
  public Catalogue with(Curriculum curriculum) {
    Map<String, Curriculum> all = new TreeMap<>(curricula);
    all.put(curriculum.id(), curriculum);
    return new Catalogue(
        sources, parameters, ruleBooks, rules, precedence, all, growth, heatTables, whoEnds);
  }

  /** The same with another table of who ends what. */
  public Catalogue with(WhoEnds other) {
    return new Catalogue(
        sources, parameters, ruleBooks, rules, precedence, curricula, growth, heatTables, other);
  }

  private static <V> Map<String, V> sorted(Map<String, V> map) {
    return java.util.Collections.unmodifiableMap(new TreeMap<>(map));
  }

  /** The parameter with that id. @throws IllegalArgumentException if there is none */
  public Parameter parameter(String id) {
    return get(parameters, "parameter", id);
  }

  /** The rule book with that id. @throws IllegalArgumentException if there is none */
  public RuleBook ruleBook(String id) {
    return get(ruleBooks, "rule book", id);
  }

  /** Every edition of {@code book}, itself included, the newest first. */
  public List<RuleBook> editions(RuleBook book) {
    return ruleBooks.values().stream()
        .filter(
            b -> b.equals(book) || (book.series().isPresent() && b.series().equals(book.series())))
        .sorted(
            Comparator.comparing((RuleBook b) -> b.effectiveFrom().orElse(LocalDate.MIN))
                .reversed())
        .toList();
  }

  /** The rule entry with that id. @throws IllegalArgumentException if there is none */
  public RuleEntry rule(String id) {
    return get(rules, "rule", id);
  }

  /** The source with that id. @throws IllegalArgumentException if there is none */
  public Source source(String id) {
    return get(sources, "source", id);
  }

  private static <V> V get(Map<String, V> map, String kind, String id) {
    V found = map.get(id);
    if (found == null) {
      throw new IllegalArgumentException("No " + kind + " '" + id + "' in the catalogue");
    }
    return found;
  }
}
