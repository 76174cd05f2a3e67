package org.belthigh.handout;

import java.util.List;
import java.util.stream.Collectors;
import org.belthigh.decide.Evidence;
import org.belthigh.handout.kit.Align;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Length;
import org.belthigh.handout.kit.Pen;
import org.belthigh.model.Phrase;

/**
 * Shares against their marks and floors, one below the other, and how near each proof is to either
 * end.
 *
 * <p>Upper line, 0 to 100 %: the 95 % interval a bar, and in figures beside it, the estimate a dot,
 * the mark a tall tick, the floor a short one. Lower line: filled from the middle towards the end
 * that the proof leans to.
 */
final class ReadingPicture {
  static final double WIDTH_MM = 42;

  private static final double WIDTH = Length.mm(WIDTH_MM);
  private static final double HEIGHT = 18;
  private static final double LIKELY = 44;
  private static final double SIDE = 4;
  private static final double SHARE_Y = 7;
  private static final double BAND = 5;
  private static final double TALL = 6.5;
  private static final double SHORT = 4;
  private static final double DOT = 2.5;
  private static final double PROOF_Y = 15.5;
  private static final double PROOF = 2;

  private final TeamPage page;
  private final List<Evidence.Reading> readings;

  ReadingPicture(TeamPage page, List<Evidence.Reading> readings) {
    this.page = page;
    this.readings = readings;
  }

  void draw(Flow flow) {
    flow.picture(
        WIDTH,
        readings.size() * HEIGHT,
        readings.stream().map(this::alternate).collect(Collectors.joining(" ")),
        pen -> {
          for (int i = 0; i < readings.size(); i++) {
            draw(pen, readings.get(i), i * HEIGHT);
          }
        });
  }

  private String alternate(Evidence.Reading reading) {
    double place = reading.place();
    return page.say(
        Phrase.of(
            "overview.why.alt",
            "what",
            Phrase.of("overview.why.counted." + reading.what()),
            "side",
            reading.side().map(s -> s.id()).orElse("both"),
            "low",
            reading.estimate().low(),
            "high",
            reading.estimate().high(),
            "value",
            reading.estimate().value(),
            "mark",
            reading.mark(),
            "floor",
            reading.floor(),
            "way",
            place < 0 ? "down" : "up",
            "part",
            Math.abs(place)));
  }

  private void draw(Pen pen, Evidence.Reading reading, double top) {
    share(pen, reading, top + SHARE_Y);
    double y = top + PROOF_Y - PROOF;
    double middle = x(0.5);
    double end = x((1 + reading.place()) / 2);
    pen.rect(x(0), y, x(1) - x(0), 2 * PROOF, Pen.Stroke.THIN);
    pen.line(middle, y, middle, y + 2 * PROOF, Pen.Stroke.THIN);
    pen.fill(Math.min(middle, end), y, Math.abs(end - middle), 2 * PROOF);
  }

  private void share(Pen pen, Evidence.Reading reading, double y) {
    double low = x(reading.estimate().low());
    double high = x(reading.estimate().high());
    pen.line(x(0), y, x(1), y, Pen.Stroke.THIN);
    tick(pen, 0, y, SHORT, Pen.Stroke.THIN);
    tick(pen, 1, y, SHORT, Pen.Stroke.THIN);
    pen.rect(low, y - BAND / 2, high - low, BAND, Pen.Stroke.THIN);
    tick(pen, reading.floor(), y, SHORT, Pen.Stroke.MEDIUM);
    tick(pen, reading.mark(), y, TALL, Pen.Stroke.THICK);
    pen.dot(x(reading.estimate().value()), y, DOT);
    pen.smallLabel(
        WIDTH,
        y,
        Align.RIGHT,
        page.say(
            "overview.why.likely",
            "low",
            reading.estimate().low(),
            "high",
            reading.estimate().high()));
  }

  private static void tick(Pen pen, double share, double y, double half, Pen.Stroke stroke) {
    pen.line(x(share), y - half, x(share), y + half, stroke);
  }

  private static double x(double share) {
    return SIDE + share * (WIDTH - LIKELY - 2 * SIDE);
  }
}
