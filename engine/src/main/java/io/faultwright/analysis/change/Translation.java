package io.faultwright.analysis.change;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Condition.Pattern;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Never;
import io.faultwright.model.Rule;
import io.faultwright.model.Sorted;
import io.faultwright.model.Symptom;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Unit;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Says a side's conditions over the situations that both sides share. */
final class Translation {
  private final Joined joined;
  private final Side side;
  private final KnowledgeBase shared;

  Translation(Joined joined, Side side) {
    this.joined = joined;
    this.side = side;
    this.shared = joined.knowledge();
  }

  Condition condition(Condition own) {
    return own.match(
        all -> new Condition.All(all.parts().stream().map(this::condition).toList()),
        any -> new Condition.Any(any.parts().stream().map(this::condition).toList()),
        not -> new Condition.Not(condition(not.part())),
        this::test);
  }

  private Condition test(Test test) {
    if (!side.hasReading(test.subject())) {
      return BuildConditions.of(side.satisfying(test));
    }
    Test renamed = new Test(side.name(test.subject()), pattern(test), test.place());
    Condition said =
        test.pattern() instanceof AgainstLimits ? joined.limits().said(side, renamed) : renamed;
    return whereItExists(test.subject(), drivers(test), said);
  }

  /** The drivers of a test against limits, by the side's own ids. */
  private List<String> drivers(Test test) {
    return test.pattern() instanceof AgainstLimits
        ? side.own().limits().get(test.subject()).drivers()
        : List.of();
  }

  private Condition whereItExists(String reading, List<String> drivers, Condition said) {
    Condition all = whereItExists(reading, said);
    for (String driver : drivers) {
      all = whereItExists(driver, all);
    }
    return all;
  }

  private Condition whereItExists(String reading, Condition said) {
    String aid = side.existence(side.name(reading));
    if (!shared.readings().containsKey(aid)) {
      return said;
    }
    Pattern here = new OneOf(Sorted.set(List.of(SharedNames.EXISTS)));
    return Kleene.where(new Test(aid, here, BuildConditions.NOWHERE), said);
  }

  private Pattern pattern(Test test) {
    return test.pattern() instanceof InInterval in
        ? new InInterval(interval(test.subject(), in.interval()))
        : test.pattern();
  }

  private Interval interval(String reading, Interval own) {
    return Converted.interval(own, side.unit(reading), unit(reading));
  }

  private Unit unit(String reading) {
    return ((Domain.Measured) shared.readings().get(side.name(reading)).domain()).unit();
  }

  /** A symptom with its conditions translated; equipment and recognition are judged apart. */
  Symptom symptom(Symptom own) {
    SortedMap<String, Rule> rules = new TreeMap<>();
    own.rules().forEach((id, rule) -> rules.put(id, rule(rule)));
    return new Symptom(
        own.id(),
        own.place(),
        own.title(),
        own.about(),
        Condition.ALWAYS,
        Condition.ALWAYS,
        own.first().stream().map(this::first).toList(),
        rules,
        new TreeMap<>(),
        own.together(),
        own.guide(),
        own.hazards());
  }

  private Rule rule(Rule rule) {
    return new Rule(
        rule.id(),
        rule.place(),
        condition(rule.when()),
        rule.conclusion(),
        rule.because(),
        rule.insteadOf());
  }

  private Symptom.First first(Symptom.First first) {
    return new Symptom.First(first.place(), condition(first.when()), first.otherwise());
  }

  Never never(Never own) {
    return new Never(own.id(), own.place(), condition(own.when()), own.because());
  }

  /**
   * What forbids the values that only the other side's reading can have; none where it has none.
   */
  Optional<Never> outOfRange(String reading) {
    Domain own = side.own().readings().get(reading).domain();
    Domain both = shared.readings().get(side.name(reading)).domain();
    Pattern possible =
        own.match(
            measured -> new InInterval(interval(reading, measured.range())),
            choice -> new OneOf(Sorted.set(choice.ids())));
    Pattern all =
        both.match(
            measured -> new InInterval(measured.range()),
            choice -> new OneOf(Sorted.set(choice.ids())));
    Condition inside = new Test(side.name(reading), possible, BuildConditions.NOWHERE);
    boolean computed = side.own().readings().get(reading).derived().isPresent();
    return computed || possible.equals(all)
        ? Optional.empty()
        : Optional.of(
            new Never(
                "range of " + reading,
                BuildConditions.NOWHERE,
                new Condition.Not(whereItExists(reading, inside)),
                ""));
  }
}
