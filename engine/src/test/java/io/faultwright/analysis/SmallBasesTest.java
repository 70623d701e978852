package io.faultwright.analysis;

import static io.faultwright.analysis.SmallBases.found;
import static io.faultwright.analysis.SmallBases.rules;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.finding.FindingKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each analysis on small knowledge bases; what must be found was worked out by hand. */
class SmallBasesTest {
  @Test
  void cautionsOfReadingsAndSteps() {
    assertEquals(
        List.of(
            "a step of the fault `bare` has access `live-voltage` and no caution",
            "a step of the fault `late` has access `refrigerant-circuit` and no caution",
            "the reading `volts` has access `live-voltage` and no caution"),
        found(
            FindingKind.MISSING_CAUTION,
            """
            cautions:
              live: { signal: danger, text: Live parts. }
            readings:
              volts: { ask: Volts, values: yes/no, access: live-voltage }
              told: { ask: Volts, values: yes/no, access: live-voltage, cautions: [live] }
              inside: { ask: Dirt, values: yes/no, access: panel }
            faults:
              bare: { title: A, remedy: [{ do: Measure it., access: live-voltage }], verify: [Look.] }
              late: { title: B, remedy: [Mend it.], verify: [{ do: Read it., access: refrigerant-circuit }] }
              own: { title: C, remedy: [{ do: Measure it., access: live-voltage, cautions: [live] }], verify: [Look.] }
              whole: { title: D, cautions: [live], remedy: [{ do: Measure it., access: live-voltage }], verify: [Look.] }
              easy: { title: E, remedy: [{ do: Open it., access: panel }], verify: [Look.] }
            """));
  }

  @Test
  void faultsThatNothingConcludesOrMends() {
    String yaml =
        """
        readings:
          p: { ask: Is it p, values: yes/no }
        faults:
          done: { title: A, remedy: [Mend it.], verify: [Look.] }
          excluded: { title: B, remedy: [Mend it.], verify: [Look.] }
          hotline: { title: C, remedy: [Mend it.], verify: [Look.] }
          unseen: { title: D, remedy: [Mend it.] }
          unmended: { title: E, verify: [Look.] }
          neither: { title: F }
        symptoms:
          x:
            title: X
            rules:
              r1: { when: { p: yes }, conclude: [done, unseen, unmended, neither], because: So. }
              r2: { when: { p: yes }, exclude: excluded, because: So. }
              r3: { when: { p: no }, escalate: hotline, because: So. }
        """;
    assertEquals(
        List.of("no rule concludes the fault `excluded`", "no rule concludes the fault `hotline`"),
        found(FindingKind.FAULT_NEVER_CONCLUDED, yaml));
    assertEquals(
        List.of(
            "the fault `neither` has neither `remedy` nor `verify`",
            "the fault `unmended` has no `remedy`",
            "the fault `unseen` has no `verify`"),
        found(FindingKind.FAULT_WITHOUT_REMEDY, yaml));
  }

  @Test
  void readingsThatNothingAsksFor() {
    assertEquals(
        List.of("no symptom uses the reading `in-never`", "no symptom uses the reading `spare`"),
        found(
            FindingKind.UNUSED_READING,
            """
                readings:
                  in-rule: { ask: P, values: yes/no }
                  in-first: { ask: P, values: yes/no }
                  in-never: { ask: P, values: yes/no }
                  in-symptom-never: { ask: P, values: yes/no }
                  recognised: { ask: P, values: yes/no }
                  driver: { ask: P, unit: K, range: 0 to 9 }
                  judged: { ask: P, unit: K, range: 0 to 9 }
                  one: { ask: P, unit: K, range: 0 to 9 }
                  two: { ask: P, unit: K, range: 0 to 9 }
                  apart: { title: Apart, difference: [one, two] }
                  spare: { ask: P, values: yes/no }
                limits:
                  judged: { by: [driver], between: step, rows: [{ driver: 0 to 9, low: 1, high: 2 }] }
                faults:
                  a: { title: A, remedy: [Mend it.], verify: [Look.] }
                never:
                  n: { when: { in-never: yes, in-rule: no }, because: So. }
                symptoms:
                  y: { title: Y, rules: { r: { when: {}, conclude: a, because: So. } } }
                  x:
                    title: X
                    recognise: { recognised: yes }
                    first: [{ when: { in-first: yes }, otherwise: y }]
                    never: { m: { when: { in-symptom-never: yes }, because: So. } }
                    rules:
                      r1: { when: { in-rule: yes, judged: above limits, apart: above 1 K }, conclude: a, because: So. }
                """));
  }

