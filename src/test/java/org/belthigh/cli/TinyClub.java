package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.belthigh.audit.Audit;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.Problem;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
import org.belthigh.plan.practice.Effort;

/**
 * A club of four with a little of everything, planned for two weeks and printed once: Ada pitches
 * and rests, Bea has a sore arm, Cy had his cleared and reads Spanish, Dov is ill from the second
 * week on. Small, so that the auditor has looked through plan and prints in a moment.
 */
final class TinyClub {
  static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  static final LocalDate FROM = LocalDate.of(2027, 4, 5);
  private static final int WEEKS = 2;
  private static final double LITTLE = 0.05;

  private static final List<String> ROSTER =
      List.of(
          "id,first_name,born,bats,throws,number,group,pitches,catches,language,home_space",
          "a1,Ada,2017-01-05,R,R,4,u10,yes,yes,en,yard",
          "b1,Bea,2016-11-02,L,R,7,u10,yes,no,en,yard",
          "c1,Cy,2016-09-20,R,R,12,u10,no,no,es,yard",
          "d1,Dov,2017-02-11,R,R,15,u10,no,no,en,hallway");

  private static final List<String> CALENDAR =
      List.of(
          "date,group,kind,start,minutes,hitting_minutes,adults,place",
          "2027-03-30,u10,practice,17:30,90,40,3,field",
          "2027-04-06,u10,practice,17:30,90,40,3,field",
          "2027-04-08,u10,practice,17:30,90,40,2,cage",
          "2027-04-10,u10,game,10:00,90,,3,field",
          "2027-04-13,u10,practice,17:30,90,40,3,field",
          "2027-04-17,u10,tournament,09:00,300,,3,field");

  private static final List<String> OUTINGS =
      List.of(
          "date,player,pitches,kind,innings_caught",
          "2027-04-03,a1,36,game,",
          "2027-03-28,b1,10,game,",
          "2027-04-07,a1,0,game,");

  private static final List<String> WELLNESS =
      List.of(
          "date,player,kind,clears,by",
          "2027-04-02,b1,arm-pain,,",
          "2027-03-20,c1,arm-pain,,",
          "2027-04-04,c1,cleared,arm-pain,physician",
          "2027-04-12,d1,illness,,");

  /** Read once. */
  private static final class Held {
    private static final ClubRecord RECORD = read();
  }

  /** Printed once. */
  private static final class Prints {
    private static final PrintedClub PRINTED = PrintedClub.usual(CATALOGUE, record(), request());
  }

  /** Planned once with little search, and not printed. */
  private static final class Plans {
    private static final ObjectNode PLAN = planned();
  }

  private TinyClub() {}

  private static PlanRequest request() {
    return new PlanRequest(FROM, WEEKS, Set.of(), Set.of(), Optional.empty(), Optional.empty());
  }

  private static ObjectNode planned() {
    Planner planner = new Planner(CATALOGUE, new Effort(LITTLE));
    ObjectNode plan = PlanJson.of(planner.plan(record(), request()), ClubOptions.words(CATALOGUE));
    new PrintedFiles().into(plan, Set.of());
    return plan;
  }

  private static ClubRecord read() {
    try {
      Path folder = Files.createTempDirectory("tiny-club");
      try {
        return read(folder);
      } finally {
        try (Stream<Path> files = Files.walk(folder)) {
          files.sorted(Comparator.reverseOrder()).forEach(f -> f.toFile().delete());
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static ClubRecord read(Path folder) throws IOException {
    Files.writeString(
        folder.resolve("club.yaml"),
        """
        name: Tern Inlet Youth Baseball
        paper: letter
        languages: [en, es]
        rule_book: pitch-smart-2018
        season: {first: "2027-03-01", last: "2027-05-24"}
        groups:
          - {id: u10, name: Under 10, age: [9, 10], tossers: 3}
        equipment: {tees: 3, screens: 2, nets: 1, plastic_balls: 48, foam_balls: 18, tennis_balls: 24, baseballs: 60, helmets: 14, cones: 20}
        places:
          - {id: field, name: Heron Field, kind: field, address: "4 Inlet Road", aed: "Shed", stations: 4}
          - {id: cage, name: Boat Shed Cage, kind: cage, address: "7 Quay Lane", aed: "Desk", stations: 2}
        emergency: {call: "911", who: head coach on duty, note: "Coordinator: 555-0142"}
        """);
    Files.write(folder.resolve("roster.csv"), ROSTER);
    Files.write(folder.resolve("calendar.csv"), CALENDAR);
    Files.write(folder.resolve("throws.csv"), OUTINGS);
    Files.write(folder.resolve("wellness.csv"), WELLNESS);
    Files.createDirectory(folder.resolve("logs"));
    Files.write(folder.resolve("logs/march.csv"), logs());
    return new ClubReading(folder, CATALOGUE, false).record();
  }

  /** Ada called strike or ball rightly forty times; one row is about nobody. */
  private static List<String> logs() {
    List<String> rows = new ArrayList<>(List.of("date,player,drill,round,toss,zone,called,swing"));
    for (int i = 1; i <= 40; i++) {
      rows.add("2027-03-30,a1,zone-call,1," + i + (i % 2 == 0 ? ",5,strike,no" : ",ball,ball,no"));
    }
    rows.add("2027-03-30,z9,zone-call,1,1,5,strike,no");
    return rows;
  }

  static ClubRecord record() {
    return Held.RECORD;
  }

  /** A plan and its prints, which may be damaged. */
  static PrintedClub printed() {
    return Prints.PRINTED.copy();
  }

  /** A plan without prints, which may be damaged. */
  static ObjectNode plan() {
    return Plans.PLAN.deepCopy();
  }

  /** What the auditor says of a plan beside the club. */
  static List<String> beside(ObjectNode plan, ClubRecord record) {
    return new Audit(CATALOGUE)
        .beside("plan.json", plan.toString(), record).stream().map(Problem::text).toList();
  }
}
