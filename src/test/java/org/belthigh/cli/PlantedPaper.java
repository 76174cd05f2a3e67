package org.belthigh.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.intake.ClubRecord;
import org.belthigh.plan.PlanRequest;

/** Faults on paper: files and pages of the printed demo club, with sizes and digests made anew. */
final class PlantedPaper {
  private static final LocalDate FROM = LocalDate.of(2027, 4, 5);
  private static final String PRACTICE = "u10/practice-2027-04-06.pdf";
  private static final String OTHER_PRACTICE = "u10/practice-2027-04-08.pdf";

  private static final String NOT_LISTED = "does not list this sheet";
  private static final String PAGES =
      "pages are not whole|holds \\d+ sheets|a sheet of it is missing";

  /** Spoils the prints and answers what a message must name. */
  interface Spoiling {
    String spoil(PrintedClub club, Others others);
  }

  /** A kind of fault on paper. */
  record Kind(String id, String what, String said, Spoiling how) {
    Planted planted() {
      return new Planted(id, what, said, (stage, dice) -> Optional.empty());
    }
  }

  /** Prints of the same club from which a wrong sheet may be taken; made when first asked for. */
  static final class Others {
    private final Map<String, PrintedClub> made = new HashMap<>();
    private final Catalogue catalogue;
    private final ClubRecord demo;

    Others(Catalogue catalogue, ClubRecord demo) {
      this.catalogue = catalogue;
      this.demo = demo;
    }

    static PrintedClub sound(Catalogue catalogue, ClubRecord demo) {
      return PrintedClub.usual(catalogue, demo, request(FROM, null));
    }

    PrintedClub week() {
      return made("week", demo, request(FROM.plusDays(7), null));
    }

    PrintedClub spanish() {
      return made("spanish", demo, request(FROM, "es"));
    }

    PrintedClub changed() {
      return made("changed", changed(demo), request(FROM, null));
    }

    private PrintedClub made(String name, ClubRecord record, PlanRequest request) {
      return made.computeIfAbsent(name, n -> PrintedClub.usual(catalogue, record, request));
    }

    private static PlanRequest request(LocalDate from, String language) {
      return new PlanRequest(
          from, 1, Set.of(), Set.of(), Optional.empty(), Optional.ofNullable(language));
    }

    /** Another name, nobody hurt, nothing thrown, and practices elsewhere with one adult. */
    private static ClubRecord changed(ClubRecord demo) {
      ClubEdit edit = new ClubEdit(demo);
      edit.player("p01", p -> PlayerEdit.of(p).name("Zephyr").get());
      edit.healthy();
      edit.events(e -> List.of(EventEdit.of(e).minutes(60).hitting(20).get().withAdults(1)));
      Planted.Stage stage = new Planted.Stage(null, demo);
      edit.into(stage);
      return stage.record;
    }
  }

  private final List<Kind> kinds = new ArrayList<>();

  private PlantedPaper() {
    gone();
    damaged();
    swapped();
    elsewhere();
    listed();
    promised();
    counted();
  }

  static List<Kind> all() {
    return List.copyOf(new PlantedPaper().kinds);
  }

  private void kind(String id, String what, String said, Spoiling how) {
    kinds.add(new Kind("paper-" + id, what, said, how));
  }

  private static String card(String player) {
    return card(player, FROM);
  }

  private static String card(String player, LocalDate week) {
    return "u10/cards/" + player + "-week-" + week + ".pdf";
  }

