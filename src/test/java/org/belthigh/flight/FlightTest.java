package org.belthigh.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.SplittableRandom;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.belthigh.model.Ball;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Source: section c of the hitting-science reference: ball constants, ten worked cases, pitch times
 * by age (quadratic drag, no spin, 20 °C at sea level), recomputed here by two methods.
 */
class FlightTest {
  private static final double FOOT = 0.3048;

  private static Projectile ball(String name) {
    return switch (name) {
      case "baseball" -> Projectile.of(Ball.BASEBALL).orElseThrow();
      case "large" -> Projectile.of(Ball.PLASTIC).orElseThrow();
      case "small" -> new Projectile(0.0243, 0.0743, 0.33);
      case "light" -> new Projectile(0.020, 0.0738, 0.45);
      case "tennis" -> Projectile.of(Ball.TENNIS).orElseThrow();
      case "foam" -> Projectile.of(Ball.FOAM).orElseThrow();
      default -> throw new IllegalArgumentException(name);
    };
  }

  @ParameterizedTest
  @CsvSource({
    "baseball, 0.007089, 37.193, 0.9652",
    "large,    0.048336, 14.244, 0.7853",
    "small,    0.035446, 16.633, 0.8376",
    "light,    0.05794,  13.01,  0.7485",
    "tennis,   0.020231, 22.017, 0.9038",
    "foam,     0.057919, 13.012, 0.7486"
  })
  void balls_lose_speed_as_published(String name, double k, double terminal, double kept) {
    assertThat(ball(name).k()).isCloseTo(k, within(1e-6));
    assertThat(ball(name).terminalSpeed()).isCloseTo(terminal, within(1e-3));
    assertThat(ball(name).kept(5)).isCloseTo(kept, within(1e-4));
  }

  @ParameterizedTest
  @CsvSource({
    "baseball, 60, 2.5,  1.7, 14.5034, 0.57009, 0.793,  24.5415,  9.998",
    "baseball, 50, 3.5,  1.5, 12.192,  0.57084, 0.6931, 20.8636, 11.371",
    "baseball, 40, 6.5,  1.3, 10.8204, 0.63308, 0.6171, 16.9495, 14.009",
    "baseball, 75, 1.0,  1.8, 16.3068, 0.51571, 0.8295, 30.1557,  8.119",
    "large,    25, 8.0,  0.9, 4.5,     0.45448, 0.5896,  9.3038, 17.296",
    "large,    20, 19.5, 0.8, 4.5,     0.59795, 0.7624,  7.3362, 23.182",
    "small,    25, 7.5,  0.9, 4.5,     0.44048, 0.59,    9.8262, 16.282",
    "light,    22, 14.5, 0.9, 5.0,     0.61042, 0.5325,  7.8417, 25.523",
    "tennis,   25, 9.0,  0.9, 5.0,     0.4768,  0.6141, 10.3713, 16.06",
    "foam,     20, 14.5, 0.8, 4.0,     0.52083, 0.6024,  7.3861, 22.268"
  })
  void the_ten_worked_cases(
      String name,
      double mph,
      double degrees,
      double from,
      double metres,
      double seconds,
      double height,
      double speed,
      double descent) {
    Flight flight = Flight.of(ball(name), Launch.mph(mph, degrees, from), metres).orElseThrow();

    assertThat(flight.seconds()).isCloseTo(seconds, within(1e-4));
    assertThat(flight.height()).isCloseTo(height, within(1e-3));
    assertThat(flight.speed()).isCloseTo(speed, within(1e-3));
    assertThat(flight.descent()).isCloseTo(descent, within(0.01));
  }

