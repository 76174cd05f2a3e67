package org.belthigh.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Outing;
import org.belthigh.model.Phrase;

/**
 * A tournament day game by game: what was reported of it, and lines for the rest of its games.
 *
 * <p>Where a rule book of the club bars a second game on one day, a pitcher gets one line.
 */
final class GameDays {
  /** Games that a tournament day has room for; ours, common practice. */
  private static final int GAMES = 4;

  private final ClubRecord record;
  private final LocalDate day;
  private final List<RuleBook> books;

  GameDays(Catalogue catalogue, ClubRecord record, LocalDate day) {
    this.record = record;
    this.day = day;
    this.books =
        record.club().ruleBooks().stream()
            .map(catalogue::ruleBook)
            .map(
                named ->
                    catalogue.editions(named).stream()
                        .filter(b -> b.inForce(day))
                        .findFirst()
                        .orElse(named))
            .toList();
  }

  /**
   * The day's part of the sheet.
   *
   * @param rows the week's rows, of which the entry at {@code index} is for this day
   * @param from the day the sheet is made for
   */
  ArmSheet.GameDay of(List<ArmSheet.Row> rows, int index, LocalDate from) {
    List<ArmSheet.Pitcher> pitchers =
        rows.stream()
            .filter(ArmSheet.Row::pitches)
            .map(r -> pitcher(r, r.cells().get(index)))
            .filter(p -> p.cell().answer() != ArmSheet.Answer.NO || reported(p))
            .toList();
    return new ArmSheet.GameDay(day, cautions(day.isAfter(from)), pitchers);
  }

  private static boolean reported(ArmSheet.Pitcher pitcher) {
    return pitcher.games().stream().anyMatch(g -> g.pitches().isPresent());
  }

  private ArmSheet.Pitcher pitcher(ArmSheet.Row row, ArmSheet.Cell cell) {
    Map<String, OptionalInt> games = new LinkedHashMap<>();
    List<Outing> outings =
        record.outings().stream()
            .filter(o -> o.player().equals(row.who().id()) && o.date().equals(day))
            .filter(o -> o.kind().counts())
            .toList();
    boolean once = !booksSaying(RuleBook.SameDay.NOT_ALLOWED).isEmpty();
    List<String> numbers =
        once ? List.of() : IntStream.rangeClosed(1, GAMES).mapToObj(String::valueOf).toList();
    outings.stream()
        .filter(o -> !numbers.contains(o.game()))
        .forEach(o -> games.put(o.game(), OptionalInt.empty()));
    numbers.forEach(n -> games.put(n, OptionalInt.empty()));
    for (Outing outing : outings) {
      int before = games.get(outing.game()).orElse(0);
      games.put(outing.game(), OptionalInt.of(before + outing.pitches()));
    }
    if (games.isEmpty()) {
      games.put("", OptionalInt.empty());
    }
    return new ArmSheet.Pitcher(
        row.who(),
        cell,
        row.knownTo(),
        games.entrySet().stream().map(g -> new ArmSheet.Game(g.getKey(), g.getValue())).toList());
  }

  private List<Phrase> cautions(boolean later) {
    List<Phrase> cautions = new ArrayList<>();
    if (later) {
      cautions.add(Phrase.of("arm.games.before"));
    }
    booksSaying(RuleBook.SameDay.NOT_ALLOWED)
        .forEach(b -> cautions.add(Phrase.of("arm.games.once", "book", b.organisation())));
    booksSaying(RuleBook.SameDay.SHOULD_NOT)
        .forEach(b -> cautions.add(Phrase.of("arm.games.better", "book", b.organisation())));
    cautions.add(Phrase.of("arm.games.all"));
    cautions.add(Phrase.of("arm.caution.catch"));
    cautions.add(Phrase.of("arm.games.known"));
    cautions.add(Phrase.of("arm.games.others"));
    return cautions;
  }

  private List<RuleBook> booksSaying(RuleBook.SameDay said) {
    return books.stream().filter(b -> b.sameDay() == said).toList();
  }
}
