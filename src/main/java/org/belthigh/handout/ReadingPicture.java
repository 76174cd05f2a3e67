package org.belthigh.handout;

import org.belthigh.decide.Evidence;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Length;
import org.belthigh.handout.kit.Pen;
import org.belthigh.model.Phrase;

/**
 * One share against its mark and floor, and how near the proof is to either end.
 *
 * <p>Upper line, 0 to 100 %: the 95 % interval a bar, the estimate a dot, the mark a tall tick, the
 * floor a short one. Lower line: filled from the middle towards the end that the proof leans to.
 */
final class ReadingPicture {
  static final double WIDTH_MM = 56;

  private static final double WIDTH = Length.mm(WIDTH_MM);
  private static final double HEIGHT = 25;
  private static final double SIDE = 4;
  private static final double SHARE_Y = 9;
  private static final double BAND = 5;
  private static final double TALL = 8;
  private static final double SHORT = 4;
  private static final double DOT = 2.5;
  private static final double PROOF_Y = 21;
  private static final double PROOF = 2.5;

  private final TeamPage page;
  private final Evidence.Reading reading;

  ReadingPicture(TeamPage page, Evidence.Reading reading) {
    this.page = page;
    this.reading = reading;
  }

  /** What is counted, where its true share probably lies, and its floor. */
  String inWords() {
    return page.say(
        Phrase.of(
            "overview.why.likely",
            "what",
            Phrase.of("overview.why.counted." + reading.what()),
            "side",
            reading.side().map(s -> s.id()).orElse("both"),
            "low",
            reading.estimate().low(),
            "high",
            reading.estimate().high(),
            "worth",
            Math.round(reading.estimate().effective()),
            "floor",
            reading.floor()));
  }

  private String alternate() {
    double place = reading.place();
    return page.say(
        Phrase.of(
            "overview.why.alt",
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

  void draw(Flow flow) {
    flow.picture(WIDTH, HEIGHT, alternate(), this::draw);
  }

  private void draw(Pen pen) {
    double low = x(reading.estimate().low());
    double high = x(reading.estimate().high());
    pen.line(x(0), SHARE_Y, x(1), SHARE_Y, Pen.Stroke.THIN);
    pen.line(x(0), SHARE_Y - SHORT, x(0), SHARE_Y + SHORT, Pen.Stroke.THIN);
    pen.line(x(1), SHARE_Y - SHORT, x(1), SHARE_Y + SHORT, Pen.Stroke.THIN);
    pen.rect(low, SHARE_Y - BAND / 2, high - low, BAND, Pen.Stroke.THIN);
    pen.line(
        x(reading.floor()),
        SHARE_Y - SHORT,
        x(reading.floor()),
        SHARE_Y + SHORT,
        Pen.Stroke.MEDIUM);
    pen.line(
        x(reading.mark()), SHARE_Y - TALL, x(reading.mark()), SHARE_Y + TALL, Pen.Stroke.THICK);
    pen.dot(x(reading.estimate().value()), SHARE_Y, DOT);
    double middle = x(0.5);
    double end = x((1 + reading.place()) / 2);
    pen.rect(x(0), PROOF_Y - PROOF, x(1) - x(0), 2 * PROOF, Pen.Stroke.THIN);
    pen.line(middle, PROOF_Y - PROOF, middle, PROOF_Y + PROOF, Pen.Stroke.THIN);
    pen.fill(Math.min(middle, end), PROOF_Y - PROOF, Math.abs(end - middle), 2 * PROOF);
  }

  private static double x(double share) {
    return SIDE + share * (WIDTH - 2 * SIDE);
  }
}