  private void gone() {
    for (String sheet : List.of("overview", "arm", "emergency", "guide", "log", "packet")) {
      String path = "u10/" + sheet + ".pdf";
      kind(
          "gone-" + sheet, "the sheet " + sheet + " is gone, and its line", NOT_LISTED, gone(path));
    }
    kind(
        "gone-card", "a card is gone, and its line", "does not list this sheet", gone(card("p02")));
    kind(
        "gone-practice",
        "a practice sheet is gone, and its line",
        "does not list this sheet",
        gone(PRACTICE));
    kind(
        "gone-tosses",
        "a toss list is gone",
        "does not list this sheet",
        gone("u14/tosses-2027-04-05.pdf"));
    kind(
        "gone-file",
        "a card is gone, its line is there",
        "the sheet is not there",
        (club, others) -> {
          club.pdfs.remove(card("p04"));
          return card("p04");
        });
    kind(
        "gone-all",
        "all prints are gone, and the list is emptied",
        "does not list this sheet",
        (club, others) -> {
          club.pdfs.clear();
          club.json.putArray("files");
          return card("p01");
        });
    kind(
        "gone-asked",
        "all prints are gone, and nothing was asked for",
        "nothing was asked for",
        (club, others) -> {
          club.pdfs.clear();
          club.json.putArray("files");
          club.json.putArray("prints");
          return "plan.json";
        });
  }

  private static Spoiling gone(String path) {
    return (club, others) -> {
      club.gone(path);
      return path;
    };
  }

  private void damaged() {
    kind("cut", "a card is cut short", "it is no pdf, or a broken one", cut(card("p02")));
    kind(
        "cut-practice",
        "a practice sheet is cut short",
        "it is no pdf, or a broken one",
        cut(PRACTICE));
    kind(
        "no-pdf",
        "a sheet is no PDF",
        "it is no pdf, or a broken one",
        (club, others) -> {
          club.renewed("u10/arm.pdf", "not a sheet".getBytes(StandardCharsets.UTF_8));
          return "u10/arm.pdf";
        });
    kind(
        "empty",
        "a sheet has no byte",
        "it is no pdf, or a broken one",
        (club, others) -> {
          club.renewed("u10/emergency.pdf", new byte[0]);
          return "u10/emergency.pdf";
        });
    for (String path : List.of(card("p03"), PRACTICE, "u10/overview.pdf")) {
      String name = path.contains("cards") ? "card" : path.replaceAll(".*/|-2027.*|.pdf", "");
      kind("page-" + name, "the last page is taken out: " + name, PAGES, lastPage(path));
    }
    for (String sheet : List.of("arm", "emergency", "overview", "packet", "log", "guide")) {
      kind(
          "blank-" + sheet,
          "the first page is blank: " + sheet,
          PAGES,
          blank("u10/" + sheet + ".pdf"));
    }
    kind("blank-card", "a card's first page is blank", "page 1 is headed ''", blank(card("p01")));
    kind(
        "blank-practice",
        "a practice's first page is blank",
        "pages are not whole",
        blank(PRACTICE));
  }

  private static Spoiling cut(String path) {
    return (club, others) -> {
      byte[] pdf = club.pdfs.get(path);
      club.renewed(path, Arrays.copyOf(pdf, pdf.length / 3));
      return path;
    };
  }

  private static Spoiling lastPage(String path) {
    return edited(path, pdf -> pdf.removePage(pdf.getNumberOfPages() - 1));
  }

  private static Spoiling blank(String path) {
    return edited(path, pdf -> pdf.getPage(0).setContents(new PDStream(pdf)));
  }

