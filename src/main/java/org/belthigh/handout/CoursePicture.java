package org.belthigh.handout;

import java.util.List;
import java.util.stream.Collectors;
import org.belthigh.handout.kit.Align;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Pen;
import org.belthigh.model.Share;
import org.belthigh.plan.SeasonReport;

/**
 * How one share moved from stretch to stretch: a bar where the true share probably lies (95 %,
 * source: wilson-1927), a dot where it was counted. 0 at the foot, 100 % at the head.
 */
final class CoursePicture {
  private static final double WIDTH = 244;
  private static final double LEFT = 34;
  private static final double TOP = 6;
  private static final double SCALE = 60;
  private static final double DAYS = 18;
  private static final double DAYS_Y = 11;
  private static final double BAR = 9;
  private static final double DOT = 2.6;
  private static final double WIDEST = 60;

  private final Voice voice;
  private final SeasonReport.Course course;
  private final double foot;

  CoursePicture(Voice voice, SeasonReport.Course course, Fit fit) {
    this.voice = voice;
    this.course = course;
    this.foot = TOP + fit.of(SCALE);
  }

  void addTo(Flow flow) {
    flow.h3(voice.say("season.course." + course.what()));
    flow.picture(WIDTH, foot + DAYS, alternate(), this::draw);
    flow.small(counts());
  }

  /** The counts themselves, stretch by stretch. */
  private String counts() {
    return course.points().stream().map(this::count).collect(Collectors.joining(" "));
  }

  private String count(SeasonReport.Point point) {
    return voice.say(
        "season.point",
        "day",
        point.first(),
        "made",
        point.share().made(),
        "seen",
        point.share().seen());
  }

  private String alternate() {
    return course.points().stream()
        .map(
            p ->
                voice.say(
                    "season.point.alt",
                    "day",
                    p.first(),
                    "value",
                    p.share().value(),
                    "low",
                    p.share().low(),
                    "high",
                    p.share().high()))
        .collect(Collectors.joining(" "));
  }

  private void draw(Pen pen) {
    for (double share : List.of(0.0, 0.5, 1.0)) {
      pen.line(LEFT, y(share), WIDTH, y(share), Pen.Stroke.THIN);
      pen.smallLabel(LEFT - 4, y(share), Align.RIGHT, voice.say("season.percent", "share", share));
    }
    double wide = Math.min(WIDEST, (WIDTH - LEFT) / course.points().size());
    for (int i = 0; i < course.points().size(); i++) {
      SeasonReport.Point point = course.points().get(i);
      double x = LEFT + (i + 0.5) * wide;
      share(pen, x, point.share());
      pen.smallLabel(
          x, foot + DAYS_Y, Align.CENTRE, voice.say("season.week.of", "day", point.first()));
    }
  }

  private void share(Pen pen, double x, Share share) {
    double height = y(share.low()) - y(share.high());
    pen.hatch(x - BAR / 2, y(share.high()), BAR, height);
    pen.rect(x - BAR / 2, y(share.high()), BAR, height, Pen.Stroke.THIN);
    pen.dot(x, y(share.value()), DOT);
  }

  private double y(double share) {
    return foot - share * (foot - TOP);
  }
}
