package org.belthigh.catalogue;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.belthigh.files.Fields;
import org.belthigh.files.Node;
import org.belthigh.files.Yaml;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/**
 * Loads and checks the catalogue that travels with the program, and single files for {@code
 * belthigh check}. Every fault of a run is reported; with any fault there is no catalogue at all.
 */
public final class CatalogueLoader {
  private static final Pattern PACK = Pattern.compile("rules/([a-z-]+)/rules\\.yaml");

  private final List<Problem> problems = new ArrayList<>();
  private final Places places = new Places(problems);
  private final Map<String, Parsed> files;
  private final Set<String> used = new HashSet<>();

  private CatalogueLoader(SortedMap<String, String> files) {
    // most of the time that loading takes; files know nothing of each other
    this.files =
        files.entrySet().parallelStream()
            .map(file -> Parsed.of(file.getKey(), file.getValue()))
            .collect(Collectors.toMap(Parsed::file, f -> f, (a, b) -> a, TreeMap::new));
  }

  /** A file's YAML, before anything is made of it. */
  private record Parsed(String file, Optional<Node> node, List<Problem> problems) {
    static Parsed of(String file, String text) {
      List<Problem> problems = new ArrayList<>();
      return new Parsed(file, Yaml.read(file, text, problems), problems);
    }

    /** What is in it; its faults go to {@code to}. */
    Optional<Node> take(List<Problem> to) {
      to.addAll(problems);
      return node;
    }
  }

  /**
   * What was read, or why not.
   *
   * @param value empty where any problem is a fault
   * @param problems sorted by file and line
   */
  public record Result<T>(Optional<T> value, List<Problem> problems) {
    public Result {
      problems = problems.stream().sorted().distinct().toList();
      if (problems.stream().anyMatch(Problem::isFault)) {
        value = Optional.empty();
      }
    }

    /**
     * The value.
     *
     * @throws IllegalStateException with every problem's text, where there is none
     */
    public T orThrow() {
      return value.orElseThrow(
          () ->
              new IllegalStateException(
                  String.join("\n", problems.stream().map(Problem::text).toList())));
    }
  }

  /** The catalogue of {@code rules/} and {@code curricula/} in the jar. */
  public static Result<Catalogue> load() {
    return load(Resources.all());
  }

  /** The catalogue of {@code files}, their texts by path. */
  public static Result<Catalogue> load(SortedMap<String, String> files) {
    CatalogueLoader loader = new CatalogueLoader(files);
    Catalogue catalogue = loader.catalogue();
    return new Result<>(Optional.of(catalogue), loader.problems);
  }

  /**
   * Whether {@code text} looks like a curriculum or a rule book, by its top-level keys; for {@code
   * belthigh check}, which is given a path and no more.
   */
  public static boolean looksLikeOne(String text) {
    return topKeys(text).stream().anyMatch(k -> k.equals("skills") || k.equals("bands"));
  }

  private static Set<String> topKeys(String text) {
    return Yaml.read("?", text, new ArrayList<>())
        .filter(n -> n instanceof Node.Entries)
        .map(n -> ((Node.Entries) n).values().keySet())
        .orElse(Set.of());
  }

  /**
   * Every fault of one curriculum or rule book.
   *
   * @param file how messages name it
   * @param catalogue what its ids are resolved against
   */
  public static List<Problem> check(String file, String text, Catalogue catalogue) {
    Set<String> keys = topKeys(text);
    if (keys.contains("bands")) {
      return ruleBook(file, text, catalogue).problems();
    }
    return keys.isEmpty() || keys.contains("skills") || keys.contains("drills")
        ? curriculum(file, text, catalogue).problems()
        : List.of(
            Problem.fault(
                Origin.of(file),
                "",
                "the file is neither a curriculum nor a rule book",
                "a curriculum must have the key skills, a rule book the key bands",
                "Maybe another file is meant, or the folder it lies in."));
  }

  /**
   * A curriculum of the user's, held against the marks of {@code catalogue} and the curricula
   * there: it may loosen none of their ages, distances and protection.
   */
  public static Result<Curriculum> curriculum(String file, String text, Catalogue catalogue) {
    List<Problem> problems = new ArrayList<>();
    Places own = new Places(problems);
    Optional<Curriculum> read =
        curriculum(Parsed.of(file, text), catalogue.parameters(), problems, own);
    if (problems.stream().noneMatch(Problem::isFault) && !catalogue.curricula().isEmpty()) {
      read.ifPresent(c -> new NoLooser(c, catalogue.curricula().values(), own).run());
    }
    return new Result<>(read, problems);
  }

