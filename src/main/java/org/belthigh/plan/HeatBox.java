package org.belthigh.plan;

import java.util.List;
import java.util.stream.Stream;
import org.belthigh.model.Phrase;

/**
 * What heat means for a practice, by the published tables.
 *
 * @param meter by a wet-bulb globe meter on the field, coolest first
 * @param index by a heat index, which is never looked up in the rows of the meter
 * @param mind what not to mix up in reading it
 * @param notes for whom the rows are, and how sure they are
 */
public record HeatBox(List<Line> meter, List<Line> index, Phrase mind, List<Phrase> notes) {
  public HeatBox {
    meter = List.copyOf(meter);
    index = List.copyOf(index);
    notes = List.copyOf(notes);
  }

  /** What to do at each reading, by the strictest table, and what not to mix up. */
  List<Phrase> cautions() {
    return Stream.of(
            meter.stream().map(Line::strictest),
            index.stream().map(Line::strictest),
            Stream.of(mind))
        .flatMap(lines -> lines)
        .distinct()
        .toList();
  }

  /**
   * One band of readings.
   *
   * @param reading the degrees, Fahrenheit
   * @param strictest what to do, by the strictest table, and which that is where there are several
   * @param others what each other table asks for; empty where they agree or ask for nothing
   */
  public record Line(Phrase reading, Phrase strictest, List<Phrase> others) {
    public Line {
      others = List.copyOf(others);
    }
  }
}
