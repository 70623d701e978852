package io.faultwright.render.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.flow.Flowchart;
import io.faultwright.layout.ChartLayout;
import io.faultwright.layout.ChartPage;
import io.faultwright.layout.Paper;
import io.faultwright.layout.SampleCharts;
import io.faultwright.xml.Xml;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Pages as SVG: well-formed, self-contained, the same every time. */
class ChartSvgTest {
  private static final Path STORED =
      Path.of("src/test/resources/io/faultwright/render/svg/small.svg");

  @Test
  void theSmallChartIsDrawnAsStored() throws IOException {
    String drawn = ChartSvg.inline(pages(SampleCharts.small()).get(0));
    if (Boolean.getBoolean("bless") && System.getenv("CI") == null) {
      Files.createDirectories(STORED.getParent());
      Files.writeString(STORED, drawn);
    }
    assertEquals(Files.readString(STORED), drawn);
  }

  @Test
  void everyPageIsWellFormedAndHasItsSize() throws Exception {
    for (ChartPage page : pages(SampleCharts.random(5, 60))) {
      for (String svg : List.of(ChartSvg.inline(page), ChartSvg.standalone(page))) {
        Element root = parsed(svg).getDocumentElement();
        assertEquals("http://www.w3.org/2000/svg", root.getNamespaceURI());
        assertEquals(Integer.toString(page.width()), root.getAttribute("width"));
        assertEquals(Integer.toString(page.height()), root.getAttribute("height"));
        assertEquals("title", firstElement(root).getTagName());
      }
    }
  }

  @Test
  void hostileTextStaysText() throws Exception {
    for (ChartPage page : pages(SampleCharts.hostile())) {
      Document document = parsed(ChartSvg.inline(page));
      assertEquals(0, document.getElementsByTagName("script").getLength());
      assertEquals(0, document.getElementsByTagName("image").getLength());
      elements(document).forEach(ChartSvgTest::assertHarmless);
    }
    String all = String.join("", texts(pages(SampleCharts.hostile())));
    assertTrue(all.contains("<script>alert(1)</script>"), all);
    assertTrue(all.contains("${7*7} {{7*7}} <#assign x=1>"), all);
  }

  private static void assertHarmless(Element element) {
    for (int i = 0; i < element.getAttributes().getLength(); i++) {
      String name = element.getAttributes().item(i).getNodeName();
      assertFalse(name.startsWith("on") || name.contains("href") || name.equals("style"), name);
    }
  }

  @Test
  void nothingPointsOutside() throws Exception {
    String svg = ChartSvg.standalone(pages(SampleCharts.defrost()).get(0));
    assertEquals(2, svg.split("url\\(").length - 1);
    assertEquals(2, svg.split("url\\(data:font/woff2;base64,").length - 1);
    assertFalse(svg.contains("href") || svg.contains("@import") || svg.contains("<!DOCTYPE"));
  }

  @Test
  void theLocaleDoesNotMatter() {
    ChartPage page = pages(SampleCharts.defrost()).get(0);
    String drawn = ChartSvg.standalone(page);
    Locale before = Locale.getDefault();
    try {
      for (String tag : List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertEquals(drawn, ChartSvg.standalone(page), tag);
        assertEquals(pages(SampleCharts.defrost()).get(0), page, tag);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  /** ANSI Z535.6: danger, warning and caution carry the safety alert symbol, a notice does not. */
  @Test
  void onlyNoticesGoWithoutTheAlertSymbol() {
    String drawn =
        String.join("", pages(SampleCharts.defrost()).stream().map(ChartSvg::inline).toList());
    int alerts = drawn.split("class=\"alert\"").length - 1;
    int words = drawn.split(">(DANGER|WARNING|CAUTION)<").length - 1;
    assertEquals(words, alerts);
    assertTrue(words > 2 && drawn.contains(">NOTICE<"));
  }

  @Test
  void numbersHaveNoExponentAndNoTrailingZeros() {
    assertEquals("0", Xml.number(-0.0));
    assertEquals("12.5", Xml.number(12.5));
    assertEquals("-0.05", Xml.number(-0.05));
    assertEquals("100000000", Xml.number(1e8));
    assertEquals("2.25", Xml.number(2.25));
  }

  @Test
  void whatXmlCannotHoldIsReplaced() {
    assertEquals("a&lt;&amp;&gt;&quot;\uFFFD\uFFFDb", Xml.escaped("a<&>\"\u0001\uD800b"));
  }

  private static List<ChartPage> pages(Flowchart chart) {
    return new ChartLayout(SampleCharts.IMPRINT, Paper.A4).pages(chart);
  }

  private static List<String> texts(List<ChartPage> pages) throws Exception {
    List<String> texts = new ArrayList<>();
    for (ChartPage page : pages) {
      NodeList found = parsed(ChartSvg.inline(page)).getElementsByTagName("text");
      for (int i = 0; i < found.getLength(); i++) {
        texts.add(found.item(i).getTextContent());
      }
    }
    return texts;
  }

  private static Element firstElement(Element root) {
    return (Element) root.getElementsByTagName("*").item(0);
  }

  private static Stream<Element> elements(Document document) {
    NodeList all = document.getElementsByTagName("*");
    return java.util.stream.IntStream.range(0, all.getLength())
        .mapToObj(i -> (Element) all.item(i));
  }

  private static Document parsed(String svg)
      throws ParserConfigurationException, IOException, SAXException {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
  }
}
