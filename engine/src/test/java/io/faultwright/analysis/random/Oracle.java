package io.faultwright.analysis.random;

import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.FaultPair;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Between;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.model.Never;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a symptom says about one point, by the plainest code: no diagrams, no Drools, whole numbers
 * in units of 1/{@link #SCALE}.
 */
final class Oracle {
  static final long SCALE = 12 * 6 * 2;

  private static final SortedSet<String> NO_RULES =
      Collections.unmodifiableSortedSet(new TreeSet<>());
  private static final Fate IMPOSSIBLE = new Fate(false, false, false, NO_RULES);

  private static final int TRUE = 1;
  private static final int UNKNOWN = 0;
  private static final int FALSE = -1;

  private final KnowledgeBase knowledge;
  private final Symptom symptom;
  private final Set<String> readings;
  private final Map<String, SortedSet<Answer>> answers = new HashMap<>();
  private final Map<String, Set<String>> clashing = new HashMap<>();
  private final Map<Interval, long[]> scaledEnds = new IdentityHashMap<>();
  private final Map<String, Map<Build, Map<Object, Optional<long[]>>>> bands = new HashMap<>();

  Oracle(KnowledgeBase knowledge, Symptom symptom) {
    this.knowledge = knowledge;
    this.symptom = symptom;
    this.readings = new HashSet<>(knowledge.readings().keySet());
    Collection<Rule> rules = symptom.rules().values();
    rules.forEach(rule -> answers.put(rule.id(), rule.conclusion().answers()));
    rules.forEach(rule -> clashing.put(rule.id(), clashing(rule.conclusion())));
  }

  /** The rules whose conclusions one excludes, or that exclude it. */
  private Set<String> clashing(Conclusion one) {
    Set<String> clashing = new HashSet<>();
    for (Rule rule : symptom.rules().values()) {
      Conclusion other = rule.conclusion();
      if (clash(one, other) || clash(other, one)) {
        clashing.add(rule.id());
      }
    }
    return clashing;
  }

  /**
   * What becomes of a point.
   *
   * @param possible whether it can happen in the symptom; nothing else is said where it cannot
   * @param worked whether everything that must be right first is right
   * @param referred whether it is sent elsewhere first
   * @param fired the rules that fire, if it is worked
   */
  record Fate(boolean possible, boolean worked, boolean referred, SortedSet<String> fired) {}

  Fate fate(Point point) {
    if (!possible(point)) {
      return IMPOSSIBLE;
    }
    for (Symptom.First first : symptom.first()) {
      if (truth(first.when(), point) != TRUE) {
        boolean referred = !may(first.when(), true, point);
        return new Fate(true, false, referred, NO_RULES);
      }
    }
    return new Fate(true, true, false, fired(point));
  }

  private boolean possible(Point point) {
    return truth(symptom.applies(), point) == TRUE
        && truth(symptom.recognise(), point) == TRUE
        && never(knowledge.nevers().values(), point)
        && never(symptom.nevers().values(), point);
  }

  private boolean never(Collection<Never> nevers, Point point) {
    for (Never never : nevers) {
      if (truth(never.when(), point) == TRUE) {
        return false;
      }
    }
    return true;
  }

  private SortedSet<String> fired(Point point) {
    SortedSet<String> fired = new TreeSet<>();
    for (Rule rule : symptom.rules().values()) {
      if (truth(rule.when(), point) == TRUE) {
        fired.add(rule.id());
      }
    }
    for (Rule rule : symptom.rules().values()) {
      if (!rule.insteadOf().isEmpty() && may(rule.when(), true, point)) {
        fired.removeAll(rule.insteadOf());
      }
    }
    return fired;
  }

  /** Whether a condition surely holds. */
  boolean holds(Condition condition, Point point) {
    return truth(condition, point) == TRUE;
  }

  /** Where a point is sent that must not be worked yet. */
  SortedSet<Answer> referral(Point point) {
    SortedSet<Answer> sent = new TreeSet<>();
    symptom.first().stream()
        .filter(first -> truth(first.when(), point) != TRUE)
        .findFirst()
        .ifPresent(first -> sent.add(new Answer.OfReferral(first.otherwise())));
    return sent;
  }

  /** Whether a point gets no answer and no referral. */
  boolean isUnanswered(Fate fate) {
    return !fate.referred() && fate.fired().stream().allMatch(rule -> answers.get(rule).isEmpty());
  }

  SortedSet<Answer> answers(Fate fate) {
    SortedSet<Answer> found = new TreeSet<>();
    fate.fired().forEach(rule -> found.addAll(answers.get(rule)));
    return found;
  }

  /** Pairs of fired rules whose conclusions exclude each other, as "a b". */
  SortedSet<String> clashes(Fate fate) {
    SortedSet<String> clashes = new TreeSet<>();
    List<String> fired = new ArrayList<>(fate.fired());
    for (int i = 0; i < fired.size(); i++) {
      for (int j = i + 1; j < fired.size(); j++) {
        if (clashing.get(fired.get(i)).contains(fired.get(j))) {
          clashes.add(fired.get(i) + " " + fired.get(j));
        }
      }
    }
    return clashes;
  }

  private boolean clash(Conclusion one, Conclusion other) {
    for (Answer answer : one.answers()) {
      if (other instanceof Conclusion.Exclude exclude
          && answer instanceof Answer.OfFault
          && exclude.faults().contains(answer.name())) {
        return true;
      }
      for (Answer second : other.answers()) {
        boolean allowed =
            answer instanceof Answer.OfFault
                && second instanceof Answer.OfFault
                && symptom.together().contains(FaultPair.of(answer.name(), second.name()));
        if (!answer.equals(second) && !allowed) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether a condition is, or may be, true or false. */
  private boolean may(Condition condition, boolean wanted, Point point) {
    return condition.match(
        all -> may(all.parts(), wanted, wanted, point),
        any -> may(any.parts(), !wanted, wanted, point),
        not -> may(not.part(), !wanted, point),
        test -> exists(test, point) && truth(test, point) != (wanted ? FALSE : TRUE));
  }

  private boolean may(List<Condition> parts, boolean everyone, boolean wanted, Point point) {
    for (Condition part : parts) {
      if (may(part, wanted, point) != everyone) {
        return !everyone;
      }
    }
    return everyone;
  }

  /** Whether the equipment has the reading that is tested, and the one its limits follow. */
  private boolean exists(Condition.Test test, Point point) {
    boolean judged = test.pattern() instanceof AgainstLimits;
    return !readings.contains(test.subject())
        || point.values().containsKey(test.subject())
            && (!judged || !follows(test.subject()) || point.values().containsKey("driver"));
  }

  private int truth(Condition condition, Point point) {
    return condition.match(
        all -> lowest(all.parts(), point),
        any -> -lowestOpposite(any.parts(), point),
        not -> -truth(not.part(), point),
        test -> truth(test, point));
  }

  private int lowest(List<Condition> parts, Point point) {
    int lowest = TRUE;
    for (int i = 0; i < parts.size() && lowest != FALSE; i++) {
      lowest = Math.min(lowest, truth(parts.get(i), point));
    }
    return lowest;
  }

  private int lowestOpposite(List<Condition> parts, Point point) {
    int lowest = TRUE;
    for (int i = 0; i < parts.size() && lowest != FALSE; i++) {
      lowest = Math.min(lowest, -truth(parts.get(i), point));
    }
    return lowest;
  }

  private int truth(Condition.Test test, Point point) {
    if (!readings.contains(test.subject())) {
      return of(
          point
              .build()
              .attribute(test.subject())
              .filter(((OneOf) test.pattern()).values()::contains)
              .isPresent());
    }
    Object value = point.values().get(test.subject());
    if (value == null) {
      return UNKNOWN;
    }
    if (test.pattern() instanceof Condition.CannotBeTaken) {
      return of(value == Point.REFUSED);
    }
    return value == Point.REFUSED ? UNKNOWN : onValue(test, value, point);
  }

  private int onValue(Condition.Test test, Object value, Point point) {
    if (test.pattern() instanceof OneOf oneOf) {
      return of(oneOf.values().contains((String) value));
    }
    if (test.pattern() instanceof InInterval in) {
      return of(inside(in.interval(), (Long) value));
    }
    return side(test.subject(), point)
        .map(side -> of(((AgainstLimits) test.pattern()).sides().contains(side)))
        .orElse(UNKNOWN);
  }

  private static int of(boolean truth) {
    return truth ? TRUE : FALSE;
  }

  private boolean inside(Interval interval, long value) {
    long[] ends = scaledEnds.computeIfAbsent(interval, Oracle::ends);
    return ends[0] <= value && value <= ends[1];
  }

  /** Lowest and highest whole number of units inside; open ends one unit further in. */
  private static long[] ends(Interval interval) {
    return new long[] {
      interval
          .low()
          .map(end -> scaled(end.value()) + (end.included() ? 0 : 1))
          .orElse(Long.MIN_VALUE),
      interval
          .high()
          .map(end -> scaled(end.value()) - (end.included() ? 0 : 1))
          .orElse(Long.MAX_VALUE)
    };
  }

  static long scaled(BigFraction whole) {
    return whole.longValue() * SCALE;
  }

  /** Where a taken quantity lies against its limits; empty where no figure is known. */
  Optional<Side> side(String reading, Point point) {
    Object value = point.values().get(reading);
    if (!(value instanceof Long amount)) {
      return Optional.empty();
    }
    return band(reading, point.build(), point.values().get("driver"))
        .map(band -> amount < band[0] ? Side.BELOW : amount > band[1] ? Side.ABOVE : Side.WITHIN);
  }

  /** Whether a reading's limits follow the driver. */
  boolean follows(String reading) {
    return !knowledge.limits().get(reading).drivers().isEmpty();
  }

  /** Low and high, scaled; open ends far away. */
  Optional<long[]> band(String reading, Build build, Object driver) {
    return bands
        .computeIfAbsent(reading, key -> new IdentityHashMap<>())
        .computeIfAbsent(build, key -> new HashMap<>())
        .computeIfAbsent(Optional.ofNullable(driver), key -> lookedUp(reading, build, driver));
  }

  private Optional<long[]> lookedUp(String reading, Build build, Object driver) {
    LimitsTable table = knowledge.limits().get(reading);
    List<Row> rows =
        table.rows().stream()
            .filter(row -> truth(row.builds(), new Point(build, Map.of())) == TRUE)
            .sorted(Comparator.comparing(row -> start(row)))
            .toList();
    if (table.drivers().isEmpty()) {
      return rows.stream().findFirst().map(row -> new long[] {low(row), high(row)});
    }
    if (!(driver instanceof Long at)) {
      return Optional.empty();
    }
    return table.between().equals(Optional.of(Between.STEP))
        ? stepped(rows, at)
        : interpolated(rows, at);
  }

  private static Optional<long[]> stepped(List<Row> rows, long at) {
    Optional<long[]> found = Optional.empty();
    for (Row row : rows) {
      long end = scaled(row.at().get(0).high().orElseThrow().value());
      if (start(row) <= at && at <= end) {
        found = Optional.of(new long[] {low(row), high(row)});
      }
    }
    return found;
  }

  private static Optional<long[]> interpolated(List<Row> rows, long at) {
    for (int i = 0; i + 1 < rows.size(); i++) {
      long x0 = start(rows.get(i));
      long x1 = start(rows.get(i + 1));
      if (x0 <= at && at <= x1) {
        return Optional.of(
            new long[] {
              line(low(rows.get(i)), low(rows.get(i + 1)), at - x0, x1 - x0),
              line(high(rows.get(i)), high(rows.get(i + 1)), at - x0, x1 - x0)
            });
      }
    }
    return Optional.empty();
  }

  private static long line(long from, long to, long part, long whole) {
    return from + (to - from) * part / whole;
  }

  private static long start(Row row) {
    return row.at().stream()
        .findFirst()
        .flatMap(Interval::low)
        .map(end -> scaled(end.value()))
        .orElse(0L);
  }

  private static long low(Row row) {
    return row.low().map(Oracle::scaled).orElse(-1000 * SCALE);
  }

  private static long high(Row row) {
    return row.high().map(Oracle::scaled).orElse(1000 * SCALE);
  }
}
