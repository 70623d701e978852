package io.faultwright.render.qti;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.delivery.HandOuts;
import io.faultwright.delivery.Question;
import io.faultwright.delivery.SmallQuiz;
import io.faultwright.delivery.Solved;
import io.faultwright.quiz.QuizWording.Line;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Every file against our own grammar of the standard; see {@code qti/README.md}. */
class QtiPackageTest {
  private static final Path GRAMMAR = Path.of("src/test/resources/qti");
  private static final Schema ITEMS = schema("items.xsd");
  private static final Schema MANIFEST = schema("manifest.xsd");
  private static final String MANIFEST_FILE = "imsmanifest.xml";
  private static final String HOSTILE =
      "</qti-prompt><script>alert(1)</script> ]]> <!-- \" & ${x} \u0001\uFFFE \uD800 שלום";

  private static final SmallQuiz SMALL = SmallQuiz.MADE;
  private static final List<Solved> SOLVED =
      new HandOuts(SMALL.kb()).solved(SMALL.quiz().variants().get(0));

  private final QtiPackage qti = new QtiPackage("en", SMALL.keys().quiz(), "A morning");

  private static Schema schema(String name) {
    try {
      return SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
          .newSchema(GRAMMAR.resolve(name).toFile());
    } catch (SAXException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void validate(String file, String text) throws SAXException, IOException {
    Schema schema = file.equals(MANIFEST_FILE) ? MANIFEST : ITEMS;
    schema.newValidator().validate(new StreamSource(new StringReader(text)));
  }

  private static SortedMap<String, String> unpacked(byte[] zip) throws IOException {
    SortedMap<String, String> files = new TreeMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        files.put(entry.getName(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    return files;
  }

  private static Document read(String xml) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
  }

  private static List<Element> all(Document document, String name) {
    NodeList found = document.getElementsByTagName(name);
    return IntStream.range(0, found.getLength()).mapToObj(i -> (Element) found.item(i)).toList();
  }

  private static List<String> texts(Document document, String name) {
    return all(document, name).stream().map(Element::getTextContent).toList();
  }

  @Test
  void everyFileIsValidByOurGrammar() throws Exception {
    SortedMap<String, String> files = unpacked(qti.bytes(SOLVED));
    assertEquals(SOLVED.size() + 2, files.size());
    for (String file : files.keySet()) {
      validate(file, files.get(file));
    }
  }

  /** Broken in one place each: the grammar is no rubber stamp. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "items/own-gloves.xml | <qti-value>choice-. | <qti-value>choice-9",
        "items/own-gloves.xml | qti-prompt> | p>",
        "items/own-gloves.xml | response-identifier=\"RESPONSE\" | response-identifier=\"ANSWER\"",
        "items/own-gloves.xml | show-hide=\"show\" | show-hide=\"maybe\"",
        "items/own-gloves.xml | identifier=\"SCORE\" cardinality | identifier=\"MARK\" cardinality",
        "items/own-gloves.xml | time-dependent=\"false\" | time-dependent=\"no\"",
        "test.xml | navigation-mode=\"nonlinear\" | navigation-mode=\"free\"",
        "test.xml | identifier=\"quiz- | identifier=\"7-",
        "imsmanifest.xml | <schemaversion>3.0.0 | <schemaversion>2.1",
        "imsmanifest.xml | identifierref=\"item-own-gloves\" | identifierref=\"item-own-hats\""
      })
  void whatIsNotOfTheStandardIsFound(String file, String from, String into) throws Exception {
    String text = unpacked(qti.bytes(SOLVED)).get(file);
    String broken = text.replaceAll(from, into);
    assertNotEquals(text, broken);
    assertThrows(SAXException.class, () -> validate(file, broken));
  }

  @Test
  void everyReferenceLeadsSomewhere() throws Exception {
    SortedMap<String, String> files = unpacked(qti.bytes(SOLVED));
    List<String> listed = new ArrayList<>(List.of(MANIFEST_FILE));
    Document manifest = read(files.get(MANIFEST_FILE));
    for (Element resource : all(manifest, "resource")) {
      assertEquals(1, resource.getElementsByTagName("file").getLength());
      listed.add(resource.getAttribute("href"));
    }
    assertEquals(List.copyOf(files.keySet()), listed.stream().sorted().toList());
    List<Element> references = all(read(files.get("test.xml")), "qti-assessment-item-ref");
    assertEquals(
        SOLVED.stream().map(one -> one.question().id()).toList(),
        references.stream().map(one -> one.getAttribute("identifier")).toList());
    for (Element reference : references) {
      Document item = read(files.get(reference.getAttribute("href")));
      assertEquals(
          reference.getAttribute("identifier"),
          item.getDocumentElement().getAttribute("identifier"));
    }
  }

  /** The right choice is told by its text, as the quiz has it. */
  @Test
  void everyItemGradesAsTheQuizDoes() throws Exception {
    SortedMap<String, String> files = unpacked(qti.bytes(SOLVED));
    for (Solved one : SOLVED) {
      Document item = read(files.get("items/" + one.question().id() + ".xml"));
      String right = texts(item, "qti-value").get(0);
      Element choice =
          all(item, "qti-simple-choice").stream()
              .filter(each -> each.getAttribute("identifier").equals(right))
              .findFirst()
              .orElseThrow();
      assertEquals(one.question().choices().get(one.right() - 1), choice.getTextContent());
      assertEquals(one.question().choices(), texts(item, "qti-simple-choice"));
      assertEquals(List.of("1", "right", "0", "wrong"), texts(item, "qti-base-value"));
      for (Element feedback : all(item, "qti-modal-feedback")) {
        one.because().forEach(why -> assertTrue(feedback.getTextContent().contains(why), why));
      }
    }
  }

  @Test
  void whatIsWrittenIsTextAndPagesAreLinkedTo() throws Exception {
    Question asked =
        new Question(
            "own-hostile",
            List.of(new Line(HOSTILE, HOSTILE)),
            HOSTILE,
            Collections.nCopies(3, HOSTILE));
    Solved one =
        new Solved(
            asked, 2, List.of(HOSTILE), HOSTILE, Optional.of("https://example.org/fault/a.html"));
    String text = unpacked(qti.bytes(List.of(one))).get("items/own-hostile.xml");
    validate("items/own-hostile.xml", text);
    Document item = read(text);
    String shown = HOSTILE.replaceAll("[\u0001\uFFFE\uD800]", "\uFFFD");
    for (String element : List.of("qti-prompt", "qti-simple-choice", "dt", "dd")) {
      assertEquals(shown, texts(item, element).get(0), element);
    }
    assertEquals(0, all(item, "script").size());
    assertEquals("https://example.org/fault/a.html", all(item, "a").get(0).getAttribute("href"));
  }

  @Test
  void theSameQuizIsTheSameBytesInGermanToo() throws Exception {
    assertArrayEquals(qti.bytes(SOLVED), qti.bytes(SOLVED));
    String german =
        unpacked(new QtiPackage("de", "0011", "Eis").bytes(SOLVED)).get("items/own-gloves.xml");
    assertTrue(german.contains("Das ist richtig."), german);
    assertTrue(german.contains("xml:lang=\"de\""), german);
  }
}
