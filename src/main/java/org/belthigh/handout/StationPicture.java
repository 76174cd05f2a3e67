package org.belthigh.handout;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.belthigh.handout.kit.Align;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Pen;
import org.belthigh.model.Place;
import org.belthigh.plan.PracticeSheet;

/** The stations of a practice seen from above: rings, screens, who stands where. Not to scale. */
final class StationPicture {
  private static final int ABREAST = 3;
  private static final double WIDTH = 168;
  private static final double HEIGHT = 94;
  private static final double RING = 26;
  private static final double PLATE_X = 40;
  private static final double PLATE_Y = 44;
  private static final double WAITING_Y = 82;
  private static final double PLAYER = 3.5;

  private final TeamPage page;
  private final PracticeSheet sheet;

  private StationPicture(TeamPage page, PracticeSheet sheet) {
    this.page = page;
    this.sheet = sheet;
  }

  /** The picture; empty where there is no station. */
  static Optional<StationPicture> of(TeamPage page, PracticeSheet sheet) {
    return sheet.stations().isEmpty()
        ? Optional.empty()
        : Optional.of(new StationPicture(page, sheet));
  }

  void draw(Flow flow) {
    List<PracticeSheet.Station> stations = sheet.stations();
    int rows = (stations.size() + ABREAST - 1) / ABREAST;
    String each = stations.stream().map(this::inWords).collect(Collectors.joining(" "));
    flow.picture(
        Math.min(stations.size(), ABREAST) * WIDTH,
        rows * HEIGHT,
        page.say("practice.setup.alt", "stations", each),
        pen -> {
          for (int i = 0; i < stations.size(); i++) {
            int row = i / ABREAST;
            station(pen, stations.get(i), i % ABREAST * WIDTH, row * HEIGHT);
          }
        });
  }

  private String inWords(PracticeSheet.Station station) {
    if (station.adult().isEmpty()) {
      String where = station.fields() ? ".fields" : cage() ? ".alone.cage" : ".alone";
      return page.say("practice.setup.alt" + where, "number", station.number());
    }
    String key =
        !station.swings() ? "calls" : station.screen() ? "swings" : near(station) ? "near" : "open";
    return page.say(
        "practice.setup.alt." + key,
        "number",
        station.number(),
        "adult",
        station.adult().get(),
        "ring",
        sheet.ring());
  }

  private boolean cage() {
    return sheet.ground() == Place.CAGE;
  }

  /** Whether who tosses stands inside the ring. */
  private boolean near(PracticeSheet.Station station) {
    return station.feet() > 0 && station.feet() < sheet.ringFeet();
  }

  private void station(Pen pen, PracticeSheet.Station station, double x, double y) {
    pen.boldLabel(
        x + 1, y + 8, Align.LEFT, page.say("practice.station", "number", station.number()));
    if (station.adult().isEmpty()) {
      watching(pen, station, x, y);
      return;
    }
    plate(pen, x + PLATE_X, y + PLATE_Y);
    if (station.swings()) {
      pen.circle(x + PLATE_X, y + PLATE_Y, RING, Pen.Stroke.DASHED);
      String ring = page.say("practice.setup.ring", "ring", sheet.ring());
      pen.label(x + WIDTH - 4, y + 8, Align.RIGHT, ring);
    }
    double tosser = x + (near(station) ? PLATE_X + RING - 2 * PLAYER : 102);
    if (station.screen()) {
      double screen = tosser - 2 * PLAYER;
      pen.line(screen, y + PLATE_Y - 13, screen, y + PLATE_Y + 13, Pen.Stroke.THICK);
      pen.label(
          x + (near(station) ? 60 : 86),
          y + PLATE_Y - 22,
          Align.LEFT,
          page.say("practice.setup.screen"));
    }
    pen.dot(tosser, y + PLATE_Y, PLAYER);
    pen.label(
        x + (near(station) ? 74 : 110), y + PLATE_Y, Align.LEFT, page.say(station.adult().get()));
    pen.circle(x + PLATE_X - 6, y + WAITING_Y, PLAYER, Pen.Stroke.MEDIUM);
    pen.circle(x + PLATE_X + 6, y + WAITING_Y, PLAYER, Pen.Stroke.MEDIUM);
    pen.label(x + PLATE_X + 16, y + WAITING_Y, Align.LEFT, page.say("practice.setup.waits"));
  }

  /** Home plate, its point to the left, away from who tosses; the hitter beside it. */
  private static void plate(Pen pen, double x, double y) {
    double half = 4;
    pen.shape(
        Pen.Stroke.THIN,
        true,
        x + half,
        y - half,
        x + half,
        y + half,
        x,
        y + half,
        x - half,
        y,
        x,
        y - half);
    pen.circle(x, y + 13, PLAYER, Pen.Stroke.MEDIUM);
  }

  private void watching(Pen pen, PracticeSheet.Station station, double x, double y) {
    if (station.fields()) {
      fielding(pen, x, y);
      return;
    }
    pen.line(x + 8, y + PLATE_Y, x + 86, y + PLATE_Y, Pen.Stroke.THICK);
    pen.label(
        x + 92,
        y + PLATE_Y,
        Align.LEFT,
        page.say(cage() ? "practice.setup.cage" : "practice.setup.fence"));
    for (int i = 0; i < 4; i++) {
      pen.circle(x + 14 + 14 * i, y + PLATE_Y + 16, PLAYER, Pen.Stroke.MEDIUM);
    }
    pen.label(x + 70, y + PLATE_Y + 16, Align.LEFT, page.say("practice.setup.watch"));
  }

  private void fielding(Pen pen, double x, double y) {
    for (int i = 0; i < 4; i++) {
      pen.circle(x + 14 + 20 * i, y + PLATE_Y + (i % 2 == 0 ? 0 : 14), PLAYER, Pen.Stroke.MEDIUM);
    }
    String does = cage() ? "practice.setup.writes" : "practice.setup.fields";
    pen.label(x + 92, y + PLATE_Y, Align.LEFT, page.say(does));
  }
}
