package org.belthigh.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.Drill;
import org.belthigh.intake.Intake;
import org.belthigh.model.Feed;
import org.belthigh.model.Phrase;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The lists to toss by at the stations of the demo club's practices. */
class StationListsTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static List<PracticeSheet.Post> posts;
  private static Plan plan;

  private static Plan plan() throws Exception {
    PlanRequest request =
        new PlanRequest(
            LocalDate.of(2027, 4, 5), 1, Set.of(), Set.of(), Optional.empty(), Optional.empty());
    return new Planner(CATALOGUE).plan(Intake.read(Path.of("demo-players"), CATALOGUE), request);
  }

  @BeforeAll
  static void layOut() throws Exception {
    plan = plan();
    posts =
        plan.groups().stream()
            .flatMap(g -> g.practices().stream())
            .flatMap(p -> p.rotations().stream())
            .flatMap(r -> r.posts().stream())
            .filter(p -> !p.drill().isEmpty())
            .toList();
  }

  private static Drill drill(PracticeSheet.Post post) {
    return CATALOGUE.curricula().get("belthigh-2027").drill(post.drill());
  }

  @Test
  void each_hitter_has_a_toss_for_each_toss_where_a_person_tosses_and_none_elsewhere() {
    assertThat(posts).hasSizeGreaterThan(20);
    Set<Feed> feeds = new HashSet<>();
    for (PracticeSheet.Post post : posts) {
      Feed feed = drill(post).feed();
      feeds.add(feed);
      boolean aimed = feed == Feed.FLIP || feed == Feed.FRONT_TOSS || feed == Feed.OVERHAND;
      assertThat(post.hitters())
          .allSatisfy(h -> assertThat(h.tosses()).hasSize(aimed ? post.tossesEach() : 0));
    }
    assertThat(feeds).contains(Feed.FRONT_TOSS, Feed.TEE);
  }

  @Test
  void lists_differ_from_hitter_to_hitter_and_are_the_same_when_printed_again() throws Exception {
    List<List<Phrase>> lists = new ArrayList<>();
    posts.forEach(p -> p.hitters().forEach(h -> lists.add(h.tosses())));
    List<List<Phrase>> longer = lists.stream().filter(l -> l.size() >= 6).toList();

    assertThat(new HashSet<>(longer)).hasSizeGreaterThan(longer.size() * 9 / 10);
    assertThat(plan().groups()).isEqualTo(plan.groups());
  }

  /** A quarter to a half of the tosses of a choosing drill are balls to let go, over all lists. */
  @Test
  void balls_keep_the_share_that_the_drill_gives_them() {
    int balls = 0;
    int tosses = 0;
    double expected = 0;
    for (PracticeSheet.Post post : posts) {
      for (PracticeSheet.Hitter hitter : post.hitters()) {
        balls += (int) hitter.tosses().stream().filter(t -> t.toString().contains("ball-")).count();
        tosses += hitter.tosses().size();
        expected += hitter.tosses().size() * drill(post).mix().ball() / 100.0;
      }
    }
    double deviation = Math.sqrt(expected * (1 - expected / tosses));

    assertThat(tosses).isGreaterThan(300);
    assertThat(Math.abs(balls - expected)).isLessThan(4 * deviation);
  }
}
