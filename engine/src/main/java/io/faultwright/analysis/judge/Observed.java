package io.faultwright.analysis.judge;

import io.faultwright.model.Band;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.CannotBeTaken;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Situation;
import io.faultwright.model.Truth;
import io.faultwright.model.Value;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What is known of one machine, ready to be asked, in strong three-valued logic (Kleene, 1938). For
 * one thread.
 */
public final class Observed {
  private final Judge judge;
  private final Situation given;
  private final Situation situation;
  private final List<Build> builds;
  private final Map<Test, Truth> known = new IdentityHashMap<>();
  private final Map<Test, Boolean> existing = new IdentityHashMap<>();
  private final Map<String, List<Optional<Band>>> bands = new HashMap<>();

  Observed(Judge judge, Situation given, Situation situation, List<Build> builds) {
    this.judge = judge;
    this.given = given;
    this.situation = situation;
    this.builds = List.copyOf(builds);
  }

  /** What was said of it, without what follows. */
  public Situation given() {
    return given;
  }

  /** The published builds, offered the symptom, that it can be; none where there is no such. */
  public List<Build> builds() {
    return builds;
  }

  /** What a reading is, given or computed; absent where it is not known. */
  public Optional<Value> value(String reading) {
    return Optional.ofNullable(situation.readings().get(reading));
  }

  /** The number a reading is; absent where it is none or not known. */
  public Optional<BigFraction> amount(String reading) {
    return situation.readings().get(reading) instanceof Value.Number number
        ? Optional.of(number.amount())
        : Optional.empty();
  }

  /** The limits of a reading here; absent unless all builds it can be have the same. */
  public Optional<Band> band(String reading) {
    List<Optional<Band>> each = bands(reading).stream().distinct().toList();
    return each.size() == 1 ? each.get(0) : Optional.empty();
  }

  /** Whether a condition holds. */
  public Truth met(Condition condition) {
    return met(condition, true);
  }

  /**
   * Whether a condition holds, or its contrary. A test on a reading that the machine does not have
   * does neither.
   */
  private Truth met(Condition condition, boolean wanted) {
    if (condition instanceof Test test) {
      return met(test, wanted);
    }
    if (condition instanceof Condition.Not not) {
      return met(not.part(), !wanted);
    }
    return condition instanceof Condition.All all
        ? joined(all.parts(), wanted, wanted)
        : joined(((Condition.Any) condition).parts(), wanted, !wanted);
  }

  private Truth met(Test test, boolean wanted) {
    if (!exists(test)) {
      return Truth.FALSE;
    }
    return wanted ? truth(test) : truth(test).not();
  }

  private Truth joined(List<Condition> parts, boolean wanted, boolean every) {
    Truth joined = Truth.of(every);
    for (Condition part : parts) {
      Truth truth = met(part, wanted);
      joined = every ? joined.and(truth) : joined.or(truth);
    }
    return joined;
  }

  /** Whether a test comes true. */
  public Truth truth(Test test) {
    Truth truth = known.get(test);
    if (truth == null) {
      truth = work(test);
      known.put(test, truth);
    }
    return truth;
  }

  /** Whether the machine has, or may have, the reading of a test and those its limits follow. */
  public boolean exists(Test test) {
    Boolean there = existing.get(test);
    if (there == null) {
      there = builds.stream().anyMatch(build -> judge.exists(test, build));
      existing.put(test, there);
    }
    return there;
  }

  private Truth work(Test test) {
    if (!judge.isReading(test.subject())) {
      return agreed(build -> Truth.of(build.satisfies(test)));
    }
    Value value = situation.readings().get(test.subject());
    if (value == null) {
      return Truth.UNKNOWN;
    }
    if (test.pattern() instanceof CannotBeTaken) {
      return Truth.of(value instanceof Value.NotTaken);
    }
    return value.match(
        word -> Truth.of(((OneOf) test.pattern()).values().contains(word.id())),
        number -> ofNumber(test, number.amount()),
        () -> Truth.UNKNOWN);
  }

  private Truth ofNumber(Test test, BigFraction amount) {
    if (test.pattern() instanceof InInterval within) {
      return Truth.of(within.interval().contains(amount));
    }
    AgainstLimits against = (AgainstLimits) test.pattern();
    return agreed(
        bands(test.subject()),
        band ->
            band.map(known -> Truth.of(against.sides().contains(known.side(amount))))
                .orElse(Truth.UNKNOWN));
  }

  private List<Optional<Band>> bands(String reading) {
    List<Optional<Band>> each = bands.get(reading);
    if (each == null) {
      each = new ArrayList<>();
      for (Build build : builds) {
        each.add(judge.band(reading, build, situation));
      }
      bands.put(reading, each);
    }
    return each;
  }

  private Truth agreed(Function<Build, Truth> truth) {
    return agreed(builds, truth);
  }

  private static <T> Truth agreed(List<T> all, Function<T, Truth> truth) {
    Truth first = truth.apply(all.get(0));
    for (int i = 1; i < all.size(); i++) {
      if (truth.apply(all.get(i)) != first) {
        return Truth.UNKNOWN;
      }
    }
    return first;
  }
}
