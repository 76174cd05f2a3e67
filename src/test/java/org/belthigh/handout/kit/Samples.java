package org.belthigh.handout.kit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Prints that use every block, with invented content. */
final class Samples {
  static final Locale ENGLISH = Locale.ENGLISH;
  static final PageWords WORDS =
      new PageWords(ENGLISH, "page {page} of {count}", "{title} (continued)");
  static final Locale SPANISH = Locale.forLanguageTag("es");
  static final LocalDate DAY = LocalDate.of(2027, 3, 8);

  private static final PageWords PALABRAS =
      new PageWords(SPANISH, "página {page} de {count}", "{title} (continuación)");

  private Samples() {}

  private static PageWords words(Locale language) {
    return language.equals(SPANISH) ? PALABRAS : WORDS;
  }

  /** A print with every block. */
  static Section everyBlock(Paper paper, Style style, Locale language) {
    boolean spanish = language.equals(SPANISH);
    String title = spanish ? "Semana de Ángela Muñoz" : "Angela's week";
    return Section.of(
            paper, style, words(language), title, spanish ? Samples::spanish : Samples::english)
        .footed(
            spanish
                ? "Club Ejemplo · Menores de 10 · Tarjeta · semana del 8 de marzo · hecha para el 8"
                    + " de marzo de 2027 · currículo hitting-9-10 2026.1 · reglas pitch-smart-2018"
                : "Example Club · Under 10 · Card · week of March 8 · made for March 8, 2027 ·"
                    + " curriculum hitting-9-10 2026.1 · rule book pitch-smart-2018")
        .filedUnder(spanish ? "Tarjetas" : "Cards", title)
        .labelled("C1-");
  }

  private static void english(Flow flow) {
    flow.h1("Angela · 12")
        .lead(Text.marked("**This week:** see if the ball is low, belt-high or high."))
        .p(
            Text.marked(
                "Say the height out loud before the ball gets to the plate. Your cue: **see it"
                    + " early, say it early.** You called 14 of 20 heights last week."))
        .h2("What to do")
        .table(
            table -> {
              table
                  .columns(
                      Col.content(), Col.share(2), Col.content(), Col.content().right(), Col.mm(8))
                  .head("Day", "Drill", "Ball", "Tosses", "Done")
                  .rowHeaders();
              for (String day : List.of("Mon", "Wed", "Sat")) {
                table.row(
                    Cell.of(day),
                    Cell.of("Call the height, front toss from behind the screen, 15 feet"),
                    Cell.of("plastic"),
                    Cell.of("18"),
                    Cell.ticks(List.of(Tick.bare(day + " done"))));
              }
            })
        .columns(
            columns ->
                columns
                    .column(
                        1,
                        left ->
                            left.h3("Where to look")
                                .picture(150, 150, Align.CENTRE, nineAlternate(), Samples::nine))
                    .column(
                        1,
                        right ->
                            right
                                .h3("What moves me on")
                                .bullets("Call 15 of 20 heights.", "Do it on two days.")
                                .h3("How it goes")
                                .numbers("Feet set.", "Eyes on the hand.", "Say it.")
                                .ticks("low", "belt", "high")))
        .hatchedBox(
            "Arm and rest",
            box ->
                box.p("No throwing until Thursday, March 11. Known up to Sunday, March 7.")
                    .checks(
                        "Thrown or caught anywhere since? Then this sheet does not count; use the"
                            + " pocket table.",
                        "An adult stays the whole time.")
                    .small(
                        "Source: Pitch Smart 2018. A doctor's word and league rules come first."))
        .box("For the coach", box -> box.writing("What went well", 2))
        .h2("Log")
        .table(
            table ->
                table
                    .columns(Col.share(2), Col.share(3), Col.share(3))
                    .head("Toss", "Where it went", "Note")
                    .boxed()
                    .writable()
                    .row(Cell.of("1"), Cell.ticks("low", "belt", "high"), Cell.blank())
                    .markedRow(Cell.of("2 (rest first)"), Cell.ticks("low", "belt"), Cell.blank())
                    .row(Cell.of("Anything else the coach should know").span(3)))
        .together(group -> group.h3("Stop when").bullets("It hurts.", "It gets dark."))
        .space(10)
        .p("See you on Monday!");
  }

  private static void spanish(Flow flow) {
    flow.h1("Ángela · 12")
        .lead(Text.marked("**Esta semana:** mira si la pelota viene baja, al cinturón o alta."))
        .p("Di la altura en voz alta antes de que la pelota llegue. ¿Lista? ¡Vamos, campeóna!")
        .h2("Qué hacer")
        .table(
            table ->
                table
                    .columns(Col.content(), Col.share(1), Col.content().centred())
                    .head("Día", "Ejercicio", "Lanzamientos")
                    .rowHeaders()
                    .row("miércoles", "Di la altura; lanzamiento suave de frente, 4,5 metros", "18")
                    .row("sábado", "Igual, con pelotas de plástico y una pantalla de red", "18"))
        .picture(150, 150, "Nueve zonas: tres alturas por tres lados.", Samples::nine)
        .hatchedBox(
            "Antes de empezar",
            box -> box.checks("Se queda un adulto.", "Solo pelotas de plástico o de espuma."))
        .box("", box -> box.writing("Qué salió bien", 1))
        .h3("Para cuando")
        .numbers("Duela.", "Oscurezca.");
  }

  static String nineAlternate() {
    return "The strike zone as the hitter sees it: three heights by three sides. Look for the belt"
        + " row.";
  }

