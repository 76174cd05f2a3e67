package org.belthigh.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.files.Fields;
import org.belthigh.files.Nearest;
import org.belthigh.files.Node;
import org.belthigh.model.Coded;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/**
 * Reads {@code club.yaml}. What safety or the season rests on must be right, or there is no club;
 * anything else that is faulty is told and left out.
 */
final class ClubFile {
  /** Languages that the prints can speak. */
  static final List<String> LANGUAGES = List.of("en", "es");

  /** Names that Windows keeps for devices, whatever stands behind a point; common knowledge. */
  private static final Pattern DEVICE =
      Pattern.compile("con|prn|aux|nul|com[1-9]|lpt[1-9]", Pattern.CASE_INSENSITIVE);

  private static final List<String> PAPERS = List.of("letter", "a4");

  /** What a club can count; a practice asks for tees, nets, screens and machines. */
  private static final List<String> THINGS =
      List.of(
          "tees",
          "nets",
          "screens",
          "machines",
          "plastic_balls",
          "foam_balls",
          "tennis_balls",
          "marked_balls",
          "baseballs",
          "softballs",
          "bats",
          "helmets",
          "eyewear",
          "gloves",
          "targets",
          "plates",
          "bases",
          "cones",
          "buckets",
          "clipboards");

  private static final int USUAL_TOSSERS = 1;
  private static final int MOST_TOSSERS = 20;

  private final Catalogue catalogue;

  /** The id of the club's own curriculum, where its file passes. */
  private final Optional<String> own;

  private final List<Problem> grave = new ArrayList<>();
  private final List<Problem> light = new ArrayList<>();
  private Optional<Dates.Order> dates = Optional.empty();

  ClubFile(Catalogue catalogue, Optional<String> own) {
    this.catalogue = catalogue;
    this.own = own;
  }

  /**
   * The club.
   *
   * @param problems receives everything that is wrong
   * @return empty where the club cannot be used
   */
  Optional<Club> read(Node node, List<Problem> problems) {
    Node usable = new LimitKeys(catalogue).without(node, light);
    Optional<Club> club = Fields.read(usable, grave, light, this::club);
    problems.addAll(grave);
    problems.addAll(light);
    return club;
  }

  /**
   * What stands first in the dates of this club's spreadsheets where a file does not show it; known
   * after {@link #read}.
   */
  Optional<Dates.Order> dates() {
    return dates;
  }

  private Club club(Fields f) {
    dates = dates(f);
    tellOther(f);
    int tossers = f.optionalWhole("tossers", 0, MOST_TOSSERS).orElse(USUAL_TOSSERS);
    List<LocalDate> season = season(f);
    List<String> books = ruleBooks(f);
    return new Club(
        f.text("name"),
        paper(f),
        languages(f),
        books,
        season.get(0),
        season.get(1),
        groups(f, tossers),
        curriculum(f),
        equipment(f),
        venues(f),
        emergency(f),
        new StricterNumbers(catalogue, books, light).read(f));
  }

  /** The text as one of {@link #LANGUAGES}. */
  static Optional<String> language(String text) {
    return Optional.of(text.toLowerCase(Locale.ROOT)).filter(LANGUAGES::contains);
  }

  /** The key is kept free: nothing is read below it. */
  private void tellOther(Fields f) {
    for (Node item : f.items("other")) {
      if (item instanceof Node.Entries entries) {
        entries.values().keySet().forEach(key -> tellOther(key, entries.keys().get(key)));
      } else {
        tellOther("other", item.origin());
      }
    }
  }

  private void tellOther(String key, Origin origin) {
    light.add(
        Problem.warning(
            origin,
            key,
            "nothing below other is read",
            "other may stand in club.yaml and sets nothing",
            "Maybe it belongs in other.csv, or one level further out."));
  }

  private void leaveOut(Fields f, String key, String found, String allowed, String maybe) {
    light.add(Problem.fault(f.origin(key), key, found, allowed, maybe));
  }

  private Optional<Dates.Order> dates(Fields f) {
    Optional<String> text = f.optionalText("dates");
    Optional<Dates.Order> order = text.flatMap(t -> Coded.find(Dates.Order.class, t));
    if (text.isPresent() && order.isEmpty()) {
      leaveOut(
          f,
          "dates",
          "'" + text.get() + "' is not known and is left out",
          "dates must be day-first or month-first",
          Cells.maybe(text.get(), List.of("day-first", "month-first"), "month-first is meant"));
    }
    return order;
  }

