package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ForkJoinPool;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.imageio.ImageIO;
import org.belthigh.audit.Audit;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.files.Output;
import org.belthigh.files.Unwritable;
import org.belthigh.handout.Filed;
import org.belthigh.handout.Handouts;
import org.belthigh.handout.Preview;
import org.belthigh.history.History;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.intake.LaterRow;
import org.belthigh.model.Problem;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
import org.belthigh.words.Words;

/**
 * Plans one club and writes its prints; the same for a club alone and for one of a league. May be
 * shared by threads.
 */
final class ClubPlanning {
  private final Catalogue catalogue;
  private final Words words;
  private final PlanOrder order;
  private final Function<Catalogue, SecondPair> audits;
  private final SecondPair audit;

  ClubPlanning(Catalogue catalogue, PlanOrder order) {
    this(catalogue, order, known -> new Audit(known)::beside);
  }

  ClubPlanning(Catalogue catalogue, PlanOrder order, SecondPair audit) {
    this(catalogue, order, known -> audit);
  }

  private ClubPlanning(
      Catalogue catalogue, PlanOrder order, Function<Catalogue, SecondPair> audits) {
    this.catalogue = catalogue;
    this.words = ClubOptions.words(catalogue);
    this.order = order;
    this.audits = audits;
    this.audit = audits.apply(catalogue);
  }

  /** A second pair of eyes. */
  @FunctionalInterface
  interface SecondPair {
    /**
     * The limits that a plan does not keep.
     *
     * @param file how messages name the plan
     */
    List<Problem> broken(String file, String json, ClubRecord record);
  }

  /** Loads ahead of time, on a core that is idle, what planning needs later. */
  static void warm() {
    ForkJoinPool.commonPool()
        .execute(
            () -> {
              try {
                Planner.warm();
                Handouts.warm();
              } catch (RuntimeException | LinkageError e) {
                // it fails again where it is needed, and is told there
              }
            });
  }

  /** What is asked of each club. */
  PlanOrder order() {
    return order;
  }

  /**
   * What came of it.
   *
   * @param broken limits that the second pair of eyes found not kept; then nothing was written
   * @param problems what was wrong in the input
   */
  record Planned(List<Problem> broken, List<Problem> problems) {
    /** Whether there are prints. */
    boolean printed() {
      return broken.isEmpty();
    }

    /** Says what was wrong. @return the exit status */
    int tell(PrintWriter err) {
      if (printed()) {
        return ClubOptions.report(problems, err);
      }
      broken.forEach(p -> err.println(p.text()));
      err.println("Nothing was printed: this is a fault of belthigh, not of your files.");
      err.println("Please report it with the lines above.");
      return Belthigh.OUR_FAULT;
    }
  }

  /**
   * Plans the club in {@code folder} and writes to {@code out}.
   *
   * @param witness is shown each file as it is put among those to be written; of a plan that is
   *     then refused, too
   * @throws NothingDone if the folder cannot be used at all, or lacks a group or player of the
   *     order
   * @throws Unwritable if nothing can be written, or another run is writing there
   */
  Planned plan(Path folder, Path out, Handouts.Tray witness) throws IOException {
    return plan(folder, out, witness, notice -> {});
  }

  /**
   * The same.
   *
   * @param beforehand is told what will take long, before it begins
   */
  Planned plan(Path folder, Path out, Handouts.Tray witness, Consumer<String> beforehand)
      throws IOException {
    Catalogue own = Intake.catalogue(folder, catalogue);
    return (own.equals(catalogue) ? this : new ClubPlanning(own, order, audits))
        .planned(folder, out, witness, beforehand);
  }

  private Planned planned(Path folder, Path out, Handouts.Tray witness, Consumer<String> beforehand)
      throws IOException {
    List<Problem> problems = new ArrayList<>();
    // both folders are held before anything is read: who is forgotten meanwhile must not come back
    try (Output output = Output.into(out);
        Output diary = diary(folder, problems)) {
      ClubReading reading = new ClubReading(folder, catalogue, order.redact());
      ClubRecord record = held(reading.record());
      Set<String> groups = Groups.named(record, order.groups());
      Set<String> named = reading.named(order.players());
      Crowds.notices(record, groups, named).forEach(beforehand);
      problems.addAll(0, LaterRow.remarks(record, order.from()));
      problems.addAll(0, record.problems());
      History history =
          order.history() ? reading.history(order.from(), problems::add) : History.none();
      PlanRequest request = order.request(groups, named);
      Plan plan = new Planner(catalogue).plan(record, request, history);
      PrintedFiles files = new PrintedFiles();
      Handouts.Tray tray = tray(output, files, witness);
      Audited audited = printedAndAudited(plan, out.resolve("plan.json").toString(), record, tray);
      if (!audited.broken().isEmpty()) {
        return new Planned(audited.broken(), problems);
      }
      files.into(audited.json(), order.prints());
      problems.addAll(new EarlierSheets(out, record, request).settle(audited.json(), output));
      tray.take("plan.json", Json.text(audited.json()).getBytes(StandardCharsets.UTF_8));
      output.commit();
      if (diary != null) {
        keep(plan, diary).ifPresent(problems::add);
      }
      return new Planned(List.of(), problems);
    }
  }

