package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.prose.PlainText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** Whatever a trainer writes into any text is printed as that text and changes nothing else. */
class HostileTextTest {
  @TempDir static Path temp;
  private static Published plain;
  private static int count;

  @BeforeAll
  static void publishPlain() throws IOException {
    plain = published(SampleBook.plain());
  }

  private static Published published(KnowledgeBase kb) throws IOException {
    Path to = temp.resolve("site" + count++);
    new SitePublisher().publish(kb, new TreeMap<>(), Options.draft(List.of(), false), to);
    return Published.read(to);
  }

  static Stream<String> texts() {
    return Stream.of(
        "<script>alert(1)</script>",
        "<img src=x onerror=alert(1)>",
        "\"><svg onload=alert(1)>",
        "' onmouseover='alert(1)",
        "</svg></li></ul></main><h1>mine</h1>",
        "${7+7} #{7+7} [=7+7] ${page.frame} ${'x'?api.class}",
        "<#assign x=1><#include \"/etc/passwd\"><@x/>[#ftl]",
        "{{7+7}} <%= 7+7 %> <?php x ?>",
        "]]> <![CDATA[ x ]]> <!-- x --> &lt; &amp; &#x3C;",
        "javascript:alert(1)",
        "\u202Eright to left\u202C and \u200Fmarks\u200E",
        "\u05E9\u05DC\u05D5\u05DD \u0645\u0631\u062D\u0628\u0627 \u4F60\u597D \uD83D\uDE00\uD83C\uDFFD",
        "control \u0001\u0008\u001B\u0085 and \uFFFE",
        "lone \uD800 surrogate",
        "x".repeat(10_000));
  }

  @ParameterizedTest
  @MethodSource("texts")
  void isPrintedAsText(String hostile) throws IOException {
    List<String> written = new ArrayList<>();
    Published site =
        published(
            new SampleBook(
                    text -> {
                      String both = text + " " + hostile;
                      written.add(both);
                      return both;
                    })
                .build());
    assertSameElements(site);
    assertEverythingPrinted(site, written);
  }

  /** The same elements with the same attributes' names, whatever the texts say. */
  private static void assertSameElements(Published site) {
    assertEquals(plain.files().keySet(), site.files().keySet());
    plain
        .pages()
        .filter(path -> !path.equals("a-z.html"))
        .forEach(path -> assertEquals(shape(plain, path), shape(site, path), path));
  }

  private static String shape(Published site, String path) {
    return Elements.of(site.document(path)).stream()
        .map(HostileTextTest::shape)
        .collect(Collectors.joining("\n"));
  }

  private static String shape(Element element) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < element.getAttributes().getLength(); i++) {
      names.add(element.getAttributes().item(i).getNodeName());
    }
    return element.getTagName() + names.stream().sorted().toList();
  }

  private static void assertEverythingPrinted(Published site, List<String> written) {
    String printed =
        site.pages()
            .map(path -> site.document(path).getDocumentElement().getTextContent())
            .map(HostileTextTest::spaced)
            .collect(Collectors.joining("\n"));
    for (String text : written) {
      assertTrue(printed.contains(spaced(PlainText.of(text))), () -> "not printed: " + text);
    }
  }

  private static String spaced(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }
}