  private String paper(Fields f) {
    String paper = f.optionalText("paper").orElse(PAPERS.get(0)).toLowerCase(Locale.ROOT);
    if (PAPERS.contains(paper)) {
      return paper;
    }
    leaveOut(
        f,
        "paper",
        "'" + paper + "' is not known, so letter is used",
        "paper must be letter or a4",
        Cells.maybe(paper, PAPERS, "a4 is meant"));
    return PAPERS.get(0);
  }

  private List<String> languages(Fields f) {
    List<String> known = new ArrayList<>();
    for (String text : f.texts("languages")) {
      Optional<String> language = language(text);
      language.filter(l -> !known.contains(l)).ifPresent(known::add);
      if (language.isEmpty()) {
        leaveOut(
            f,
            "languages",
            "there are no texts in '" + text + "', so it is left out",
            "languages must be " + Cells.oneOf(LANGUAGES),
            Cells.maybe(text, LANGUAGES, "en or es"));
      }
    }
    return known.isEmpty() ? List.of(LANGUAGES.get(0)) : known;
  }

  private List<String> ruleBooks(Fields f) {
    List<String> ids = f.texts("rule_book");
    if (ids.isEmpty()) {
      f.refuse(
          "rule_book",
          "no rule book is named",
          "rule_book must be " + Cells.oneOf(List.copyOf(catalogue.ruleBooks().keySet())),
          "Name the one that your league plays by.");
    }
    ids.forEach(id -> resolve(f, "rule_book", id, catalogue.ruleBooks().keySet()));
    ids.stream()
        .filter(catalogue.ruleBooks()::containsKey)
        .filter(id -> catalogue.ruleBook(id).status() == RuleBook.Status.OPEN)
        .forEach(id -> warnOfOpenBook(f, id));
    return ids.stream().distinct().toList();
  }

  private void warnOfOpenBook(Fields f, String id) {
    light.add(
        Problem.warning(
            f.origin("rule_book"),
            "rule_book",
            "no number of '" + id + "' is confirmed, so nobody may pitch by it",
            "a book with confirmed numbers lets pitchers pitch",
            "Maybe name another book in its place until its numbers are known."));
  }

  private String curriculum(Fields f) {
    Optional<String> id = f.optionalText("curriculum");
    if (id.filter(OwnCurriculum::isFile).isPresent()) {
      return own.orElseGet(() -> inPlaceOf(f, id.get()));
    }
    id.ifPresent(i -> resolve(f, "curriculum", i, catalogue.curricula().keySet()));
    return id.orElseGet(this::usual);
  }

  private String usual() {
    return catalogue.curricula().keySet().iterator().next();
  }

  private String inPlaceOf(Fields f, String file) {
    light.add(
        Problem.fault(
            f.origin("curriculum"),
            "curriculum",
            "'" + file + "' cannot be used, so " + usual() + " is used in its place",
            "it must be a file of this folder that passes belthigh check",
            "Correct what belthigh check says of that file, or put it right beside club.yaml."));
    return usual();
  }

  private static void resolve(Fields f, String key, String id, Collection<String> known) {
    if (!known.contains(id)) {
      f.refuse(
          key,
          "'" + id + "' is not known",
          key + " must be " + Cells.oneOf(List.copyOf(known)),
          Nearest.to(id, known).map(near -> "Maybe " + near + ".").orElse("Choose one of these."));
    }
  }

  private List<LocalDate> season(Fields f) {
    return f.<List<LocalDate>>inside(
            "season",
            light,
            s -> {
              LocalDate first = s.date("first");
              LocalDate last = s.date("last");
              if (last.isBefore(first)) {
                s.refuse(
                    "last",
                    last + " lies before " + first,
                    "last must not lie before first",
                    "Maybe the two are swapped.");
              }
              return List.of(first, last);
            })
        .orElseGet(
            () -> {
              if (!f.has("season")) {
                f.refuse(
                    "season",
                    "the key is missing",
                    "season must say first and last",
                    "Add season: {first: \"2027-03-01\", last: \"2027-05-24\"}.");
              }
              return List.of(LocalDate.EPOCH, LocalDate.EPOCH);
            });
  }