  private void swapped() {
    kind(
        "swapped",
        "two cards are swapped, one of a held child",
        "is headed 'oscar",
        (club, others) -> {
          byte[] one = club.pdfs.get(card("p01"));
          club.renewed(card("p01"), club.pdfs.get(card("p10")));
          club.renewed(card("p10"), one);
          return card("p10");
        });
    kind(
        "other-child",
        "a card is another child's",
        "is headed 'hollis",
        instead(card("p05"), card("p06")));
    kind(
        "other-held",
        "a held child has a free child's card",
        "is headed 'lena",
        instead(card("p10"), card("p02")));
    kind(
        "other-practice",
        "a sheet is of another practice",
        "it is not of 2027-04-08",
        instead(OTHER_PRACTICE, PRACTICE));
    for (String sheet : List.of("overview", "arm", "packet", "log", "guide")) {
      String path = "u10/" + sheet + ".pdf";
      kind(
          "group-" + sheet,
          "a sheet is another group's: " + sheet,
          "a sheet of another group",
          instead(path, path.replace("u10", "u14")));
    }
    kind(
        "other-sheet",
        "the arm sheet is the log sheet",
        "the row of .* has \\[",
        instead("u10/arm.pdf", "u10/log.pdf"));
    for (String sheet : List.of("guide", "packet", "overview", "emergency")) {
      kind(
          "card-as-" + sheet,
          "a child's card in the place of a sheet: " + sheet,
          "a foot is not that of such a sheet",
          instead("u10/" + sheet + ".pdf", card("p05")));
    }
    kind(
        "guide-as-card",
        "the guide in the place of a card",
        "page 1 is headed 'how to read your card'",
        instead(card("p05"), "u10/guide.pdf"));
    kind(
        "packet-cover",
        "the packet's first page is taken out",
        "a foot is not that of such a sheet",
        edited("u10/packet.pdf", pdf -> pdf.removePage(0)));
    kind(
        "page-other",
        "a page of another child's card is added",
        "page \\d+ is headed",
        (club, others) -> {
          byte[] more = club.pdfs.get(card("p06"));
          return edited(
                  card("p05"),
                  pdf -> {
                    try (PDDocument other = Loader.loadPDF(more)) {
                      pdf.importPage(other.getPage(0));
                      pdf.save(new ByteArrayOutputStream());
                    }
                  })
              .spoil(club, others);
        });
  }

  private static Spoiling instead(String path, String other) {
    return (club, others) -> {
      club.renewed(path, club.pdfs.get(other));
      return path;
    };
  }

  private void elsewhere() {
    kind(
        "week-card",
        "a card is of next week",
        "not that of the week",
        (c, o) -> from(c, card("p05"), o.week(), card("p05", FROM.plusDays(7))));
    kind(
        "week-arm",
        "the arm sheet is of next week",
        "a foot is not of",
        (c, o) -> from(c, "u10/arm.pdf", o.week(), "u10/arm.pdf"));
    kind(
        "week-overview",
        "the overview is of next week",
        "a foot is not of",
        (c, o) -> from(c, "u10/overview.pdf", o.week(), "u10/overview.pdf"));
    kind(
        "language-card",
        "a card is in another language",
        "in language 'es'",
        (c, o) -> from(c, card("p05"), o.spanish(), card("p05")));
    kind(
        "language-practice",
        "a practice sheet is in another language",
        "language is 'es'",
        (c, o) -> from(c, PRACTICE, o.spanish(), PRACTICE));
    kind(
        "language-emergency",
        "the emergency sheet is in another language",
        "language is 'es'",
        (c, o) -> from(c, "u10/emergency.pdf", o.spanish(), "u10/emergency.pdf"));
    kind(
        "label-card",
        "a card has another name",
        "is headed 'zephyr",
        (c, o) -> from(c, card("p01"), o.changed(), card("p01")));
    kind(
        "healthy-card",
        "a hurt child's card asks for work",
        "asks for|it holds \\d+ sheets",
        (c, o) -> from(c, card("p10"), o.changed(), card("p10")));
    kind(
        "rested-card",
        "the card of a resting arm says nothing of it",
        "does not say",
        (c, o) -> from(c, card("p03"), o.changed(), card("p03")));
    kind(
        "rested-arm",
        "the arm sheet lets resting arms pitch",
        "the row of .* has \\[",
        (c, o) -> from(c, "u10/arm.pdf", o.changed(), "u10/arm.pdf"));
    kind(
        "changed-practice",
        "a practice sheet is that of a shorter practice",
        "stands on it 0 times|does not stand in",
        (c, o) -> from(c, PRACTICE, o.changed(), PRACTICE));
    kind(
        "changed-overview",
        "the overview shows nobody hurt",
        "no row of oscar",
        (c, o) -> from(c, "u10/overview.pdf", o.changed(), "u10/overview.pdf"));
  }

