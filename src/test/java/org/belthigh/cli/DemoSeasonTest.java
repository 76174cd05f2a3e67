package org.belthigh.cli;

import java.nio.file.Path;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.model.Skill;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoSeasonTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();

  @Test
  void tryout(@TempDir Path folder) throws Exception {
    long t = System.nanoTime();
    DemoSeason.Played p =
        new DemoSeason(CATALOGUE, folder, Long.getLong("seed", 20270301))
            .play(Path.of("demo-players"));
    System.out.println("secs " + (System.nanoTime() - t) / 1e9);
    for (DemoSeason.Week w : p.weeks()) {
      w.faults().forEach(f -> System.out.println(f.text()));
      w.found().forEach(System.out::println);
      System.out.println(
          w.monday()
              + " "
              + w.tosses().values().stream()
                  .flatMap(m -> m.values().stream())
                  .mapToInt(i -> i)
                  .sum());
    }
    for (String id : p.children().keySet()) {
      StringBuilder s = new StringBuilder(id + " " + p.children().get(id).pace());
      for (Skill k : Skill.values()) {
        s.append("\n    ")
            .append(k.id())
            .append(String.format(" %.1f ", p.children().get(id).ability(k)));
        s.append(
            p.weeks().stream()
                .map(w -> w.of(id).decisions().get(k.ordinal()))
                .map(
                    d ->
                        d.next().orElse(d.step()).replaceAll("\\D", "")
                            + "mkfn".charAt(d.outcome().ordinal()))
                .collect(Collectors.joining(" ")));
        s.append("  tosses ")
            .append(
                p.weeks().stream()
                    .map(
                        w ->
                            "" + w.tosses().getOrDefault(id, java.util.Map.of()).getOrDefault(k, 0))
                    .collect(Collectors.joining(" ")));
      }
      System.out.println(s);
    }
    org.belthigh.words.Words words = ClubOptions.words(CATALOGUE);
    for (DemoSeason.Week w : p.weeks())
      for (String id : java.util.List.of("p17", "p18", "p06")) {
        System.out.println("STORY " + id + " " + w.monday());
        for (var k : w.of(id).weeks())
          System.out.println("   week " + k.kind() + " " + k.says().map(x -> words.say(x, "en")));
        w.of(id)
            .back()
            .ifPresent(b -> System.out.println("   back " + words.say(b.sentence(), "en")));
        for (var d : w.of(id).decisions())
          System.out.println(
              "   "
                  + d.skill().id()
                  + " "
                  + d.outcome()
                  + " "
                  + words.say(d.because(), "en")
                  + " | "
                  + d.settles().map(x -> words.say(x, "en")).orElse(""));
        for (var d : w.of(id).days())
          System.out.println(
              "   "
                  + d.date()
                  + " "
                  + d.place().id()
                  + " "
                  + d.items().stream().map(i -> i.drill() + " " + i.reps()).toList()
                  + " "
                  + d.note().map(x -> words.say(x, "en")).orElse(""));
        for (var h : w.of(id).holds())
          System.out.println("   hold " + words.say(h.because(), "en"));
      }
    for (DemoSeason.Week w : p.weeks())
      for (var pl : w.plan().players())
        for (var d : pl.days())
          for (var i : d.items())
            System.out.println(
                "ITEM,"
                    + w.monday()
                    + ","
                    + pl.who().id()
                    + ","
                    + d.date()
                    + ","
                    + d.place().id()
                    + ","
                    + i.skill().id()
                    + ","
                    + i.step()
                    + ","
                    + i.drill()
                    + ","
                    + i.reps()
                    + ","
                    + i.swings());
  }
}
