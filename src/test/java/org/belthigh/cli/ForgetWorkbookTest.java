package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.belthigh.files.Timeless;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ForgetWorkbookTest {
  @TempDir private Path folder;

  private Path club(String born) throws IOException {
    Path club = Runs.cleanDemo(folder);
    List<String> lines = Files.readAllLines(club.resolve("roster.csv"));
    try (OutputStream file = Files.newOutputStream(club.resolve("roster.xlsx"));
        Workbook book = new Workbook(file, "test", "1.0")) {
      Worksheet sheet = book.newWorksheet("roster");
      for (int row = 0; row < lines.size(); row++) {
        String[] cells = lines.get(row).split(",", -1);
        for (int i = 0; i < cells.length; i++) {
          boolean hers = cells[0].equals("p03") && i == 3;
          sheet.value(row, i, hers && !born.isEmpty() ? born : cells[i]);
        }
      }
      book.newWorksheet("mine").value(0, 0, "snack list");
    }
    Path made = club.resolve("roster.xlsx");
    Files.write(made, Timeless.workbook(Files.readAllBytes(made)));
    Files.delete(club.resolve("roster.csv"));
    return club;
  }

  /** Every part of a workbook, unpacked. */
  private static String parts(Path file) throws IOException {
    StringBuilder all = new StringBuilder();
    try (ZipInputStream in =
        new ZipInputStream(new ByteArrayInputStream(Files.readAllBytes(file)))) {
      for (ZipEntry e = in.getNextEntry(); e != null; e = in.getNextEntry()) {
        all.append(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    return all.toString();
  }

  @Test
  void a_child_of_the_workbook_alone_is_taken_out_of_it() throws IOException {
    Path club = club("");
    assertThat(parts(club.resolve("roster.xlsx"))).contains(">p03<");

    Ran ran = Runs.run("forget", club.toString(), "p03");

    assertThat(ran.out()).contains("  roster.xlsx sheet roster: 1 row, line 4");
    assertThat(parts(club.resolve("roster.xlsx")))
        .doesNotContain("p03")
        .contains("p02", "snack list");
    assertThat(ran.status()).as(ran.out()).isZero();
    Ran after = Runs.run("check", club.toString());
    assertThat(after.out() + after.err()).doesNotContain("p03");
  }

  @Test
  void a_child_whose_own_row_is_faulty_is_taken_out_and_the_rest_is_named() throws IOException {
    Path club = club("never");
    Files.writeString(club.resolve("logs/short.txt"), "2027-04-01\n#3 55 5h\n#7 55 5h\n");

    Ran ran = Runs.run("forget", club.toString(), "p03");

    assertThat(ran.out()).contains("  roster.xlsx sheet roster: 1 row, line 4");
    assertThat(parts(club.resolve("roster.xlsx"))).doesNotContain("p03", ">never<");
    assertThat(ran.status()).isIn(0, 3);
  }

  @Test
  void a_file_that_cannot_be_looked_into_is_named() throws IOException {
    Path club = club("");
    Files.write(club.resolve("scan.pdf"), new byte[] {1, 0, 2});

    Ran ran = Runs.run("forget", club.toString(), "p03");

    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.out()).contains("Look into these files yourself", "  scan.pdf");
  }
}
