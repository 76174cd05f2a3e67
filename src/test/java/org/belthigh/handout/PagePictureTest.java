package org.belthigh.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Paper;
import org.belthigh.handout.kit.Pdf;
import org.belthigh.handout.kit.Section;
import org.belthigh.handout.kit.Style;
import org.junit.jupiter.api.Test;

/** What counts as a change of a page, and what as another machine. */
class PagePictureTest {
  private static final PagePicture APPROVED =
      page(flow -> sheet(flow, 20, "Watch it all the way."));

  @Test
  void the_same_page_is_like_itself_after_a_walk_through_a_file() {
    PagePicture kept = PagePicture.read(APPROVED.png());

    assertThat(kept.like(APPROVED)).isTrue();
    assertThat(kept.png()).isEqualTo(APPROVED.png());
  }

  @Test
  void a_full_stop_that_is_gone_is_a_change() {
    assertThat(APPROVED.like(page(flow -> sheet(flow, 20, "Watch it all the way")))).isFalse();
  }

  @Test
  void a_line_that_moved_by_a_point_is_a_change() {
    assertThat(APPROVED.like(page(flow -> sheet(flow, 21, "Watch it all the way.")))).isFalse();
  }

  @Test
  void a_box_to_tick_that_is_gone_is_a_change() {
    PagePicture without =
        page(flow -> flow.h1("Lena").space(20).p("Watch it all the way.").bullets("Done"));

    assertThat(APPROVED.like(without)).isFalse();
  }

  @Test
  void another_paper_is_a_change() {
    PagePicture a4 = page(Paper.A4, flow -> sheet(flow, 20, "Watch it all the way."));

    assertThat(APPROVED.like(a4)).isFalse();
    assertThat(a4.like(APPROVED)).isFalse();
  }

  @Test
  void two_steps_of_grey_are_another_machine_and_three_are_a_change() {
    int step = 255 / PagePicture.STEPS;
    PagePicture grey = block(10 * step);

    assertThat(grey.like(block((10 + PagePicture.TOLERANCE) * step))).isTrue();
    assertThat(grey.like(block((10 - PagePicture.TOLERANCE) * step))).isTrue();
    assertThat(grey.like(block((10 + PagePicture.TOLERANCE + 1) * step))).isFalse();
    assertThat(grey.like(block((10 - PagePicture.TOLERANCE - 1) * step))).isFalse();
  }

  @Test
  void the_picture_of_a_change_is_red_there_and_nowhere_else() throws IOException {
    BufferedImage before = white(100);
    BufferedImage after = white(100);
    after.getRaster().setSample(30, 40, 0, 0);

    BufferedImage shown =
        ImageIO.read(
            new ByteArrayInputStream(PagePicture.of(before).beside(PagePicture.of(after))));

    assertThat(red(shown, 2 * 108 + 30, 40)).isTrue();
    assertThat(red(shown, 2 * 108 + 33, 40)).isFalse();
    assertThat(red(shown, 108 + 30, 40)).isFalse();
    assertThat(shown.getRGB(108 + 30, 40) & 0xff).as("now").isZero();
    assertThat(shown.getRGB(30, 40) & 0xff).as("approved").isEqualTo(255);
  }

  @Test
  void a_page_that_grew_is_red_where_there_was_none() throws IOException {
    BufferedImage shown =
        ImageIO.read(
            new ByteArrayInputStream(
                PagePicture.of(white(100)).beside(PagePicture.of(white(120)))));

    assertThat(red(shown, 2 * 128 + 50, 50)).isFalse();
    assertThat(red(shown, 2 * 128 + 110, 50)).isTrue();
  }

  private static void sheet(Flow flow, double space, String sentence) {
    flow.h1("Lena").space(space).p(sentence).checks("Done");
  }

  private static PagePicture page(Consumer<Flow> content) {
    return page(Paper.LETTER, content);
  }

  private static PagePicture page(Paper paper, Consumer<Flow> content) {
    Voice voice = new Voice(SamplePlans.WORDS, "en");
    Section section = Section.of(paper, Style.READER, voice.pages(), "Sample", content);
    byte[] pdf = Pdf.of(section, "Sample", voice.locale(), SamplePlans.MONDAY);
    return PagePicture.read(Preview.png(pdf, GalleryTest.DOTS_PER_INCH));
  }

  private static PagePicture block(int grey) {
    BufferedImage image = white(60);
    fill(image, 5, grey);
    return PagePicture.of(image);
  }

  private static BufferedImage white(int side) {
    BufferedImage image = new BufferedImage(side, side, BufferedImage.TYPE_BYTE_GRAY);
    fill(image, side, 255);
    return image;
  }

  private static void fill(BufferedImage image, int side, int grey) {
    int[] dots = new int[side * side];
    Arrays.fill(dots, grey);
    image.getRaster().setSamples(0, 0, side, side, 0, dots);
  }

  private static boolean red(BufferedImage image, int x, int y) {
    Color dot = new Color(image.getRGB(x, y));
    return dot.getRed() > 150 && dot.getGreen() < 50;
  }
}
