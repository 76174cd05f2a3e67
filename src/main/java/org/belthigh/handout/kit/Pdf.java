package org.belthigh.handout.kit;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * A document being made from sections: one print, or a packet of many that share the fonts.
 *
 * <p>Tagged, PDF/UA-1 and PDF/A-2a. The same sections, title, day and key give the same bytes. Used
 * once: {@link #add} the sections, take the {@link #bytes}, close.
 */
public final class Pdf implements AutoCloseable {
  private final PDDocument document = new PDDocument();
  private final Metadata metadata;
  private final Fonts fonts;
  private final Tag root = new Tag("Document");
  private final ParentTree parents = new ParentTree();
  private final Bookmarks bookmarks = new Bookmarks();
  private final COSArray pageLabels = new COSArray();

  private Pdf(Metadata metadata, String key) throws IOException {
    this.metadata = metadata;
    this.fonts = new Fonts(document);
    document.setDocumentId(id(metadata, key));
  }

  /**
   * An empty document.
   *
   * @param title shown by readers; not blank
   * @param language of the title, and of what is not in a section
   * @param day the day that the print is made for; the document's date
   * @param key tells this document from others of the same title and day
   */
  public static Pdf of(String title, Locale language, LocalDate day, String key) {
    if (title.isBlank()) {
      throw new IllegalArgumentException("a document's title is blank.");
    }
    try {
      return new Pdf(
          new Metadata(title, Objects.requireNonNull(language), Objects.requireNonNull(day)), key);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Prints a word for nobody, so that fonts and classes are there when they are needed. */
  public static void warm() {
    PageWords words = new PageWords(Locale.ROOT, "{page} {count}", "{title}");
    of(
        Section.of(Paper.LETTER, Style.READER, words, "warm", flow -> flow.p("warm")),
        "warm",
        Locale.ROOT,
        LocalDate.EPOCH);
  }

  /** A document of one section, with its title. */
  public static byte[] of(Section section, String title, Locale language, LocalDate day) {
    try (Pdf pdf = of(title, language, day, section.toString())) {
      pdf.add(section);
      return pdf.bytes();
    }
  }

  /**
   * Appends a print, starting on a page of its own.
   *
   * @return its number of pages
   * @throws Overflow if something does not fit where it must stand
   */
  public int add(Section section) {
    label(section.labelPrefix());
    List<Leaf> leaves = section.leaves(root);
    leaves.forEach(leaf -> addPage(section.paper(), List.of(leaf)));
    return leaves.size();
  }

  /**
   * Appends prints on half sheets, two to a lying sheet with a line to cut along between them.
   *
   * @param labelPrefix of the sheets' page labels
   * @param halves in order; at least one, all on the same half sheet
   * @return the number of sheets
   * @throws Overflow if something does not fit where it must stand
   */
  public int addTwoUp(String labelPrefix, List<Section> halves) {
    Paper half = halves.get(0).paper();
    if (halves.stream().anyMatch(section -> section.paper() != half || half != half.half())) {
      throw new IllegalArgumentException("two to a sheet: every print must be on the same half.");
    }
    label(labelPrefix);
    List<Leaf> leaves = halves.stream().flatMap(section -> section.leaves(root).stream()).toList();
    for (int i = 0; i < leaves.size(); i += 2) {
      addPage(half.lying(), leaves.subList(i, Math.min(i + 2, leaves.size())));
    }
    return (leaves.size() + 1) / 2;
  }

  /** A page of one print, or of two with a line to cut along between them. */
  private void addPage(Paper paper, List<Leaf> leaves) {
    PDPage page = newPage(paper);
    List<Tag> claimed = List.of();
    double left = 0;
    for (Leaf leaf : leaves) {
      Section section = leaf.section();
      if (leaf.first()) {
        bookmarks.add(section.bookmark(), page);
      }
      try (Canvas canvas = canvas(page, leaf, left, claimed)) {
        leaf.draw(canvas);
        left += section.paper().width();
        if (left < paper.width()) {
          canvas.decorate(section.frame()::cutLine);
        }
        claimed = canvas.claimed();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    page.setStructParents(parents.add(claimed));
  }

  private Canvas canvas(PDPage page, Leaf leaf, double left, List<Tag> before) throws IOException {
    return new Canvas(document, page, fonts, leaf.section().frame(), leaf.number(), left, before);
  }

  private PDPage newPage(Paper paper) {
    PDPage page = new PDPage(new PDRectangle((float) paper.width(), (float) paper.height()));
    page.getCOSObject().setName("Tabs", "S");
    document.addPage(page);
    return page;
  }

  private void label(String prefix) {
    COSDictionary label = new COSDictionary();
    label.setDirect(true);
    label.setName(COSName.S, "D");
    if (!prefix.isEmpty()) {
      label.setString(COSName.P, prefix);
    }
    pageLabels.add(COSInteger.get(document.getNumberOfPages()));
    pageLabels.add(label);
  }

  /**
   * The finished document.
   *
   * @throws IllegalStateException if no section was added
   */
  public byte[] bytes() {
    if (parents.size() == 0) {
      throw new IllegalStateException("document \"" + metadata.title() + "\" has no section.");
    }
    try {
      describe();
      structure();
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out, CompressParameters.DEFAULT_COMPRESSION);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void describe() throws IOException {
    document.setVersion(1.7f);
    COSDictionary info = document.getDocumentInformation().getCOSObject();
    info.setString(COSName.TITLE, metadata.title());
    info.setString(COSName.CREATOR, Metadata.PRODUCER);
    info.setString(COSName.PRODUCER, Metadata.PRODUCER);
    info.setString(COSName.CREATION_DATE, metadata.infoDate());
    info.setString(COSName.MOD_DATE, metadata.infoDate());
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    catalog.setLanguage(metadata.language().toLanguageTag());
    PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
    preferences.setDisplayDocTitle(true);
    catalog.setViewerPreferences(preferences);
    catalog.setMetadata(new PDMetadata(document, new ByteArrayInputStream(metadata.xmp())));
    catalog.addOutputIntent(outputIntent());
    catalog.setDocumentOutline(bookmarks.outline());
    catalog.setPageMode(bookmarks.count() > 1 ? PageMode.USE_OUTLINES : PageMode.USE_NONE);
    COSDictionary labels = new COSDictionary();
    labels.setItem(COSName.NUMS, pageLabels);
    catalog.getCOSObject().setItem(COSName.PAGE_LABELS, labels);
  }

  private PDOutputIntent outputIntent() throws IOException {
    try (InputStream profile = Pdf.class.getResourceAsStream("/handout/sRGB.icc")) {
      PDOutputIntent intent = new PDOutputIntent(document, profile);
      intent.setInfo("sRGB");
      intent.setOutputCondition("sRGB");
      intent.setOutputConditionIdentifier("sRGB");
      intent.setRegistryName("http://www.color.org");
      return intent;
    }
  }

  private void structure() {
    COSDictionary tree = new COSDictionary();
    tree.setItem(COSName.TYPE, COSName.STRUCT_TREE_ROOT);
    tree.setItem(COSName.K, root.element());
    tree.setItem(COSName.PARENT_TREE, parents.dictionary());
    tree.setInt(COSName.PARENT_TREE_NEXT_KEY, parents.size());
    root.element().setItem(COSName.P, tree);
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    catalog.getCOSObject().setItem(COSName.STRUCT_TREE_ROOT, tree);
    PDMarkInfo marks = new PDMarkInfo();
    marks.setMarked(true);
    catalog.setMarkInfo(marks);
  }

  /** A number for the file's identifier, from what tells documents apart. */
  private static long id(Metadata metadata, String key) {
    String parts =
        String.join(
            "\n",
            metadata.title(),
            metadata.language().toLanguageTag(),
            metadata.day().toString(),
            key);
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(parts.getBytes(StandardCharsets.UTF_8));
      return ByteBuffer.wrap(digest).getLong() >>> 1;
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public void close() {
    try {
      document.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
