package org.belthigh.handout.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Prints of random blocks and words, some of them absurd: nothing overlaps or leaves the page. */
class RandomPrintsTest {
  private static final List<String> WORDS =
      List.of(
          "toss",
          "belt-high",
          "the",
          "a",
          "swing",
          "Hernández-Castellanos",
          "¿lista?",
          "away",
          "front-toss/soft-toss",
          "Wolfeschlegelsteinhausenbergerdorff",
          "14",
          "of",
          "20",
          "ñandú",
          "https://example.org/a/very/long/address/that/has/no/spaces/in/it/at/all/0123456789");

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void nothing_overlaps_or_leaves_the_page(long seed) {
    Random random = new Random(seed);
    Paper paper = anyOf(random, List.of(Paper.values()));
    Style style = anyOf(random, List.of(Style.values()));
    Section section =
        Section.of(
                paper,
                style,
                Samples.WORDS,
                words(random, 4),
                flow -> {
                  flow.h1(words(random, 5));
                  fill(flow, random, 12, 2);
                })
            .footed(words(random, 12));
    assertThat(PdfLint.faults(Samples.pdf(section))).as("seed " + seed).isEmpty();
  }

  private static void fill(Flow flow, Random random, int blocks, int depth) {
    for (int i = 0; i < blocks; i++) {
      addBlock(flow, random, depth);
    }
  }

  private static void addBlock(Flow flow, Random random, int depth) {
    switch (random.nextInt(depth > 1 ? 12 : depth > 0 ? 11 : 7)) {
      case 0 -> flow.p(words(random, 40));
      case 1 -> flow.bullets(words(random, 9), words(random, 20));
      case 2 -> flow.numbers(words(random, 9), words(random, 20), "");
      case 3 -> flow.checks(words(random, 9), words(random, 20));
      case 4 -> flow.ticks("low", "belt", "high");
      case 5 -> flow.writing(words(random, 3), 1 + random.nextInt(3));
      case 6 -> flow.small(words(random, 20));
      case 7 -> flow.h2(words(random, 6));
      case 8 -> flow.box(words(random, 4), box -> fill(box, random, 2, depth - 1));
      case 9 -> flow.hatchedBox("", box -> fill(box, random, 3, depth - 1));
      case 10 -> flow.table(table -> fill(table, random));
      default ->
          flow.columns(
              columns ->
                  columns
                      .column(1, left -> fill(left, random, 3, 0))
                      .column(2, right -> fill(right, random, 2, 0)));
    }
  }

  private static void fill(Table table, Random random) {
    table.columns(Col.content(), Col.share(2), Col.mm(15).right()).head("Who", "What", "How many");
    if (random.nextBoolean()) {
      table.boxed();
    }
    for (int row = random.nextInt(9); row > 0; row--) {
      List<Cell> cells =
          List.of(
              Cell.of(words(random, 3)),
              random.nextBoolean()
                  ? Cell.of(words(random, 12))
                  : Cell.of(cell -> fill(cell, random, 2, 0)),
              Cell.of(String.valueOf(random.nextInt(100))));
      if (random.nextInt(4) == 0) {
        table.markedRow(cells);
      } else {
        table.row(cells);
      }
    }
  }

  private static <T> T anyOf(Random random, List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  private static String words(Random random, int most) {
    StringBuilder words = new StringBuilder();
    for (int i = random.nextInt(most) + 1; i > 0; i--) {
      words.append(anyOf(random, WORDS)).append(i > 1 ? " " : "");
    }
    return words.toString();
  }
}
