package io.faultwright.render.dita;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.Answer;
import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.page.Edition;
import io.faultwright.page.SitePages;
import io.faultwright.resolve.Resolver;
import io.faultwright.syntax.FolderReader;
import io.faultwright.xml.Xml;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * Topics and map against the DTDs of OASIS, DITA 1.3 with errata 02; see {@code dita/README.md}.
 */
class DitaExportTest {
  private static final Path GRAMMAR = Path.of("src/test/resources/dita/technicalContent/dtd");

  private static KnowledgeBase read(String name) {
    return read(Path.of("..", "rules", name));
  }

  private static KnowledgeBase read(Path folder) {
    return Resolver.resolve(FolderReader.read(folder));
  }

  private static SortedMap<String, byte[]> files(KnowledgeBase kb) {
    Edition plain =
        new Edition(new TreeMap<>(), List.of(), new TreeMap<>(), false, false, Optional.empty());
    return new DitaExport(kb.handbook().language()).files(new SitePages(kb, plain).all());
  }

  @ParameterizedTest
  @ValueSource(strings = {"walk-in-freezers", "pass-through-dishwashers"})
  void everyFileIsValidAndEveryReferenceLeadsSomewhere(String name) throws Exception {
    SortedMap<String, byte[]> files = files(read(name));
    SortedMap<String, byte[]> documents = new TreeMap<>(files);
    documents.keySet().removeIf(file -> file.startsWith("reading-"));
    documents.put("readings", together(files));
    for (String file : documents.keySet()) {
      List<String> wrong = new ArrayList<>();
      Document document = parse(documents.get(file), wrong);
      assertEquals(List.of(), wrong.stream().limit(3).toList(), file);
      for (String element : List.of("topicref", "link")) {
        NodeList references = document.getElementsByTagName(element);
        for (int i = 0; i < references.getLength(); i++) {
          String target = ((Element) references.item(i)).getAttribute("href");
          assertTrue(files.containsKey(target), file + " -> " + target);
        }
      }
    }
  }

