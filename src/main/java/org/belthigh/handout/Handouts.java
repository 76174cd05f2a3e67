package org.belthigh.handout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
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

  /** Loads fonts ahead of time; without it they are loaded when they are needed. */
  public static void warm() {
    Pdf.warm();
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

    /** One document, and what it is. */
    default void take(Filed filed, byte[] pdf) {
      take(filed.path(), pdf);
    }
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

  /**
   * A print as it is drawn up, once, to be bound alone and in the packet.
   *
   * @param alone the document that it makes by itself; empty where it is not asked for
   * @param what its line in the packet's contents, with {@code detail}
   * @param bound what the packet holds of it
   */
  private record Drawn(Optional<Document> alone, String what, String detail, List<Section> bound) {
    PacketCover.Entry entry() {
      return new PacketCover.Entry(what, detail, bound.stream().mapToInt(Section::pageCount).sum());
    }
  }

  /** One age group's documents. Prints are drawn up, and then bound, side by side on all cores. */
  private final class Group {
    private final Plan plan;
    private final GroupPlan group;
    private final Set<Print> alone;
    private final Set<Print> bound;
    private final Tray tray;
    private final Voice club;
    private final List<Supplier<Drawn>> prints = new ArrayList<>();

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
      players.forEach(player -> prints.add(() -> player(player)));
      if (alone.contains(Print.CLIPBOARD) && !players.isEmpty()) {
        prints.add(() -> clipboard(players));
      }
      if (bound.contains(Print.SEASON)) {
        players.forEach(
            player -> prints.add(() -> each(Print.SEASON, "season", player, SeasonPrint::of)));
      }
      team(Print.LOG, "log", () -> LogPrint.of(plan, group, words));
      if (bound.contains(Print.OWN_LOG)) {
        players.forEach(
            player -> prints.add(() -> each(Print.OWN_LOG, "log", player, OwnLogPrint::of)));
      }
      bind(prints.parallelStream().map(Supplier::get).toList());
    }

    /** The packet takes longest, so it is begun first; it is handed over last. */
    private void bind(List<Drawn> drawn) {
      List<Document> documents = new ArrayList<>();
      if (alone.contains(Print.PACKET)) {
        documents.add(packet(drawn));
      }
      drawn.forEach(d -> d.alone().ifPresent(documents::add));
      List<byte[]> pdfs = documents.parallelStream().map(Document::pdf).toList();
      for (int i = 1; i <= pdfs.size(); i++) {
        int at = alone.contains(Print.PACKET) ? i % pdfs.size() : i - 1;
        tray.take(documents.get(at).filed(), pdfs.get(at));
      }
    }

    private Document packet(List<Drawn> drawn) {
      List<PacketCover.Entry> contents =
          drawn.parallelStream()
              .filter(print -> !print.bound().isEmpty())
              .map(Drawn::entry)
              .toList();
      List<Section> sections = new ArrayList<>();
      sections.add(PacketCover.of(plan, group, contents, words, Handouts.this::sized));
      drawn.forEach(d -> sections.addAll(d.bound()));
      return document(
          filed("packet", Print.PACKET.id(), Optional.empty()),
          club.say("packet.title"),
          plan.from(),
          sections);
    }

    /** Sheets of the whole group, named in the footer and in the packet by {@code kind}. */
    private void team(Print print, String kind, Supplier<List<Section>> sheets) {
      if (bound.contains(print)) {
        prints.add(
            () -> {
              String what = club.say("footer." + kind);
              List<Section> sections =
                  sheets.get().stream()
                      .map(section -> sized(section.labelled(what + " ")))
                      .toList();
              return drawn(
                  print,
                  filed(print.id(), print.id(), Optional.empty()),
                  what,
                  what,
                  "",
                  plan.from(),
                  sections);
            });
      }
    }

    /**
     * Sheets of the whole group.
     *
     * @param filed where the file belongs
     * @param title of the document
     * @param what line of the packet's contents, with {@code detail}
     */
    private Drawn drawn(
        Print print,
        Filed filed,
        String title,
        String what,
        String detail,
        LocalDate day,
        List<Section> sections) {
      return new Drawn(
          alone.contains(print) && !sections.isEmpty()
              ? Optional.of(document(filed, title, day, sections))
              : Optional.empty(),
          what,
          detail,
          sections);
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
      String day = club.say("packet.day", "day", sheet.date());
      prints.add(() -> timetable(sheet, day));
      if (sheet.tossed()) {
        prints.add(() -> tosses(sheet, day));
      }
    }

    private Drawn timetable(PracticeSheet sheet, String day) {
      String what = club.say("footer.practice");
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
      Filed filed = filed("practice-" + sheet.date(), "practice", Optional.of(sheet.date()));
      return drawn(Print.PRACTICE, filed, what + ", " + day, what, day, sheet.date(), sections);
    }

    private Drawn tosses(PracticeSheet sheet, String day) {
      String what = club.say("practice.toss.what");
      Section section =
          TossPrint.of(plan, group, sheet, words, large)
              .filedUnder(club.say("packet.practices"), day, what)
              .labelled(what + " ");
      Filed filed = filed("tosses-" + sheet.date(), "tosses", Optional.of(sheet.date()));
      List<Section> sections = List.of(sized(section));
      return drawn(Print.PRACTICE, filed, what + ", " + day, what, day, sheet.date(), sections);
    }

    private Drawn player(PlayerPlan player) {
      Voice family = new Voice(words, player.who().language());
      List<Section> home =
          bound.contains(Print.HOME)
              ? player.home().stream().map(s -> home(player, s, family)).toList()
              : List.of();
      List<Section> open = new ArrayList<>();
      List<Section> own = new ArrayList<>();
      if (bound.contains(Print.CARD)) {
        PlayerPlan shown = player.inTheOpen();
        Section card = card(player, family);
        own.add(card);
        open.add(shown.card().equals(player.card()) ? card : card(shown, family));
      }
      open.addAll(home);
      own.addAll(home);
      String title =
          family.say("packet.card", "player", family.name(player.who()), "week", plan.from());
      Print kind = bound.contains(Print.CARD) ? Print.CARD : Print.HOME;
      Filed filed = filed("cards", player.who().id() + "-week-" + plan.from(), kind, player);
      boolean asked = alone.contains(Print.CARD) || alone.contains(Print.HOME);
      return new Drawn(
          asked && !own.isEmpty()
              ? Optional.of(new Document(filed, title, family, plan.from(), own))
              : Optional.empty(),
          club.say("packet.cards"),
          family.name(player.who()),
          open);
    }

    /** All cards on half sheets; they are seen by others, so no card says why there is a hold. */
    private Drawn clipboard(List<PlayerPlan> players) {
      String what = club.say("footer.clipboard");
      Filed filed = filed(Print.CLIPBOARD.id(), Print.CLIPBOARD.id(), Optional.empty());
      List<Section> cards = players.stream().map(this::halfCard).toList();
      return new Drawn(
          Optional.of(
              new Document(
                  filed, named(what), club, plan.from(), pdf -> pdf.addTwoUp(what + " ", cards))),
          what,
          "",
          List.of());
    }

    private Section halfCard(PlayerPlan player) {
      Voice family = new Voice(words, player.who().language());
      String footer = footer(family, family.say("footer.card"), plan.from());
      return HalfCardPrint.of(plan, group, player.inTheOpen(), family, footer)
          .filedUnder(family.name(player.who()));
    }

    /**
     * A sheet of its own for each player, named in the footer and in the packet by {@code kind}.
     */
    private Drawn each(Print print, String kind, PlayerPlan player, PlayerSheet sheet) {
      Voice family = new Voice(words, player.who().language());
      String name = family.name(player.who());
      String what = family.say("footer." + kind);
      Section section =
          sized(
              sheet
                  .of(plan, player, family, footer(family, what, plan.from()))
                  .filedUnder(club.say("footer." + kind), name)
                  .labelled(name + ", " + what + " "));
      Filed filed = filed(print.id(), player.who().id() + "-" + plan.from(), print, player);
      String title = family.say("packet.named", "group", name, "what", what);
      return new Drawn(
          alone.contains(print)
              ? Optional.of(new Document(filed, title, family, plan.from(), section))
              : Optional.empty(),
          club.say("footer." + kind),
          name,
          List.of(section));
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

    private Document document(Filed filed, String what, LocalDate day, List<Section> sections) {
      return new Document(filed, named(what), club, day, sections);
    }

    /** A document of the whole group. */
    private Filed filed(String name, String sheet, Optional<LocalDate> date) {
      String path = group.id() + "/" + name + ".pdf";
      return new Filed(path, sheet, group.id(), Optional.empty(), date);
    }

    /** A document of one player, with others of its kind in a folder. */
    private Filed filed(String folder, String name, Print print, PlayerPlan player) {
      String path = group.id() + "/" + folder + "/" + name + ".pdf";
      Optional<String> id = Optional.of(player.who().id());
      return new Filed(path, print.id(), group.id(), id, Optional.of(plan.from()));
    }
  }

  /** Draws up one player's sheet. */
  @FunctionalInterface
  private interface PlayerSheet {
    Section of(Plan plan, PlayerPlan player, Voice voice, String footer);
  }

  private Section sized(Section section) {
    return large ? section.large() : section;
  }

  /**
   * What is bound into one file.
   *
   * @param filed where it belongs, which also tells it from others of the same title and day
   */
  private record Document(
      Filed filed, String title, Voice voice, LocalDate day, Consumer<Pdf> content) {
    Document(Filed filed, String title, Voice voice, LocalDate day, List<Section> sections) {
      this(filed, title, voice, day, pdf -> sections.forEach(pdf::add));
    }

    Document(Filed filed, String title, Voice voice, LocalDate day, Section section) {
      this(filed, title, voice, day, List.of(section));
    }

    byte[] pdf() {
      try (Pdf pdf = Pdf.of(title, voice.locale(), day, filed.path())) {
        content.accept(pdf);
        return pdf.bytes();
      }
    }
  }
}
