package io.faultwright.wording;

import io.faultwright.model.Answer;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.Pattern;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Value;
import io.faultwright.quantity.Interval;
import io.faultwright.words.Words;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Values and patterns as text of the rule language: ids, exact numbers, nothing to translate. */
public final class RuleText {
  /** What a reading that cannot be taken is, and the pattern that asks for it. */
  public static final String CANNOT_BE_TAKEN = "cannot be taken";

  private final Subjects subjects;
  private final Versions versions;

  public RuleText(KnowledgeBase kb) {
    this.subjects = new Subjects(kb);
    this.versions = new Versions(kb.equipment().versions(), Words.ENGLISH);
  }

  /** What a case's {@code given} says about a reading, for instance {@code 12.5 bar(g)}. */
  public String value(String reading, Value value) {
    return value.match(
        Value.Word::id,
        number ->
            Amounts.AS_WRITTEN.amount(
                subjects.shown(reading, number.amount()), subjects.scale(reading)),
        () -> CANNOT_BE_TAKEN);
  }

  /** A pattern, for instance {@code not untouched}, {@code above limits}, {@code at least 2.10}. */
  public String pattern(String subject, Pattern pattern) {
    return pattern.match(
        oneOf -> oneOf(subject, oneOf.values()),
        within -> interval(subject, within.interval()),
        limits -> sides(limits.sides()),
        notTaken -> CANNOT_BE_TAKEN);
  }

  /** An answer as {@code expect} would say it: a fault's id, or {@code refer: symptom}. */
  public static String answer(Answer answer) {
    if (answer instanceof Answer.OfFault) {
      return answer.name();
    }
    return (answer instanceof Answer.OfReferral ? "refer: " : "escalate: ") + answer.name();
  }

  /** Some of the values of a choice or an equipment fact. */
  public String oneOf(String subject, Collection<String> values) {
    return subject.equals(Equipment.SOFTWARE)
        ? versions.stretch(values).orElseGet(() -> list(subject, values))
        : list(subject, values);
  }

  private String list(String subject, Collection<String> values) {
    Selection selection = Selection.of(values, subjects.values(subject));
    return switch (selection.kind()) {
      case EVERY -> "any";
      case ONLY -> flow(selection.values());
      case ALL_BUT -> allBut(selection.values(), values);
      case NONE -> flow(List.copyOf(new TreeSet<>(values)));
    };
  }

  /** {@code not} stands before one value; several are listed. */
  private static String allBut(List<String> left, Collection<String> values) {
    return left.size() == 1 ? "not " + left.get(0) : flow(List.copyOf(new TreeSet<>(values)));
  }

  private static String flow(List<String> values) {
    return values.size() == 1 ? values.get(0) : "[" + String.join(", ", values) + "]";
  }

  /**
   * A stretch of a quantity. An interval with one end in and one end out is said in two patterns,
   * which the text joins by {@code and}; {@link #patterns} has them apart.
   */
  public String interval(String reading, Interval interval) {
    return Amounts.AS_WRITTEN.interval(interval, subjects.scale(reading));
  }

  /** The one or two patterns that say an interval; none where it has no ends. */
  public List<String> patterns(String reading, Interval interval) {
    return Amounts.AS_WRITTEN.halves(interval, subjects.scale(reading)).toList();
  }

  static String sides(Set<Side> sides) {
    return sides(sides, Words.ENGLISH);
  }

  static String sides(Set<Side> sides, Words say) {
    return switch (sides.size()) {
      case 1 -> side(sides.iterator().next(), say);
      case 2 ->
          sides.contains(Side.WITHIN)
              ? say.say("not {0}", missing(sides, say))
              : say.say("outside limits");
      default -> say.say("any");
    };
  }

  private static String missing(Set<Side> sides, Words say) {
    return side(sides.contains(Side.BELOW) ? Side.ABOVE : Side.BELOW, say);
  }

  private static String side(Side side, Words say) {
    return switch (side) {
      case BELOW -> say.say("below limits");
      case WITHIN -> say.say("within limits");
      case ABOVE -> say.say("above limits");
    };
  }

  /** A pattern that asks for some sides of the limits. */
  public static String limits(AgainstLimits limits) {
    return sides(limits.sides());
  }
}