  /** A rule book of the user's, its sources among those of {@code catalogue}. */
  public static Result<RuleBook> ruleBook(String file, String text, Catalogue catalogue) {
    List<Problem> problems = new ArrayList<>();
    Places places = new Places(problems);
    Optional<RuleBook> read =
        Yaml.read(file, text, problems)
            .flatMap(n -> Fields.read(n, problems, f -> RuleBookFile.read(f, places)));
    read.ifPresent(book -> sourcesOf(book, catalogue.sources().keySet(), places));
    read.ifPresent(book -> limitsOf(book, catalogue.rules().values(), places));
    return new Result<>(read, problems);
  }

  private Catalogue catalogue() {
    Map<String, Source> sources =
        byId(one("rules/sources.yaml", f -> SourceFile.read(f, places)), Source::id);
    Set<String> units = new LinkedHashSet<>(one("rules/units.yaml", f -> f.texts("units")));
    ParameterFile parameterFile = new ParameterFile(places, units);
    Map<String, Parameter> parameters =
        byId(every("rules/parameters/", parameterFile::read), Parameter::id);
    Map<String, RuleBook> books =
        byId(every("rules/books/", f -> List.of(RuleBookFile.read(f, places))), RuleBook::id);
    Map<String, HeatTable> heat =
        byId(every("rules/heat/", f -> List.of(HeatTableFile.read(f, places))), HeatTable::id);
    Map<String, RuleEntry> rules = byId(ruleEntries(), RuleEntry::id);
    List<String> precedence = one("rules/precedence.yaml", this::precedence);
    Map<String, WhoEnds.Row> whoEnds =
        byId(one("rules/hold/who-ends.yaml", this::whoEnds), WhoEnds.Row::complaint);
    if (problems.stream().noneMatch(Problem::isFault)) {
      // with a part missing, whatever names it would be a fault too
      resolveSources(sources.keySet(), parameters, books, rules);
      heat.values().forEach(table -> sourcesOf(table, sources.keySet()));
      whoEnds
          .values()
          .forEach(
              line ->
                  places.resolve(
                      "complaint",
                      line.complaint(),
                      "source",
                      "source",
                      line.source(),
                      sources.keySet()));
      books.values().forEach(book -> limitsOf(book, rules.values(), places));
      resolveReads(rules, parameters);
      resolvePrecedence(precedence, rules.keySet());
    }
    Map<String, Curriculum> curricula = byId(curricula(parameters), Curriculum::id);
    Growth growth = new Growth(one("rules/growth/cdc-stature.yaml", this::growth));
    refuseStrangers();
    return new Catalogue(
        sources,
        parameters,
        books,
        rules,
        precedence,
        curricula,
        growth,
        heat,
        new WhoEnds(whoEnds));
  }

  /** A number that no rule reads would be kept by nobody. */
  private static void limitsOf(RuleBook book, Collection<RuleEntry> rules, Places places) {
    Set<String> read =
        rules.stream()
            .flatMap(rule -> rule.reads().stream())
            .filter(name -> name.startsWith("Limit."))
            .map(name -> name.substring("Limit.".length()))
            .collect(Collectors.toCollection(TreeSet::new));
    book.limits()
        .forEach(
            limit ->
                places.resolve(
                    "rule book",
                    book.id(),
                    "limits",
                    "limit that a rule reads",
                    limit.what(),
                    read));
  }

  private List<WhoEnds.Row> whoEnds(Fields f) {
    return f.each(
        "who_ends",
        row -> {
          places.note("complaint", row.text("complaint"), row);
          return new WhoEnds.Row(
              row.text("complaint"),
              new LinkedHashSet<>(row.texts("by")),
              row.flag("eased_back", false),
              row.text("source"));
        });
  }

  private List<Growth.Row> growth(Fields f) {
    f.text("source");
    return f.each(
        "rows",
        row ->
            new Growth.Row(
                row.text("sex"),
                row.number("months", 24, 240),
                row.number("l", -5, 5),
                row.number("m", 50, 220),
                row.number("s", 0.001, 0.2)));
  }

