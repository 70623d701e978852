package io.faultwright.render.qti;

import io.faultwright.delivery.Solved;
import io.faultwright.xml.Xml;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A quiz as a package of Question and Test Interoperability 3.0 (1EdTech Final Release, 1 May
 * 2022): a manifest, a test, and a file for each item. It holds every answer.
 */
public final class QtiPackage {
  private static final String TEST = "test.xml";

  private final String language;
  private final String quiz;
  private final String title;

  /**
   * @param language BCP 47 tag of the texts
   * @param quiz fingerprint of the quiz
   * @param title of the session
   */
  public QtiPackage(String language, String quiz, String title) {
    this.language = language;
    this.quiz = quiz;
    this.title = title;
  }

  /** The package as a zip archive; the same questions give the same bytes. */
  public byte[] bytes(List<Solved> questions) {
    return StoredZip.of(files(questions));
  }

  /** Its files by their paths. */
  SortedMap<String, byte[]> files(List<Solved> questions) {
    ItemXml items = new ItemXml(language);
    SortedMap<String, byte[]> files = new TreeMap<>();
    List<String> ids = questions.stream().map(one -> one.question().id()).toList();
    put(files, "imsmanifest.xml", manifest(ids));
    put(files, TEST, test(ids));
    for (int i = 0; i < questions.size(); i++) {
      put(files, path(ids.get(i)), items.write(questions.get(i), i + 1, questions.size()));
    }
    return files;
  }

  private static void put(Map<String, byte[]> files, String path, Xml xml) {
    files.put(path, (Xml.DECLARATION + xml).getBytes(StandardCharsets.UTF_8));
  }

  private static String path(String id) {
    return "items/" + id + ".xml";
  }

  private Xml test(List<String> ids) {
    Xml xml = new Xml();
    xml.open(
        "qti-assessment-test",
        "xmlns",
        ItemXml.NAMESPACE,
        "identifier",
        "quiz-" + quiz,
        "title",
        title,
        "xml:lang",
        language);
    xml.open(
        "qti-test-part",
        "identifier",
        "part",
        "navigation-mode",
        "nonlinear",
        "submission-mode",
        "individual");
    xml.open("qti-assessment-section", "identifier", "section", "title", title, "visible", "true");
    ids.forEach(id -> xml.empty("qti-assessment-item-ref", "identifier", id, "href", path(id)));
    return xml.close().close().close();
  }

  private Xml manifest(List<String> ids) {
    Xml xml = new Xml();
    xml.open(
        "manifest",
        "xmlns",
        "http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1",
        "identifier",
        "package-" + quiz);
    xml.open("metadata").text("schema", "QTI Package").text("schemaversion", "3.0.0").close();
    xml.empty("organizations").open("resources");
    resource(xml, "test", "imsqti_test_xmlv3p0", TEST);
    ids.forEach(id -> xml.empty("dependency", "identifierref", "item-" + id));
    xml.close();
    for (String id : ids) {
      resource(xml, "item-" + id, "imsqti_item_xmlv3p0", path(id)).close();
    }
    return xml.close().close();
  }

  /** Leaves the element open. */
  private static Xml resource(Xml xml, String id, String type, String path) {
    return xml.open("resource", "identifier", id, "type", type, "href", path)
        .empty("file", "href", path);
  }
}
