package org.belthigh.handout.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.belthigh.handout.kit.Block.Extent;
import org.junit.jupiter.api.Test;

class ColumnWidthsTest {
  private static final Extent WORDS = new Extent(40, 200);

  @Test
  void content_gets_what_it_prefers_and_shares_get_the_rest() {
    assertThat(
            ColumnWidths.of(
                List.of(Col.content(), Col.share(1), Col.share(2)),
                List.of(new Extent(20, 60), WORDS, WORDS),
                360))
        .containsExactly(60, 100, 200);
  }

  @Test
  void content_shrinks_towards_its_longest_word_where_room_is_short() {
    assertThat(ColumnWidths.of(List.of(Col.content(), Col.content()), List.of(WORDS, WORDS), 240))
        .containsExactly(120, 120);
  }

  @Test
  void a_share_is_never_narrower_than_its_longest_word() {
    assertThat(
            ColumnWidths.of(
                List.of(Col.share(1), Col.share(9)), List.of(new Extent(50, 50), WORDS), 200))
        .containsExactly(50, 150);
  }

  @Test
  void a_fixed_column_grows_to_its_longest_word() {
    assertThat(
            ColumnWidths.of(
                List.of(Col.mm(10), Col.share(1)), List.of(new Extent(50, 50), WORDS), 200))
        .containsExactly(50, 150);
  }

  @Test
  void fixed_columns_wider_than_the_table_overflow() {
    assertThatThrownBy(() -> ColumnWidths.of(List.of(Col.mm(100)), List.of(Extent.NONE), 200))
        .isInstanceOf(Overflow.class)
        .hasMessageContaining("1 columns");
  }

  @Test
  void widths_never_exceed_the_room() {
    for (double room = 100; room < 800; room += 13) {
      double[] widths =
          ColumnWidths.of(
              List.of(Col.content(), Col.share(1), Col.content(), Col.share(3)),
              List.of(new Extent(60, 300), WORDS, WORDS, new Extent(10, 400)),
              room);
      assertThat(java.util.Arrays.stream(widths).sum()).isLessThanOrEqualTo(room + 1e-6);
    }
  }
}
