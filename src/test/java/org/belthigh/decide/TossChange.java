package org.belthigh.decide;

import java.util.Optional;
import java.util.OptionalDouble;
import org.belthigh.intake.Toss;
import org.belthigh.model.Ball;
import org.belthigh.model.Feed;
import org.belthigh.model.Hit;
import org.belthigh.model.Origin;

/** A toss with some of its cells changed. */
final class TossChange {
  private final Toss toss;
  private Optional<Hit> hit;
  private Optional<Ball> ball;
  private Optional<Feed> feed;
  private OptionalDouble feet;
  private String by;
  private Origin origin;

  private TossChange(Toss toss) {
    this.toss = toss;
    hit = toss.hit();
    ball = toss.ball();
    feed = toss.feed();
    feet = toss.feet();
    by = toss.by();
    origin = toss.origin();
  }

  static TossChange of(Toss toss) {
    return new TossChange(toss);
  }

  TossChange hit(Hit other) {
    hit = Optional.of(other);
    return this;
  }

  TossChange ball(Ball other) {
    ball = Optional.of(other);
    return this;
  }

  TossChange feed(Feed other) {
    feed = Optional.of(other);
    return this;
  }

  TossChange feet(double other) {
    feet = OptionalDouble.of(other);
    return this;
  }

  TossChange by(String other) {
    by = other;
    return this;
  }

  TossChange origin(Origin other) {
    origin = other;
    return this;
  }

  Toss done() {
    return new Toss(
        toss.date(),
        toss.player(),
        toss.drill(),
        toss.kind(),
        toss.startCount(),
        toss.watched(),
        toss.round(),
        toss.order(),
        toss.side(),
        toss.zone(),
        toss.nearEdge(),
        toss.called(),
        toss.field(),
        toss.swing(),
        hit,
        toss.went(),
        toss.timing(),
        ball,
        feed,
        feet,
        toss.place(),
        by,
        origin);
  }
}
