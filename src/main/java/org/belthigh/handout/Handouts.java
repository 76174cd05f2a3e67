package org.belthigh.handout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.belthigh.handout.kit.Pdf;
import org.belthigh.handout.kit.Section;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.HomeSheet;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlayerPlan;
import org.belthigh.plan.PracticeSheet;
import org.belthigh.words.Words;

/** Turns plans into PDF. */
public final class Handouts {
  private final Words words;

  /** Prints in the languages of {@code words}. */
  public Handouts(Words words) {
    this.words = words;
  }

  /** Takes a finished print. */
  @FunctionalInterface
  public interface Tray {
    /**
     * One document.
     *
     * @param path where it belongs, relative to the output folder, with forward slashes
     */
    void take(String path, byte[] pdf);
  }

  /**
   * Prints everything in {@code plan}: per group the packet, the overview, the practice sheets, and
   * a card with home sheets for each player.
   *
   * <p>The packet passes through many hands, so a card in it says that there is a hold, and not
   * why.
   */
  public void print(Plan plan, Tray tray) {
    plan.groups().forEach(group -> new Group(plan, group, tray).print());
  }

  /** One age group's documents: each print is drawn up once, and bound alone and in the packet. */
  private final class Group {
    private final Plan plan;
    private final GroupPlan group;
    private final Tray tray;
    private final Voice club;
    private final List<Section> packet = new ArrayList<>();

    Group(Plan plan, GroupPlan group, Tray tray) {
      this.plan = plan;
      this.group = group;
      this.tray = tray;
      this.club = new Voice(words, plan.language());
    }

    void print() {
      String overview = club.say("footer.overview");
      take(
          "overview", overview, plan.from(), filed(OverviewPrint.of(plan, group, words), overview));
      group.practices().forEach(this::practice);
      filed(ArmPrint.of(plan, group, words), club.say("footer.arms"));
      plan.players().stream()
          .filter(player -> player.who().group().equals(group.id()))
          .forEach(this::player);
      LogPrint.of(plan, group, words).forEach(log -> filed(log, club.say("footer.log")));
      take("packet", club.say("packet.title"), plan.from(), packet);
    }

    private void practice(PracticeSheet sheet) {
      String what = club.say("footer.practice");
      String day = club.say("packet.day", "day", sheet.date());
      Section section =
          PracticePrint.of(plan, group, sheet, words)
              .filedUnder(club.say("packet.practices"), day)
              .labelled(what + " ");
      List<Section> sections = new ArrayList<>(List.of(section));
      if (!sheet.otherWays().isEmpty()) {
        sections.add(
            OtherWaysPrint.of(plan, group, sheet, words)
                .filedUnder(club.say("packet.practices"), day, club.say("practice.other.what"))
                .labelled(club.say("practice.other.what") + " "));
      }
      if (sheet.tossed()) {
        sections.add(
            TossPrint.of(plan, group, sheet, words)
                .filedUnder(club.say("packet.practices"), day, club.say("practice.toss.what"))
                .labelled(club.say("practice.toss.what") + " "));
      }
      packet.addAll(sections);
      take("practice-" + sheet.date(), what + ", " + day, sheet.date(), sections);
    }

    private void player(PlayerPlan player) {
      Voice family = new Voice(words, player.who().language());
      List<Section> home = player.home().stream().map(s -> home(player, s, family)).toList();
      packet.add(card(player.inTheOpen(), family));
      packet.addAll(home);
      List<Section> sections = new ArrayList<>(List.of(card(player, family)));
      sections.addAll(home);
      String title =
          family.say("packet.card", "player", family.name(player.who()), "week", plan.from());
      String path = group.id() + "/cards/" + player.who().id() + "-week-" + plan.from() + ".pdf";
      tray.take(path, Binding.of(title, family, plan.from(), path, sections));
    }

    private Section card(PlayerPlan player, Voice family) {
      String name = family.name(player.who());
      String footer = footer(family, family.say("footer.card"), plan.from());
      return CardPrint.of(plan, group, player, family, footer)
          .filedUnder(club.say("packet.cards"), name, family.say("footer.card"))
          .labelled(name + " ");
    }

    private Section home(PlayerPlan player, HomeSheet sheet, Voice family) {
      String name = family.name(player.who());
      String what = family.say("footer.home");
      String day = family.say("packet.day", "day", sheet.date());
      String footer = footer(family, what, sheet.date());
      return HomePrint.of(plan, player.who(), sheet, family, footer)
          .filedUnder(club.say("packet.cards"), name, what + ", " + day)
          .labelled(name + ", " + what + " ");
    }

    /** A print in the club's language, put into the packet. */
    private List<Section> filed(Section section, String what) {
      Section labelled = section.labelled(what + " ");
      packet.add(labelled);
      return List.of(labelled);
    }

    private String footer(Voice voice, String what, LocalDate day) {
      return voice.say(
          "footer",
          "club",
          plan.club(),
          "group",
          group.name(),
          "what",
          what,
          "week",
          plan.from(),
          "day",
          day,
          "curriculum",
          plan.curriculum(),
          "books",
          String.join("; ", plan.ruleBooks()));
    }

    private void take(String name, String what, LocalDate day, List<Section> sections) {
      String title = club.say("packet.named", "group", group.name(), "what", what);
      String path = group.id() + "/" + name + ".pdf";
      tray.take(path, Binding.of(title, club, day, path, sections));
    }
  }

  /** Sections bound into one document. */
  private static final class Binding {
    private Binding() {}

    static byte[] of(String title, Voice voice, LocalDate day, String key, List<Section> sections) {
      try (Pdf pdf = Pdf.of(title, voice.locale(), day, key)) {
        sections.forEach(pdf::add);
        return pdf.bytes();
      }
    }
  }
}