  @Test
  void an_adaptive_integrator_of_order_8_agrees() {
    SplittableRandom random = new SplittableRandom(5);
    Ball[] balls = {Ball.PLASTIC, Ball.FOAM, Ball.TENNIS, Ball.BASEBALL, Ball.SOFTBALL};
    for (int i = 0; i < 200; i++) {
      Projectile ball = Projectile.of(balls[i % balls.length]).orElseThrow();
      Launch launch =
          Launch.mph(
              random.nextDouble(15, 60), random.nextDouble(-5, 35), random.nextDouble(0.5, 2));
      double metres = random.nextDouble(3, 8);
      Optional<Flight> ours = Flight.of(ball, launch, metres);
      double[] theirs = reference(ball, launch, metres);

      assertThat(ours.isPresent()).isEqualTo(theirs[2] > 0);
      if (ours.isPresent()) {
        assertThat(ours.get().seconds()).isCloseTo(theirs[0], within(1e-8));
        assertThat(ours.get().height()).isCloseTo(theirs[2], within(1e-7));
        assertThat(ours.get().descent())
            .isCloseTo(Math.toDegrees(Math.atan2(-theirs[4], theirs[3])), within(1e-6));
      }
    }
  }

  /** Seconds, way, height and the two parts of the speed at the plate, by Dormand and Prince. */
  private static double[] reference(Projectile ball, Launch launch, double metres) {
    FirstOrderDifferentialEquations equations =
        new FirstOrderDifferentialEquations() {
          @Override
          public int getDimension() {
            return 4;
          }

          @Override
          public void computeDerivatives(double t, double[] y, double[] slope) {
            double drag = ball.k() * Math.hypot(y[2], y[3]);
            slope[0] = y[2];
            slope[1] = y[3];
            slope[2] = -drag * y[2];
            slope[3] = -drag * y[3] - 9.80665;
          }
        };
    DormandPrince853Integrator integrator =
        new DormandPrince853Integrator(1e-9, 0.05, 1e-12, 1e-12);
    integrator.addEventHandler(
        new EventHandler() {
          @Override
          public void init(double t0, double[] y0, double t) {}

          @Override
          public double g(double t, double[] y) {
            return y[0] - metres;
          }

          @Override
          public Action eventOccurred(double t, double[] y, boolean increasing) {
            return Action.STOP;
          }

          @Override
          public void resetState(double t, double[] y) {}
        },
        0.01,
        1e-12,
        200);
    double angle = Math.toRadians(launch.degrees());
    double[] end = new double[4];
    double seconds =
        integrator.integrate(
            equations,
            0,
            new double[] {
              0, launch.height(), launch.speed() * Math.cos(angle), launch.speed() * Math.sin(angle)
            },
            6,
            end);
    return new double[] {seconds, end[0], end[0] < metres - 1e-6 ? -1 : end[1], end[2], end[3]};
  }

  @ParameterizedTest
  @CsvSource({
    "35, 10.846, 0.7205, 12.4, 15.9, 22.0",
    "43, 12.522, 0.6812, 13.1, 16.8, 23.3",
    "52, 12.217, 0.5490, 16.3, 20.8, 28.9",
    "60, 14.503, 0.5695, 15.7, 20.1, 27.8",
    "68, 16.332, 0.5696, 15.7, 20.1, 27.8",
    "74, 16.332, 0.5234, 17.1, 21.9, 30.3"
  })
  void a_plastic_ball_from_nearby_takes_as_long_as_a_pitch_of_the_age(
      double pitch, double metres, double seconds, double from12, double from15, double from20) {
    Projectile baseball = ball("baseball");
    double speed = Launch.mph(pitch, 0, 1).speed();

    assertThat(baseball.levelSpeed(metres, 1) / speed).isCloseTo(seconds, within(1e-4));
    assertThat(tossMph(12, seconds)).isCloseTo(from12, within(0.06));
    assertThat(tossMph(15, seconds)).isCloseTo(from15, within(0.06));
    assertThat(tossMph(20, seconds)).isCloseTo(from20, within(0.06));
  }

  private static double tossMph(int feet, double seconds) {
    return new Launch(ball("large").levelSpeed(feet * FOOT, seconds), 0, 1).mph();
  }

  @Test
  void a_ball_that_comes_to_the_ground_first_has_no_flight() {
    assertThat(Flight.of(ball("large"), Launch.mph(10, 0, 0.9), 6)).isEmpty();
    assertThat(Flight.of(ball("foam"), Launch.mph(30, 89, 0.9), 6)).isEmpty();
  }

  @Test
  void what_cannot_be_is_refused() {
    assertThatThrownBy(() -> new Projectile(0, 0.07, 0.4))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Launch(0, 0, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThat(Projectile.of(Ball.NONE)).isEmpty();
  }
}
