package io.faultwright.analysis.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.finding.RegionTest;
import io.faultwright.pipeline.Pipeline;
import io.faultwright.pipeline.Scope;
import io.faultwright.pipeline.Watch;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * The kinds of anomaly that checking of rule bases looks for since Suwa, Scott, Shortliffe, "An
 * Approach to Verifying Completeness and Consistency in a Rule-Based Expert System", AI Magazine
 * 3(4):16-21, 1982, and Nguyen, Perkins, Laffey, Pecora, "Knowledge Base Verification", AI Magazine
 * 8(2):69-75, 1987. One smallest instance of each definition; what must be found was worked out by
 * hand from the definition.
 */
class AnomalyKindsTest {
  private static final Set<FindingKind> UNUSED =
      EnumSet.of(
          FindingKind.RULE_UNTESTED, FindingKind.UNUSED_READING, FindingKind.FAULT_NEVER_CONCLUDED);

  private static final String PREAMBLE =
      """
      handbook:
        title: Anomaly kinds
        maker: Published example
        revision: "1"
        date: 1987-06-01
        language: en
        disclaimer: An example of rule checking.
      readings:
        p: { ask: "Does p hold?", values: yes/no }
        q: { ask: "Does q hold?", values: yes/no }
        s: { ask: "How large is s?", values: [lo, ok, hi] }
      faults:
        a: { title: A, remedy: [Mend a.], verify: [See a.] }
        b: { title: B, remedy: [Mend b.], verify: [See b.] }
        c: { title: C, remedy: [Mend c.], verify: [See c.] }
      """;

  /** Two rules succeed in the same situation and have the same conclusion. */
  @Test
  void redundantRules() {
    assertFound(
        """
        symptoms:
          x:
            title: X
            rules:
              r1: { when: { p: yes, q: yes }, conclude: a, because: By definition. }
              r2: { when: { q: yes, p: yes }, conclude: a, because: By definition. }
              r3: { when: { any: { p: no, q: no } }, conclude: b, because: The rest. }
        """,
        "duplicate-rule [r2, r1]");
  }

  /** Two rules succeed in the same situation, with conclusions that exclude each other. */
  @Test
  void conflictingRules() {
    List<Finding> found =
        assertFound(
            """
            symptoms:
              x:
                title: X
                rules:
                  r1: { when: { p: yes }, conclude: a, because: By definition. }
                  r2: { when: { p: yes }, conclude: b, because: By definition. }
                  r3: { when: { p: no }, conclude: c, because: The rest. }
            """,
            "contradiction [r1, r2]");
    assertEquals(List.of(new RegionTest("p", "yes")), found.get(0).region());
  }

  /** Two rules have the same conclusion, and one of them has further conditions. */
  @Test
  void subsumedRules() {
    assertFound(
        """
        symptoms:
          x:
            title: X
            rules:
              r1: { when: { p: yes }, conclude: a, because: By definition. }
              r2: { when: { p: yes, q: not no }, conclude: a, because: By definition. }
              r3: { when: { p: no }, conclude: b, because: The rest. }
        """,
        "subsumed-rule [r2, r1]",
        "idle-condition [r2]");
  }

  /** Two rules have the same conclusion, and differ in one condition that one of them negates. */
  @Test
  void unnecessaryIfConditions() {
    List<Finding> found =
        assertFound(
            """
            symptoms:
              x:
                title: X
                rules:
                  r1: { when: { p: yes, q: yes }, conclude: a, because: By definition. }
                  r2: { when: { p: yes, q: not yes }, conclude: a, because: By definition. }
                  r3: { when: { p: no }, conclude: b, because: The rest. }
            """,
            "idle-condition [r1]",
            "idle-condition [r2]");
    assertEquals(
        List.of(
            "the condition on `q` in rule `r1` can be dropped without changing any outcome",
            "the condition on `q` in rule `r2` can be dropped without changing any outcome"),
        found.stream().map(Finding::message).toList());
  }

  /** A chain of rules leads back to where it began; here rules chain by referring. */
  @Test
  void circularRuleChains() {
    List<Finding> found =
        assertFound(
            """
            symptoms:
              x:
                title: X
                recognise: { s: lo }
                rules:
                  on: { when: { p: yes }, refer: y, because: By definition. }
                  end: { when: { p: no }, conclude: a, because: The rest. }
              y:
                title: Y
                recognise: { s: ok }
                rules:
                  on: { when: { p: yes }, refer: z, because: By definition. }
                  end: { when: { p: no }, conclude: a, because: The rest. }
              z:
                title: Z
                recognise: { s: hi }
                rules:
                  on: { when: { p: yes }, refer: x, because: By definition. }
                  end: { when: { p: no }, conclude: b, because: The rest. }
            """,
            "circular-referral []");
    assertEquals("the referrals `x` → `y` → `z` → `x` run in a circle", found.get(0).message());
    assertEquals(List.of(new RegionTest("p", "yes")), found.get(0).region());
  }

