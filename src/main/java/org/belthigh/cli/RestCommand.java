package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.belthigh.decide.ArmStatus;
import org.belthigh.decide.Arms;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.LocalText;
import org.belthigh.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/**
 * {@code belthigh rest}. Another rule book is shown beside the club's own, to compare; it loosens
 * nothing, since what the club's own books forbid is said with it.
 */
@Command(
    name = "rest",
    mixinStandardHelpOptions = true,
    description = "Who may pitch and catch on a day, how much, and from when if not.",
    footer = {
      "",
      "Examples:",
      "  belthigh rest demo-players --on 2027-04-05",
      "  belthigh rest demo-players --on 2027-04-05 --days 7 --book little-league-reg-vi"
    })
final class RestCommand implements Callable<Integer> {
  private static final int MOST_DAYS = 14;

  @Mixin private ClubOptions club;
  @Spec private CommandSpec spec;

  @Option(names = "--on", paramLabel = "DATE", description = "The day; today.")
  private LocalDate on;

  @Option(
      names = "--days",
      paramLabel = "N",
      defaultValue = "1",
      description = "So many days from that one, 1 to 14, by what is known on the first; 1.")
  private int days;

  @Option(
      names = "--book",
      paramLabel = "ID",
      description =
          "Show what another rule book says, to compare; may be repeated. The club still goes by"
              + " its own.")
  private List<String> books = new ArrayList<>();

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  /** The day of which everything is whole. */
  private LocalDate first;

  @Override
  public Integer call() {
    if (days < 1 || days > MOST_DAYS) {
      refuse("--days must be 1 to " + MOST_DAYS + ", not " + days);
    }
    Books.refuseUnknown(spec, club.catalogue(), books);
    first = on == null ? club.today() : on;
    ClubRecord record = club.read();
    Arms arms = new Arms(club.catalogue());
    Words words = club.words();
    PrintWriter out = spec.commandLine().getOut();
    List<LocalDate> asked = first.datesUntil(first.plusDays(days)).toList();
    if (json) {
      json(record, asked, arms, words, out);
    } else {
      asked.forEach(day -> print(record, day, arms, words, out));
      out.println(
          "Thrown or caught anywhere since? Then this does not count. The league's rules and a"
              + " doctor's word come first.");
    }
    return ClubOptions.report(record, first, spec.commandLine().getErr());
  }

  private void refuse(String message) {
    throw new ParameterException(spec.commandLine(), message);
  }

  /** The folder by the books that are shown. */
  private ClubRecord shown(ClubRecord whole) {
    return books.isEmpty() ? whole : whole.by(books.stream().distinct().toList());
  }

  private void json(
      ClubRecord whole, List<LocalDate> asked, Arms arms, Words words, PrintWriter out) {
    List<ObjectNode> all = asked.stream().map(day -> json(whole, day, arms, words)).toList();
    if (all.size() == 1) {
      Json.print(all.get(0), out);
      return;
    }
    ObjectNode root = all.get(0).objectNode();
    ArrayNode list = root.putArray("days");
    all.forEach(list::add);
    Json.print(root, out);
  }

  private ObjectNode json(ClubRecord whole, LocalDate day, Arms arms, Words words) {
    ClubRecord shown = shown(whole);
    ObjectNode node =
        RestJson.of(
            day,
            shown.club().ruleBooks(),
            arms.on(shown, first, day),
            p -> words.say(p, LocalText.FALLBACK));
    if (!books.isEmpty()) {
      node.set(
          "club",
          RestJson.of(
              day,
              whole.club().ruleBooks(),
              arms.on(whole, first, day),
              p -> words.say(p, LocalText.FALLBACK)));
    }
    return node;
  }

  private void print(ClubRecord whole, LocalDate day, Arms arms, Words words, PrintWriter out) {
    ClubRecord shown = shown(whole);
    out.println("Throwing on " + day + ", by " + String.join(" and ", shown.club().ruleBooks()));
    if (!books.isEmpty()) {
      out.println(
          "To compare only: the club goes by " + String.join(" and ", whole.club().ruleBooks()));
    }
    Map<String, ArmStatus> own =
        books.isEmpty()
            ? Map.of()
            : arms.on(whole, first, day).stream()
                .collect(Collectors.toMap(ArmStatus::player, Function.identity()));
    for (ArmStatus status : arms.on(shown, first, day)) {
      out.println(
          status.player()
              + " "
              + shown.player(status.player()).firstName()
              + ": "
              + says(status)
              + "; outings known to "
              + status.knownTo().map(LocalDate::toString).orElse("no day"));
      status.because().forEach(r -> out.println("  " + words.say(r.phrase(), LocalText.FALLBACK)));
      ArmStatus clubs = own.get(status.player());
      if (clubs != null && !says(clubs).equals(says(status))) {
        out.println("  By the club's own rules: " + says(clubs) + ".");
      }
    }
  }

  private static String says(ArmStatus status) {
    ArmStatus.Answer open = status.answer().opened();
    String pitch =
        status.askFirst()
            ? askFirst(open)
            : open.mayPitch()
                ? "may pitch, " + open.pitchesLeft() + " at most"
                : "no pitching" + before(open);
    return pitch + "; " + (status.mayCatch() ? "may catch" : "no catching");
  }

  private static String askFirst(ArmStatus.Answer open) {
    return open.mayPitch()
        ? "no pitching until asked; if nothing was thrown, " + open.pitchesLeft() + " at most"
        : "no pitching" + before(open) + ", and not until asked";
  }

  private static String before(ArmStatus.Answer open) {
    return open.eligibleFrom().map(from -> " before " + from).orElse("");
  }
}
