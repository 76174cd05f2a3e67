package org.belthigh.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.belthigh.measure.Calls;
import org.belthigh.measure.Choose;
import org.belthigh.measure.Detection;
import org.belthigh.measure.Drive;
import org.belthigh.measure.FieldCalls;
import org.belthigh.measure.HardHits;
import org.belthigh.measure.MarkAgreement;
import org.belthigh.measure.PlayerMeasures;
import org.belthigh.measure.See;
import org.belthigh.measure.Send;
import org.belthigh.measure.Skills;
import org.belthigh.model.Field;
import org.belthigh.model.Grain;
import org.belthigh.model.Share;
import org.belthigh.model.Side;

/** The measures of one player in plain words, on a terminal. */
final class MeasureText {
  private static final String NOTHING = "nothing seen";
  private static final Map<Grain, String> GRAINS =
      Map.of(
          Grain.STRIKE, "strike or ball",
          Grain.ROW, "low, belt or high",
          Grain.COLUMN, "in, middle or away",
          Grain.NINE, "one of nine spots");

  private final PrintWriter out;

  private MeasureText(PrintWriter out) {
    this.out = out;
  }

  static void print(String firstName, PlayerMeasures measures, PrintWriter out) {
    out.println(measures.player() + " " + firstName);
    MeasureText text = new MeasureText(out);
    text.line("calls right", told(measures.zoneRecognition().calls()));
    text.line("belt-high tosses let go", told(measures.middleTake()));
    text.line("balls swung at", told(measures.ballSwing()));
    OptionalDouble mean = measures.countdown().mean();
    text.line("countdown, mean swings", mean.isPresent() ? number(mean) : NOTHING);
    text.line("sent where called", told(measures.fieldCalls().swings()));
    text.skills(measures.skills(), true);
    for (Side side : Side.values()) {
      if (measures.bySide().containsKey(side)) {
        out.println("  batting " + (side == Side.LEFT ? "left" : "right"));
        text.skills(measures.bySide().get(side), false);
      }
    }
  }

  /** How far two people who marked the same tosses agree; nothing where nobody did. */
  static void print(MarkAgreement marks, PrintWriter out) {
    if (marks.tosses() == 0) {
      return;
    }
    out.println("marked by two people: " + marks.tosses() + " tosses");
    MeasureText text = new MeasureText(out);
    text.agreed("same spot", marks.zone());
    text.agreed("same on a swing", marks.swing());
    text.agreed("same on hard or not", marks.hard());
  }

  private void agreed(String what, MarkAgreement.Agreed agreed) {
    line(what, told(agreed.same()) + kappa(agreed.kappa()));
  }

  private void skills(Skills skills, boolean whole) {
    see(skills.see(), whole);
    choose(skills.choose());
    drive(skills.drive());
    send(skills.send());
  }

  private void see(See see, boolean whole) {
    int spots = see.at(Grain.NINE).all().exact().seen();
    for (Grain grain : Grain.values()) {
      See.Reading reading = see.at(grain);
      Calls calls = reading.all();
      boolean half = grain == Grain.ROW || grain == Grain.COLUMN;
      if (calls.exact().isEmpty() || (half && calls.exact().seen() == spots)) {
        continue; // no calls, or none but those of spots, which are told as such
      }
      line("see: " + GRAINS.get(grain), told(calls.exact()) + blind(calls) + kappa(calls.kappa()));
      if (!whole) {
        continue;
      }
      if (grain != Grain.STRIKE && !calls.oneOff().isEmpty()) {
        line("  one off", told(calls.oneOff()) + ", of tosses over the nine");
      }
      line("  ball from strike", apart(calls.ballOrStrike()));
      line("  without a swing", told(reading.onTakes().exact()) + blind(reading.onTakes()));
      line("  after a swing", told(reading.onSwings().exact()) + blind(reading.onSwings()));
    }
  }

  private static String kappa(OptionalDouble kappa) {
    return kappa.isPresent()
        ? String.format(Locale.ROOT, "; kappa %.2f (0 is blind)", kappa.getAsDouble())
        : "";
  }

  /** What one would score who does not look. */
  private static String blind(Calls calls) {
    return calls
        .mix()
        .commonest()
        .map(
            answer ->
                "; always \""
                    + answer
                    + "\": "
                    + percent(calls.mix().alwaysCommonest().orElseThrow()))
        .orElse("");
  }

  private void choose(Choose choose) {
    Detection swing = choose.swing();
    if (swing.hits().isEmpty() && swing.falseAlarms().isEmpty()) {
      return;
    }
    line("choose: swings, belt-high", told(swing.hits()));
    line("  swings, balls", told(swing.falseAlarms()));
    line("  belt-high from ball", apart(swing));
    if (choose.exempt() + choose.nearEdge() + choose.watched() > 0) {
      line(
          "  left out",
          choose.exempt()
              + " not wanted by the called field, "
              + choose.nearEdge()
              + " near the edge, "
              + choose.watched()
              + " only watched");
    }
  }

  private void drive(Drive drive) {
    if (drive.hits().isEmpty()) {
      return;
    }
    HardHits.Likely likely = drive.hits().likely();
    line(
        "drive: hit hard, likely",
        String.format(
            Locale.ROOT,
            "%s (90 %%: %.0f to %s), from %d swings; rounds: %d finished, %d not",
            percent(likely.mean()),
            100 * likely.low(),
            percent(likely.high()),
            drive.hits().swings(),
            drive.finished(),
            drive.unfinished()));
    Drive.Timings timing = drive.timing();
    if (timing.seen() > 0) {
      line(
          "  timing",
          timing.early() + " early, " + timing.on() + " on time, " + timing.late() + " late");
    }
  }

  private void send(Send send) {
    if (send.all().swings().isEmpty()) {
      return;
    }
    line("send: swings", told(send.all().swings()) + chance(send));
    if (!send.all().firstTry().isEmpty()) {
      line("  first try", told(send.all().firstTry()) + chance(send));
    }
    for (Field.Direction direction : Field.Direction.values()) {
      FieldCalls calls = send.byDirection().get(direction);
      if (calls != null) {
        line("  to the " + way(direction), told(calls.swings()));
      }
    }
    Share suited = send.suited().values().stream().reduce(Share.none(), Share::plus);
    if (!suited.isEmpty()) {
      line("  at a spot that suits", told(suited));
    }
  }

  private static String way(Field.Direction direction) {
    return switch (direction) {
      case PULL -> "pull side";
      case CENTER -> "center";
      case OPPOSITE -> "opposite field";
    };
  }

  private static String chance(Send send) {
    OptionalDouble chance = send.chance();
    return chance.isPresent()
        ? "; chance, " + send.fieldsInPlay() + " fields: " + percent(chance.getAsDouble())
        : "";
  }

  private static String apart(Detection detection) {
    OptionalDouble dPrime = detection.dPrime();
    return dPrime.isPresent()
        ? "d-prime " + String.format(Locale.ROOT, "%.2f", dPrime.getAsDouble()) + " (0 is chance)"
        : "both sorts must be seen";
  }

  private static String told(Share share) {
    return share.isEmpty()
        ? NOTHING
        : String.format(
            Locale.ROOT,
            "%d of %d = %.0f %% (95 %%: %.0f to %.0f %%)",
            share.made(),
            share.seen(),
            100 * share.value(),
            100 * share.low(),
            100 * share.high());
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }

  private static String number(OptionalDouble value) {
    return String.format(Locale.ROOT, "%.1f", value.getAsDouble());
  }

  private void line(String what, String told) {
    out.printf(Locale.ROOT, "  %-28s %s%n", what, told);
  }
}
