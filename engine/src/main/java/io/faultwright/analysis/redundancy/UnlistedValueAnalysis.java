package io.faultwright.analysis.redundancy;

import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Finds values of a choice that can occur in a symptom whose rules ask about that choice, but that
 * none of them names. A condition with {@code not} speaks of all the values it leaves.
 */
public final class UnlistedValueAnalysis {
  private UnlistedValueAnalysis() {}

  /** One finding per value. */
  public static List<Finding> findings(SymptomSpace symptom) {
    List<Finding> findings = new ArrayList<>();
    for (Axis axis : symptom.space().axes()) {
      if (axis.subject() instanceof Axis.OfReading of) {
        findings.addAll(findings(symptom, axis, of.reading()));
      }
    }
    return findings;
  }

  private static List<Finding> findings(SymptomSpace symptom, Axis axis, String reading) {
    List<Condition.Test> tests = tests(symptom.symptom(), reading);
    boolean negated = conditions(symptom.symptom()).anyMatch(c -> underNot(c, reading));
    if (tests.isEmpty() || negated) {
      return List.of();
    }
    Set<String> named = new TreeSet<>();
    tests.forEach(test -> named.addAll(((OneOf) test.pattern()).values()));
    return axis.cells().stream()
        .filter(Cell.Word.class::isInstance)
        .map(cell -> ((Cell.Word) cell).value())
        .filter(value -> !named.contains(value) && occurs(symptom, axis, value))
        .map(value -> finding(symptom.symptom(), tests.get(0), reading, value))
        .toList();
  }

  private static Stream<Condition> conditions(Symptom symptom) {
    Stream<Condition> rules = symptom.rules().values().stream().map(Rule::when);
    return Stream.concat(rules, symptom.first().stream().map(Symptom.First::when));
  }

  private static List<Condition.Test> tests(Symptom symptom, String reading) {
    return conditions(symptom)
        .flatMap(Condition::tests)
        .filter(test -> test.subject().equals(reading) && test.pattern() instanceof OneOf)
        .toList();
  }

  private static boolean underNot(Condition condition, String reading) {
    return condition.match(
        all -> all.parts().stream().anyMatch(part -> underNot(part, reading)),
        any -> any.parts().stream().anyMatch(part -> underNot(part, reading)),
        not -> not.part().tests().anyMatch(test -> test.subject().equals(reading)),
        test -> false);
  }

  private static boolean occurs(SymptomSpace symptom, Axis axis, String value) {
    int here =
        symptom
            .space()
            .literal(
                axis.subject(),
                axis.where(cell -> cell instanceof Cell.Word word && word.value().equals(value)));
    return symptom.space().diagrams().and(symptom.workable(), here) != Diagrams.NONE;
  }

  private static Finding finding(
      Symptom symptom, Condition.Test test, String reading, String value) {
    return Finding.of(
            FindingKind.UNLISTED_VALUE,
            List.of(test.place()),
            "no rule names the value `" + value + "` of `" + reading + "`",
            "say in a rule what follows from it, or take the value out")
        .in(symptom.id(), List.of());
  }
}
