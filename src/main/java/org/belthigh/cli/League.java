package org.belthigh.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.belthigh.files.Output;

/**
 * A folder of club folders, each planned as if it were alone: what is wrong with one does not stop
 * the others, and one that is finished already is left as it is. Some clubs at a time; what is said
 * and written does not depend on how many.
 */
final class League {
  /** Exit statuses, the strictest last. */
  private static final List<Integer> STRICTER =
      List.of(Belthigh.OK, Belthigh.SET_ASIDE, Belthigh.NOTHING_DONE, Belthigh.OUR_FAULT);

  private final Path folder;
  private final Path out;
  private final ClubPlanning planning;
  private final Finished finished;

  League(Path folder, Path out, ClubPlanning planning) {
    this.folder = folder;
    this.out = out;
    this.planning = planning;
    this.finished = new Finished(out);
  }

  /** What came of one club. */
  private enum Outcome {
    PLANNED,
    FINISHED_BEFORE,
    NOT_DONE
  }

  /** One club's outcome, its exit status, and all that is said of it. */
  private record Told(String club, Outcome outcome, int status, String text) {}

  /**
   * Plans every club, in the order of their names.
   *
   * @param threads clubs at a time, 1 or more
   * @return the strictest exit status of any club
   * @throws NothingDone if there is no club
   * @throws org.belthigh.files.Unwritable if nothing can be written, or another run is writing
   *     there
   */
  int plan(int threads, PrintWriter err) throws IOException {
    List<String> clubs = clubs();
    // nothing is put into it: it keeps other runs out while this one is at work
    Output held = Output.into(out);
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try {
      List<Future<Told>> all = new ArrayList<>();
      clubs.forEach(club -> all.add(workers.submit(() -> told(club))));
      return tell(all, err);
    } finally {
      workers.shutdownNow();
      held.close();
    }
  }

  private List<String> clubs() {
    ClubOptions.refuseMissing(folder, "a folder of club folders");
    if (Files.exists(folder.resolve("club.yaml"))) {
      throw noLeague("it holds club.yaml, so it is a club itself", "Maybe leave --league out.");
    }
    try (Stream<Path> inside = Files.list(folder)) {
      List<String> clubs =
          inside
              .filter(Files::isDirectory)
              .map(club -> club.getFileName().toString())
              .filter(name -> !name.startsWith("."))
              .sorted()
              .toList();
      if (clubs.isEmpty()) {
        throw noLeague("there is no folder in it", "Maybe the path was mistyped.");
      }
      return clubs;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private NothingDone noLeague(String found, String maybe) {
    return new NothingDone(
        folder + ": " + found + "; a league must hold a folder for each club.\n" + maybe);
  }

  private Told told(String club) {
    StringWriter text = new StringWriter();
    PrintWriter err = new PrintWriter(text);
    try {
      return told(club, text, err);
    } catch (IOException | RuntimeException e) {
      err.println(club + ": could not be done");
      return new Told(club, Outcome.NOT_DONE, Belthigh.tell(e, err), text.toString());
    }
  }

  private Told told(String club, StringWriter text, PrintWriter err) throws IOException {
    String input = Finished.input(folder.resolve(club), planning.order());
    Optional<Integer> before = finished.status(club, input);
    if (before.isPresent()) {
      boolean aside = before.get() != Belthigh.OK;
      err.println(
          club
              + ": finished before, and nothing has changed"
              + (aside ? "; some of its input was set aside then" : ""));
      return new Told(club, Outcome.FINISHED_BEFORE, before.get(), text.toString());
    }
    finished.forget(club);
    Map<String, String> files = new TreeMap<>();
    ClubPlanning.Planned planned =
        planning.plan(
            folder.resolve(club),
            out.resolve(club),
            (path, bytes) -> files.put(path, Fingerprint.of(bytes)));
    String written = planned.printed() ? FaultList.count(files.size(), "file", "files") : "nothing";
    err.println(club + ": " + written + " written");
    int status = planned.tell(err);
    if (planned.printed()) {
      finished.note(club, input, status, files);
    }
    Outcome outcome = planned.printed() ? Outcome.PLANNED : Outcome.NOT_DONE;
    return new Told(club, outcome, status, text.toString());
  }

  /** Says club by club what came of it, then all in one line. @return the strictest status */
  private static int tell(List<Future<Told>> all, PrintWriter err) {
    List<String> notDone = new ArrayList<>();
    int planned = 0;
    int strictest = Belthigh.OK;
    for (int i = 0; i < all.size(); i++) {
      Told told = result(all.set(i, null));
      err.print(told.text());
      err.flush();
      planned += told.outcome() == Outcome.PLANNED ? 1 : 0;
      if (told.outcome() == Outcome.NOT_DONE) {
        notDone.add(told.club());
      }
      strictest = stricter(strictest, told.status());
    }
    int before = all.size() - planned - notDone.size();
    err.println(
        FaultList.count(all.size(), "club", "clubs")
            + ": "
            + planned
            + " planned, "
            + before
            + " finished before, "
            + notDone.size()
            + " not done"
            + (notDone.isEmpty() ? "." : ": " + String.join(", ", notDone) + "."));
    return strictest;
  }

  private static Told result(Future<Told> club) {
    try {
      return club.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("The run was interrupted", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("A club brought the whole run down", e.getCause());
    }
  }

  private static int stricter(int one, int other) {
    return Stream.of(one, other).max(Comparator.comparingInt(STRICTER::indexOf)).orElseThrow();
  }
}
