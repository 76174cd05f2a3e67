package org.belthigh.handout;

import java.util.List;
import java.util.stream.Stream;
import org.belthigh.handout.kit.Cell;
import org.belthigh.handout.kit.Col;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Paper;
import org.belthigh.handout.kit.Section;
import org.belthigh.handout.kit.Style;
import org.belthigh.handout.kit.Table;
import org.belthigh.handout.kit.Text;
import org.belthigh.handout.kit.Tick;
import org.belthigh.plan.Guide;
import org.belthigh.plan.Plan;

/** "How to read your card": one page for families, with the pictures that the card has. */
final class GuidePrint {
  private static final double PICTURE_HEIGHT = 150;
  private static final double NAME_MM = 42;

  /** The parts of a card, from top to bottom, as the card names them. */
  private static final List<String> PARTS =
      List.of("card.aim", "card.do", "card.head.good", "card.moves", "card.well");

  private final Guide guide;
  private final Voice voice;
  private final Fit fit;

  private GuidePrint(Guide guide, Voice voice, Fit fit) {
    this.guide = guide;
    this.voice = voice;
    this.fit = fit;
  }

  /** The page of {@code guide}, with {@code footer} at its foot. */
  static Section of(Plan plan, Guide guide, Voice voice, String footer) {
    return Fit.on(
        1,
        fit ->
            Section.of(
                    Paper.parse(plan.paper()),
                    fit.close() ? Style.READER_SNUG : Style.READER,
                    voice.pages(),
                    voice.say("guide.title"),
                    new GuidePrint(guide, voice, fit)::write)
                .footed(footer));
  }

  private void write(Flow flow) {
    flow.h1(voice.say("guide.title")).lead(voice.say("guide.first"));
    flow.h2(voice.say("guide.parts")).table(this::parts);
    flow.h2(voice.say("guide.picture"));
    flow.columns(
        columns ->
            columns
                .column(1, left -> picture(left, ZonePicture.View.HITTER))
                .column(1, right -> picture(right, ZonePicture.View.TOSSER)));
    flow.bullets(
        all(
            "guide.picture.zone",
            "guide.picture.striped",
            "guide.picture.mirror",
            "guide.picture.numbers"));
    flow.hatchedBox(
        voice.say("guide.edge"),
        box -> box.bullets(all("guide.edge.first", "guide.edge.arm", "guide.edge.end")));
    flow.p(voice.say("guide.ask"));
  }

  private void parts(Table table) {
    table
        .columns(Col.mm(NAME_MM), Col.share(1))
        .head(voice.say("guide.on-the-card"), voice.say("guide.means"))
        .rowHeaders();
    PARTS.forEach(
        part ->
            table.row(
                Cell.of(Text.bold(voice.say(part))), Cell.of(voice.say("guide.part." + part))));
    table.row(
        Cell.ticks(List.of(new Tick("", voice.say("guide.tick")))),
        Cell.of(voice.say("guide.part.tick")));
  }

  private void picture(Flow flow, ZonePicture.View view) {
    new ZonePicture(guide.picture(), view, ZonePicture.WIDE, fit.of(PICTURE_HEIGHT), voice)
        .addTo(flow);
  }

  private List<Text> all(String... keys) {
    return Stream.of(keys).map(voice::say).map(Text::of).toList();
  }
}
