package org.belthigh.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.Test;

class WorkbookTest {
  private static final int DAY = 46_454;

  private final List<Problem> problems = new ArrayList<>();

  private Table table(Xlsx book) {
    return Workbook.parse(book.bytes(), "x.xlsx", problems::add)
        .flatMap(b -> b.table("throws", true, problems::add))
        .orElseThrow();
  }

  private String refused(byte[] bytes) {
    assertThat(Workbook.parse(bytes, "x.xlsx", problems::add)).isEmpty();
    assertThat(problems).hasSize(1);
    return problems.get(0).found();
  }

  private static Xlsx book() {
    return Xlsx.of(
        "Throws",
        List.of(
            Xlsx.texts("date", "player", "pitches", "innings", "start"),
            List.of(),
            List.of(
                Xlsx.day(DAY),
                Xlsx.text(" p01 "),
                Xlsx.number("45"),
                Xlsx.number("3.2000000000000002"),
                Xlsx.time(0.7291666666666666))));
  }

  @Test
  void days_numbers_and_times_are_read_as_they_are_shown() {
    Table table = table(book());

    assertThat(table.rows()).hasSize(1);
    Table.Row row = table.rows().get(0);
    assertThat(row.get("date")).isEqualTo("2027-03-08");
    assertThat(row.get("player")).isEqualTo("p01");
    assertThat(row.get("pitches")).isEqualTo("45");
    assertThat(row.get("start")).isEqualTo("17:30");
    assertThat(row.origin("pitches")).hasToString("x.xlsx sheet throws cell C3");
  }

  @Test
  void a_zip_bomb_is_refused_before_it_grows() {
    byte[] zeros = new byte[80 << 20];

    assertThat(refused(book().part("xl/media/a.png", zeros).bytes()))
        .isEqualTo("the workbook is larger than 64 MiB when it is unpacked");
  }

  @Test
  void parts_without_end_are_refused() {
    Xlsx book = book();
    for (int i = 0; i < 1_001; i++) {
      book.part("xl/media/" + i, new byte[0]);
    }

    assertThat(refused(book.bytes())).contains("larger than 64 MiB");
  }

  @Test
  void xml_that_defines_its_own_words_is_refused() {
    String bomb =
        "<!DOCTYPE a [<!ENTITY b \"bbbbbbbbbb\"><!ENTITY c \"&b;&b;&b;&b;\">]>"
            + "<worksheet><sheetData><row><c t=\"inlineStr\"><is><t>&c;</t></is></c></row>"
            + "</sheetData></worksheet>";

    assertThat(refused(book().part("xl/worksheets/sheet1.xml", bomb).bytes()))
        .isEqualTo("a part of the workbook defines words of its own");
  }

  @Test
  void what_is_no_workbook_is_refused() {
    byte[] whole = book().bytes();

    assertThat(refused("date,player".getBytes(StandardCharsets.UTF_8)))
        .isEqualTo("the file is no workbook");
    problems.clear();
    assertThat(refused(java.util.Arrays.copyOf(whole, whole.length / 2)))
        .isEqualTo("the file is no workbook that can be read");
  }

  @Test
  void a_part_that_is_missing_or_torn_is_refused() {
    assertThat(refused(book().part("xl/worksheets/sheet1.xml", "<worksheet><she").bytes()))
        .isEqualTo("the file is no workbook that can be read");
    problems.clear();
    assertThat(refused(book().part("xl/workbook.xml", "<workbook/>").bytes()))
        .startsWith("the file is no workbook");
  }

  @Test
  void a_sheet_without_a_row_is_no_table() {
    Xlsx empty = Xlsx.of("log", List.of());

    assertThat(
            Workbook.parse(empty.bytes(), "x.xlsx", problems::add)
                .orElseThrow()
                .table("log", true, problems::add))
        .isEmpty();
  }
}
