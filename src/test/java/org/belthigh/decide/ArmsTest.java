package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Player;
import org.belthigh.model.Bats;
import org.belthigh.model.Origin;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must be so of every log; the single cases lie in {@code rules/arm/tests}. */
class ArmsTest {
  private static final LocalDate MONDAY = LocalDate.of(2026, 4, 6);
  private static final List<String> BOOKS = List.copyOf(RuleCase.CATALOGUE.ruleBooks().keySet());

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  private static ClubRecord record(List<String> books, List<Player> players, List<Outing> outings) {
    Club club =
        new Club(
            "Test Club",
            "letter",
            List.of("en"),
            books,
            LocalDate.of(2026, 3, 1),
            LocalDate.of(2026, 6, 30),
            List.of(new Club.Group("g", "Group", 7, 18, false, 2)),
            "belthigh-2027",
            Map.of(),
            List.of(),
            Optional.empty());
    return new ClubRecord(
        club, players, List.of(), List.of(), List.of(), outings, List.of(), List.of(), List.of(),
        List.of(), List.of());
  }

  private static Player player(String id, LocalDate born) {
    return new Player(
        id,
        "Ana",
        Optional.empty(),
        born,
        Bats.RIGHT,
        Optional.empty(),
        OptionalInt.empty(),
        "g",
        true,
        true,
        Optional.empty(),
        OptionalDouble.empty(),
        "en",
        Set.of(),
        Optional.empty(),
        false);
  }

  private static Outing outing(String player, LocalDate date, int pitches) {
    return new Outing(
        date,
        player,
        pitches,
        Outing.Kind.GAME,
        OptionalInt.empty(),
        OptionalDouble.empty(),
        OptionalInt.empty(),
        "",
        "",
        Origin.of("throws.csv", 2));
  }

  private static List<Player> players(Random random) {
    List<Player> players = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      LocalDate born = LocalDate.of(2008 + i, 1 + random.nextInt(12), 1 + random.nextInt(28));
      players.add(player("p" + i, born));
    }
    return players;
  }

  private static List<Outing> outings(Random random, List<Player> players) {
    List<Outing> outings = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      Player player = players.get(random.nextInt(players.size()));
      LocalDate day = MONDAY.minusDays(random.nextInt(10));
      outings.add(outing(player.id(), day, random.nextInt(100)));
    }
    return outings;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void one_pitch_more_never_brings_a_pitcher_back_earlier(long seed) {
    Random random = new Random(seed);
    List<String> books = List.of(BOOKS.get(random.nextInt(BOOKS.size())));
    List<Player> players = players(random);
    List<Outing> outings = outings(random, players);
    List<Outing> more =
        outings.stream().map(o -> outing(o.player(), o.date(), o.pitches() + 1)).toList();
    Arms arms = new Arms(RuleCase.CATALOGUE);

    List<ArmStatus> few = arms.on(record(books, players, outings), MONDAY);
    List<ArmStatus> many = arms.on(record(books, players, more), MONDAY);

    for (int i = 0; i < few.size(); i++) {
      ArmStatus less = few.get(i);
      assertThat(many.get(i).pitchesLeft()).isLessThanOrEqualTo(less.pitchesLeft());
      if (less.eligibleFrom().isPresent()) {
        assertThat(many.get(i).eligibleFrom().orElseThrow())
            .isAfterOrEqualTo(less.eligibleFrom().get());
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_book_more_never_allows_more_and_both_ages_never_more_than_one(long seed) {
    Random random = new Random(seed);
    List<Player> players = players(random);
    List<Outing> outings = outings(random, players);
    Arms arms = new Arms(RuleCase.CATALOGUE);

    List<ArmStatus> all = arms.on(record(BOOKS, players, outings), MONDAY);

    for (String book : BOOKS) {
      List<ArmStatus> one = arms.on(record(List.of(book), players, outings), MONDAY);
      for (int i = 0; i < all.size(); i++) {
        assertThat(all.get(i).pitchesLeft()).isLessThanOrEqualTo(one.get(i).pitchesLeft());
        assertThat(all.get(i).bothAges().pitchesLeft())
            .isLessThanOrEqualTo(all.get(i).pitchesLeft());
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void the_order_of_the_rows_does_not_matter(long seed) {
    Random random = new Random(seed);
    List<Player> players = players(random);
    List<Outing> outings = outings(random, players);
    Arms arms = new Arms(RuleCase.CATALOGUE);
    List<ArmStatus> expected = arms.on(record(BOOKS, players, outings), MONDAY);

    Collections.shuffle(outings, random);

    assertThat(arms.on(record(BOOKS, players, outings), MONDAY)).isEqualTo(expected);
  }

  /** Whether pitching is allowed as soon as those who must be asked were asked. */
  private static boolean opened(ArmStatus status) {
    return status.answer().opened().mayPitch();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void waiting_until_the_day_that_is_named_is_enough_and_a_day_less_is_not(long seed) {
    Random random = new Random(seed);
    List<Player> players = players(random);
    ClubRecord record = record(List.of("pitch-smart-2018"), players, outings(random, players));
    Arms arms = new Arms(RuleCase.CATALOGUE);

    for (ArmStatus status : arms.on(record, MONDAY)) {
      LocalDate from = status.answer().opened().eligibleFrom().orElseThrow();
      assertThat(opened(on(arms, record, status.player(), from))).isTrue();
      if (from.isAfter(MONDAY)) {
        assertThat(opened(on(arms, record, status.player(), from.minusDays(1)))).isFalse();
      }
    }
  }

  private static ArmStatus on(Arms arms, ClubRecord record, String player, LocalDate day) {
    return arms.on(record, day).stream()
        .filter(s -> s.player().equals(player))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void every_day_of_a_rest_stop_is_barred_and_the_day_after_is_not(long seed) {
    Random random = new Random(seed);
    List<Player> players = players(random);
    ClubRecord record = record(List.of("pitch-smart-2018"), players, outings(random, players));
    Arms arms = new Arms(RuleCase.CATALOGUE);

    for (Hold hold : arms.restHolds(record, MONDAY)) {
      LocalDate until = hold.until().orElseThrow();
      assertThat(until).isAfterOrEqualTo(MONDAY);
      assertThat(opened(on(arms, record, hold.player(), until))).isFalse();
      assertThat(opened(on(arms, record, hold.player(), until.plusDays(1)))).isTrue();
      assertThat(hold.kind()).isEqualTo(Hold.Kind.THROWING);
      assertThat(RuleCase.CATALOGUE.source(hold.source()).id()).isEqualTo("s02");
    }
  }

  @Test
  void the_league_age_of_a_fall_birthday_is_that_of_the_end_of_august() {
    LocalDate born = LocalDate.of(2013, 9, 1);

    assertThat(RuleBook.AgeBasis.LEAGUE_AGE.age(born, LocalDate.of(2026, 5, 4))).isEqualTo(12);
    assertThat(RuleBook.AgeBasis.LEAGUE_AGE.age(born.minusDays(1), LocalDate.of(2026, 5, 4)))
        .isEqualTo(13);
  }
}
