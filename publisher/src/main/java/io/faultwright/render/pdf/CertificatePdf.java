package io.faultwright.render.pdf;

import io.faultwright.font.NameFonts;
import io.faultwright.layout.Box;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Draws certificates, one page of A4 each: names in any script that a font has, tagged for those
 * who do not see them. Equal sheets give equal bytes.
 */
public final class CertificatePdf {
  private static final double WIDTH = 841.89;
  private static final double HEIGHT = 595.28;
  private static final double MARGIN = 28;
  private static final double ROOM = WIDTH - 2 * 70;
  private static final double LEAD = 1.25;

  /** Where the lines in the middle may stand, and which part of what they leave is above them. */
  private static final double TOP = HEIGHT - 66;

  private static final double TALLEST = TOP - 150;
  private static final double ABOVE = 0.45;

  /** What does not fit is tried again at this part of its size. */
  private static final double TIGHTER = 0.92;

  /** Smaller would not be read; what does not fit even so is no certificate's text. */
  private static final double TIGHTEST = 0.3;

  private final Shaper shaper;

  public CertificatePdf(NameFonts fonts) {
    this.shaper = new Shaper(fonts);
  }

  /** Lines of one text with the gap below them. */
  private record Block(String tag, Fitting lines, double gap) {
    double height() {
      return lines.size() * LEAD * lines.lines().size() + gap;
    }
  }

  /**
   * The file.
   *
   * @throws Undrawable where no font has a character of it
   */
  public byte[] write(CertificateSheet sheet) throws IOException {
    try (PDDocument document = new PDDocument()) {
      TaggedPage page = new TaggedPage(document, WIDTH, HEIGHT);
      frame(page);
      middle(page, sheet);
      foot(page, sheet);
      page.close();
      describe(document, sheet);
      Imprinting.imprint(document, sheet.date());
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return out.toByteArray();
    }
  }

  private static void frame(TaggedPage page) {
    page.ornament(2, List.of(inset(MARGIN)));
    page.ornament(0.6, List.of(inset(MARGIN + 6)));
  }

  private static Box inset(double by) {
    return new Box(by, by, WIDTH - 2 * by, HEIGHT - 2 * by);
  }

  private void middle(TaggedPage page, CertificateSheet sheet) throws IOException {
    List<Block> blocks = blocks(sheet, 1);
    for (double scale = TIGHTER; height(blocks) > TALLEST && scale > TIGHTEST; scale *= TIGHTER) {
      blocks = blocks(sheet, scale);
    }
    double y = TOP - (TALLEST - height(blocks)) * ABOVE;
    for (Block block : blocks) {
      draw(page, block, y);
      y -= block.height();
    }
  }

  private static double height(List<Block> blocks) {
    return blocks.stream().mapToDouble(Block::height).sum();
  }

  private List<Block> blocks(CertificateSheet sheet, double scale) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(block("P", sheet.issuer(), false, 15 * scale, 30 * scale));
    blocks.add(block("H1", sheet.title(), true, 42 * scale, 26 * scale));
    blocks.add(block("P", sheet.name(), false, 40 * scale, 14 * scale));
    blocks.add(block("P", sheet.passed(), false, 16 * scale, 10 * scale));
    blocks.add(block("P", sheet.session(), true, 26 * scale, 10 * scale));
    sheet.facts().forEach(fact -> blocks.add(block("P", fact, false, 15 * scale, 0)));
    return blocks;
  }

  private Block block(String tag, String text, boolean strong, double largest, double gap) {
    return new Block(tag, Fitting.of(text, shaper, strong, largest, ROOM), gap);
  }

  /** Centred lines, the first one at the top. */
  private static void draw(TaggedPage page, Block block, double top) throws IOException {
    double size = block.lines().size();
    double y = top - size;
    for (ShapedText line : block.lines().lines()) {
      page.text(block.tag(), line, size, (WIDTH - line.width() * size) / 2, y);
      y -= size * LEAD;
    }
  }

  private void foot(TaggedPage page, CertificateSheet sheet) throws IOException {
    double code = sheet.code().box().height();
    double top = MARGIN + 22 + code;
    double right = WIDTH - MARGIN - 22;
    page.ornament(0.6, List.of(new Box(70, MARGIN + 52, 210, 0)));
    ShapedText sign = shaper.shape(sheet.signature(), false);
    page.text("P", sign, 10, 70, MARGIN + 38);
    page.picture(sheet.code().dark(), right - code, top, sheet.codeWords());
    double y = MARGIN + 34 + 14 * (sheet.proof().size() - 1);
    for (String line : sheet.proof()) {
      ShapedText shaped = shaper.shape(line, false);
      page.text("P", shaped, 10, right - code - 8 - shaped.width() * 10, y);
      y -= 14;
    }
  }

  private static void describe(PDDocument document, CertificateSheet sheet) throws IOException {
    String title = sheet.title() + ", " + sheet.name();
    document.getDocumentInformation().setTitle(title);
    document.getDocumentCatalog().setLanguage(sheet.language());
    PDViewerPreferences preferences =
        new PDViewerPreferences(document.getDocumentCatalog().getCOSObject());
    preferences.setDisplayDocTitle(true);
    document.getDocumentCatalog().setViewerPreferences(preferences);
    byte[] xmp = xmp(title).getBytes(StandardCharsets.UTF_8);
    document
        .getDocumentCatalog()
        .setMetadata(new PDMetadata(document, new ByteArrayInputStream(xmp)));
  }

  /** Says that the file is made for those who do not see it (ISO 14289-1). */
  private static String xmp(String title) {
    String escaped = title.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    return """
        <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
        <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF \
        xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="" \
        xmlns:dc="http://purl.org/dc/elements/1.1/" \
        xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"><pdfuaid:part>1</pdfuaid:part>\
        <dc:title><rdf:Alt><rdf:li xml:lang="x-default">TITLE</rdf:li></rdf:Alt></dc:title>\
        </rdf:Description></rdf:RDF></x:xmpmeta>
        <?xpacket end="w"?>
        """
        .replace("TITLE", escaped);
  }
}
