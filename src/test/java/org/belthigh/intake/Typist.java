package org.belthigh.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.belthigh.model.Call;
import org.belthigh.model.Coded;
import org.belthigh.model.Column;
import org.belthigh.model.Field;
import org.belthigh.model.Hit;
import org.belthigh.model.Row;
import org.belthigh.model.Spot;
import org.belthigh.model.Went;

/** Types logged tosses in short form, as a person would from a filled log sheet. */
final class Typist {
  private static final String SHIFTED = "~:#?+";

  private final ClubRecord club;

  Typist(ClubRecord club) {
    this.club = club;
  }

  /** The lines for one practice of one group. */
  List<String> practice(String group, Predicate<Toss> which) {
    List<Toss> tosses =
        club.tosses().stream()
            .filter(t -> club.player(t.player()).group().equals(group))
            .filter(which)
            .toList();
    List<String> lines = new ArrayList<>();
    lines.add(tosses.get(0).date() + " " + group);
    Map<String, List<Toss>> drills =
        tosses.stream()
            .collect(Collectors.groupingBy(Typist::drill, LinkedHashMap::new, Collectors.toList()));
    drills.forEach((drill, rows) -> addDrill(lines, drill, rows));
    return lines;
  }

  /** Keys pressed, a shifted one counted twice, the line's end once. */
  static int keystrokes(List<String> lines) {
    return lines.stream()
        .mapToInt(l -> l.length() + 1 + (int) l.chars().filter(Typist::shifted).count())
        .sum();
  }

  private static boolean shifted(int c) {
    return SHIFTED.indexOf(c) >= 0 || Character.isUpperCase(c);
  }

  private static String drill(Toss toss) {
    List<String> words = new ArrayList<>(List.of(toss.drill()));
    toss.ball().map(Coded::id).ifPresent(words::add);
    toss.feed().map(Coded::id).ifPresent(words::add);
    toss.feet().ifPresent(f -> words.add(f == Math.rint(f) ? "" + (int) f : "" + f));
    toss.place().map(Coded::id).ifPresent(words::add);
    if (!toss.by().isBlank()) {
      words.add("by " + toss.by());
    }
    return String.join(" ", words);
  }

  private void addDrill(List<String> lines, String drill, List<Toss> tosses) {
    lines.add(drill);
    tosses.stream()
        .collect(
            Collectors.groupingBy(
                t -> t.player() + " " + t.round(), LinkedHashMap::new, Collectors.toList()))
        .values()
        .forEach(round -> lines.add(line(round)));
  }

  private String line(List<Toss> round) {
    Player player = club.player(round.get(0).player());
    StringBuilder line = new StringBuilder().append(player.number().orElseThrow());
    Optional<Field> field = Optional.empty();
    String side = "";
    int at = 1;
    for (Toss toss : round) {
      String stands =
          player.bats().side().isPresent() ? "" : toss.side().letter().toLowerCase(Locale.ROOT);
      if (!stands.equals(side)) {
        line.append(' ').append(stands);
        side = stands;
      }
      if (!toss.field().equals(field) && toss.field().isPresent()) {
        field = toss.field();
        line.append(' ').append(code(field.get())).append(':');
      }
      for (; at < toss.order(); at++) {
        line.append(" ?");
      }
      at++;
      line.append(' ').append(word(toss));
    }
    return line.toString();
  }

  private static String code(Field field) {
    return ShortToss.FIELDS.entrySet().stream()
        .filter(e -> e.getValue().equals(field.id()))
        .findFirst()
        .orElseThrow()
        .getKey();
  }

  private static String spot(Spot spot) {
    return spot == Spot.BALL ? "b" : Integer.toString(spot.number());
  }

  private static String word(Toss toss) {
    return spot(toss.zone())
        + (toss.nearEdge() ? "~" : "")
        + toss.called().map(Typist::called).orElse("")
        + toss.hit().map(h -> h.id().substring(0, 1)).orElse("")
        + (toss.hit().filter(h -> h == Hit.HARD || h == Hit.SOFT).isPresent()
            ? toss.went().map(w -> went(w, toss)).orElse("")
            : "");
  }

  private static String called(Call call) {
    if (call instanceof Call.AtSpot at) {
      return spot(at.spot());
    }
    if (call instanceof Call.InRow in) {
      return in.row() == Row.HIGH ? "u" : in.row() == Row.BELT ? "w" : "l";
    }
    if (call instanceof Call.InColumn in) {
      return in.column() == Column.IN ? "i" : in.column() == Column.MIDDLE ? "c" : "a";
    }
    return call instanceof Call.AnyStrike ? "k" : "n";
  }

  private static String went(Went went, Toss toss) {
    if (toss.field().map(Coded::id).filter(went.id()::equals).isPresent()) {
      return "=";
    }
    return switch (went) {
      case POP_UP -> "p";
      case FOUL, NONE -> "";
      default -> code(Coded.find(Field.class, went.id()).orElseThrow());
    };
  }
}
