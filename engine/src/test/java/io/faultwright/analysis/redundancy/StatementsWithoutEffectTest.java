package io.faultwright.analysis.redundancy;

import static io.faultwright.analysis.SmallBases.findings;
import static io.faultwright.analysis.SmallBases.found;
import static io.faultwright.analysis.SmallBases.rules;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.finding.Share;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Statements that do nothing, or leave nothing. */
class StatementsWithoutEffectTest {
  @Test
  void aRuleInsteadOfOneItNeverMeets() {
    FindingKind kind = FindingKind.INSTEAD_OF_WITHOUT_EFFECT;
    String two =
        "    rules:\n"
            + "      r1: { when: { p: yes }, conclude: a, instead-of: [r2], because: So. }\n"
            + "      r2: { when: { p: NO, q: yes }, conclude: b, because: So. }";
    assertEquals(
        List.of("`instead-of: [r2]` in rule `r1` never silences anything"),
        found(kind, rules(two.replace("NO", "no"))));
    assertEquals(List.of(), found(kind, rules(two.replace("NO", "yes"))));
    String never = "    never: { n: { when: { p: yes, q: yes }, because: So. } }";
    assertEquals(1, found(kind, rules(never, two.replace("NO", "yes"))).size());
  }

  @Test
  void nothingIsLeftPossible() {
    FindingKind kind = FindingKind.EMPTY_NEVER;
    String rule = "    rules: { r1: { when: { p: yes }, conclude: a, because: So. } }";
    assertEquals(
        List.of("no situation of `x` is left possible by its `never` statements"),
        found(
            kind,
            rules(
                "    never:",
                "      m: { when: { p: yes }, because: So. }",
                "      n: { when: { p: no }, because: So. }",
                rule)));
    assertEquals(
        List.of("no situation of `x` is left possible: its `recognise` contradicts itself"),
        found(kind, rules("    recognise: { all: [{ q: yes }, { q: no }] }", rule)));
    assertEquals(
        List.of(),
        found(kind, rules("    never: { m: { when: { p: yes }, because: So. } }", rule)));
    String dead =
        rules(
            "    recognise: { all: [{ q: yes }, { q: no }] }",
            "    rules: { r1: { when: {}, conclude: a, because: So. } }");
    assertEquals(
        List.of("rule `r1` can never fire: `recognise` on `q` cannot hold"),
        found(FindingKind.DEAD_RULE, dead));
  }

  @Test
  void theSmallestClashIsNamed() {
    List<Finding> dead =
        findings(
            FindingKind.DEAD_RULE,
            rules(
                "    never:",
                "      m: { when: { s: lo }, because: So. }",
                "      n: { when: { q: no, p: yes }, because: So. }",
                "    rules:",
                "      r1: { when: { p: yes, q: no, s: [ok, hi] }, conclude: a, because: So. }",
                "      r2: { when: { s: lo }, conclude: a, because: So. }",
                "      r3: { when: { p: no }, conclude: a, because: So. }"));
    assertEquals(
        List.of(
            "rule `r1` can never fire: `never` statement `n`, condition on `p`, condition on `q`"
                + " cannot all hold",
            "rule `r2` can never fire: `never` statement `m`, condition on `s` cannot all hold"),
        dead.stream().map(Finding::message).toList());
    assertEquals(4, dead.get(0).places().size());
    assertEquals(List.of("r1"), dead.get(0).rules());
  }

  /** Three rules in the same situations: the first is named beside each of the others. */
  @Test
  void aRepeatedRuleWithItsRegion() {
    List<Finding> repeated =
        findings(
            FindingKind.DUPLICATE_RULE,
            rules(
                "    rules:",
                "      r1: { when: { p: yes }, conclude: a, because: So. }",
                "      r2: { when: { p: yes }, conclude: a, because: So. }",
                "      r3: { when: { p: yes }, conclude: b, because: So. }"));
    assertEquals(1, repeated.size());
    assertEquals(List.of("r2", "r1"), repeated.get(0).rules());
    assertEquals("p", repeated.get(0).region().get(0).reading());
    assertEquals(Optional.of(new Share(0.5, 0.5, true)), repeated.get(0).share());
  }

  /** The later of two equal rules is superfluous, unless only the earlier one can be taken out. */
  @Test
  void aRuleThatSpeaksInsteadOfAnotherStays() {
    assertEquals(
        List.of("rule `r1` fires in exactly the situations of `r2`, with the same conclusion"),
        found(
            FindingKind.DUPLICATE_RULE,
            rules(
                "    rules:",
                "      r1: { when: { p: yes }, conclude: a, because: So. }",
                "      r2: { when: { p: yes }, conclude: a, instead-of: [r3], because: So. }",
                "      r3: { when: { q: yes }, conclude: b, because: So. }")));
  }
}
