package io.faultwright.render.pdf;

import io.faultwright.font.Fonts;
import io.faultwright.layout.ChartPage;
import io.faultwright.layout.PlacedEdge;
import io.faultwright.layout.PlacedNode;
import io.faultwright.layout.Text;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Draws the pages of a chart as a PDF of its own: outlines as outlines, text as text in the
 * embedded typeface. Equal pages give equal bytes.
 */
public final class ChartPdf {
  private final String title;
  private final String language;
  private final String date;

  /**
   * A writer.
   *
   * @param title of the document
   * @param language BCP 47 tag of its texts
   * @param date ISO 8601 date that the file says it was made on
   */
  public ChartPdf(String title, String language, String date) {
    this.title = title;
    this.language = language;
    this.date = date;
  }

  /** The file with these pages. */
  public PdfBook write(List<ChartPage> pages) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDType0Font regular = embedded(document, Fonts.regular());
      PDType0Font bold = embedded(document, Fonts.bold());
      for (ChartPage page : pages) {
        PDPage sheet = new PDPage(new PDRectangle(page.width(), page.height()));
        document.addPage(sheet);
        try (PDPageContentStream stream = new PDPageContentStream(document, sheet)) {
          draw(page, new Pen(stream, page.height(), regular, bold));
        }
      }
      describe(document);
      Imprinting.imprint(document, date);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return new PdfBook(out.toByteArray(), pages.size(), Undrawn.in(words(pages)));
    }
  }

  /** The typeface without ligatures: lines are measured letter by letter, and read so. */
  private static PDType0Font embedded(PDDocument document, InputStream file) throws IOException {
    TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file));
    font.setEnableGsub(false);
    return PDType0Font.load(document, font, true);
  }

  private void describe(PDDocument document) {
    document.getDocumentInformation().setTitle(title);
    document.getDocumentCatalog().setLanguage(language);
    PDViewerPreferences preferences =
        new PDViewerPreferences(document.getDocumentCatalog().getCOSObject());
    preferences.setDisplayDocTitle(true);
    document.getDocumentCatalog().setViewerPreferences(preferences);
  }

  private static void draw(ChartPage page, Pen pen) throws IOException {
    pen.shapes(page.frame());
    pen.texts(page.texts());
    if (page.code().isPresent()) {
      pen.code(page.code().get());
    }
    for (PlacedEdge edge : page.edges()) {
      pen.line(edge.line());
    }
    for (PlacedNode node : page.nodes()) {
      pen.shapes(node.shapes());
      pen.texts(node.texts());
      for (PlacedEdge edge : page.edges()) {
        if (leaves(edge, node)) {
          pen.texts(edge.label());
        }
      }
    }
  }

  /** Whether an edge starts at the foot of a node. */
  private static boolean leaves(PlacedEdge edge, PlacedNode node) {
    return edge.line().get(0).x() == node.box().centreX()
        && edge.line().get(0).y() == node.box().bottom();
  }

  private static String words(List<ChartPage> pages) {
    return pages.stream().flatMap(ChartPdf::texts).map(Text::content).collect(Collectors.joining());
  }

  private static Stream<Text> texts(ChartPage page) {
    return Stream.of(
            page.texts().stream(),
            page.nodes().stream().flatMap(node -> node.texts().stream()),
            page.edges().stream().flatMap(edge -> edge.label().stream()))
        .flatMap(texts -> texts);
  }
}
