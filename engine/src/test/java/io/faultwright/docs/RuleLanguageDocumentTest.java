package io.faultwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.finding.FindingKind;
import io.faultwright.model.Access;
import io.faultwright.model.Caution;
import io.faultwright.quantity.Units;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The reference of the rule language: its examples are run, and it leaves no word out. */
class RuleLanguageDocumentTest {
  private final MarkdownPage page = MarkdownPage.read(Stored.DOCS.resolve("rule-language.md"));

  @TestFactory
  Stream<DynamicTest> examples() {
    return Examples.tests(page);
  }

  @Test
  void namesEveryUnit() {
    assertNames(Units.symbols());
  }

  @Test
  void namesEveryKindOfAccess() {
    assertNames(Access.words());
  }

  @Test
  void namesEverySignalWord() {
    assertNames(
        Arrays.stream(Caution.Signal.values())
            .map(signal -> signal.name().toLowerCase(Locale.ROOT))
            .toList());
  }

  @Test
  void namesEveryKindOfFinding() {
    assertNames(Arrays.stream(FindingKind.values()).map(FindingKind::slug).toList());
  }

  /** The lists of keys are private to the package that reads them. */
  @TestFactory
  Stream<DynamicTest> namesEveryKey() {
    return Stream.of(
            "AccessWeights",
            "Branch",
            "Case",
            "Caution",
            "Chart",
            "Conclusion",
            "Fault",
            "Handbook",
            "Limits",
            "Model",
            "Never",
            "Part",
            "Reading",
            "SetUp",
            "SignOffRules",
            "Step",
            "Symptom")
        .map(section -> DynamicTest.dynamicTest(section, () -> assertNames(keys(section))));
  }

  static List<String> keys(String section) throws ReflectiveOperationException {
    var keys =
        Class.forName("io.faultwright.resolve." + section + "Resolver").getDeclaredField("KEYS");
    keys.setAccessible(true);
    return ((List<?>) keys.get(null)).stream().map(String.class::cast).toList();
  }

  private void assertNames(Collection<String> words) {
    String prose = String.join("\n", page.prose());
    assertEquals(
        List.of(), words.stream().filter(word -> !prose.contains("`" + word + "`")).toList());
  }
}
