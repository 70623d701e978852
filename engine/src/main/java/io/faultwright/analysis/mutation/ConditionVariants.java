package io.faultwright.analysis.mutation;

import io.faultwright.adequacy.Mutant.Operator;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.All;
import io.faultwright.model.Condition.Any;
import io.faultwright.model.Condition.Not;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Mistakes in a condition: one in a single place each. */
final class ConditionVariants {
  private final TestVariants tests;

  ConditionVariants(KnowledgeBase kb) {
    this.tests = new TestVariants(kb);
  }

  /** The condition with one mistake each; the place is that of the test, or of the first in it. */
  List<Variant<Condition>> of(Condition condition, Place place) {
    List<Variant<Condition>> variants = new ArrayList<>();
    condition.tests().forEach(test -> ofTest(condition, test, variants));
    joined(condition, place, variants);
    return variants;
  }

  private void ofTest(Condition whole, Test test, List<Variant<Condition>> variants) {
    tests.of(test).forEach(other -> variants.add(other.as(replaced(whole, test, other.changed()))));
    variants.add(
        new Variant<>(
            replaced(whole, test, new Not(test)),
            Operator.CONDITION_NEGATED,
            tests.words(test) + " made its contrary",
            test.place()));
    variants.add(
        new Variant<>(
            without(whole, test).orElse(Condition.ALWAYS),
            Operator.CONDITION_DROPPED,
            tests.words(test) + " left out",
            test.place()));
  }

  private static Condition replaced(Condition whole, Condition part, Condition other) {
    if (whole == part) {
      return other;
    }
    return whole.match(
        all -> new All(replaced(all.parts(), part, other)),
        any -> new Any(replaced(any.parts(), part, other)),
        not -> new Not(replaced(not.part(), part, other)),
        test -> test);
  }

  /** Parts without the replaced one stay the same objects, which are cheap to ask again. */
  private static List<Condition> replaced(List<Condition> parts, Condition part, Condition other) {
    return parts.stream().map(one -> replaced(one, part, other)).toList();
  }

  private static Optional<Condition> without(Condition whole, Test test) {
    if (whole == test) {
      return Optional.empty();
    }
    return whole.match(
        all -> some(without(all.parts(), test)).map(All::new),
        any -> some(without(any.parts(), test)).map(Any::new),
        not -> without(not.part(), test).map(Not::new),
        Optional::of);
  }

  private static List<Condition> without(List<Condition> parts, Test test) {
    return parts.stream().flatMap(part -> without(part, test).stream()).toList();
  }

  private static Optional<List<Condition>> some(List<Condition> parts) {
    return Optional.of(parts).filter(left -> !left.isEmpty());
  }

  private static void joined(Condition whole, Place place, List<Variant<Condition>> variants) {
    parts(whole).stream()
        .filter(part -> part instanceof All all && all.parts().size() > 1)
        .forEach(
            part ->
                variants.add(
                    new Variant<>(
                        replaced(whole, part, new Any(((All) part).parts())),
                        Operator.JOINED_OTHERWISE,
                        "`all` made `any`",
                        at(part, place))));
    parts(whole).stream()
        .filter(part -> part instanceof Any any && any.parts().size() > 1)
        .forEach(
            part ->
                variants.add(
                    new Variant<>(
                        replaced(whole, part, new All(((Any) part).parts())),
                        Operator.JOINED_OTHERWISE,
                        "`any` made `all`",
                        at(part, place))));
  }

  private static Place at(Condition part, Place otherwise) {
    return part.tests().findFirst().map(Test::place).orElse(otherwise);
  }

  private static List<Condition> parts(Condition whole) {
    List<Condition> parts = new ArrayList<>(List.of(whole));
    List<Condition> below =
        whole.match(All::parts, Any::parts, not -> List.of(not.part()), test -> List.of());
    below.forEach(part -> parts.addAll(parts(part)));
    return parts;
  }
}
