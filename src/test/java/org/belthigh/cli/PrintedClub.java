package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.belthigh.audit.Audit;
import org.belthigh.audit.Papers;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.handout.Filed;
import org.belthigh.handout.Handouts;
import org.belthigh.handout.Print;
import org.belthigh.history.History;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.Problem;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
import org.belthigh.plan.practice.Effort;
import org.belthigh.words.Words;

/**
 * A club that is planned and printed in memory, to be looked at and to be damaged. Its practices
 * are laid out with little effort: what may stand on a sheet does not depend on it.
 */
final class PrintedClub implements Papers {
  private static final Effort LITTLE = new Effort(0.05);

  final TreeMap<String, byte[]> pdfs = new TreeMap<>();
  final ObjectNode json;
  private final Catalogue catalogue;
  private final ClubRecord record;

  private PrintedClub(
      Catalogue catalogue,
      ClubRecord record,
      PlanRequest request,
      boolean large,
      Set<Print> prints) {
    this.catalogue = catalogue;
    this.record = record;
    Words words = ClubOptions.words(catalogue);
    Plan plan = new Planner(catalogue, LITTLE).plan(record, request, History.none());
    PrintedFiles files = new PrintedFiles();
    Handouts handouts = large ? new Handouts(words).large() : new Handouts(words);
    handouts.print(
        plan,
        prints,
        new Handouts.Tray() {
          @Override
          public void take(String path, byte[] pdf) {
            pdfs.put(path, pdf);
          }

          @Override
          public void take(Filed filed, byte[] pdf) {
            take(filed.path(), pdf);
            files.note(filed, pdf);
          }
        });
    json = PlanJson.of(plan, words);
    files.into(json, prints);
  }

  private PrintedClub(PrintedClub from) {
    this.catalogue = from.catalogue;
    this.record = from.record;
    this.json = from.json.deepCopy();
    this.pdfs.putAll(from.pdfs);
  }

  /** One that can be damaged without harm to this. */
  PrintedClub copy() {
    return new PrintedClub(this);
  }

  static PrintedClub usual(Catalogue catalogue, ClubRecord record, PlanRequest request) {
    return new PrintedClub(catalogue, record, request, false, Print.usual());
  }

  static PrintedClub large(Catalogue catalogue, ClubRecord record, PlanRequest request) {
    return new PrintedClub(catalogue, record, request, true, Print.usual());
  }

  static PrintedClub all(Catalogue catalogue, ClubRecord record, PlanRequest request) {
    return new PrintedClub(catalogue, record, request, false, EnumSet.allOf(Print.class));
  }

  /** What is told of the prints, with the club beside them. */
  List<Problem> told() {
    return new Audit(catalogue).papers("plan.json", json.toString(), this, Optional.of(record));
  }

  /** As {@code told}, in words. */
  List<String> said() {
    return told().stream().map(Problem::text).toList();
  }

  /** Puts another file in the place of one, with size and digest made anew. */
  void renewed(String path, byte[] pdf) {
    pdfs.put(path, pdf);
    json.withArray("files")
        .forEach(
            f -> {
              if (f.path("path").asText().equals(path)) {
                ((ObjectNode) f).put("bytes", pdf.length).put("sha256", Fingerprint.of(pdf));
              }
            });
  }

  /** Takes a file away, and its line from the list. */
  void gone(String path) {
    pdfs.remove(path);
    var files = json.withArray("files").elements();
    while (files.hasNext()) {
      if (files.next().path("path").asText().equals(path)) {
        files.remove();
      }
    }
  }

  @Override
  public SortedSet<String> paths() {
    return new TreeSet<>(pdfs.keySet());
  }

  @Override
  public Optional<byte[]> bytes(String path) {
    return Optional.ofNullable(pdfs.get(path));
  }
}
