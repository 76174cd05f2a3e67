package org.belthigh.handout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
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
  private final boolean large;

  /** Prints in the languages of {@code words}. */
  public Handouts(Words words) {
    this(words, false);
  }

  private Handouts(Words words, boolean large) {
    this.words = words;
    this.large = large;
  }

  /** The same prints in large type, for eyes that need it: running text at 16 pt, more pages. */
  public Handouts large() {
    return new Handouts(words, true);
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

  /** Prints what is usual; see {@link Print#usual}. */
  public void print(Plan plan, Tray tray) {
    print(plan, Print.usual(), tray);
  }

  /**
   * Prints {@code prints}, one document each, a card with its home sheets; and, where it is asked
   * for, the packet with all of them.
   *
   * <p>The packet passes through many hands, so a card in it says that there is a hold, and not
   * why.
   *
   * @param prints with the packet alone, it holds what is usual
   * @throws IllegalArgumentException if cards for the clipboard are asked for in large type: half a
   *     sheet has no room for them
   */
  public void print(Plan plan, Set<Print> prints, Tray tray) {
    if (large && prints.contains(Print.CLIPBOARD)) {
      throw new IllegalArgumentException("cards for the clipboard have no large print.");
    }
    plan.groups().forEach(group -> new Group(plan, group, prints, tray).print());
  }

  /** One age group's documents: each print is drawn up once, and bound alone and in the packet. */
  private final class Group {
    private final Plan plan;
    private final GroupPlan group;
    private final Set<Print> alone;
    private final Set<Print> bound;
    private final Tray tray;
    private final Voice club;
    private final List<Section> packet = new ArrayList<>();
    private final List<PacketCover.Entry> contents = new ArrayList<>();

    Group(Plan plan, GroupPlan group, Set<Print> prints, Tray tray) {
      this.plan = plan;
      this.group = group;
      this.alone = prints;
      this.bound = bound(prints);
      this.tray = tray;
      this.club = new Voice(words, plan.language());
    }

    /** What there is to bind, without the cards for the clipboard; what is usual, where nothing. */
    private static Set<Print> bound(Set<Print> prints) {
      Set<Print> others = EnumSet.complementOf(EnumSet.of(Print.PACKET, Print.CLIPBOARD));
      others.retainAll(prints);
      return others.isEmpty() && prints.contains(Print.PACKET) ? Print.usual() : others;
    }

    void print() {
      team(Print.OVERVIEW, "overview", () -> List.of(OverviewPrint.of(plan, group, words)));
      if (bound.contains(Print.PRACTICE)) {
        group.practices().forEach(this::practice);
      }
      team(Print.ARM, "arms", () -> List.of(ArmPrint.of(plan, group, words)));
      team(Print.EMERGENCY, "emergency", () -> EmergencyPrint.of(plan, group, words));
      team(Print.EVALUATION, "evaluation", () -> EvaluationPrint.of(plan, group, words));
      team(Print.GUIDE, "guide", this::guides);
      List<PlayerPlan> players =
          plan.players().stream()
              .filter(player -> player.who().group().equals(group.id()))
              .toList();
      players.forEach(this::player);
      if (alone.contains(Print.CLIPBOARD) && !players.isEmpty()) {
        clipboard(players);
      }
      if (bound.contains(Print.SEASON)) {
        players.forEach(this::season);
      }
      team(Print.LOG, "log", () -> LogPrint.of(plan, group, words));
      if (bound.contains(Print.OWN_LOG)) {
        players.forEach(this::ownLog);
      }
      if (alone.contains(Print.PACKET)) {
        packet.add(0, PacketCover.of(plan, group, contents, words, this::sized));
        take("packet", club.say("packet.title"), plan.from(), packet);
      }
    }

    /** Sheets of the whole group, named in the footer and in the packet by {@code kind}. */
    private void team(Print print, String kind, Supplier<List<Section>> sheets) {
      if (bound.contains(print)) {
        String what = club.say("footer." + kind);
        List<Section> sections =
            sheets.get().stream().map(section -> sized(section.labelled(what + " "))).toList();
        file(what, "", sections);
        if (alone.contains(print) && !sections.isEmpty()) {
          take(print.id(), what, plan.from(), sections);
        }
      }
    }

    /** Puts sections into the packet, under one line of its contents. */
    private void file(String what, String detail, List<Section> sections) {
      if (alone.contains(Print.PACKET) && !sections.isEmpty()) {
        packet.addAll(sections);
        int pages = sections.stream().mapToInt(Section::pageCount).sum();
        contents.add(new PacketCover.Entry(what, detail, pages));
      }
    }

    private List<Section> guides() {
      return group.guides().stream()
          .map(
              guide -> {
                Voice family = new Voice(words, guide.language());
                String footer = footer(family, family.say("footer.guide"), plan.from());
                return GuidePrint.of(plan, guide, family, footer);
              })
          .toList();
    }

    private void practice(PracticeSheet sheet) {
      String what = club.say("footer.practice");
      String day = club.say("packet.day", "day", sheet.date());
      Section drawn =
          large
              ? PracticePrint.large(plan, group, sheet, words)
              : PracticePrint.of(plan, group, sheet, words);
      Section section = drawn.filedUnder(club.say("packet.practices"), day).labelled(what + " ");
      List<Section> sections = new ArrayList<>(List.of(section));
      if (!sheet.otherWays().isEmpty()) {
        sections.add(
            sized(
                OtherWaysPrint.of(plan, group, sheet, words)
                    .filedUnder(club.say("packet.practices"), day, club.say("practice.other.what"))
                    .labelled(club.say("practice.other.what") + " ")));
      }
      file(what, day, sections);
      if (alone.contains(Print.PRACTICE)) {
        take("practice-" + sheet.date(), what + ", " + day, sheet.date(), sections);
      }
      if (sheet.tossed()) {
        tosses(sheet, day);
      }
    }

    private void tosses(PracticeSheet sheet, String day) {
      String what = club.say("practice.toss.what");
      Section section =
          TossPrint.of(plan, group, sheet, words, large)
              .filedUnder(club.say("packet.practices"), day, what)
              .labelled(what + " ");
      List<Section> sections = List.of(sized(section));
      file(what, day, sections);
      if (alone.contains(Print.PRACTICE)) {
        take("tosses-" + sheet.date(), what + ", " + day, sheet.date(), sections);
      }
    }

    private void player(PlayerPlan player) {
      Voice family = new Voice(words, player.who().language());
      List<Section> home =
          bound.contains(Print.HOME)
              ? player.home().stream().map(s -> home(player, s, family)).toList()
              : List.of();
      List<Section> open = new ArrayList<>();
      List<Section> own = new ArrayList<>();
      if (bound.contains(Print.CARD)) {
        open.add(card(player.inTheOpen(), family));
        own.add(card(player, family));
      }
      open.addAll(home);
      own.addAll(home);
      file(club.say("packet.cards"), family.name(player.who()), open);
      if (!own.isEmpty() && (alone.contains(Print.CARD) || alone.contains(Print.HOME))) {
        String title =
            family.say("packet.card", "player", family.name(player.who()), "week", plan.from());
        String path = group.id() + "/cards/" + player.who().id() + "-week-" + plan.from() + ".pdf";
        tray.take(path, Binding.of(title, family, plan.from(), path, own));
      }
    }

    /** All cards on half sheets; they are seen by others, so no card says why there is a hold. */
    private void clipboard(List<PlayerPlan> players) {
      String what = club.say("footer.clipboard");
      String path = group.id() + "/" + Print.CLIPBOARD.id() + ".pdf";
      try (Pdf pdf = Pdf.of(named(what), club.locale(), plan.from(), path)) {
        pdf.addTwoUp(what + " ", players.stream().map(this::halfCard).toList());
        tray.take(path, pdf.bytes());
      }
    }

    private Section halfCard(PlayerPlan player) {
      Voice family = new Voice(words, player.who().language());
      String footer = footer(family, family.say("footer.card"), plan.from());
      return HalfCardPrint.of(plan, group, player.inTheOpen(), family, footer)
          .filedUnder(family.name(player.who()));
    }

    private void season(PlayerPlan player) {
      each(Print.SEASON, "season", player, SeasonPrint::of);
    }

    private void ownLog(PlayerPlan player) {
      each(Print.OWN_LOG, "log", player, OwnLogPrint::of);
    }

    /**
     * A sheet of its own for each player, named in the footer and in the packet by {@code kind}.
     */
    private void each(Print print, String kind, PlayerPlan player, PlayerSheet sheet) {
      Voice family = new Voice(words, player.who().language());
      String name = family.name(player.who());
      String what = family.say("footer." + kind);
      Section section =
          sized(
              sheet
                  .of(plan, player, family, footer(family, what, plan.from()))
                  .filedUnder(club.say("footer." + kind), name)
                  .labelled(name + ", " + what + " "));
      file(club.say("footer." + kind), name, List.of(section));
      if (alone.contains(print)) {
        String path =
            group.id() + "/" + print.id() + "/" + player.who().id() + "-" + plan.from() + ".pdf";
        String title = family.say("packet.named", "group", name, "what", what);
        tray.take(path, Binding.of(title, family, plan.from(), path, List.of(section)));
      }
    }

    private Section card(PlayerPlan player, Voice family) {
      String name = family.name(player.who());
      String footer = footer(family, family.say("footer.card"), plan.from());
      return sized(
          CardPrint.of(plan, group, player, family, footer)
              .filedUnder(club.say("packet.cards"), name, family.say("footer.card"))
              .labelled(name + " "));
    }

    private Section home(PlayerPlan player, HomeSheet sheet, Voice family) {
      String name = family.name(player.who());
      String what = family.say("footer.home");
      String day = family.say("packet.day", "day", sheet.date());
      String footer = footer(family, what, sheet.date());
      Section section =
          large
              ? HomePrint.large(plan, player.who(), sheet, family, footer)
              : HomePrint.of(plan, player.who(), sheet, family, footer);
      return section
          .filedUnder(club.say("packet.cards"), name, what + ", " + day)
          .labelled(name + ", " + what + " ");
    }

    private Section sized(Section section) {
      return large ? section.large() : section;
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

    private String named(String what) {
      return club.say("packet.named", "group", group.name(), "what", what);
    }

    private void take(String name, String what, LocalDate day, List<Section> sections) {
      String path = group.id() + "/" + name + ".pdf";
      tray.take(path, Binding.of(named(what), club, day, path, sections));
    }
  }

  /** Draws up one player's sheet. */
  @FunctionalInterface
  private interface PlayerSheet {
    Section of(Plan plan, PlayerPlan player, Voice voice, String footer);
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