  /** Puts each file aside for the move, and notes each print for the list of {@code plan.json}. */
  private static Handouts.Tray tray(Output output, PrintedFiles files, Handouts.Tray witness) {
    return new Handouts.Tray() {
      private Filed last;

      @Override
      public void take(String path, byte[] bytes) {
        output.put(path, bytes);
        witness.take(path, bytes);
        if (path.endsWith(".png")) {
          files.picture(last, path, bytes);
        }
      }

      @Override
      public void take(Filed filed, byte[] pdf) {
        last = filed;
        take(filed.path(), pdf);
        files.note(filed, pdf);
      }
    };
  }

  /** The folder by its own rule books and by those that the order adds. */
  private ClubRecord held(ClubRecord record) {
    Set<String> all = new LinkedHashSet<>(record.club().ruleBooks());
    all.addAll(order.books());
    return record.by(List.copyOf(all));
  }

  /**
   * A plan as it is read by others.
   *
   * @param broken limits that it does not keep
   */
  private record Audited(ObjectNode json, List<Problem> broken) {}

  /** Prints the plan, and has it read by a second pair of eyes meanwhile. */
  private Audited printedAndAudited(Plan plan, String file, ClubRecord record, Handouts.Tray tray) {
    CompletableFuture<Audited> second =
        CompletableFuture.supplyAsync(() -> audited(plan, file, record));
    try {
      print(plan, tray);
    } catch (RuntimeException e) {
      // what breaks a limit may be what cannot be printed: then the limit is what there is to say
      Optional<Audited> audited = second.handle((a, fault) -> Optional.ofNullable(a)).join();
      return audited.filter(a -> !a.broken().isEmpty()).orElseThrow(() -> e);
    }
    return result(second);
  }

  /** What another thread found, or what it threw. */
  private static <T> T result(CompletableFuture<T> other) {
    try {
      return other.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      if (e.getCause() instanceof Error cause) {
        throw cause;
      }
      throw e;
    }
  }

  private Audited audited(Plan plan, String file, ClubRecord record) {
    ObjectNode json = PlanJson.of(plan, words);
    ObjectNode asked = json.withObject("/asked");
    Groups.named(record, order.groups()).forEach(asked.withArray("groups")::add);
    if (!order.players().isEmpty()) {
      plan.players().forEach(p -> asked.withArray("players").add(p.who().id()));
    }
    order.books().forEach(asked.withArray("books")::add);
    order.language().ifPresent(language -> asked.put("language", language));
    return new Audited(json, audit.broken(file, Json.text(json), record));
  }

  private void print(Plan plan, Handouts.Tray tray) {
    if (order.preview()) {
      // pictures are made in memory: there may be no place for temporary files
      ImageIO.setUseCache(false);
    }
    Handouts handouts = order.large() ? new Handouts(words).large() : new Handouts(words);
    handouts.print(
        plan,
        order.prints(),
        new Handouts.Tray() {
          @Override
          public void take(String path, byte[] bytes) {
            tray.take(path, bytes);
          }

          @Override
          public void take(Filed filed, byte[] pdf) {
            tray.take(filed, pdf);
            if (order.preview()) {
              take(filed.path().replaceFirst("\\.pdf$", ".png"), Preview.png(pdf));
            }
          }
        });
  }

  /**
   * The club folder, held for this run so that no other changes it meanwhile; null where nothing is
   * to be kept, or the folder cannot be written to, which loses the look back only.
   *
   * @throws Unwritable if another run is writing there
   */
  private Output diary(Path folder, List<Problem> problems) {
    if (!order.keeps() || !Files.isDirectory(folder)) {
      return null;
    }
    try {
      return Output.into(folder);
    } catch (Unwritable e) {
      if (e.inUse()) {
        throw e;
      }
      problems.add(notKept(e));
      return null;
    }
  }

  private static Optional<Problem> keep(Plan plan, Output diary) throws IOException {
    try {
      History.keep(diary, plan.handedOut());
      return Optional.empty();
    } catch (Unwritable e) {
      return Optional.of(notKept(e));
    }
  }

  private static Problem notKept(Unwritable why) {
    return Problem.warning(
        why.problem().origin(),
        "",
        "what was handed out could not be kept: " + why.problem().found(),
        "the next plan looks back at what is kept in history",
        why.problem().maybe());
  }
}
