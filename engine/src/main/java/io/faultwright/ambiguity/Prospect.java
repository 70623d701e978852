package io.faultwright.ambiguity;

import io.faultwright.model.Answer;
import io.faultwright.model.Situation;
import io.faultwright.model.Sorted;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/**
 * What a case leaves open, and what to read next.
 *
 * @param recorded id of the case
 * @param symptom id of the symptom
 * @param open what can still come out, the likeliest first; none where nothing can be as given
 * @param ruledOut ids of the faults of the symptom that cannot come out any more
 * @param steps what can be read next, the best first; none where nothing is open
 */
public record Prospect(
    String recorded,
    String symptom,
    List<Open> open,
    SortedSet<String> ruledOut,
    List<Step> steps) {
  public Prospect {
    open = List.copyOf(open);
    ruledOut = Sorted.set(ruledOut);
    steps = List.copyOf(steps);
  }

  /**
   * Something that can still come out.
   *
   * @param answers what is told then; none where no rule answers
   * @param likelihood how likely it is, of all that is open
   * @param example a complete situation that agrees with the case and comes out so
   */
  public record Open(SortedSet<Answer> answers, double likelihood, Situation example) {
    public Open {
      answers = Sorted.set(answers);
    }
  }

  /**
   * Something to read next.
   *
   * @param reading what it is read for: id of a reading, or of an equipment fact
   * @param taking all that has to be taken for it
   * @param bits what it tells about the outcome on average
   * @param decides how likely it is that one outcome is left after it
   * @param expected what it takes on average until one outcome is left, this step included; absent
   *     where that was too much to work out
   */
  public record Step(
      String reading, Taking taking, double bits, double decides, Optional<Expected> expected) {}

  /**
   * What remains to be done, on average.
   *
   * @param minutes how long it takes
   * @param weighted the same with every minute counted as often as its access weighs
   */
  public record Expected(double minutes, double weighted) {
    /** Nothing remains. */
    public static final Expected NOTHING = new Expected(0, 0);

    /** This with a part of something else. */
    public Expected plus(Expected other, double part) {
      return new Expected(minutes + other.minutes * part, weighted + other.weighted * part);
    }
  }
}
