package io.faultwright.analysis.mutation;

import io.faultwright.adequacy.Mutant.Operator;
import io.faultwright.analysis.coverage.Threshold;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Condition.Pattern;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Version;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import io.faultwright.wording.RuleText;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Mistakes in a single test. */
final class TestVariants {
  private final KnowledgeBase kb;
  private final RuleText text;

  TestVariants(KnowledgeBase kb) {
    this.kb = kb;
    this.text = new RuleText(kb);
  }

  /** The test with one mistake each. */
  List<Variant<Test>> of(Test test) {
    return test.pattern()
        .match(
            oneOf -> ofValues(test, oneOf.values()),
            within -> ofStretch(test, within.interval()),
            limits -> ofSides(test, limits.sides()),
            notTaken -> List.of());
  }

  private List<Variant<Test>> ofStretch(Test test, Interval stretch) {
    List<Variant<Test>> variants = new ArrayList<>();
    BigFraction step = Threshold.step(kb.readings().get(test.subject()));
    for (BigFraction by : List.of(step, step.negate())) {
      stretch.low().ifPresent(end -> add(test, low(stretch, moved(end, by)), variants));
      stretch.high().ifPresent(end -> add(test, high(stretch, moved(end, by)), variants));
    }
    stretch
        .low()
        .ifPresent(end -> add(test, Operator.THRESHOLD_ENDED, low(stretch, ended(end)), variants));
    stretch
        .high()
        .ifPresent(end -> add(test, Operator.THRESHOLD_ENDED, high(stretch, ended(end)), variants));
    if (stretch.low().isPresent() != stretch.high().isPresent()) {
      Interval turned = new Interval(stretch.high(), stretch.low());
      add(test, Operator.COMPARISON_TURNED, turned, variants);
    }
    return variants;
  }

  private static Interval low(Interval stretch, End end) {
    return new Interval(Optional.of(end), stretch.high());
  }

  private static Interval high(Interval stretch, End end) {
    return new Interval(stretch.low(), Optional.of(end));
  }

  private static End moved(End end, BigFraction by) {
    return new End(end.value().add(by), end.included());
  }

  private static End ended(End end) {
    return new End(end.value(), !end.included());
  }

  private void add(Test test, Interval stretch, List<Variant<Test>> variants) {
    add(test, Operator.THRESHOLD_MOVED, stretch, variants);
  }

  private void add(Test test, Operator operator, Interval stretch, List<Variant<Test>> variants) {
    if (holdsSomething(stretch)) {
      variants.add(variant(test, operator, new InInterval(stretch)));
    }
  }

  private static boolean holdsSomething(Interval stretch) {
    return stretch.low().isEmpty()
        || stretch.high().isEmpty()
        || stretch.low().get().value().compareTo(stretch.high().get().value()) < 0
        || stretch.contains(stretch.low().get().value());
  }

  private List<Variant<Test>> ofSides(Test test, Set<Side> sides) {
    Set<Side> turned = sides.stream().map(TestVariants::opposite).collect(Collectors.toSet());
    return turned.equals(sides)
        ? List.of()
        : List.of(variant(test, Operator.COMPARISON_TURNED, new AgainstLimits(turned)));
  }

  private static Side opposite(Side side) {
    return switch (side) {
      case BELOW -> Side.ABOVE;
      case WITHIN -> Side.WITHIN;
      case ABOVE -> Side.BELOW;
    };
  }

  private List<Variant<Test>> ofValues(Test test, Set<String> chosen) {
    boolean software = test.subject().equals(Equipment.SOFTWARE);
    List<String> all = values(test.subject());
    List<Set<String>> others = software ? moved(all, chosen) : swapped(all, chosen);
    Operator operator = software ? Operator.SOFTWARE_MOVED : Operator.VALUE_SWAPPED;
    return others.stream()
        .filter(other -> !other.isEmpty() && !other.equals(chosen))
        .distinct()
        .map(other -> variant(test, operator, new OneOf(new TreeSet<>(other))))
        .toList();
  }

  /** All values of a choice or an equipment fact, in their order. */
  private List<String> values(String subject) {
    if (kb.readings().containsKey(subject)) {
      return kb.readings()
          .get(subject)
          .domain()
          .match(measured -> List.of(), choice -> choice.ids());
    }
    if (subject.equals(Equipment.SOFTWARE)) {
      return kb.equipment().versions().stream().map(Version::text).toList();
    }
    return kb.equipment().builds().stream()
        .flatMap(build -> build.attribute(subject).stream())
        .distinct()
        .sorted()
        .toList();
  }

  /** The next value for each, one value more, one value less. */
  private static List<Set<String>> swapped(List<String> all, Set<String> chosen) {
    Set<String> next =
        chosen.stream()
            .map(value -> all.get((all.indexOf(value) + 1) % all.size()))
            .collect(Collectors.toSet());
    List<Set<String>> others = new ArrayList<>(List.of(next));
    all.stream()
        .filter(value -> !chosen.contains(value))
        .findFirst()
        .ifPresent(value -> others.add(with(chosen, value)));
    if (chosen.size() > 1) {
      others.add(without(chosen, chosen.iterator().next()));
    }
    return others;
  }

  /** A version more or less at either end of each stretch of versions. */
  private static List<Set<String>> moved(List<String> all, Set<String> chosen) {
    List<Set<String>> others = new ArrayList<>();
    for (int i = 1; i < all.size(); i++) {
      String older = all.get(i - 1);
      String newer = all.get(i);
      if (chosen.contains(older) != chosen.contains(newer)) {
        String in = chosen.contains(older) ? older : newer;
        others.add(with(chosen, in.equals(older) ? newer : older));
        others.add(without(chosen, in));
      }
    }
    return others;
  }

  private static Set<String> with(Collection<String> values, String more) {
    Set<String> others = new TreeSet<>(values);
    others.add(more);
    return others;
  }

  private static Set<String> without(Collection<String> values, String less) {
    Set<String> others = new TreeSet<>(values);
    others.remove(less);
    return others;
  }

  private Variant<Test> variant(Test test, Operator operator, Pattern pattern) {
    String words =
        "`"
            + test.subject()
            + ": "
            + text.pattern(test.subject(), test.pattern())
            + "` made `"
            + text.pattern(test.subject(), pattern)
            + "`";
    return new Variant<>(
        new Test(test.subject(), pattern, test.place()), operator, words, test.place());
  }

  /** A test in words. */
  String words(Test test) {
    return "`" + test.subject() + ": " + text.pattern(test.subject(), test.pattern()) + "`";
  }
}
