package org.belthigh.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.decide.ArmStatus;
import org.belthigh.decide.Arms;
import org.belthigh.decide.Comeback;
import org.belthigh.decide.Hold;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Player;
import org.belthigh.model.Phrase;

/**
 * Who may pitch and catch in the week ahead, as known on the day the plan is made.
 *
 * <p>Sheets say the stricter answer of calendar age and league age.
 */
final class ArmSheets {
  private static final int WEEK = 7;

  private final Catalogue catalogue;
  private final ClubRecord record;
  private final LocalDate first;
  private final Map<String, Comeback> comebacks;
  private final Map<LocalDate, Map<String, ArmStatus>> byDay = new TreeMap<>();

  ArmSheets(
      Catalogue catalogue,
      ClubRecord record,
      ClubRecord foreseen,
      PlanRequest request,
      Map<String, Comeback> comebacks,
      Arms arms) {
    this.comebacks = Map.copyOf(comebacks);
    this.catalogue = catalogue;
    this.record = record;
    this.first = request.from();
    for (LocalDate day : days()) {
      byDay.put(
          day,
          arms.on(foreseen, first, day).stream()
              .collect(
                  Collectors.toMap(ArmStatus::player, s -> s, (a, b) -> a, LinkedHashMap::new)));
    }
  }

  private List<LocalDate> days() {
    return first.datesUntil(first.plusDays(WEEK)).toList();
  }

  private ArmStatus status(String player, LocalDate day) {
    return byDay.get(day).get(player);
  }

  /** The card's box: when this player may throw and pitch again. */
  ArmBox box(Player player, List<Hold> holds) {
    ArmStatus today = status(player.id(), first);
    List<Phrase> lines = new ArrayList<>();
    List<Phrase> ends = new ArrayList<>();
    LocalDate last = first.plusDays(WEEK - 1);
    boolean stopped =
        holds.stream()
            .filter(h -> !h.from().isAfter(last))
            .anyMatch(h -> h.cause().isPresent() && h.stopsThrowing());
    if (stopped) {
      lines.add(Phrase.of("arm.stopped"));
      holds.stream()
          .filter(h -> h.cause().isPresent())
          .map(Hold::whoEnds)
          .distinct()
          .forEach(ends::add);
    } else if (!player.pitches()) {
      lines.add(Phrase.of("arm.not-a-pitcher"));
    } else {
      lines.add(pitching(today));
      if (!today.bothAges().mayPitch() && today.bothAges().eligibleFrom().isPresent()) {
        lines.add(Phrase.of("arm.rest"));
      }
      lines.add(Phrase.of("arm.anywhere"));
    }
    return new ArmBox(lines, ends, today.knownTo(), source());
  }

  /** What the player's arm may do, one entry a day of the week. */
  List<ArmLine> lines(Player player, List<Hold> holds) {
    return days().stream().map(day -> line(player, holds, day)).toList();
  }

  private ArmLine line(Player player, List<Hold> holds, LocalDate day) {
    ArmStatus status = status(player.id(), day);
    boolean stopped = holds.stream().anyMatch(h -> h.stopsThrowing() && h.holds(day));
    ArmSheet.Cell cell = cell(player, status);
    ArmLine.Answer answer =
        stopped
            ? ArmLine.Answer.NO_THROWING
            : switch (cell.answer()) {
              case MAY -> ArmLine.Answer.MAY_PITCH;
              case ASK -> ArmLine.Answer.ASK_FIRST;
              case NO -> ArmLine.Answer.NO_PITCHING;
            };
    return new ArmLine(
        day,
        answer,
        answer == ArmLine.Answer.MAY_PITCH ? cell.pitches() : 0,
        !stopped && cell.mayCatch(),
        status.knownTo());
  }

  /** Pitchers to be asked first on {@code day}; by the last day known where it lies later. */
  List<Label> askFirst(List<Label> labels, LocalDate day) {
    LocalDate last = first.plusDays(WEEK - 1);
    LocalDate known = day.isAfter(last) ? last : day;
    return labels.stream()
        .filter(l -> record.player(l.id()).pitches() && status(l.id(), known).askFirst())
        .toList();
  }

  private Phrase pitching(ArmStatus status) {
    ArmStatus.Answer answer = status.bothAges();
    if (status.askFirst() && answer.opened().eligibleFrom().isPresent()) {
      return Phrase.of("arm.ask");
    }
    if (answer.mayPitch()) {
      return Phrase.of("arm.may", "date", first, "pitches", answer.pitchesLeft());
    }
    return answer
        .eligibleFrom()
        .map(from -> Phrase.of("arm.from", "date", from))
        .orElse(Phrase.of("arm.no"));
  }

  private Phrase source() {
    List<String> books =
        record.club().ruleBooks().stream()
            .map(catalogue::ruleBook)
            .map(b -> b.title() + ", " + b.edition())
            .toList();
    return record.club().stricter().isNone()
        ? Phrase.of("arm.source", "books", books)
        : Phrase.of("arm.source.stricter", "books", books, "club", record.club().name());
  }

  /** The coach's sheet for a group. */
  ArmSheet sheet(Club.Group group, Season season, List<Label> labels) {
    List<ArmSheet.Row> rows =
        labels.stream().filter(l -> throwsOrCatches(record.player(l.id()))).map(this::row).toList();
    return new ArmSheet(
        days(),
        days().stream().map(d -> event(season, d)).toList(),
        rows,
        tables(group),
        cautions(),
        days().stream()
            .filter(d -> season.tournament(d).isPresent())
            .map(d -> new GameDays(catalogue, record, d).of(rows, days().indexOf(d), first))
            .toList());
  }

