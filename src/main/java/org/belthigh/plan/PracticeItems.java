package org.belthigh.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.belthigh.catalogue.Drill;
import org.belthigh.model.Place;

/** What one player does in a practice: each drill once, its visits added up. */
final class PracticeItems {
  private final DrillChoice choice;
  private final Circuit.Layout layout;
  private final Place place;

  PracticeItems(DrillChoice choice, Circuit.Layout layout, Place place) {
    this.choice = choice;
    this.layout = layout;
    this.place = place;
  }

  /** The drills of {@code entrant}, in the order of their first visit. */
  List<Item> of(Circuit.Entrant entrant) {
    Map<String, Item> items = new LinkedHashMap<>();
    int left = entrant.swingsLeft();
    for (Circuit.Post post : layout.of(entrant)) {
      int swings = Math.min(left, post.swings());
      // whose swings of the day are used up writes at the stations with a bat
      if (post.drill().isPresent() && (post.swings() == 0 || swings > 0)) {
        left -= swings;
        Item item = item(entrant, post, swings);
        items.merge(item.drill(), item, PracticeItems::together);
      }
    }
    return List.copyOf(items.values());
  }

  private Item item(Circuit.Entrant entrant, Circuit.Post post, int swings) {
    Drill drill = post.drill().orElseThrow();
    return new Item(
        drill.id(),
        drill.skill(),
        entrant.decision(drill.skill()).workOn().id(),
        choice.ball(drill, place),
        drill.feed(),
        Told.feet(drill, entrant.age()),
        post.reps() - post.swings() + swings,
        swings,
        layout.rotationMinutes());
  }

  private static Item together(Item a, Item b) {
    return new Item(
        a.drill(),
        a.skill(),
        a.step(),
        a.ball(),
        a.feed(),
        a.feet(),
        a.reps() + b.reps(),
        a.swings() + b.swings(),
        a.minutes() + b.minutes());
  }
}
