package io.faultwright.measure;

import io.faultwright.measure.GeneratedRules.Rule;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Generated rules as DRL text. */
final class DrlText {
  private DrlText() {}

  static String of(List<Rule> rules) {
    return rules.stream()
        .map(DrlText::of)
        .collect(Collectors.joining("\n", "package io.faultwright.measure;\n", "\n"));
  }

  private static String of(Rule rule) {
    List<String> tests = new ArrayList<>();
    rule.choices().forEach((column, value) -> tests.add("c" + column + " == \"" + value + "\""));
    rule.above().forEach((column, value) -> tests.add("q" + column + " > " + value));
    return "rule \"%s\" when $sample : SampleFact( %s ) then $sample.fire(); end"
        .formatted(rule.name(), String.join(", ", tests));
  }
}
