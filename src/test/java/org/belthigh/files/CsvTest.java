package org.belthigh.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.Test;

class CsvTest {
  private final List<Problem> problems = new ArrayList<>();

  private Table table(String text) {
    return Csv.parse(text, "x.csv", problems::add).orElseThrow();
  }

  @Test
  void names_are_found_without_case_and_in_any_order() {
    Table table = table(" Zone ,DATE\n5,2027-03-08\n");

    assertThat(table.has("date")).isTrue();
    assertThat(table.rows().get(0).get("date")).isEqualTo("2027-03-08");
    assertThat(table.rows().get(0).get("zone")).isEqualTo("5");
    assertThat(table.rows().get(0).get("swing")).isEmpty();
  }

  @Test
  void a_cell_knows_its_line_and_column() {
    Table table = table("a,b,c\n\n1,\"two, \"\"2\"\"\",3\n");

    assertThat(table.rows().get(0).get("b")).isEqualTo("two, \"2\"");
    assertThat(table.rows().get(0).origin()).hasToString("x.csv line 3");
    assertThat(table.rows().get(0).origin("a")).hasToString("x.csv line 3 column 1");
    assertThat(table.rows().get(0).origin("b")).hasToString("x.csv line 3 column 3");
    assertThat(table.rows().get(0).origin("c")).hasToString("x.csv line 3 column 16");
  }

  @Test
  void a_cell_after_a_line_end_in_quotes_stands_on_the_later_line() {
    Table table = table("a,b,c\r\n1,\"two\r\nlines\",3\r\n4,5\" bat,6\r\n");

    assertThat(table.rows().get(0).origin("c")).hasToString("x.csv line 3 column 8");
    assertThat(table.rows().get(1).origin()).hasToString("x.csv line 4");
    assertThat(table.rows().get(1).get("b")).isEqualTo("5\" bat");
    assertThat(table.rows().get(1).origin("c")).hasToString("x.csv line 4 column 10");
    assertThat(table.rows()).allMatch(row -> row.fault().isEmpty());
    assertThat(table.complete()).isTrue();
  }

  @Test
  void semicolons_and_tabs_may_separate_where_the_header_has_no_comma() {
    assertThat(table("a;b\n1;2\n").rows().get(0).get("b")).isEqualTo("2");
    assertThat(table("a\tb\n1\t2,5\n").rows().get(0).get("b")).isEqualTo("2,5");
  }

  @Test
  void blank_rows_are_skipped_and_blanks_trimmed() {
    Table table = table("a,b\n\n , \n,\n 1 ,2\n");

    assertThat(table.rows()).hasSize(1);
    assertThat(table.rows().get(0).get("a")).isEqualTo("1");
  }

  @Test
  void missing_or_surplus_cells_matter_only_where_something_is_lost() {
    Table table = table("a,b\n1\n1,2,,\n1,2,3\n");

    assertThat(table.rows().get(0).fault()).isEmpty();
    assertThat(table.rows().get(0).get("b")).isEmpty();
    assertThat(table.rows().get(1).fault()).isEmpty();
    assertThat(table.rows().get(2).fault().orElseThrow().text())
        .isEqualTo(
            "x.csv line 4: the row has 3 cells under 2 columns; a cell with a comma in it must"
                + " stand in quotes.\nMaybe put \" before and after the text with the comma.");
  }

  @Test
  void an_open_quote_leaves_the_table_incomplete() {
    Table table = table("a,b\n1,2\n3,\"4\n5,6\n");

    assertThat(table.complete()).isFalse();
    assertThat(table.rows().get(0).fault()).isEmpty();
    assertThat(table.rows().get(1).fault()).isPresent();
  }

  @Test
  void a_header_alone_is_a_table_without_rows() {
    assertThat(table("a,b").rows()).isEmpty();
    assertThat(table("a,b").complete()).isTrue();
  }

  @Test
  void an_endless_line_is_refused() {
    String text = "a,b\n" + "1".repeat(Csv.LONGEST_LINE + 1);

    assertThat(Csv.parse(text, "x.csv", problems::add)).isEmpty();
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).text())
        .startsWith("x.csv line 2: the line is longer than 100000 characters");
  }
}