  private static String from(PrintedClub club, String path, PrintedClub other, String page) {
    club.renewed(path, other.pdfs.get(page));
    return path;
  }

  private void listed() {
    kind(
        "digest",
        "a digest is another",
        "its digest is another",
        (club, others) ->
            file(club, card("p02")).put("sha256", "0".repeat(64)).path("path").asText());
    kind(
        "size",
        "a size is another",
        "and not 7",
        (club, others) -> file(club, card("p02")).put("bytes", 7).path("path").asText());
    kind(
        "stale",
        "a card of another week lies beside the prints",
        "did not print it",
        (club, others) -> {
          String stale = card("p01", FROM.minusDays(7));
          club.pdfs.put(stale, club.pdfs.get(card("p01")));
          return stale;
        });
    kind(
        "listed-player",
        "the list says that a card is another child's",
        "is headed 'lena",
        (club, others) -> file(club, card("p02")).put("player", "p03").path("path").asText());
    kind(
        "listed-sheet",
        "the list calls the arm sheet an overview",
        "no row of",
        (club, others) -> file(club, "u10/arm.pdf").put("sheet", "overview").path("path").asText());
    kind(
        "listed-twice",
        "a file stands twice in the list",
        "stands twice in files",
        (club, others) -> {
          club.json.withArray("files").add(file(club, card("p02")).deepCopy());
          return card("p02");
        });
  }

  private static ObjectNode file(PrintedClub club, String path) {
    for (JsonNode file : club.json.withArray("files")) {
      if (file.path("path").asText().equals(path)) {
        return (ObjectNode) file;
      }
    }
    throw new AssertionError("not printed: " + path);
  }

  private void promised() {
    kind(
        "caution-card",
        "a caution of the plan does not stand on the card",
        "the card does not say .ask a nurse first",
        (club, others) -> {
          child(club, "p06").withObject("/cautions").withArray("card").add("Ask a nurse first.");
          return "p06";
        });
    kind(
        "caution-practice",
        "a caution of the plan does not stand on the practice sheet",
        "does not say .no mud",
        (club, others) -> {
          practice(club).withArray("cautions").add("No mud.");
          return PRACTICE;
        });
    kind(
        "drill-card",
        "a drill of the plan is another than on the card",
        "asks for|drills of its week",
        (club, others) -> {
          for (JsonNode day : child(club, "p06").withArray("days")) {
            day.path("items").forEach(i -> ((ObjectNode) i).put("drill", "in-out-call"));
          }
          return "p06";
        });
    kind(
        "gear-practice",
        "a thing of the plan does not stand on the practice sheet",
        "pitching machine \\(1\\)' is missing",
        (club, others) -> {
          practice(club).withArray("gear").addObject().put("what", "machine").put("count", 1);
          return PRACTICE;
        });
    kind(
        "nothrow-practice",
        "who may not throw by the plan does not stand on the practice sheet",
        "does not stand in the list of those who do not throw|stands on it 1 times",
        (club, others) -> {
          practice(club).withArray("no_throwing").add("p06");
          return PRACTICE;
        });
  }