  @Test
  void valuesThatNoRuleNames() {
    FindingKind kind = FindingKind.UNLISTED_VALUE;
    String named = "    rules:\n      r1: { when: { s: lo }, conclude: a, because: So. }\n";
    assertEquals(
        List.of("no rule names the value `hi` of `s`", "no rule names the value `ok` of `s`"),
        found(kind, rules(named)));
    assertEquals(
        List.of("no rule names the value `ok` of `s`"),
        found(kind, rules("    never: { n: { when: { s: hi }, because: So. } }", named)),
        "a value that cannot occur needs no rule");
    for (String negated :
        List.of(
            "s: not lo",
            "any: [{ p: yes }, { not: { s: lo } }]",
            "all: [{ p: yes }, { any: [{ q: yes }, { s: not lo }] }]")) {
      String rule = "      r2: { when: { " + negated + " }, conclude: b, because: So. }";
      List<String> all = found(kind, rules(named + rule));
      assertEquals(List.of(), all.stream().filter(m -> m.contains("`s`")).toList(), negated);
    }
    String elsewhere =
        "      r2: { when: { any: [{ p: not yes }, { q: yes }] }, conclude: b, because: So. }";
    assertEquals(3, found(kind, rules(named + elsewhere)).size(), "two of s, one of q");
  }

  @Test
  void rulesThatSayWhatOthersSay() {
    assertEquals(
        List.of(
            "rule `r2` fires in exactly the situations of `r1`, with the same conclusion",
            "rule `r3` fires in exactly the situations of `r1`, with the same conclusion"),
        found(
            FindingKind.DUPLICATE_RULE,
            rules(
                "    rules:",
                "      r1: { when: { p: yes }, conclude: a, because: So. }",
                "      r2: { when: { p: not no }, conclude: a, because: So. }",
                "      r3: { when: { any: [{ p: yes }] }, conclude: a, because: So. }",
                "      r4: { when: { p: yes }, conclude: b, because: So. }")));
    assertEquals(
        List.of("rule `r2` fires only in situations of `r1`, with the same conclusion"),
        found(
            FindingKind.SUBSUMED_RULE,
            rules(
                "    rules:",
                "      r1: { when: { p: yes }, conclude: a, because: So. }",
                "      r2: { when: { p: yes, q: yes }, conclude: a, because: So. }",
                "      r3: { when: { p: yes, s: lo }, conclude: a, instead-of: [r4], because: So. }",
                "      r4: { when: { s: lo }, conclude: b, because: So. }")));
  }

  @Test
  void conditionsThatSeparateNothing() {
    assertEquals(
        List.of(
            "the condition on `p` in rule `r1` can be dropped without changing any outcome",
            "the condition on `p` in rule `r3` can be dropped without changing any outcome",
            "the condition on `s` in rule `r3` can be dropped without changing any outcome"),
        found(
                FindingKind.IDLE_CONDITION,
                rules(
                    "    rules:",
                    "      r1: { when: { p: yes, q: yes }, conclude: a, because: So. }",
                    "      r2: { when: { p: no, q: yes, s: lo }, conclude: a, because: So. }",
                    "      r2b: { when: { p: no, q: yes, s: not lo }, conclude: a, because: So. }",
                    "      r3: { when: { q: no, any: [{ p: yes }, { p: no, s: lo }] }, conclude: b,"
                        + " because: So. }",
                    "      r4: { when: { q: no, p: no, s: not lo }, conclude: b, because: So. }"))
            .stream()
            .filter(message -> !message.contains("`r2") && !message.contains("`r4"))
            .distinct()
            .toList());
  }

