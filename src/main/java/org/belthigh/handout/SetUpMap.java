package org.belthigh.handout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.belthigh.handout.kit.Align;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Pen;
import org.belthigh.model.Ball;
import org.belthigh.model.Feed;
import org.belthigh.model.Side;
import org.belthigh.plan.HomeSheet;

/**
 * A home session's set-up from above, to scale: plate, hitter, who tosses, the ring around the bat
 * and the free ground. Without a bat there is no ring and no free ground to keep.
 */
final class SetUpMap {
  static final double WIDTH = ZonePicture.NARROW;

  /** Feet shown behind a plate where nobody swings. */
  private static final double BEHIND = 7;

  /** Distance of such a plate from the left edge, in points. */
  private static final double STILL = 36;

  private static final double EDGE = 8;
  private static final double WORDS = 14;
  private static final double LINE = 14;

  private final HomeSheet sheet;
  private final Voice voice;
  private final double height;
  private final double scale;
  private final double plateX;
  private final double plateY;
  private final double wordsX;

  /**
   * A map.
   *
   * @param height in points; sets the scale
   */
  SetUpMap(HomeSheet sheet, double height, Voice voice) {
    this.sheet = sheet;
    this.voice = voice;
    this.height = height;
    double front =
        swing() ? Math.max(sheet.clearFeet(), 2 * sheet.ringFeet()) : sheet.drill().feet();
    double back = swing() ? sheet.ringFeet() : BEHIND;
    this.scale = (height - 2 * EDGE) / (front + back);
    this.plateX = swing() ? sheet.ringFeet() * scale + 1 : STILL;
    this.plateY = EDGE + front * scale;
    this.wordsX = 2 * plateX + WORDS;
  }

  /** Whether there is nothing to set up: no bat, and nobody who tosses. */
  boolean isEmpty() {
    return !swing() && !tossed();
  }

  void addTo(Flow flow) {
    flow.picture(WIDTH, height, alternate(), this::draw);
  }

  private boolean tossed() {
    return sheet.drill().feet() > 0;
  }

  /** Whether a ball is hit, and not the air. */
  private boolean hit() {
    return sheet.drill().ball() != Ball.NONE;
  }

  private boolean swing() {
    return sheet.drill().swing();
  }

  private void draw(Pen pen) {
    List<Note> notes = new ArrayList<>();
    if (swing()) {
      ring(pen, notes);
    }
    plate(pen);
    hitter(pen);
    if (tossed()) {
      tosser(pen, notes);
    }
    write(pen, notes);
  }

  /** Lines of words beside the map, and the point that they are about. */
  private record Note(double x, double y, List<String> lines) {
    Note(double x, double y, String... lines) {
      this(x, y, Stream.of(lines).filter(l -> !l.isEmpty()).toList());
    }

    double height() {
      return lines.size() * LINE;
    }
  }

  /** Writes notes at the right from top to bottom, each as near its point as the others let it. */
  private void write(Pen pen, List<Note> notes) {
    List<Note> order = notes.stream().sorted(Comparator.comparingDouble(Note::y)).toList();
    double[] top = new double[order.size()];
    double free = 0;
    for (int i = 0; i < top.length; i++) {
      top[i] = Math.max(free, order.get(i).y() - LINE / 2);
      free = top[i] + order.get(i).height();
    }
    double bottom = height;
    for (int i = top.length - 1; i >= 0; i--) {
      top[i] = Math.min(top[i], bottom - order.get(i).height());
      bottom = top[i];
    }
    for (int i = 0; i < top.length; i++) {
      write(pen, order.get(i), top[i]);
    }
  }

  private void write(Pen pen, Note note, double top) {
    double line = top + LINE / 2;
    pen.line(note.x(), note.y(), wordsX - 3, line, Pen.Stroke.THIN);
    for (String words : note.lines()) {
      pen.label(wordsX, line, Align.LEFT, words);
      line += LINE;
    }
  }

  private void ring(Pen pen, List<Note> notes) {
    double radius = sheet.ringFeet() * scale;
    pen.circle(plateX, plateY, radius, Pen.Stroke.DASHED);
    if (hit()) {
      free(pen, notes, radius);
    }
    double slant = radius * Math.sqrt(0.5);
    notes.add(
        new Note(
            plateX + slant,
            plateY + slant,
            voice.say("home.map.ring"),
            voice.distance(sheet.ringFeet())));
  }

  /** The ground in front that a ball needs. */
  private void free(Pen pen, List<Note> notes, double radius) {
    double end = plateY - sheet.clearFeet() * scale;
    pen.line(plateX - radius, plateY, plateX - radius, end, Pen.Stroke.THIN);
    pen.line(plateX + radius, plateY, plateX + radius, end, Pen.Stroke.THIN);
    pen.line(plateX - radius, end, plateX + radius, end, Pen.Stroke.THIN);
    notes.add(
        new Note(
            plateX + radius, end, voice.say("home.map.free"), voice.distance(sheet.clearFeet())));
  }

  /** Home plate, its point to the back; drawn at least so large that it is seen. */
  private void plate(Pen pen) {
    double half = Math.max(4, 0.71 * scale);
    pen.shape(
        Pen.Stroke.MEDIUM,
        true,
        plateX - half,
        plateY - half,
        plateX + half,
        plateY - half,
        plateX + half,
        plateY,
        plateX,
        plateY + half,
        plateX - half,
        plateY);
  }

  private boolean right() {
    return sheet.picture().side() == Side.RIGHT;
  }

  private void hitter(Pen pen) {
    double x = plateX + (right() ? -1 : 1) * Math.max(13, 2.5 * scale);
    pen.circle(x, plateY, 5, Pen.Stroke.THICK);
    pen.label(plateX, plateY + 15, Align.CENTRE, voice.say("home.map.hitter"));
  }

  /** Straight in front; beside and in front for a flip. */
  private void tosser(Pen pen, List<Note> notes) {
    double feet = sheet.drill().feet() * scale;
    boolean side = sheet.drill().feed() == Feed.FLIP;
    double across = side ? (right() ? 1 : -1) * feet * Math.sqrt(0.75) : 0;
    double x = plateX + across;
    double y = plateY - (side ? feet / 2 : feet);
    pen.arrow(x, y, plateX + across * 0.2, plateY - (plateY - y) * 0.2, Pen.Stroke.THIN);
    pen.dot(x, y, 5);
    notes.add(
        new Note(
            x + 7,
            y,
            voice.say("home.map.tosser"),
            voice.distance(sheet.drill().feet()),
            sheet.eyes() ? voice.say("home.map.screen") : ""));
  }

  private String alternate() {
    List<String> parts = new ArrayList<>();
    parts.add(voice.say(right() ? "home.alt.right" : "home.alt.left"));
    if (tossed()) {
      parts.add(voice.say("home.alt.tosser", "distance", voice.distance(sheet.drill().feet())));
    }
    if (sheet.eyes()) {
      parts.add(voice.say("home.alt.screen"));
    }
    if (swing()) {
      parts.add(voice.say("home.alt.ring", "ring", voice.distance(sheet.ringFeet())));
    }
    if (swing() && hit()) {
      parts.add(voice.say("home.alt.free", "free", voice.distance(sheet.clearFeet())));
    }
    return String.join(" ", parts);
  }
}