  /** The topics of all readings inside of one, for the grammar is read anew with each document. */
  private static byte[] together(SortedMap<String, byte[]> files) {
    StringBuilder all = new StringBuilder(Doctype.TOPIC.declaration());
    all.append("<topic id=\"all\"><title>All</title>\n");
    files.forEach(
        (name, content) -> {
          String text = new String(content, StandardCharsets.UTF_8);
          String start = Xml.DECLARATION + Doctype.TOPIC.declaration();
          if (name.startsWith("reading-")) {
            assertTrue(text.startsWith(start), name);
            all.append(text.substring(start.length()));
          }
        });
    return all.append("</topic>").toString().getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void whatIsNoTopicIsFound() throws Exception {
    SortedMap<String, byte[]> files = files(read("pass-through-dishwashers"));
    String topic = new String(files.get("symptom-rinse-too-cold.dita"), StandardCharsets.UTF_8);
    List<String> wrong = new ArrayList<>();
    parse(topic.replace("cmd>", "p>").getBytes(StandardCharsets.UTF_8), wrong);
    assertFalse(wrong.isEmpty());
  }

  /** Every repair that the rules conclude, step by step, with its cautions and its verification. */
  @Test
  void nothingOfARepairIsLost() {
    KnowledgeBase kb = read("walk-in-freezers");
    SortedMap<String, byte[]> files = files(kb);
    for (Symptom symptom : kb.symptoms().values()) {
      String name = "symptom-" + symptom.id() + ".dita";
      String topic = new String(files.get(name), StandardCharsets.UTF_8);
      for (Rule rule : symptom.rules().values()) {
        for (Answer answer : rule.conclusion().answers()) {
          if (answer instanceof Answer.OfFault) {
            assertHolds(topic, kb, kb.faults().get(answer.name()));
          }
        }
      }
    }
  }

  /** Phases, outputs, times on each software and what the display says; as text, well escaped. */
  @Test
  void nothingOfASequenceIsLost() throws Exception {
    KnowledgeBase kb =
        read(Path.of("..", "engine", "src", "test", "resources", "sequences", "heating-cycle"));
    SortedMap<String, byte[]> files = files(kb);
    byte[] content = files.get("sequence-heating-cycle.dita");
    List<String> wrong = new ArrayList<>();
    Element topic = parse(content, wrong).getDocumentElement();
    assertEquals(List.of(), wrong);
    assertEquals("warning", first(topic, "note").getAttribute("type"));
    List<String> rows = texts(topic, "strow");
    assertTrue(
        rows.contains(
            "2|Draining|DRAN|Circulation pump; Drain valve, first 40 s"
                + "|Draining (1 min) is over → Heating"),
        rows.toString());
    assertTrue(
        rows.contains("6|Stopped as full|STOP FULL||Release switch is closed → Restart delay"),
        rows.toString());
    assertTrue(rows.contains("Longest heating|3 min|6 min|6 min"), rows.toString());
    assertTrue(
        rows.contains("3|HEAT 3 min, 1:10 – 4:10, Heating|HEAT 6 min, 1:10 – 7:10, Heating"),
        rows.toString());
    String map = new String(files.get("handbook.ditamap"), StandardCharsets.UTF_8);
    assertTrue(map.contains("navtitle=\"Sequences of operation\""), map);
    assertTrue(map.contains("href=\"sequence-heating-cycle.dita\""), map);
  }

  private static Element first(Element within, String name) {
    return (Element) within.getElementsByTagName(name).item(0);
  }

  /** The cells of every row. */
  private static List<String> texts(Element within, String name) {
    List<String> texts = new ArrayList<>();
    NodeList rows = within.getElementsByTagName(name);
    for (int i = 0; i < rows.getLength(); i++) {
      NodeList cells = ((Element) rows.item(i)).getElementsByTagName("stentry");
      List<String> row = new ArrayList<>();
      for (int j = 0; j < cells.getLength(); j++) {
        row.add(cells.item(j).getTextContent().replace('\u00A0', ' ').strip());
      }
      texts.add(String.join("|", row));
    }
    return texts;
  }

  private static void assertHolds(String topic, KnowledgeBase kb, Fault fault) {
    int from = topic.indexOf("<remedy>\n<title>" + escaped(fault.title()) + "</title>");
    assertTrue(from >= 0, fault.id());
    String repair = topic.substring(from, topic.indexOf("</remedy>", from));
    List<Fault.Step> steps = new ArrayList<>(fault.remedy());
    steps.addAll(fault.verify());
    for (Fault.Step step : steps) {
      int at = repair.indexOf("<cmd>" + escaped(step.text()) + "</cmd>");
      assertTrue(at >= 0, fault.id() + ": " + step.text());
      for (String caution : step.cautions()) {
        String note = ">" + escaped(kb.cautions().get(caution).text()) + "</note>";
        int before = repair.lastIndexOf(note, at);
        assertTrue(before >= 0, fault.id() + ": " + caution + " before " + step.text());
      }
    }
    fault.parts().forEach(part -> assertTrue(repair.contains(kb.parts().get(part).title()), part));
  }

  private static String escaped(String text) {
    return Xml.escaped(text);
  }

  private static Document parse(byte[] content, List<String> wrong)
      throws ParserConfigurationException, SAXException, IOException {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setValidating(true);
    DocumentBuilder builder = factory.newDocumentBuilder();
    builder.setEntityResolver((publicId, systemId) -> grammar(systemId));
    builder.setErrorHandler(collecting(wrong));
    InputSource source = new InputSource(new ByteArrayInputStream(content));
    source.setSystemId(GRAMMAR.toUri() + "document");
    return builder.parse(source);
  }

  /**
   * The files beside; the drivers of MathML and SVG are left out, since nothing of them is used.
   */
  private static InputSource grammar(String systemId) {
    boolean foreign = systemId.endsWith("ditadriver.dtd");
    InputSource source =
        foreign ? new InputSource(new StringReader("")) : new InputSource(systemId);
    source.setSystemId(systemId);
    return source;
  }

  private static ErrorHandler collecting(List<String> wrong) {
    return new ErrorHandler() {
      @Override
      public void warning(SAXParseException e) {
        wrong.add(e.toString());
      }

      @Override
      public void error(SAXParseException e) {
        wrong.add(e.toString());
      }

      @Override
      public void fatalError(SAXParseException e) {
        wrong.add(e.toString());
      }
    };
  }
}
