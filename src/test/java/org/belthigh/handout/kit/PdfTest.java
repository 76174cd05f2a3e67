package org.belthigh.handout.kit;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.mapping;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.junit.jupiter.api.Test;

class PdfTest {
  private static Section section(Consumer<Flow> content) {
    return Section.of(Paper.LETTER, Style.READER, Samples.WORDS, "Test print", content);
  }

  private static Map<Integer, String> textByPage(byte[] pdf) {
    return PdfLint.lines(pdf).stream()
        .collect(
            groupingBy(
                PdfLint.TextLine::page,
                TreeMap::new,
                mapping(PdfLint.TextLine::text, joining("\n"))));
  }

  @Test
  void same_input_gives_same_bytes_in_any_time_zone_and_language() {
    byte[] first = Samples.packet();
    TimeZone zone = TimeZone.getDefault();
    Locale locale = Locale.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(Samples.packet()).isEqualTo(first);
    } finally {
      TimeZone.setDefault(zone);
      Locale.setDefault(locale);
    }
  }

  @Test
  void same_input_gives_same_bytes_in_threads_that_share_the_fonts() throws Exception {
    byte[] alone = Samples.packet();
    ExecutorService threads = Executors.newFixedThreadPool(4);
    try {
      List<Callable<byte[]>> tasks = new ArrayList<>();
      for (int i = 0; i < 8; i++) {
        tasks.add(Samples::packet);
      }
      for (var made : threads.invokeAll(tasks)) {
        assertThat(made.get()).isEqualTo(alone);
      }
    } finally {
      threads.shutdownNow();
    }
  }

  @Test
  void a_section_counts_its_own_pages_and_says_so_at_the_foot() {
    Section report = Samples.longText(Paper.LETTER, Samples.SPANISH, 9);
    byte[] packet;
    try (Pdf pdf = Pdf.of("Packet", Samples.ENGLISH, Samples.DAY, "key")) {
      assertThat(pdf.add(section(flow -> flow.h1("One page")))).isEqualTo(1);
      assertThat(pdf.add(report)).isEqualTo(report.pageCount()).isEqualTo(2);
      packet = pdf.bytes();
    }
    Map<Integer, String> pages = textByPage(packet);
    assertThat(pages.get(0)).contains("page 1 of 1");
    assertThat(pages.get(1)).contains("página 1 de 2").doesNotContain("continuación");
    assertThat(pages.get(2)).contains("página 2 de 2", "Season report (continuación)");
  }

  @Test
  void a_table_repeats_its_head_on_each_page_but_is_read_once() {
    byte[] pdf = Samples.pdf(Samples.longTable(Paper.LETTER_LYING, 90));
    Map<Integer, String> pages = textByPage(pdf);
    assertThat(pages).hasSizeGreaterThan(2);
    assertThat(PdfLint.lines(pdf))
        .filteredOn(line -> line.text().equals("Needs a look because"))
        .satisfies(
            heads ->
                assertThat(heads.stream().map(PdfLint.TextLine::page).distinct())
                    .hasSizeGreaterThan(2))
        .filteredOn(line -> !line.decoration())
        .hasSize(1);
  }

  @Test
  void rows_columns_and_boxes_higher_than_a_page_are_cut_between_their_lines() {
    byte[] pdf = Samples.pdf(Samples.cutRowsAndBoxes(Paper.LETTER));
    assertThat(PdfLint.faults(pdf)).isEmpty();
    String read =
        PdfLint.lines(pdf).stream()
            .filter(line -> !line.decoration())
            .map(PdfLint.TextLine::text)
            .collect(joining(" "));
    assertThat(read).contains("left 1 ", "left 50", "Day 1 ", "Day 60");
    assertThat(read.split("never seem to end\\.", -1)).hasSize(2 * 110 + 1);
  }

  @Test
  void a_box_stays_on_one_page_and_breaks_only_if_higher_than_a_page() {
    Section kept =
        section(
            flow -> {
              flow.h1("Kept");
              flow.bullets(Samples.many("item", 30));
              flow.box("Safety", box -> box.bullets(Samples.many("line", 15)));
            });
    Map<Integer, String> pages = textByPage(Samples.pdf(kept));
    assertThat(pages.get(0)).doesNotContain("Safety", "line 1");
    assertThat(pages.get(1)).contains("Safety", "line 1", "line 15");

    byte[] broken =
        Samples.pdf(
            section(
                flow ->
                    flow.h1("Broken").box("Safety", box -> box.bullets(Samples.many("line", 80)))));
    assertThat(textByPage(broken).get(0)).contains("Safety", "line 1");
    assertThat(textByPage(broken).get(1)).contains("line 80");
    assertThat(PdfLint.faults(broken)).isEmpty();
  }

  @Test
  void a_heading_never_ends_a_page() {
    for (int items = 25; items < 45; items++) {
      int count = items;
      byte[] pdf =
          Samples.pdf(
              section(
                  flow ->
                      flow.h1("Test")
                          .bullets(Samples.many("item", count))
                          .h2("Heading")
                          .p("Its text. ".repeat(40))));
      List<PdfLint.TextLine> read =
          PdfLint.lines(pdf).stream().filter(line -> !line.decoration()).toList();
      for (int i = 0; i < read.size() - 1; i++) {
        if (read.get(i).text().equals("Heading")) {
          assertThat(read.get(i + 1).page()).isEqualTo(read.get(i).page());
        }
      }
    }
  }

  @Test
  void columns_are_read_one_after_the_other() {
    byte[] pdf =
        Samples.pdf(
            section(
                flow ->
                    flow.h1("Test")
                        .columns(
                            columns ->
                                columns
                                    .column(1, left -> left.p("left one").p("left two"))
                                    .column(1, right -> right.p("right one").p("right two")))));
    assertThat(PdfLint.lines(pdf))
        .filteredOn(line -> line.tag().equals("P"))
        .extracting(PdfLint.TextLine::text)
        .containsExactly("left one", "left two", "right one", "right two");
  }

  @Test
  void a_packet_has_bookmarks_by_group_and_labels_by_print() throws IOException {
    try (PDDocument document = Loader.loadPDF(Samples.packet())) {
      PDOutlineNode outline = document.getDocumentCatalog().getDocumentOutline();
      List<String> titles = new ArrayList<>();
      outline(outline, "", titles);
      assertThat(titles)
          .containsExactly(
              "Overview",
              "Cards",
              "Cards > Angela's week",
              "Tarjetas",
              "Tarjetas > Semana de Ángela Muñoz",
              "Reports",
              "Reports > Angela");
      assertThat(document.getDocumentCatalog().getPageLabels().getLabelsByPageIndices())
          .contains("O1", "O2", "C1-1", "C2-1", "1");
    }
  }

  private static void outline(PDOutlineNode node, String above, List<String> titles) {
    for (PDOutlineItem item : node.children()) {
      String title = above + item.getTitle();
      titles.add(title);
      outline(item, title + " > ", titles);
    }
  }

  @Test
  void a_packet_shares_its_fonts() {
    int alone = Samples.pdf(Samples.everyBlock(Paper.LETTER, Style.READER, Samples.ENGLISH)).length;
    try (Pdf pdf = Pdf.of("Packet", Samples.ENGLISH, Samples.DAY, "key")) {
      for (int i = 0; i < 20; i++) {
        pdf.add(Samples.everyBlock(Paper.LETTER, Style.READER, Samples.ENGLISH));
      }
      assertThat(pdf.bytes().length).isLessThan(20 * alone / 2);
    }
  }

  @Test
  void a_picture_wider_than_its_column_overflows() {
    Section wide = section(flow -> flow.picture(600, 40, "A long fence.", pen -> {}));
    assertThatThrownBy(() -> Samples.pdf(wide))
        .isInstanceOf(Overflow.class)
        .hasMessageContaining("\"A long fence.\" is wider than its column");
  }

  @Test
  void a_label_that_leaves_its_picture_or_touches_another_overflows() {
    assertThatThrownBy(
            () ->
                Samples.pdf(
                    section(
                        flow ->
                            flow.picture(
                                50, 50, "Plate.", pen -> pen.label(30, 20, Align.LEFT, "plate")))))
        .isInstanceOf(Overflow.class)
        .hasMessageStartingWith("label on page 1: \"plate\" reaches out of its picture");
    assertThatThrownBy(
            () ->
                Samples.pdf(
                    section(
                        flow ->
                            flow.picture(
                                90,
                                50,
                                "Plate.",
                                pen -> {
                                  pen.label(10, 20, Align.LEFT, "plate");
                                  pen.label(20, 24, Align.LEFT, "belt");
                                }))))
        .isInstanceOf(Overflow.class)
        .hasMessageContaining("touches another label");
  }

  @Test
  void ink_outside_a_picture_is_refused() {
    Section stray = section(flow -> flow.picture(50, 50, "Plate.", pen -> pen.dot(49, 25, 3)));
    assertThatThrownBy(() -> Samples.pdf(stray)).hasMessageContaining("lies outside");
  }

  @Test
  void heading_levels_are_not_skipped_and_cells_match_columns() {
    assertThatThrownBy(() -> section(flow -> flow.h1("One").h3("Three")))
        .hasMessage("heading \"Three\": level 3 follows level 1; levels must not be skipped.");
    assertThatThrownBy(
            () -> section(flow -> flow.table(table -> table.columns(Col.content()).row("a", "b"))))
        .hasMessage("table row 1: 2 cells for 1 columns; there must be one a column.");
  }

  @Test
  void blank_texts_and_empty_lists_leave_nothing_behind() {
    byte[] pdf =
        Samples.pdf(
            section(
                flow ->
                    flow.h1("Test")
                        .p("")
                        .bullets()
                        .ticks()
                        .checks("", " ")
                        .table(table -> table.columns(Col.share(1)))
                        .columns(columns -> columns.column(1, left -> {}))
                        .box("", box -> {})
                        .p("end")));
    assertThat(PdfLint.faults(pdf)).isEmpty();
    List<PdfLint.TextLine> lines = PdfLint.lines(pdf);
    assertThat(lines.get(1).text()).isEqualTo("end");
    assertThat(lines.get(1).baseline() - lines.get(0).baseline()).isLessThan(30);
  }

  @Test
  void a_document_without_a_print_is_refused() {
    try (Pdf pdf = Pdf.of("Empty", Samples.ENGLISH, Samples.DAY, "key")) {
      assertThatThrownBy(pdf::bytes).hasMessage("document \"Empty\" has no section.");
    }
  }

  @Test
  void the_scale_of_sizes_keeps_its_promises() {
    double leastMargin = Length.mm(12.7);
    assertThat(Paper.MARGIN).isGreaterThanOrEqualTo(leastMargin);
    assertThat(Style.READER.body().type()).isGreaterThanOrEqualTo(11);
    assertThat(Style.CLIPBOARD.body().type()).isGreaterThanOrEqualTo(10);
    assertThat(Style.CHECK_BOX).isGreaterThanOrEqualTo(Length.mm(4.5));
    assertThat(Style.WRITING_LINE).isGreaterThanOrEqualTo(Length.mm(8));
  }
}
