package io.faultwright.analysis.judge;

import io.faultwright.model.Answer;
import io.faultwright.model.Sorted;
import java.util.List;
import java.util.SortedSet;

/**
 * What a symptom's rules say of a situation.
 *
 * @param stage how far it got
 * @param answers what is concluded; none while nothing is
 * @param fired ids of the rules that fire
 */
public record Ruling(Stage stage, SortedSet<Answer> answers, SortedSet<String> fired) {
  /** How far a situation gets. */
  public enum Stage {
    /** No published equipment, not offered for it, or a value out of range. */
    NO_SUCH_MACHINE,
    /** A `never` says that it cannot be. */
    CANNOT_HAPPEN,
    /** What defines the complaint says otherwise. */
    NOT_THIS_SYMPTOM,
    /** What must be right first is not known. */
    ASK_FIRST,
    /** What must be right first is not. */
    SENT_ELSEWHERE,
    /** The rules were looked at. */
    WORKED
  }

  public Ruling {
    answers = Sorted.set(answers);
    fired = Sorted.set(fired);
  }

  static Ruling silent(Stage stage) {
    return new Ruling(stage, Sorted.set(List.<Answer>of()), Sorted.set(List.<String>of()));
  }

  static Ruling referred(String symptom) {
    return new Ruling(
        Stage.SENT_ELSEWHERE,
        Sorted.set(List.<Answer>of(new Answer.OfReferral(symptom))),
        Sorted.set(List.<String>of()));
  }

  /** Whether the rules were looked at. */
  public boolean worked() {
    return stage == Stage.WORKED;
  }

  /** Whether the situation can be met with this complaint. */
  public boolean canBe() {
    return stage.compareTo(Stage.NOT_THIS_SYMPTOM) > 0;
  }
}
