package io.faultwright.release;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.Chart;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Condition;
import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Signed;
import io.faultwright.model.Symptom;
import io.faultwright.resolve.Resolver;
import io.faultwright.resolve.Shuffled;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Which signatures under the demo handbook lapse with a change: those it touches, and no other. */
class LapsingTest {
  private static final KnowledgeBase KB = Demo.KNOWLEDGE;

  @Test
  void everythingHoldsWhileNothingChanges() {
    assertTrue(Demo.SIGNED.all().size() > 100, "few things: " + Demo.SIGNED.all().size());
    assertEquals(Set.of(), Demo.lapsed(KB));
  }

  @Test
  void anotherOrderInOtherFilesLapsesNothing() {
    for (int seed = 0; seed < 2; seed++) {
      KnowledgeBase other = shuffled(seed);
      assertEquals(Set.of(), Demo.lapsed(other), "seed " + seed);
    }
  }

  private static KnowledgeBase shuffled(int seed) {
    try {
      return Resolver.resolve(Shuffled.of(Demo.SOURCES, new Random(seed)));
    } catch (Unreadable unreadable) {
      throw new AssertionError(unreadable.problems().toString());
    }
  }

  @Test
  void aLimitLapsesWhatIsJudgedByIt() {
    KnowledgeBase changed =
        Demo.edited(
            "limits.yaml", "{ family: fell, low: 0.25, high", "{ family: fell, low: 0.28, high");
    String table = changedTable(changed);
    Set<String> touched =
        touchedBy(
            test ->
                test.subject().equals(table) && test.pattern() instanceof Condition.AgainstLimits);
    touched.add("limits " + table);
    assertTrue(touched.size() > 2, touched.toString());
    assertEquals(touched, Demo.lapsed(changed));
  }

  @Test
  void aTimeOfASequenceLapsesTheSequence() {
    KnowledgeBase changed =
        Demo.edited("sequences/hot-gas-operation.yaml", "lasts: 18 min", "lasts: 19 min");
    assertEquals(Set.of("sequence hot-gas-operation"), Demo.lapsed(changed));
  }

  @Test
  void aReadingLapsesTheSequenceThatItTellsOf() {
    KnowledgeBase changed =
        Demo.edited(
            "readings/defrost.yaml", "Which drip time is set?", "Which drip time is shown?");
    assertTrue(Demo.lapsed(changed).contains("sequence hot-gas-operation"));
  }

  /** Which table it is, from the models and not from their hashes. */
  private static String changedTable(KnowledgeBase changed) {
    return KB.limits().keySet().stream()
        .filter(
            id ->
                !KB.limits()
                    .get(id)
                    .rows()
                    .toString()
                    .equals(changed.limits().get(id).rows().toString()))
        .findFirst()
        .orElseThrow();
  }

  /** Rules, symptoms and charts with such a test in one of their conditions. */
  private static Set<String> touchedBy(Predicate<Condition.Test> wanted) {
    Set<String> touched = new TreeSet<>();
    for (Symptom symptom : KB.symptoms().values()) {
      for (Rule rule : symptom.rules().values()) {
        if (rule.when().tests().anyMatch(wanted)) {
          touched.add(Signed.rule(symptom.id(), rule.id()).toString());
          touched.add("symptom " + symptom.id());
        }
      }
      if (own(symptom).flatMap(Condition::tests).anyMatch(wanted)) {
        touched.add("symptom " + symptom.id());
      }
    }
    KB.charts().values().stream()
        .filter(chart -> branches(chart).flatMap(one -> one.when().tests()).anyMatch(wanted))
        .forEach(chart -> touched.add("chart " + chart.id()));
    return touched;
  }

  private static Stream<Condition> own(Symptom symptom) {
    return Stream.of(
            symptom.first().stream().map(Symptom.First::when),
            symptom.nevers().values().stream().map(never -> never.when()),
            Stream.of(symptom.recognise()))
        .flatMap(conditions -> conditions);
  }

  private static Stream<Chart.Branch> branches(Chart chart) {
    return chart.steps().values().stream().flatMap(step -> step.branches().stream());
  }

