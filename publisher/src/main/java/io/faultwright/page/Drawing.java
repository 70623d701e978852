package io.faultwright.page;

import io.faultwright.prose.Html;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A standalone SVG file, made ready to stand inside a page. */
final class Drawing {
  private final Element root;
  private final double width;
  private final double height;

  private Drawing(Element root) {
    this.root = root;
    String[] box = root.getAttribute("viewBox").trim().split("[ ,]+");
    this.width = Double.parseDouble(box[2]);
    this.height = Double.parseDouble(box[3]);
  }

  /** The file's drawing without the fonts that it brings along: a page has its own. */
  static Drawing of(String file) {
    Drawing drawing = new Drawing(parse(withoutStyle(file)).getDocumentElement());
    drawing.elements("style").forEach(Drawing::remove);
    return drawing;
  }

  /** Fonts are most of a file; they need not be parsed to be left out. */
  private static String withoutStyle(String file) {
    int from = file.indexOf("<style>");
    int to = file.indexOf("</style>", from);
    return from < 0 || to < 0 ? file : file.substring(0, from) + file.substring(to + 8);
  }

  private static Document parse(String file) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
      factory.setNamespaceAware(true);
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      return factory.newDocumentBuilder().parse(new InputSource(new StringReader(file)));
    } catch (Exception e) {
      throw new IllegalArgumentException("a chart that is not an SVG file", e);
    }
  }

  private List<Element> elements(String name) {
    NodeList found = root.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }

  private static void remove(Node node) {
    node.getParentNode().removeChild(node);
  }

  double width() {
    return width;
  }

  double height() {
    return height;
  }

  boolean wide() {
    return width > height;
  }

  /** Takes the lines of text out of the drawing. */
  List<ChartText> liftTexts(double scale) {
    List<Element> lines = elements("text");
    List<ChartText> texts = lines.stream().map(line -> DrawingText.of(line, scale)).toList();
    lines.forEach(Drawing::remove);
    return texts;
  }

  /** The drawing set to a size in whole pixels, with its title for those who do not see it. */
  Html sized(double scale) {
    root.setAttribute("width", Integer.toString((int) Math.max(1, Math.floor(width * scale))));
    root.setAttribute("height", Integer.toString((int) Math.max(1, Math.floor(height * scale))));
    return new Html(written());
  }

  /** Gives the drawing the words that PDF readers speak in its place. */
  void describe(String words) {
    root.setAttribute("alt", words);
  }

  private String written() {
    try {
      Transformer transformer = TransformerFactory.newDefaultInstance().newTransformer();
      transformer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
      transformer.setOutputProperty(OutputKeys.ENCODING, "UTF-8");
      StringWriter out = new StringWriter();
      transformer.transform(new DOMSource(root), new StreamResult(out));
      return out.toString();
    } catch (javax.xml.transform.TransformerException e) {
      throw new IllegalStateException("a chart that cannot be written", e);
    }
  }
}