  private List<String> precedence(Fields f) {
    places.note("list", "precedence", f);
    return f.texts("precedence");
  }

  private List<RuleEntry> ruleEntries() {
    List<RuleEntry> all = new ArrayList<>();
    for (String file : files.keySet()) {
      Matcher pack = PACK.matcher(file);
      if (pack.matches()) {
        all.addAll(one(file, new RuleEntryFile(places, pack.group(1))::read));
      }
    }
    return all;
  }

  private List<Curriculum> curricula(Map<String, Parameter> parameters) {
    List<Curriculum> all = new ArrayList<>();
    for (String file : under("curricula/")) {
      used.add(file);
      curriculum(files.get(file), parameters, problems, new Places(problems)).ifPresent(all::add);
    }
    return all;
  }

  private static Optional<Curriculum> curriculum(
      Parsed file, Map<String, Parameter> parameters, List<Problem> problems, Places own) {
    Optional<Curriculum> read =
        file.take(problems).flatMap(n -> Fields.read(n, problems, new CurriculumFile(own)::read));
    if (problems.stream().noneMatch(Problem::isFault)) {
      read.ifPresent(c -> new CurriculumChecks(c, parameters, own).run());
    }
    return read;
  }

  private List<String> under(String folder) {
    return files.keySet().stream().filter(f -> f.startsWith(folder)).toList();
  }

  private <T> List<T> every(String folder, Function<Fields, List<T>> reader) {
    return under(folder).stream().flatMap(file -> one(file, reader).stream()).toList();
  }

  private <T> List<T> one(String file, Function<Fields, List<T>> reader) {
    used.add(file);
    return Optional.ofNullable(files.get(file))
        .orElseGet(() -> Parsed.of(file, ""))
        .take(problems)
        .flatMap(node -> Fields.read(node, problems, reader))
        .orElse(List.of());
  }

  private static <T> Map<String, T> byId(List<T> things, Function<T, String> id) {
    Map<String, T> map = new LinkedHashMap<>();
    things.forEach(t -> map.putIfAbsent(id.apply(t), t));
    return map;
  }

  private void resolveSources(
      Set<String> sources,
      Map<String, Parameter> parameters,
      Map<String, RuleBook> books,
      Map<String, RuleEntry> rules) {
    for (Parameter p : parameters.values()) {
      for (Parameter.Dated value : p.values()) {
        places.resolve("parameter", p.id(), "values", "source", value.source(), sources);
      }
    }
    books.values().forEach(book -> sourcesOf(book, sources, places));
    rules
        .values()
        .forEach(r -> places.resolve("rule", r.id(), "source", "source", r.source(), sources));
  }

  private static void sourcesOf(RuleBook book, Set<String> sources, Places places) {
    book.allSources()
        .forEach(s -> places.resolve("rule book", book.id(), "sources", "source", s, sources));
  }

  private void sourcesOf(HeatTable table, Set<String> sources) {
    table
        .sources()
        .forEach(s -> places.resolve("heat table", table.id(), "sources", "source", s, sources));
  }

  /** A rule reads parameters by id, and facts by the name of their Java type. */
  private void resolveReads(Map<String, RuleEntry> rules, Map<String, Parameter> parameters) {
    for (RuleEntry rule : rules.values()) {
      for (String read : rule.reads()) {
        if (!Character.isUpperCase(read.charAt(0))) {
          places.resolve("rule", rule.id(), "reads", "parameter", read, parameters.keySet());
        }
      }
    }
  }

  private void resolvePrecedence(List<String> precedence, Set<String> rules) {
    Set<String> seen = new HashSet<>();
    for (String id : precedence) {
      places.resolve("list", "precedence", "precedence", "rule", id, rules);
      if (!seen.add(id)) {
        places.refuse(
            "list",
            "precedence",
            "precedence",
            "rule '" + id + "' stands in it twice",
            "each rule has one rank",
            "Keep one of the two.");
      }
    }
  }

  private void refuseStrangers() {
    for (String file : files.keySet()) {
      if (!used.contains(file)) {
        problems.add(
            Problem.fault(
                Origin.of(file),
                "",
                "the file belongs to no part of the catalogue",
                "parts are rules/parameters/, rules/books/, rules/heat/, rules/PACK/rules.yaml and curricula/",
                "Move it into one of these folders."));
      }
    }
  }
}
