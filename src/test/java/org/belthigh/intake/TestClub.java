package org.belthigh.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.belthigh.model.Problem;

/**
 * A club folder in a temporary directory: Ana (p01) bats right and pitches, Ben (p02) bats left,
 * Cruz (p03) bats from both sides.
 */
public final class TestClub {
  /** The header of a log with a toss a row, as short as it may be. */
  public static final String TOSSES = "date,player,drill,round,toss,bats,zone,called,swing,hit";

  static final List<String> CLUB =
      List.of(
          "name: Example Club",
          "paper: letter",
          "languages: [en, es]",
          "rule_book: pitch-smart-2018",
          "season: {first: \"2027-03-01\", last: \"2027-05-24\"}",
          "groups:",
          "  - {id: u10, name: Under 10, age: [9, 10]}");
  private static final List<String> ROSTER =
      List.of(
          "id,first_name,born,bats,group,pitches",
          "p01,Ana,2017-05-02,R,u10,yes",
          "p02,Ben,2017-09-12,L,u10,no",
          "p03,Cruz,2016-12-30,S,u10,no");

  private final Path folder;

  private TestClub(Path folder) {
    this.folder = folder;
  }

  /** The club in {@code parent}, with nothing but its club file and its roster. */
  public static TestClub in(Path parent) {
    TestClub club = new TestClub(parent.resolve("club"));
    return club.with("club.yaml", CLUB).with("roster.csv", ROSTER);
  }

  /** Writes a file of the folder. */
  public TestClub with(String name, String... lines) {
    return with(name, List.of(lines));
  }

  /** Writes a file of the folder. */
  public TestClub with(String name, List<String> lines) {
    return withText(name, String.join("\n", lines) + "\n");
  }

  /** Writes a file of the folder to the letter, without a line end of its own. */
  public TestClub withText(String name, String text) {
    try {
      Path file = folder.resolve(name);
      Files.createDirectories(file.getParent());
      Files.writeString(file, text);
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The folder. */
  public Path folder() {
    return folder;
  }

  /** The record; fails where the club cannot be used. */
  public ClubRecord read() {
    try {
      return Intake.read(folder, TestCatalogue.small());
    } catch (Unusable e) {
      throw new IllegalStateException(e.problems().toString(), e);
    }
  }

  /** All messages, with {@code CLUB} for the folder, whether the club can be used or not. */
  public List<String> messages() {
    try {
      return shown(Intake.read(folder, TestCatalogue.small()).problems());
    } catch (Unusable e) {
      return shown(e.problems());
    }
  }

  private List<String> shown(List<Problem> problems) {
    String path = folder.toString().replace('\\', '/');
    return problems.stream()
        .map(p -> p.weight().id() + " " + p.text().replace(path, "CLUB"))
        .toList();
  }
}