  private List<Phrase> cautions() {
    List<Phrase> cautions =
        new ArrayList<>(
            List.of(
                Phrase.of("arm.caution.anywhere"),
                Phrase.of("arm.caution.first"),
                Phrase.of("arm.caution.pain"),
                Phrase.of("arm.rest"),
                Phrase.of("arm.caution.catch")));
    record
        .club()
        .stricter()
        .daysInARow()
        .ifPresent(
            days ->
                cautions.add(
                    Phrase.of("arm.caution.row", "club", record.club().name(), "days", days)));
    return cautions;
  }

  private static boolean throwsOrCatches(Player player) {
    return player.pitches() || player.catches();
  }

  private static Optional<Phrase> event(Season season, LocalDate day) {
    return season.on(day).stream().findFirst().map(e -> Say.word("event", e.kind()));
  }

  private ArmSheet.Row row(Label label) {
    Player player = record.player(label.id());
    ArmStatus today = status(label.id(), first);
    return new ArmSheet.Row(
        label,
        player.pitches(),
        player.catches(),
        days().stream().map(d -> cell(player, status(label.id(), d))).toList(),
        today.knownTo(),
        allowed(player, note(player, today)));
  }

  /** The note; of who comes back from a stop also that only what was allowed is done. */
  private Phrase allowed(Player player, Phrase note) {
    return comebacks.containsKey(player.id()) ? Phrase.of("arm.note.back", "note", note) : note;
  }

  private static ArmSheet.Cell cell(Player player, ArmStatus status) {
    ArmStatus.Answer answer = status.bothAges();
    ArmSheet.Answer may =
        !player.pitches() || !answer.opened().mayPitch()
            ? ArmSheet.Answer.NO
            : status.askFirst() ? ArmSheet.Answer.ASK : ArmSheet.Answer.MAY;
    return new ArmSheet.Cell(
        may,
        may == ArmSheet.Answer.MAY ? answer.pitchesLeft() : 0,
        player.catches() && status.mayCatch());
  }

  /** Why not, in words that others may read. */
  private Phrase note(Player player, ArmStatus status) {
    if (!player.pitches()) {
      return Phrase.of(status.mayCatch() ? "arm.note.catches" : "arm.note.held");
    }
    ArmStatus.Answer open = status.bothAges().opened();
    if (open.eligibleFrom().isEmpty()) {
      return Phrase.of("arm.note.held");
    }
    if (status.askFirst()) {
      return Phrase.of("arm.note.ask");
    }
    return open.mayPitch()
        ? Phrase.of("arm.note.free")
        : Phrase.of("arm.note.from", "date", open.eligibleFrom().get());
  }

  /**
   * The rows of each rule book that the group's ages can fall into, with the club's own numbers in
   * their place where those are stricter.
   */
  private List<ArmSheet.PocketTable> tables(Club.Group group) {
    List<ArmSheet.PocketTable> tables = new ArrayList<>();
    for (String id : record.club().ruleBooks()) {
      RuleBook book = catalogue.ruleBook(id);
      for (RuleBook.Band band : book.bands()) {
        if (band.ageFrom() <= group.ageTo() + 1 && band.ageTo() >= group.ageFrom()) {
          strictest(band).forEach(b -> tables.add(table(book, b, !sameNumbers(b, band))));
        }
      }
    }
    return tables;
  }

  /** {@code band} with the club's numbers; split by age where they differ from age to age. */
  private List<RuleBook.Band> strictest(RuleBook.Band band) {
    List<RuleBook.Band> bands = new ArrayList<>();
    for (RuleBook.Band own : record.club().stricter().over(band)) {
      int before = bands.size() - 1;
      if (before >= 0 && sameNumbers(bands.get(before), own)) {
        bands.set(before, bands.get(before).upTo(own.ageTo()));
      } else {
        bands.add(own);
      }
    }
    return bands;
  }

  private static boolean sameNumbers(RuleBook.Band one, RuleBook.Band other) {
    return one.dailyMax() == other.dailyMax()
        && one.weeklyMax().equals(other.weeklyMax())
        && one.rest().equals(other.rest());
  }

  private ArmSheet.PocketTable table(RuleBook book, RuleBook.Band band, boolean stricter) {
    return new ArmSheet.PocketTable(
        ages(book, band, stricter),
        band.dailyMax(),
        band.weeklyMax(),
        band.rest().stream().map(r -> new ArmSheet.RestLine(r.from(), r.to(), r.days())).toList(),
        Phrase.of(
            "arm.table.source",
            "book",
            book.title(),
            "edition",
            book.edition(),
            "organisation",
            book.organisation()));
  }

  /** The ages, and whose numbers they are where that is not plain. */
  private Phrase ages(RuleBook book, RuleBook.Band band, boolean stricter) {
    Phrase ages = Phrase.of("arm.table", "from", band.ageFrom(), "to", band.ageTo());
    if (stricter) {
      return Phrase.of("arm.table.of", "ages", ages, "book", record.club().name());
    }
    return record.club().ruleBooks().size() > 1
        ? Phrase.of("arm.table.of", "ages", ages, "book", book.organisation())
        : ages;
  }
}
