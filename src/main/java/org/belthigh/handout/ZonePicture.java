package org.belthigh.handout;

import java.util.ArrayList;
import java.util.List;
import org.belthigh.handout.kit.Align;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Pen;
import org.belthigh.model.Bats;
import org.belthigh.model.Column;
import org.belthigh.model.Grain;
import org.belthigh.model.Row;
import org.belthigh.model.Side;
import org.belthigh.model.Spot;
import org.belthigh.plan.SpotPicture;

/**
 * The strike zone, the plate and the hitter, to one scale, at the grain the child works at.
 *
 * <p>The hitter is drawn beside the plate, so that "in" is seen to be next to them; heights and
 * rows stand on the other side. The same drawing, mirrored, is the view of who tosses.
 */
final class ZonePicture {
  /** Width of home plate, in centimetres: 17 inches. */
  private static final double PLATE_CM = 43.2;

  /** Top of the head over the top of the zone, in the batting stance; for the drawing only. */
  private static final double HEAD = 1.38;

  /** Widths that such a picture needs, in points: up to 170 high, and up to 140 high. */
  static final double WIDE = 244;

  static final double NARROW = 222;

  private static final double BELOW_GROUND = 21;
  private static final double ABOVE_HEAD = 3;
  private static final double FIGURE = 25;
  private static final double BESIDE_FIGURE = 28;
  private static final double HEIGHTS = 5;
  private static final double ROWS = 42;

  /** Whose eyes the picture is drawn for. */
  enum View {
    HITTER("picture.hitter"),
    TOSSER("picture.tosser");

    private final String key;

    View(String key) {
      this.key = key;
    }
  }

  private final SpotPicture picture;
  private final View view;
  private final double width;
  private final double height;
  private final Voice voice;
  private final double scale;
  private final double ground;

  /**
   * A picture.
   *
   * @param width in points
   * @param height in points; sets the scale
   */
  ZonePicture(SpotPicture picture, View view, double width, double height, Voice voice) {
    this.picture = picture;
    this.view = view;
    this.width = width;
    this.height = height;
    this.voice = voice;
    this.ground = height - BELOW_GROUND;
    this.scale = (ground - ABOVE_HEAD) / (top() * HEAD);
  }

  /** Says whose view it is, then draws it. */
  void addTo(Flow flow) {
    flow.together(
        part -> part.p(voice.say(view.key)).picture(width, height, alternate(), this::draw));
  }

  /** What is to be known beside the drawing: a hitter's other side, a height that was guessed. */
  String notes(Bats bats) {
    List<String> notes = new ArrayList<>();
    if (bats == Bats.SWITCH) {
      notes.add(voice.say("picture.switch"));
    }
    if (picture.estimated()) {
      notes.add(voice.say("picture.estimated"));
    }
    return String.join(" ", notes);
  }

  /** The spots to look for, as words in a row; empty where there are none. */
  List<String> lookFor() {
    return picture.lookFor().stream().map(spot -> voice.say("target." + spot)).toList();
  }

  private boolean hitterLeft() {
    return (picture.side() == Side.RIGHT) == (view == View.HITTER);
  }

  private double top() {
    return picture.heightsCm().get(3);
  }

  /** Distance from the hitter's edge of the picture to the page's x. */
  private double x(double fromHitter) {
    return hitterLeft() ? fromHitter : width - fromHitter;
  }

  private double y(double cm) {
    return ground - cm * scale;
  }

  private double zone() {
    return 2 * FIGURE + BESIDE_FIGURE;
  }

  private double plate() {
    return PLATE_CM * scale;
  }

  private Align outward() {
    return hitterLeft() ? Align.LEFT : Align.RIGHT;
  }

  private Align inward() {
    return hitterLeft() ? Align.RIGHT : Align.LEFT;
  }

  private void draw(Pen pen) {
    pen.line(0, ground, width, ground, Pen.Stroke.THIN);
    hitter(pen);
    plate(pen);
    hatch(pen);
    lines(pen);
    heights(pen);
    if (columns()) {
      columnWords(pen);
    }
    if (picture.grain() == Grain.STRIKE) {
      double middle = (picture.heightsCm().get(0) + top()) / 2;
      pen.boldLabel(x(zone() + plate() / 2), y(middle), Align.CENTRE, voice.say("target.strike"));
    }
  }

  private boolean rows() {
    return picture.grain() == Grain.ROW || picture.grain() == Grain.NINE;
  }

  private boolean columns() {
    return picture.grain() == Grain.COLUMN || picture.grain() == Grain.NINE;
  }

  private void hatch(Pen pen) {
    for (Spot spot : Spot.values()) {
      if (spot.strike() && picture.lookFor().contains(picture.grain().seen(spot))) {
        int row = spot.row().orElseThrow().ordinal();
        int column = spot.column().orElseThrow().ordinal();
        double near = zone() + column * plate() / 3;
        double left = Math.min(x(near), x(near + plate() / 3));
        double above = y(picture.heightsCm().get(row + 1));
        pen.hatch(left, above, plate() / 3, y(picture.heightsCm().get(row)) - above);
      }
    }
  }

