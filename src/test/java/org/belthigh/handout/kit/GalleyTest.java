package org.belthigh.handout.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class GalleyTest {
  private static Piece piece(String name, double height) {
    return Piece.of(name, height, (canvas, x, top) -> {});
  }

  private static Piece group(String name, double height) {
    return piece(name, height).glued(Piece.Glue.GROUP);
  }

  private static Piece tight(String name, double height) {
    return piece(name, height).glued(Piece.Glue.TIGHT);
  }

  private static List<List<String>> names(Piece... pieces) {
    return Galley.pages(List.of(pieces), 100, 100).stream()
        .map(page -> page.stream().map(placed -> placed.piece().what()).toList())
        .toList();
  }

  @Test
  void pieces_fill_a_page_to_the_last_point() {
    assertThat(names(piece("a", 60), piece("b", 40))).containsExactly(List.of("a", "b"));
    assertThat(names(piece("a", 60), piece("b", 40.5))).containsExactly(List.of("a"), List.of("b"));
  }

  @Test
  void of_two_spaces_the_larger_counts_and_none_at_the_top_of_a_page() {
    List<Galley.Placed> page =
        Galley.pages(List.of(piece("a", 10).spaced(30, 4), piece("b", 10).spaced(8, 0)), 100, 100)
            .get(0);
    assertThat(page).extracting(Galley.Placed::top).containsExactly(0.0, 18.0);
  }

  @Test
  void a_group_moves_to_the_next_page_as_a_whole() {
    assertThat(names(piece("a", 50), group("b", 30), piece("c", 30)))
        .containsExactly(List.of("a"), List.of("b", "c"));
  }

  @Test
  void a_group_higher_than_a_page_breaks_but_a_heading_stays_with_its_text() {
    assertThat(
            names(
                piece("a", 10),
                group("b", 80),
                tight("heading", 8),
                group("text", 8),
                piece("end", 40)))
        .containsExactly(List.of("a", "b"), List.of("heading", "text", "end"));
  }

  @Test
  void a_repeated_head_is_drawn_where_a_page_starts_and_takes_its_room() {
    Piece head = piece("head", 20);
    Piece row = piece("row", 40).repeating(head);
    assertThat(names(head.glued(Piece.Glue.TIGHT), row, row, row, row))
        .containsExactly(List.of("head", "row", "row"), List.of("head", "row", "row"));
  }

  @Test
  void a_page_break_starts_a_page_once_and_none_at_the_ends() {
    Piece mark = Piece.pageBreak();
    assertThat(names(mark, piece("a", 10), mark, mark, piece("b", 10), mark))
        .containsExactly(List.of("a"), List.of("b"));
  }

  @Test
  void a_piece_higher_than_a_page_overflows_with_its_block_and_page() {
    assertThatThrownBy(() -> names(piece("a", 10), piece("picture", 101)))
        .isInstanceOfSatisfying(
            Overflow.class, overflow -> assertThat(overflow.block()).isEqualTo("picture"))
        .hasMessageStartingWith("picture on page 1: \"101 points high\" is higher than a page.");
  }

  @Test
  void nothing_makes_one_empty_page() {
    assertThat(names()).containsExactly(List.of());
  }
}
