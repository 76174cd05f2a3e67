package org.belthigh.audit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Unusable;
import org.belthigh.model.Problem;
import org.belthigh.words.Words;

/**
 * A club of two for the auditor: Ada (a1) of 10, who has a hallway at home, and Bo (b1) of 14, each
 * in a group of its own with one tosser, and plans of two weeks from a Monday on. The calendar has
 * one practice late in the season, so that none are assumed.
 */
final class SmallClub {
  static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();

  /** All that sheets say, the reasons of rules among it. */
  static final Words WORDS =
      Words.load(
          CATALOGUE.rules().entrySet().stream()
              .collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue().reason())));

  /** A Monday. */
  static final LocalDate FROM = LocalDate.of(2027, 4, 5);

  static final Limits LIMITS = new Limits(CATALOGUE, FROM);

  private static final List<String> FOUR = List.of("see", "choose", "drive", "send");

  private final Path folder;
  private final List<String> calendar =
      new ArrayList<>(
          List.of(
              "date,group,kind,minutes,hitting_minutes,adults",
              "2027-05-20,u10,practice,,,",
              "2027-05-20,u14,practice,,,"));

  SmallClub(Path folder) throws IOException {
    this.folder = folder;
    Files.writeString(
        folder.resolve("club.yaml"),
        """
        name: Two Files
        rule_book: pitch-smart-2018
        season: {first: "2027-03-01", last: "2027-05-24"}
        groups:
          - {id: u10, name: Under 10, age: [9, 10], tossers: 1}
          - {id: u14, name: Under 14, age: [13, 14], tossers: 1}
        """);
    Files.writeString(
        folder.resolve("roster.csv"),
        """
        id,first_name,born,bats,group,pitches,catches,home_space
        a1,Ada,2017-01-05,R,u10,yes,yes,hallway
        b1,Bo,2013-02-05,R,u14,yes,no,yard
        """);
  }

  /** Rows of {@code date,group,kind,minutes,hitting_minutes,adults}. */
  SmallClub calendar(String... rows) {
    calendar.addAll(List.of(rows));
    return this;
  }

  /** With a calendar of nothing, so that practices are assumed. */
  SmallClub noCalendar() {
    calendar.subList(1, calendar.size()).clear();
    return this;
  }

  /** A file with its header and rows. */
  SmallClub with(String name, String... lines) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.write(file, List.of(lines));
    return this;
  }

  /** A stricter number of the club's own. */
  SmallClub stricter(String line) throws IOException {
    Path file = folder.resolve("club.yaml");
    Files.writeString(file, Files.readString(file) + "stricter: {" + line + "}\n");
    return this;
  }

  /** Other rule books than that of the small club, such as {@code [pony-2018, mshsl-2017]}. */
  SmallClub books(String books) throws IOException {
    Path file = folder.resolve("club.yaml");
    Files.writeString(
        file, Files.readString(file).replaceFirst("rule_book: .*", "rule_book: " + books));
    return this;
  }

  private SmallClub also(String yaml) throws IOException {
    Path file = folder.resolve("club.yaml");
    Files.writeString(
        file, Files.readString(file).replaceFirst("(?m)^groups:", yaml + "\ngroups:"));
    return this;
  }

  /** What it owns, in place of what it said before, such as {@code tees: 2}. */
  SmallClub equipment(String things) throws IOException {
    Path file = folder.resolve("club.yaml");
    Files.writeString(file, Files.readString(file).replaceFirst("(?m)^equipment:.*\n", ""));
    return also("equipment: {" + things + "}");
  }

  /** Its fields and cages, one in braces each. */
  SmallClub places(String... places) throws IOException {
    return also("places: [" + String.join(", ", places) + "]");
  }

  /** Rows of {@code date,group,kind,minutes,hitting_minutes,adults,place}. */
  SmallClub withPlace(String... rows) {
    if (!calendar.get(0).endsWith(",place")) {
      calendar.replaceAll(row -> row + ",");
      calendar.set(0, calendar.get(0) + "place");
    }
    return calendar(rows);
  }

  /** Its younger group plays softball. */
  SmallClub softball() throws IOException {
    Path file = folder.resolve("club.yaml");
    Files.writeString(
        file, Files.readString(file).replace("age: [9, 10],", "age: [9, 10], sport: softball,"));
    return this;
  }

  ClubRecord record() throws IOException, Unusable {
    return whole().upTo(FROM);
  }

  /** With the rows dated after the first planned day. */
  ClubRecord whole() throws IOException, Unusable {
    Files.write(folder.resolve("calendar.csv"), calendar);
    return Intake.read(folder, CATALOGUE);
  }

  static LocalDate april(int day) {
    return LocalDate.of(2027, 4, day);
  }

  static FinishedPlan.Person ada(FinishedPlan.Dated... days) {
    return new FinishedPlan.Person("a1", "u10", 10, FOUR, List.of(), List.of(days), false);
  }

  static FinishedPlan.Person bo(FinishedPlan.Dated... days) {
    return new FinishedPlan.Person("b1", "u14", 14, FOUR, List.of(), List.of(days), false);
  }

  static FinishedPlan.Person held(FinishedPlan.Person person, FinishedPlan.Held... holds) {
    return new FinishedPlan.Person(
        person.id(),
        person.group(),
        person.age(),
        person.skills(),
        List.of(holds),
        person.days(),
        person.yearRemarked());
  }

  static FinishedPlan plan(FinishedPlan.Person... people) {
    return new FinishedPlan("belthigh-2027", FROM, 2, List.of(people), List.of());
  }

  /** Swings off the tee at a practice, 8 minutes. */
  static FinishedPlan.Dated swings(int dayOfApril, int swings) {
    return day(dayOfApril, "field", 8, tee("baseball", swings, 8));
  }

  /** Swings off the tee at home. */
  static FinishedPlan.Dated home(int dayOfApril, int swings, int minutes) {
    return day(dayOfApril, "home", minutes, tee("plastic", swings, minutes));
  }

  /** Cards at home, which need no bat, 8 minutes. */
  static FinishedPlan.Dated cards(int dayOfApril) {
    return day(
        dayOfApril, "home", 8, new FinishedPlan.Work("spot-cards", "none", "none", 0, 12, 0, 8));
  }

  static FinishedPlan.Dated day(
      int dayOfApril, String place, int minutes, FinishedPlan.Work... works) {
    int swings = List.of(works).stream().mapToInt(FinishedPlan.Work::swings).sum();
    return new FinishedPlan.Dated(april(dayOfApril), place, minutes, swings, 0, List.of(works));
  }

  static FinishedPlan.Work tee(String ball, int swings, int minutes) {
    return new FinishedPlan.Work("tee-belt-high", ball, "tee", 0, swings, swings, minutes);
  }

  /** What was found, without the file and without what to do next. */
  static List<String> said(Findings findings) {
    return findings.all().stream()
        .map(Problem::text)
        .map(t -> t.replaceFirst("^plan.json, ", "").replaceFirst("\\.?\n.*", ""))
        .toList();
  }

  static Findings findings() {
    return new Findings("plan.json");
  }

  static ArmsOwed owed(Optional<ClubRecord> record) {
    return new ArmsOwed(CATALOGUE, LIMITS, record);
  }
}