  static void nine(Pen pen) {
    double side = 30;
    double left = 50;
    double top = 6;
    String[] rows = {"high", "belt", "low"};
    String[] columns = {"in", "middle", "away"};
    pen.hatch(left, top + side, 3 * side, side);
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 3; column++) {
        pen.rect(left + column * side, top + row * side, side, side, Pen.Stroke.THIN);
      }
      pen.label(left - 6, top + (row + 0.5) * side, Align.RIGHT, rows[row]);
    }
    pen.rect(left, top, 3 * side, 3 * side, Pen.Stroke.THICK);
    pen.smallLabel(left + side / 2, top + 3 * side + 9, Align.CENTRE, columns[0]);
    pen.smallLabel(left + 1.5 * side, top + 3 * side + 9, Align.CENTRE, columns[1]);
    pen.smallLabel(left + 2.5 * side, top + 3 * side + 9, Align.CENTRE, columns[2]);
    pen.shape(
        Pen.Stroke.MEDIUM,
        false,
        left,
        118,
        left + 90,
        118,
        left + 90,
        126,
        left + 45,
        140,
        left,
        126);
    pen.dot(left + 45, top + 45, 3);
    pen.circle(20, 120, 8, Pen.Stroke.THIN);
    pen.circle(20, 120, 14, Pen.Stroke.DASHED);
    pen.arrow(20, 100, 44, 100, Pen.Stroke.MEDIUM);
    pen.line(4, 146, 146, 146, Pen.Stroke.DASHED);
    pen.polyline(Pen.Stroke.MEDIUM, 4, 20, 12, 10, 20, 22);
  }

  /** An overview over several pages: many rows, some long, many columns. */
  static Section longTable(Paper paper, int rows) {
    return Section.of(
            paper,
            Style.CLIPBOARD,
            WORDS,
            "Overview, Under 10",
            flow ->
                flow.h1("Overview, Under 10")
                    .p("Who needs a look this week, and why.")
                    .table(table -> fillOverview(table, rows))
                    .h2("What was set aside")
                    .bullets(many("One row of throws.csv had no date.", 6)))
        .footed("Example Club · Under 10 · Overview · week of March 8")
        .labelled("O");
  }

  private static void fillOverview(Table table, int rows) {
    table
        .columns(
            Col.content(),
            Col.share(1),
            Col.share(1),
            Col.share(1),
            Col.content().right(),
            Col.share(2))
        .head("Player", "See", "Choose", "Drive", "Tosses seen", "Needs a look because")
        .rowHeaders();
    for (int i = 1; i <= rows; i++) {
      String name = i % 7 == 0 ? "María-Guadalupe Hernández-Castellanos" : "Player " + i;
      List<Cell> cells =
          new ArrayList<>(
              List.of(
                  Cell.of(name),
                  Cell.of("three rows: keep going"),
                  Cell.of("belt balls: firm up"),
                  Cell.of("off the tee"),
                  Cell.of(String.valueOf(i * 13 % 97)),
                  Cell.of(i % 3 == 0 ? "Calls dropped from 14 to 9 of 20 over two weeks." : "")));
      if (i % 5 == 0) {
        table.markedRow(cells);
      } else {
        table.row(cells);
      }
    }
  }

  /** A row, columns and a box that are each higher than a page. */
  static Section cutRowsAndBoxes(Paper paper) {
    String words = "Long words about one drill that never seem to end. ".repeat(110);
    return Section.of(
        paper,
        Style.READER,
        WORDS,
        "Long parts",
        flow ->
            flow.h1("Long parts")
                .table(
                    table ->
                        table
                            .columns(Col.mm(30), Col.share(1))
                            .head("Name", "Note")
                            .row("Ava", words))
                .columns(
                    columns ->
                        columns
                            .column(1, left -> left.checks(many("left", 50)))
                            .column(1, right -> right.p(words)))
                .hatchedBox(
                    "Safety",
                    box ->
                        box.table(
                            table -> {
                              table.columns(Col.content(), Col.share(1)).head("Day", "Note");
                              for (int i = 1; i <= 60; i++) {
                                table.row("Day " + i, "Rest.");
                              }
                            })));
  }

  /** Running text over several pages. */
  static Section longText(Paper paper, Locale language, int paragraphs) {
    return Section.of(
        paper,
        Style.READER,
        words(language),
        "Season report",
        flow -> {
          flow.h1("Season report");
          for (int i = 1; i <= paragraphs; i++) {
            flow.h2("Week " + i)
                .p(
                    "Angela called the height of many tosses this week. She let the low ones go and"
                        + " swung at the belt-high ones. She hit the ball hard off the tee and soon"
                        + " will try it off a front toss. Rest days were kept. ¡Muy bien!")
                .checks(many("Eyes on the hand that tosses, feet set, hands back.", 3));
          }
        });
  }

  static List<Text> many(String item, int count) {
    List<Text> items = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      items.add(Text.of(item + " " + i));
    }
    return items;
  }

  static byte[] pdf(Section section) {
    return Pdf.of(section, "Sample print", ENGLISH, DAY);
  }

  /** A packet of prints in two languages, on two papers. */
  static byte[] packet() {
    try (Pdf pdf = Pdf.of("Under 10, week of March 8 & on <draft>", ENGLISH, DAY, "packet")) {
      pdf.add(longTable(Paper.LETTER_LYING, 40).filedUnder("Overview"));
      pdf.add(everyBlock(Paper.LETTER, Style.READER, ENGLISH));
      pdf.add(everyBlock(Paper.LETTER, Style.READER, SPANISH).labelled("C2-"));
      pdf.add(longText(Paper.A4, ENGLISH, 9).filedUnder("Reports", "Angela"));
      return pdf.bytes();
    }
  }
}