  /** Numbers that stand on paper and are others in the plan, and children in the wrong list. */
  private void counted() {
    kind(
        "gear-count",
        "the practice sheet has a number of things that the plan has more of",
        "bat that fits the hitter \\(9\\)' is missing",
        (club, others) -> {
          gear(practice(club).withArray("gear"), "bat").put("count", 9);
          return PRACTICE;
        });
    kind(
        "home-gear-count",
        "the home sheets have a number of things that the plan has more of",
        "no home sheet asks for .*\\(7\\)",
        (club, others) -> {
          gear(child(club, "p06").withArray("home_gear"), "helmet").put("count", 7);
          return "p06";
        });
    kind(
        "home-ball",
        "the home sheet is of another ball than the plan",
        "home sheet of .* lacks its (plastic|foam)-balls",
        (club, others) -> {
          for (JsonNode day : child(club, "p06").withArray("days")) {
            day.path("items").forEach(PlantedPaper::otherBall);
          }
          return "p06";
        });
    kind(
        "arm-day",
        "the arm sheet lets a child pitch on a day on which the plan does not",
        "the row of oscar.* has \\[75, 75, 75",
        (club, others) -> {
          arm(club, "p01", 2).put("answer", "no-pitching").put("pitches_left", 0);
          return "p01";
        });
    kind(
        "arm-number",
        "the arm sheet has another number on one day than the plan",
        "the row of oscar.* has \\[75, 75, 75",
        (club, others) -> {
          arm(club, "p01", 3).put("pitches_left", 35);
          return "p01";
        });
    kind(
        "card-number",
        "the card allows more pitches than the plan",
        "the card allows 75 pitches",
        (club, others) -> {
          arm(club, "p01", 0).put("pitches_left", 5);
          return "p01";
        });
    kind(
        "card-lets",
        "the card lets a child pitch who must not throw",
        "the card lets the child pitch",
        (club, others) -> {
          arm(club, "p01", 0).put("answer", "no-throwing").put("pitches_left", 0);
          return "p01";
        });
    kind(
        "list-throwing",
        "a child who must not throw stands in the list of another",
        "hollis.* does not stand in the list of those who do not throw",
        (club, others) -> {
          practice(club).putArray("no_throwing").add("p06");
          return PRACTICE + ", p06";
        });
    kind(
        "list-free",
        "a child stands in the list of those who do not throw, and may by the plan",
        "mateo.* stands in the list of those who do not throw",
        (club, others) -> {
          practice(club).putArray("no_throwing");
          return PRACTICE + ", p03";
        });
    kind(
        "list-swinging",
        "a child who must not swing stands in no list of those",
        "hollis.* does not stand in the list of those who do not swing",
        (club, others) -> {
          practice(club).withArray("no_swinging").add("p06");
          return PRACTICE + ", p06";
        });
    kind(
        "list-off",
        "a child who is off by the plan does not stand in the list of those",
        "hollis.* does not stand in the list of those who are off",
        (club, others) -> {
          child(club, "p06")
              .withArray("holds")
              .addObject()
              .put("kind", "everything")
              .put("from", FROM.toString())
              .putNull("until");
          return PRACTICE + ", p06";
        });
    kind(
        "heat-line",
        "a line about heat of the plan is another than on the practice sheet",
        "does not say .9 breaks",
        (club, others) -> {
          practice(club).withArray("cautions").add("9 breaks of 9 min an hour");
          return PRACTICE;
        });
  }

  private static void otherBall(JsonNode item) {
    String ball = item.path("ball").asText();
    ((ObjectNode) item).put("ball", ball.equals("foam") ? "plastic" : "foam");
  }

  private static ObjectNode gear(JsonNode list, String what) {
    for (JsonNode gear : list) {
      if (gear.path("what").asText().equals(what)) {
        return (ObjectNode) gear;
      }
    }
    throw new AssertionError("no " + what);
  }

  private static ObjectNode arm(PrintedClub club, String player, int day) {
    return (ObjectNode) child(club, player).path("arms").path(day);
  }

  private static ObjectNode child(PrintedClub club, String id) {
    for (JsonNode player : club.json.withArray("players")) {
      if (player.path("player").asText().equals(id)) {
        return (ObjectNode) player;
      }
    }
    throw new AssertionError("no child " + id);
  }

  private static ObjectNode practice(PrintedClub club) {
    return (ObjectNode) club.json.withArray("practices").get(0);
  }

  /** Changes a document. */
  private interface Edit {
    void apply(PDDocument pdf) throws IOException;
  }

  private static Spoiling edited(String path, Edit edit) {
    return (club, others) -> {
      try (PDDocument pdf = Loader.loadPDF(club.pdfs.get(path))) {
        edit.apply(pdf);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        pdf.save(out);
        club.renewed(path, out.toByteArray());
        return path;
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    };
  }
}
