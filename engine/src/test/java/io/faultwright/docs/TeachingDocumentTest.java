package io.faultwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The page on teaching leaves no word of the language out. */
class TeachingDocumentTest {
  private final MarkdownPage page = MarkdownPage.read(Stored.DOCS.resolve("teaching.md"));

  /** The lists of keys are private to the package that reads them. */
  @TestFactory
  Stream<DynamicTest> namesEveryKey() {
    return Stream.of("Session", "WorkedExample", "QuizPlan", "OwnItem", "Footing")
        .map(section -> DynamicTest.dynamicTest(section, () -> assertNames(section)));
  }

  private void assertNames(String section) throws ReflectiveOperationException {
    String prose = String.join("\n", page.prose());
    assertEquals(
        List.of(),
        RuleLanguageDocumentTest.keys(section).stream()
            .filter(word -> !prose.contains("`" + word + "`"))
            .toList());
  }
}
