package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Player;
import org.belthigh.privacy.Redaction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every word that says who a child is begins with "Zq" here, and is looked for afterwards. */
class PrivacyTest {
  private static final String MARK = "Zq";

  @TempDir private Path folder;

  private Path club(String... moreOfTheRoster) throws IOException {
    Path club = Files.createDirectories(folder.resolve("club/logs")).getParent();
    Files.writeString(
        club.resolve("club.yaml"),
        """
        name: Zqclub
        rule_book: pitch-smart-2018
        season: {first: "2027-03-01", last: "2027-05-24"}
        groups: [{id: u10, name: Zqtigers, age: [9, 10]}]
        places: [{id: Zqpark, name: Zqpark, address: Zqstreet 5, aed: Zqshed, note: Zqgate}]
        emergency: {call: Zq911, who: Zqcoach, note: Zqnote}
        """);
    List<String> roster =
        new ArrayList<>(
            List.of(
                "id,first_name,last_name,born,bats,throws,number,group,needs",
                "real-1,Zqana,Zqortiz,2017-03-14,R,R,777,u10,Zqglasses",
                "real-2,Zqben,Zqlee,2016-11-23,L,R,778,u10,"));
    roster.addAll(List.of(moreOfTheRoster));
    Files.write(club.resolve("roster.csv"), roster);
    Files.writeString(
        club.resolve("calendar.csv"),
        """
        date,group,kind,start,minutes,adults,place,note
        2027-04-06,u10,practice,18:00,90,2,Zqpark,Zqcake for Zqana
        2027-04-08,u10,practice,18:00,90,2,Zqyard,
        """);
    Files.writeString(
        club.resolve("logs/Zqlog.csv"),
        """
        date,player,drill,zone,called,swing,hit,ball,feed,by
        2027-04-01,real-1,zone-call,5,5,yes,hard,foam,front-toss,Zqcoach
        2027-04-01,real-1,zone-call,4,5,no,,foam,front-toss,Zqcoach
        2027-04-01,real-2,zone-call,99,5,no,,foam,front-toss,Zqcoach
        """);
    Files.writeString(
        club.resolve("throws.csv"),
        """
        date,player,pitches,team,game
        2027-04-03,real-1,45,Zqteam,Zqgame
        2027-04-03,real-2,many,Zqteam,Zqgame
        """);
    Files.writeString(
        club.resolve("wellness.csv"),
        """
        date,player,kind,clears,by,note
        2027-04-02,real-2,arm-pain,,,Zqelbow
        2027-04-03,real-2,cleared,arm-pain,coach,Zqsays fine
        2027-04-03,real-2,cured,,,Zqnote
        """);
    Files.writeString(
        club.resolve("other.csv"),
        """
        date,player,hours,what
        2027-04-02,real-1,2,Zqsoccer
        """);
    Files.writeString(
        club.resolve("coach.csv"),
        """
        date,player,skill,step,by,reason
        2027-04-02,real-1,see,see-2,Zqcoach,Zqreason
        2027-04-02,real-1,see,see-99,Zqcoach,Zqreason
        """);
    return club;
  }

  private Ran run(String line) {
    return Runs.run(line.split(" ", -1));
  }

  @Test
  void standard_error_holds_nothing_personal_but_the_id() throws IOException {
    String club =
        club(
                "real-3,Zqcal,Zqday,2017-13-45,R,R,1,u10,",
                "real-9,Zqira,Zqday,14.3.2017 b,R,R,1,u10,",
                "real-4,Zqdan,Zqday,2031-03-14,R,R,1,u10,Zqneeds",
                "real-5,Zqeve,Zqday,2017-03-14,X,R,1,u10,",
                "real-6,Zqfay,Zqday,2017-03-14,R,R,seven,u10,",
                "real-1,Zqgus,Zqday,2017-03-14,R,R,2,u10,",
                "real-7,Zqhal,Zqday,2012-03-14,R,R,2,u10,",
                "real-8,Zqida,Zqday,2017-03-14,R,R,2,u10,Zqneeds,Zqsurplus")
            .toString();
    Files.writeString(
        folder.resolve("club/logs/more.csv"),
        """
        date,player,drill,zone,called,swing
        2027-04-01,real-11,zone-call,5,5,no
        """);

    for (String line :
        List.of(
            "plan CLUB --out OUT --from 2027-04-05 --weeks 1",
            "measure CLUB --as-of 2027-04-05",
            "rest CLUB --on 2027-04-05",
            "explain CLUB real-1 --as-of 2027-04-05",
            "explain CLUB real-1 --as-of 2027-04-05 --all",
            "explain CLUB real-1 --as-of 2027-04-05 --drill zone-call",
            "whatif CLUB --adults 1 --weeks 1 --from 2027-04-05",
            "check CLUB",
            "forget CLUB real-2")) {
      Ran ran = run(line.replace("CLUB", club).replace("OUT", folder + "/out"));
      assertThat(
              ran.err()
                  .lines()
                  .map(l -> l.replace("Zqlog.csv", "").replace("Zqtigers", ""))
                  .filter(
                      l -> Stream.of(MARK, "2031-03", "2017-13", "14.3.2017").anyMatch(l::contains))
                  .toList())
          .as(line)
          .isEmpty();
    }
  }