  /** A legal value of an attribute occurs in no condition of the rules. */
  @Test
  void unreferencedAttributeValues() {
    List<Finding> found =
        assertFound(
            """
            symptoms:
              x:
                title: X
                rules:
                  r1: { when: { s: lo }, conclude: a, because: By definition. }
                  r2: { when: { s: ok }, conclude: b, because: By definition. }
            """,
            "gap []",
            "unlisted-value []");
    assertEquals(List.of(new RegionTest("s", "hi")), found.get(0).region());
    assertEquals("no rule names the value `hi` of `s`", found.get(1).message());
  }

  /** A condition names a value that is not among the legal ones. */
  @Test
  void illegalAttributeValues() {
    assertProblem(
        """
        symptoms:
          x:
            title: X
            rules:
              r1: { when: { s: huge }, conclude: a, because: By definition. }
        """,
        "`s` has no value `huge`");
  }

  /** A condition can be met by nothing: neither asked for nor concluded, or never satisfied. */
  @Test
  void deadEndIfConditions() {
    assertProblem(
        """
        symptoms:
          x:
            title: X
            rules:
              r1: { when: { t: yes }, conclude: a, because: By definition. }
        """,
        "unknown reading or option `t`");
    assertFound(
        """
        symptoms:
          x:
            title: X
            recognise: { s: [lo, ok] }
            rules:
              r1: { when: { s: not lo, not: { s: ok } }, conclude: a, because: By definition. }
              r2: { when: { p: yes }, conclude: b, because: The rest. }
              r3: { when: { p: no }, conclude: c, because: The rest. }
        """,
        "dead-rule [r1]");
  }

  /** A goal is the conclusion of no rule. */
  @Test
  void deadEndGoals() {
    List<Finding> found =
        assertFound(
            """
            symptoms:
              x:
                title: X
                rules:
                  r1: { when: { p: yes }, conclude: a, because: By definition. }
                  r2: { when: { p: no }, conclude: b, because: The rest. }
            """,
            "fault-never-concluded []");
    assertEquals("no rule concludes the fault `c`", found.get(0).message());
  }

  /** A conclusion is reached from nothing: here its rule can never fire. */
  @Test
  void unreachableConclusions() {
    List<Finding> found =
        assertFound(
            """
            symptoms:
              x:
                title: X
                never:
                  both: { when: { p: yes, q: not no }, because: By definition. }
                rules:
                  r1: { when: { p: yes, q: not no }, conclude: a, because: By definition. }
                  r2: { when: { p: yes }, conclude: b, because: The rest. }
                  r3: { when: { p: no }, conclude: c, because: The rest. }
            """,
            "dead-rule [r1]");
    assertEquals(
        "rule `r1` can never fire: `never` statement `both`, condition on `p`, condition on `q`"
            + " cannot all hold",
        found.get(0).message());
  }

  /** Compares all findings, apart from what the short examples leave unused in their preamble. */
  private static List<Finding> assertFound(String symptoms, String... expected) {
    List<Finding> found =
        new Pipeline(Scope.ALL, Watch.NOBODY)
            .check(sources(symptoms)).report().findings().stream()
                .filter(
                    finding -> !UNUSED.contains(finding.kind()) || isExpected(finding, expected))
                .toList();
    assertEquals(
        List.of(expected),
        found.stream().map(finding -> finding.kind().slug() + " " + finding.rules()).toList());
    return found;
  }

  private static boolean isExpected(Finding finding, String... expected) {
    return List.of(expected).contains(finding.kind().slug() + " " + finding.rules());
  }

  private static void assertProblem(String symptoms, String message) {
    Sources sources = sources(symptoms);
    Pipeline pipeline = new Pipeline(Scope.ALL, Watch.NOBODY);
    Unreadable unreadable = assertThrows(Unreadable.class, () -> pipeline.check(sources));
    assertEquals(List.of(message), unreadable.problems().stream().map(Problem::message).toList());
  }

  private static Sources sources(String symptoms) {
    return new Sources(List.of(SourceFile.of("handbook.yaml", PREAMBLE + symptoms)));
  }
}