  @Test
  void whyARuleIsDead() {
    assertEquals(
        List.of(
            "rule `r2` can never fire: `instead-of` in rule `r1`, condition on `p` cannot all hold"),
        found(
            FindingKind.DEAD_RULE,
            rules(
                "    rules:",
                "      r1: { when: { p: yes }, conclude: a, instead-of: [r2], because: So. }",
                "      r2: { when: { p: yes, q: yes }, conclude: b, because: So. }",
                "      r3: { when: { p: no }, conclude: b, because: So. }")));
    assertEquals(
        List.of("rule `r2` can never fire: `recognise` on `p`, condition on `p` cannot all hold"),
        found(
            FindingKind.DEAD_RULE,
            rules(
                "    recognise: { p: yes }",
                "    rules:",
                "      r1: { when: {}, conclude: a, because: So. }",
                "      r2: { when: { q: yes, p: no }, conclude: b, because: So. }")));
    assertEquals(
        List.of("rule `r2` can never fire: `first`, condition on `p` cannot all hold"),
        found(
            FindingKind.DEAD_RULE,
            rules(
                "    first: [{ when: { p: yes }, otherwise: y }]",
                "    rules:",
                "      r1: { when: {}, conclude: a, because: So. }",
                "      r2: { when: { q: yes, p: no }, conclude: b, because: So. }",
                "  y: { title: Y, rules: { r: { when: {}, conclude: c, because: So. } } }")));
  }

  @Test
  void referralsThatComeBack() {
    FindingKind kind = FindingKind.CIRCULAR_REFERRAL;
    String y = "  y: { title: Y, rules: { back: { when: { p: yes }, refer: x, because: So. } } }";
    String there = "      r1: { when: { p: yes }, refer: y, because: So. }";
    assertEquals(
        List.of("the referrals `x` → `y` → `x` run in a circle"),
        found(kind, rules("    rules:", there, y)));
    assertEquals(
        List.of(),
        found(
            kind,
            rules(
                "    rules:",
                there,
                "      r2: { when: { p: yes }, conclude: a, instead-of: [r1], because: So. }",
                y)),
        "a stronger rule answers");
    assertEquals(
        List.of(),
        found(
            kind,
            rules("    never: { n: { when: { p: yes }, because: So. } }", "    rules:", there, y)),
        "it cannot happen");
    assertEquals(
        List.of(),
        found(
            kind,
            rules("    rules:", there, y) + "never: { n: { when: { p: yes }, because: So. } }\n"),
        "it cannot happen anywhere");
    assertEquals(
        List.of("the referrals `x` → `y` → `x` run in a circle"),
        found(
            kind, rules("    first: [{ when: { p: no }, otherwise: y }]", "    rules:", there, y)));
    assertEquals(
        List.of(),
        found(
            kind,
            rules("    first: [{ when: { p: no }, otherwise: z }]", "    rules:", there, y)
                + "  z: { title: Z, rules: { r: { when: {}, conclude: c, because: So. } } }\n"),
        "something else comes first");
    assertEquals(
        List.of(
            "the referrals `x` → `y` → `z` → `x` run in a circle",
            "the referrals `y` → `z` → `y` run in a circle"),
        found(
            kind,
            rules("    rules:", there)
                + "  y: { title: Y, rules: { r: { when: { p: yes }, refer: z, because: So. } } }\n"
                + "  z: { title: Z, rules: { r: { when: { q: yes }, refer: x, because: So. },"
                + " t: { when: { q: no }, refer: y, because: So. } } }\n"));
  }

  @Test
  void rowsOfLimitsThatHoldAtOnce() {
    String base =
        """
        equipment:
          families: { fell: { title: Fell }, tarn: { title: Tarn } }
          models:
            F-1: { family: fell, options: {} }
            T-1: { family: tarn, options: {} }
        readings:
          d: { ask: D, unit: K, range: 0 to 30 }
          m: { ask: M, unit: K, range: 0 to 9 }
        limits:
          m: { by: [family, d], between: step, rows: [ROWS] }
        """;
    FindingKind kind = FindingKind.OVERLAPPING_LIMITS;
    String message = "two rows of the limits of `m` hold at once";
    String low = "{ family: fell, d: 0 to 10, low: 1, high: 2 }";
    assertEquals(
        List.of(),
        found(kind, base.replace("ROWS", low + ", { family: fell, d: 10 to 20, low: 1, high: 2 }")),
        "an end that two rows share belongs to the upper row");
    assertEquals(
        List.of(),
        found(kind, base.replace("ROWS", low + ", { family: tarn, d: 5 to 20, low: 1, high: 2 }")));
    for (String other : List.of("9 to 20", "0 to 5", "0 to 20", "3 to 4")) {
      String row = ", { family: fell, d: " + other + ", low: 1, high: 2 }";
      assertEquals(List.of(message), found(kind, base.replace("ROWS", low + row)), other);
      String reversed = row.substring(2) + ", " + low;
      assertEquals(List.of(message), found(kind, base.replace("ROWS", reversed)), other);
    }
  }
}
