package io.faultwright.compile;

import static io.faultwright.model.Conditions.above;
import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.any;
import static io.faultwright.model.Conditions.atLeast;
import static io.faultwright.model.Conditions.atMost;
import static io.faultwright.model.Conditions.below;
import static io.faultwright.model.Conditions.between;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.limits;
import static io.faultwright.model.Conditions.not;
import static io.faultwright.model.Conditions.notTaken;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CanonicalTest {
  private static final Condition A = is("a", "x");
  private static final Condition B = is("b", "x");

  @Test
  void conditionsThatDifferHaveDifferentTexts() {
    List<Condition> different =
        List.of(
            A,
            B,
            is("a", "y"),
            is("a", "x", "y"),
            is("a", "x,1:y"),
            not(A),
            all(A, B),
            any(A, B),
            all(A, any(A, B)),
            any(A, all(A, B)),
            all(A, not(B)),
            not(all(A, B)),
            Condition.ALWAYS,
            any(),
            above("a", "1"),
            atLeast("a", "1"),
            below("a", "1"),
            atMost("a", "1"),
            between("a", "1", "1"),
            between("a", "1", "2"),
            above("a", "0.1"),
            above("a", "10"),
            limits("a", Side.BELOW),
            limits("a", Side.ABOVE),
            limits("a", Side.BELOW, Side.ABOVE),
            notTaken("a"));
    Set<String> texts = new HashSet<>(different.stream().map(Canonical::of).toList());
    assertEquals(different.size(), texts.size());
  }

  @Test
  void orderAndRepetitionOfPartsDoNotMatter() {
    assertEquals(Canonical.of(all(A, B)), Canonical.of(all(B, A, B)));
    assertEquals(Canonical.of(any(A, B)), Canonical.of(any(B, A, A)));
    assertEquals(Canonical.of(is("a", "x", "y")), Canonical.of(is("a", "y", "x")));
    assertEquals(Canonical.of(above("a", "1.50")), Canonical.of(above("a", "1.5")));
  }
}