  @Test
  void a_redacted_club_shows_neither_in_print_nor_in_json_who_anybody_is() throws IOException {
    String club = club().toString();
    Path out = folder.resolve("out");

    Ran plan = run("plan " + club + " --out " + out + " --from 2027-04-05 --weeks 2 --redact");
    Ran only =
        run("plan " + club + " --out " + out + "1 --from 2027-04-05 --player real-2 --redact");
    Ran measure = run("measure " + club + " --as-of 2027-04-05 --player real-1 --redact");
    Ran why = run("explain " + club + " real-1 --as-of 2027-04-05 --redact");
    Ran explain = run("explain " + club + " real-1 --as-of 2027-04-05 --redact --all");
    Ran json = run("explain " + club + " real-1 --as-of 2027-04-05 --redact --json");
    Ran drill = run("explain " + club + " real-1 --as-of 2027-04-05 --redact --drill zone-call");
    Ran rest = run("rest " + club + " --on 2027-04-05 --redact");

    assertThat(plan.status()).isEqualTo(3);
    assertThat(plan.err())
        .contains("with --redact nothing of the input is quoted", "things were set aside");
    assertThat(Path.of(out + "1", "u10", "cards", "p2-week-2027-04-05.pdf")).exists();
    assertThat(only.status()).isEqualTo(3);
    assertThat(measure.out()).contains("P1").doesNotContain("P2", "real-");
    assertThat(explain.out()).contains("p1 P1, age 10").doesNotContain("real-");
    assertThat(why.out()).contains("P1 ").doesNotContain("P2");
    assertThat(drill.out()).contains("for P1, as of").doesNotContain("P2");
    assertThat(rest.out()).contains("p2 P2: ");
    for (Ran ran : List.of(measure, why, explain, json, drill, rest)) {
      assertThat(ran.out()).doesNotContain(MARK, "real-", "777", "2017-03-14");
    }
    int seen = 0;
    try (Stream<Path> files = Files.walk(out)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        assertThat(file.toString()).doesNotContain("real-");
        assertThat(text(file)).as(file.toString()).doesNotContain(MARK, "real-1", "real-2", "#777");
        seen++;
      }
    }
    assertThat(seen).isEqualTo(13);
    assertThat(Path.of(club, "history")).doesNotExist();
  }

  /** Limits rise with age, so a date that is made coarse may only make a child younger. */
  @Test
  void a_redacted_child_is_never_older_than_the_real_one() throws Exception {
    ClubRecord real = Intake.read(club(), CatalogueLoader.load().orThrow());
    List<Player> shown = Redaction.of(real).record().players();

    assertThat(shown).hasSameSizeAs(real.players()).isNotEmpty();
    for (int i = 0; i < shown.size(); i++) {
      LocalDate born = real.players().get(i).born();
      assertThat(shown.get(i).born()).isBetween(born, born.plusDays(30)).isNotEqualTo(born);
    }
  }

  @Test
  void what_is_counted_and_decided_stays_the_same_when_redacted() throws IOException {
    String club = club().toString();

    String real = run("measure " + club + " --as-of 2027-04-05 --json").out();
    String shown = run("measure " + club + " --as-of 2027-04-05 --json --redact").out();

    assertThat(shown.replace("\"p1\"", "\"real-1\"").replace("\"p2\"", "\"real-2\""))
        .isEqualTo(real)
        .contains("real-1");
  }

  private static String text(Path file) throws IOException {
    if (!file.toString().endsWith(".pdf")) {
      return Files.readString(file);
    }
    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(pdf)
          + pdf.getDocumentInformation().getTitle()
          + Arrays.toString(pdf.getDocumentInformation().getMetadataKeys().toArray());
    }
  }
}
