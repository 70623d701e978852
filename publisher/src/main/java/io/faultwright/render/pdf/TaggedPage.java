package io.faultwright.render.pdf;

import io.faultwright.font.NameFont;
import io.faultwright.layout.Box;
import io.faultwright.render.pdf.ShapedText.Cluster;
import io.faultwright.render.pdf.ShapedText.Glyph;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * A page of placed glyphs and shapes with a structure for those who do not see it (ISO 32000-1,
 * 14.7 and 14.8). y runs upwards.
 */
final class TaggedPage {
  /** Glyphs of other characters may be those of several, so that the file says which it is. */
  private static final int FIRST_NOT_ASCII = 0x80;

  private final PDDocument document;
  private final PDPage page;
  private final PDStructureElement root;
  private final PDStructureTreeRoot tree = new PDStructureTreeRoot();
  private final COSArray parents = new COSArray();
  private final StringBuilder content = new StringBuilder();
  private final Map<NameFont, PDType0Font> fonts = new LinkedHashMap<>();
  private final Map<NameFont, Set<Integer>> glyphs = new LinkedHashMap<>();
  private final Map<NameFont, String> names = new LinkedHashMap<>();
  private final PDResources resources = new PDResources();

  TaggedPage(PDDocument document, double width, double height) {
    this.document = document;
    this.page = new PDPage(new PDRectangle((float) width, (float) height));
    document.addPage(page);
    page.setResources(resources);
    page.setStructParents(0);
    page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
    root = new PDStructureElement("Document", tree);
    tree.appendKid(root);
  }

  /** A line of text as an element of its own. */
  void text(String tag, ShapedText text, double size, double x, double y) throws IOException {
    begin(tag).setActualText(text.text());
    content.append("0 g\n");
    for (Cluster cluster : text.clusters()) {
      boolean plain = cluster.text().length() == 1 && cluster.text().charAt(0) < FIRST_NOT_ASCII;
      String words = utf16(cluster.text());
      content.append(plain ? "" : "/Span <</ActualText <" + words + ">>> BDC\n");
      for (Glyph glyph : cluster.glyphs()) {
        draw(glyph, size, x, y);
      }
      content.append(plain ? "" : "EMC\n");
    }
    content.append("EMC\n");
  }

  private void draw(Glyph glyph, double size, double x, double y) throws IOException {
    String font = font(glyph.font());
    glyphs.get(glyph.font()).add(glyph.id());
    content.append("BT /").append(font).append(' ').append(number(size)).append(" Tf 1 0 0 1 ");
    content.append(number(x + glyph.x() * size)).append(' ');
    content.append(number(y + glyph.y() * size)).append(" Tm <");
    content.append(HexFormat.of().toHexDigits((short) glyph.id())).append("> Tj ET\n");
  }

  private PDStructureElement begin(String tag) {
    int id = parents.size();
    PDStructureElement element = new PDStructureElement(tag, root);
    element.setPage(page);
    element.appendKid(id);
    root.appendKid(element);
    parents.add(element.getCOSObject());
    content.append("/").append(tag).append(" <</MCID ").append(id).append(">> BDC\n");
    return element;
  }

  private static String utf16(String text) {
    return "FEFF"
        + HexFormat.of().withUpperCase().formatHex(text.getBytes(StandardCharsets.UTF_16BE));
  }

  private String font(NameFont font) throws IOException {
    if (!fonts.containsKey(font)) {
      PDType0Font embedded = PDType0Font.load(document, font.file(), true);
      fonts.put(font, embedded);
      glyphs.put(font, new TreeSet<>());
      names.put(font, resources.add(embedded).getName());
    }
    return names.get(font);
  }

  /** Filled boxes, as one picture with its words. */
  void picture(List<Box> boxes, double x, double top, String words) {
    begin("Figure").setAlternateDescription(words);
    content.append("0 g\n");
    boxes.forEach(box -> rectangle(x + box.x(), top - box.bottom(), box.width(), box.height()));
    content.append("f\nEMC\n");
  }

  /** Outlines that say nothing. */
  void ornament(double weight, List<Box> boxes) {
    content.append("/Artifact BMC\n0 G ").append(number(weight)).append(" w\n");
    boxes.forEach(box -> rectangle(box.x(), box.y(), box.width(), box.height()));
    content.append("S\nEMC\n");
  }

  private void rectangle(double x, double y, double width, double height) {
    for (double value : new double[] {x, y, width, height}) {
      content.append(number(value)).append(' ');
    }
    content.append("re\n");
  }

  private static String number(double value) {
    return new BigDecimal(value)
        .setScale(3, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  /** Puts all of it into the document. */
  void close() throws IOException {
    byte[] bytes = content.toString().getBytes(StandardCharsets.US_ASCII);
    page.setContents(new PDStream(document, new ByteArrayInputStream(bytes), COSName.FLATE_DECODE));
    for (Map.Entry<NameFont, PDType0Font> font : fonts.entrySet()) {
      font.getValue().addGlyphsToSubset(glyphs.get(font.getKey()));
      font.getValue().subset();
    }
    PDNumberTreeNode numbers = new PDNumberTreeNode(PDParentTreeValue.class);
    COSDictionary node = numbers.getCOSObject();
    COSArray pairs = new COSArray();
    pairs.add(COSInteger.ZERO);
    pairs.add(parents);
    node.setItem(COSName.NUMS, pairs);
    tree.setParentTree(numbers);
    tree.setParentTreeNextKey(1);
    document.getDocumentCatalog().setStructureTreeRoot(tree);
    PDMarkInfo marked = new PDMarkInfo();
    marked.setMarked(true);
    document.getDocumentCatalog().setMarkInfo(marked);
  }
}