  private void lines(Pen pen) {
    double near = x(zone());
    double far = x(zone() + plate());
    double low = y(picture.heightsCm().get(0));
    double high = y(top());
    pen.rect(Math.min(near, far), high, plate(), low - high, Pen.Stroke.THICK);
    for (int i = 1; i <= 2 && rows(); i++) {
      double line = y(picture.heightsCm().get(i));
      pen.line(near, line, far, line, Pen.Stroke.MEDIUM);
    }
    for (int i = 1; i <= 2 && columns(); i++) {
      double line = x(zone() + i * plate() / 3);
      pen.line(line, low, line, high, Pen.Stroke.MEDIUM);
    }
    pen.line(near, low, near, ground, Pen.Stroke.DASHED);
    pen.line(far, low, far, ground, Pen.Stroke.DASHED);
  }

  private void heights(Pen pen) {
    double edge = zone() + plate();
    for (int i = 0; i < 4; i++) {
      if (rows() || i == 0 || i == 3) {
        double cm = picture.heightsCm().get(i);
        pen.label(x(edge + HEIGHTS), y(cm), outward(), voice.height(cm));
      }
    }
    if (rows()) {
      for (Row row : Row.values()) {
        int i = row.ordinal();
        double middle = (picture.heightsCm().get(i) + picture.heightsCm().get(i + 1)) / 2;
        String word = voice.say("picture.row." + row.id());
        pen.boldLabel(x(edge + ROWS), y(middle), outward(), word);
      }
    } else {
      pen.label(x(edge + ROWS), y(top()), outward(), voice.say("picture.chest"));
      double knee = y(picture.heightsCm().get(0));
      pen.label(x(edge + ROWS), knee, outward(), voice.say("picture.knee"));
    }
  }

  private void columnWords(Pen pen) {
    double line = y(picture.heightsCm().get(0)) + 11;
    double middle = zone() + plate() / 2;
    String middleWord = voice.say("target.middle");
    double clear = pen.labelWidth(middleWord) / 2 + 6;
    pen.label(x(middle), line, Align.CENTRE, middleWord);
    pen.label(x(middle - clear), line, inward(), voice.say("target.in"));
    pen.label(x(middle + clear), line, outward(), voice.say("target.away"));
  }

  /** The plate on the ground: its point is towards the hitter's eyes, its front to who tosses. */
  private void plate(Pen pen) {
    double near = x(zone());
    double far = x(zone() + plate());
    double middle = (near + far) / 2;
    double back = ground + 3;
    double front = ground + 15;
    if (view == View.HITTER) {
      pen.shape(
          Pen.Stroke.MEDIUM,
          false,
          near,
          back,
          far,
          back,
          far,
          back + 5,
          middle,
          front,
          near,
          back + 5);
    } else {
      pen.shape(
          Pen.Stroke.MEDIUM,
          false,
          near,
          front,
          far,
          front,
          far,
          front - 5,
          middle,
          back,
          near,
          front - 5);
    }
  }

  private void hitter(Pen pen) {
    double knee = picture.heightsCm().get(0);
    double hip = knee + 0.42 * (top() - knee);
    double shoulder = 1.04 * top();
    double foot = 0.16 * top() * scale;
    double bent = 0.13 * top() * scale;
    pen.polyline(
        Pen.Stroke.THICK,
        x(FIGURE - foot),
        ground,
        x(FIGURE - bent),
        y(knee),
        x(FIGURE - 3),
        y(hip),
        x(FIGURE + bent),
        y(knee),
        x(FIGURE + foot),
        ground);
    pen.line(x(FIGURE - 3), y(hip), x(FIGURE), y(shoulder), Pen.Stroke.THICK);
    double hand = FIGURE - 0.17 * top() * scale;
    pen.polyline(
        Pen.Stroke.THICK,
        x(FIGURE),
        y(shoulder),
        x(FIGURE + 3),
        y(0.9 * top()),
        x(hand),
        y(1.02 * top()));
    if (picture.bat()) {
      pen.line(x(hand), y(1.02 * top()), x(hand - 5), y(1.34 * top()), Pen.Stroke.THICK);
    }
    pen.circle(x(FIGURE + 2), y(1.23 * top()), 0.13 * top() * scale, Pen.Stroke.THICK);
  }

  private String alternate() {
    List<String> parts = new ArrayList<>();
    parts.add(voice.say(view.key));
    parts.add(voice.say(hitterLeft() ? "picture.alt.left" : "picture.alt.right"));
    if (!picture.bat()) {
      parts.add(voice.say("picture.alt.no-bat"));
    }
    parts.add(
        voice.say(
            "picture.alt.zone",
            "low",
            voice.height(picture.heightsCm().get(0)),
            "high",
            voice.height(top())));
    if (rows()) {
      parts.add(
          voice.say(
              "picture.alt.rows",
              "low",
              voice.height(picture.heightsCm().get(1)),
              "belt",
              voice.height(picture.heightsCm().get(2))));
    }
    if (columns()) {
      parts.add(
          voice.say(
              "picture.alt.columns",
              "in",
              voice.say("target." + Column.IN.id()),
              "middle",
              voice.say("target." + Column.MIDDLE.id()),
              "away",
              voice.say("target." + Column.AWAY.id())));
    }
    if (!picture.lookFor().isEmpty()) {
      parts.add(voice.say("picture.look", "spots", String.join("; ", lookFor())));
    }
    return String.join(" ", parts);
  }
}
