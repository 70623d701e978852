package io.faultwright.report;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Sorted;
import io.faultwright.run.RuleTrace;
import io.faultwright.run.TestTrace;
import io.faultwright.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;

/** What became of a rule and why, in lines for people. */
final class RuleWords {
  private final Wording wording;
  private final TestWords tests;

  RuleWords(KnowledgeBase kb) {
    this.wording = new Wording(kb);
    this.tests = new TestWords(kb);
  }

  /** The word for what became of a rule. */
  static String state(RuleTrace trace) {
    return trace.match(
        fired -> "fires", silenced -> "silent", could -> "could fire", cannot -> "cannot fire");
  }

  /** The order in which a person wants to read rules: those that fire first. */
  static int rank(RuleTrace trace) {
    return trace.match(fired -> 0, silenced -> 1, could -> 2, cannot -> 3);
  }

  /** The tests that make it so. */
  static List<TestTrace> reasons(RuleTrace trace) {
    return trace.match(
        RuleTrace.Fired::because,
        silenced -> List.<TestTrace>of(),
        RuleTrace.CouldFire::open,
        RuleTrace.CannotFire::failed);
  }

  /** The rules that silence it, or may yet do so. */
  static SortedSet<String> silencers(RuleTrace trace) {
    return trace.match(
        fired -> Sorted.set(List.<String>of()),
        RuleTrace.Silenced::by,
        RuleTrace.CouldFire::waitingFor,
        cannot -> Sorted.set(List.<String>of()));
  }

  List<String> lines(Rule rule, RuleTrace trace) {
    List<String> lines = new ArrayList<>();
    boolean fires = trace instanceof RuleTrace.Fired;
    lines.add(rule.id() + (fires ? ": " + wording.conclusion(rule.conclusion()) : ""));
    reasons(trace).forEach(test -> lines.add("- " + tests.line(test)));
    SortedSet<String> silencers = silencers(trace);
    if (!silencers.isEmpty()) {
      lines.add(
          (trace instanceof RuleTrace.CouldFire ? "- unless " : "- because of ")
              + String.join(", ", silencers));
    }
    if (fires && !rule.because().isBlank()) {
      lines.add("  " + rule.because().strip());
    }
    return lines;
  }
}