  @Test
  void anInstructionLapsesWhatEndsWithThatRepair() {
    KnowledgeBase changed =
        Demo.edited("faults/circuit.yaml", "do: Find the leak", "do: At once find the leak");
    Set<String> faults = new TreeSet<>();
    KB.faults()
        .forEach(
            (id, fault) -> {
              if (!steps(fault).equals(steps(changed.faults().get(id)))) {
                faults.add(id);
              }
            });
    assertEquals(1, faults.size(), faults.toString());
    Set<String> touched = concluding(faults.iterator().next());
    assertTrue(touched.size() > 1, touched.toString());
    assertEquals(touched, Demo.lapsed(changed));
  }

  private static List<String> steps(Fault fault) {
    return fault.remedy().stream().map(Fault.Step::text).toList();
  }

  private static Set<String> concluding(String fault) {
    Set<String> touched = new TreeSet<>();
    for (Symptom symptom : KB.symptoms().values()) {
      for (Rule rule : symptom.rules().values()) {
        if (faults(rule.conclusion()).anyMatch(fault::equals)) {
          touched.add(Signed.rule(symptom.id(), rule.id()).toString());
          touched.add("symptom " + symptom.id());
        }
      }
    }
    KB.charts().values().stream()
        .filter(chart -> branches(chart).anyMatch(branch -> endsWith(branch, fault)))
        .forEach(chart -> touched.add("chart " + chart.id()));
    return touched;
  }

  private static boolean endsWith(Chart.Branch branch, String fault) {
    return branch.target() instanceof Chart.End end
        && end.answers().stream().anyMatch(answer -> answer.name().equals(fault));
  }

  private static Stream<String> faults(Conclusion conclusion) {
    return conclusion instanceof Conclusion.Exclude exclude
        ? exclude.faults().stream()
        : conclusion.answers().stream().map(answer -> answer.name());
  }

  @Test
  void aGuideLapsesAlone() {
    assertEquals(
        Set.of("guide connecting-gauges"),
        Demo.lapsed(Demo.edited("guides/connecting-gauges.md", "# ", "# Safely: ")));
  }

  @Test
  void linesOfAGuideMayBreakElsewhere() {
    String text = Demo.SOURCES.find("guides/welcome.md").orElseThrow().text();
    int inText = text.indexOf("\n\n") + 2;
    int blank = text.indexOf(' ', text.indexOf(' ', inText) + 1);
    String words = text.substring(inText, blank + 2);
    String broken =
        words.substring(0, words.length() - 2) + "\n" + words.charAt(words.length() - 1);
    assertEquals(Set.of(), Demo.lapsed(Demo.edited("guides/welcome.md", words, broken)));
  }

  @Test
  void whatChangesNoAnswerLapsesNothing() {
    KnowledgeBase later = Demo.edited("handbook.yaml", "revision: \"7\"", "revision: \"8\"");
    assertEquals(Set.of(), Demo.lapsed(later));
    String often =
        Demo.SOURCES.files().stream()
            .filter(file -> file.text().contains("frequency: "))
            .findFirst()
            .orElseThrow()
            .path();
    assertEquals(Set.of(), Demo.lapsed(Demo.edited(often, "frequency: ", "frequency: 1")));
  }

  @Test
  void aTranslationLapsesWhatShowsIt() {
    String german =
        Demo.SOURCES.files().stream()
            .map(file -> file.path())
            .filter(path -> path.startsWith("languages/"))
            .findFirst()
            .orElseThrow();
    String title = KB.symptoms().get("room-too-warm").title();
    String other = KB.wordbook().catalogue("de").orElseThrow().translation(title).orElseThrow();
    String file = fileOf(other).orElse(german);
    assertEquals(
        Set.of("symptom room-too-warm"), Demo.lapsed(Demo.edited(file, other, other + " !")));
  }

  private static java.util.Optional<String> fileOf(String text) {
    return Demo.SOURCES.files().stream()
        .filter(file -> file.path().startsWith("languages/") && file.text().contains(text))
        .map(file -> file.path())
        .findFirst();
  }
}