  private List<Club.Group> groups(Fields f, int tossers) {
    List<Club.Group> groups = new ArrayList<>();
    for (Node item : f.items("groups")) {
      Fields.read(item, light, light, g -> group(g, tossers, groups)).ifPresent(groups::add);
    }
    if (groups.isEmpty()) {
      f.refuse(
          "groups",
          "there is no usable group",
          "groups must list at least one",
          "Add - {id: u10, name: Under 10, age: [9, 10]}.");
    }
    return groups;
  }

  private static Club.Group group(Fields g, int tossers, List<Club.Group> before) {
    String id = g.text("id");
    if (!RosterRows.ID.matcher(id).matches()) {
      g.refuse(
          "id",
          "'" + id + "' cannot name a folder",
          "id must be " + RosterRows.ID_ALLOWED,
          "Maybe u10.");
    } else if (DEVICE.matcher(id).matches()) {
      g.refuse(
          "id",
          "'" + id + "' cannot name a folder on Windows",
          "con, prn, aux, nul, com1 to com9 and lpt1 to lpt9 are names of devices there",
          "Maybe u10.");
    } else if (before.stream().anyMatch(b -> b.id().equalsIgnoreCase(id))) {
      g.refuse(
          "id",
          "'" + id + "' stands twice",
          "each group must have its own id",
          "Maybe the group was copied.");
    }
    int[] age = g.pair("age", 4, 20).orElse(new int[] {0, 0});
    if (!g.has("age")) {
      g.refuse(
          "age",
          "the key is missing",
          "age must be two whole numbers, such as [9, 10]",
          "Add age: [9, 10].");
    }
    return new Club.Group(
        id,
        g.optionalText("name").orElse(id),
        age[0],
        age[1],
        g.optionalWord("sport", Sport.class).filter(s -> s == Sport.SOFTBALL).isPresent(),
        g.optionalWhole("tossers", 0, MOST_TOSSERS).orElse(tossers));
  }

  private enum Sport implements org.belthigh.model.Coded {
    BASEBALL,
    SOFTBALL
  }

  private Map<String, Integer> equipment(Fields f) {
    Map<String, Integer> counts = new TreeMap<>();
    for (Node item : f.items("equipment")) {
      Fields.read(
          item,
          light,
          e -> {
            e.keys().forEach(thing -> counts.put(thing, count(e, thing)));
            return counts;
          });
    }
    return counts;
  }

  /** A thing that is not known stays counted: a club that counts owns what it names, no more. */
  private int count(Fields equipment, String thing) {
    if (!THINGS.contains(thing)) {
      light.add(Fields.unknown(equipment.origin(thing), thing, THINGS));
    }
    return equipment.whole(thing, 0, 9999);
  }

  private List<Club.Venue> venues(Fields f) {
    List<Club.Venue> venues = new ArrayList<>();
    for (Node item : f.items("places")) {
      Fields.read(item, light, light, ClubFile::venue).ifPresent(venues::add);
    }
    return venues;
  }

  private static Club.Venue venue(Fields v) {
    String id = v.text("id");
    boolean cage =
        v.optionalWord("kind", VenueKind.class).filter(k -> k == VenueKind.CAGE).isPresent();
    return new Club.Venue(
        id,
        v.optionalText("name").orElse(id),
        cage,
        v.optionalText("address").orElse(""),
        v.optionalText("aed").orElse(""),
        v.optionalWhole("stations", 1, 50).orElse(cage ? 1 : 3),
        v.optionalText("note").orElse(""));
  }

  private enum VenueKind implements org.belthigh.model.Coded {
    FIELD,
    CAGE
  }

  private Optional<Club.Emergency> emergency(Fields f) {
    List<Node> items = f.items("emergency");
    items.stream()
        .skip(1)
        .forEach(
            more ->
                light.add(
                    Problem.fault(
                        more.origin(),
                        "emergency",
                        "a second group of keys stands here and is left out",
                        "emergency must be one group of keys",
                        "Maybe write the other number as note.")));
    return items.isEmpty()
        ? Optional.empty()
        : Fields.read(
            items.get(0),
            light,
            light,
            e ->
                new Club.Emergency(
                    e.text("call"),
                    e.optionalText("who").orElse(""),
                    e.optionalText("note").orElse("")));
  }
}
