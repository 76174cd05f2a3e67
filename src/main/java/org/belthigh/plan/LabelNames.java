package org.belthigh.plan;

import java.text.Normalizer;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.belthigh.intake.Player;

/**
 * What sheets call each child of a club: the first name, with the initial of the last name where
 * two of a group share it. Where two of a group would still carry one label, as many letters of the
 * last name as tell them apart; where none do, the id. Case and accents tell nobody apart.
 */
final class LabelNames {
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");

  private final Map<String, String> byId = new HashMap<>();

  /** Names the children of a club. */
  LabelNames(Collection<Player> players) {
    alike(players, Player::group).forEach(this::nameGroup);
  }

  /** What sheets call {@code player}. */
  String of(Player player) {
    return byId.get(player.id());
  }

  private void nameGroup(List<Player> group) {
    alike(group, p -> plain(p.firstName())).forEach(this::nameSharers);
    alike(group, p -> plain(byId.get(p.id()) + " " + number(p))).stream()
        .filter(same -> same.size() > 1)
        .flatMap(List::stream)
        .forEach(p -> byId.merge(p.id(), p.id(), (name, id) -> name + " " + id));
  }

  /** Names those of a group who share a first name. */
  private void nameSharers(List<Player> sharers) {
    for (List<Player> rivals : alike(sharers, LabelNames::number)) {
      rivals.forEach(p -> byId.put(p.id(), sharers.size() > 1 ? name(p, rivals) : p.firstName()));
    }
  }

  private static String name(Player player, List<Player> rivals) {
    String last = last(player);
    if (last.isEmpty()) {
      return player.firstName();
    }
    int letters = letters(player, rivals);
    String shown = beginning(last, letters);
    boolean whole = letters > 1 && shown.equals(last);
    return player.firstName() + " " + shown + (whole ? "" : ".");
  }

  /** How many letters of the last name tell the player from all rivals; 1 where none do. */
  private static int letters(Player player, List<Player> rivals) {
    int most = rivals.stream().mapToInt(p -> last(p).length()).max().orElse(1);
    for (int letters = 1; letters <= most; letters++) {
      if (isAlone(player, rivals, letters)) {
        return letters;
      }
    }
    return 1;
  }

  private static boolean isAlone(Player player, List<Player> rivals, int letters) {
    String own = plain(beginning(last(player), letters));
    return rivals.stream()
        .filter(p -> !p.id().equals(player.id()))
        .noneMatch(p -> plain(beginning(last(p), letters)).equals(own));
  }

  /** The first letters of {@code name}, all of it where it has no more. */
  private static String beginning(String name, int letters) {
    int most = name.codePointCount(0, name.length());
    return name.substring(0, name.offsetByCodePoints(0, Math.min(letters, most)));
  }

  /** The last name, each letter one character where that can be. */
  private static String last(Player player) {
    return Normalizer.normalize(player.lastName().orElse(""), Normalizer.Form.NFC);
  }

  private static String number(Player player) {
    return player.number().isPresent() ? Integer.toString(player.number().getAsInt()) : "";
  }

  private static String plain(String text) {
    String apart = Normalizer.normalize(text, Normalizer.Form.NFD);
    return MARKS.matcher(apart).replaceAll("").toLowerCase(Locale.ROOT).strip();
  }

  private static Collection<List<Player>> alike(
      Collection<Player> players, Function<Player, String> key) {
    return players.stream().collect(Collectors.groupingBy(key)).values();
  }
}
