package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.SortedSet;

/**
 * One diagnosis.
 *
 * @param id identifier, unique in its symptom
 * @param place where it stands
 * @param when its conditions
 * @param conclusion what follows
 * @param because why, in a sentence
 * @param insteadOf ids of rules of the symptom that are silent where this one fires
 */
public record Rule(
    String id,
    Place place,
    Condition when,
    Conclusion conclusion,
    String because,
    SortedSet<String> insteadOf) {
  public Rule {
    insteadOf = Sorted.set(insteadOf);
  }

  /** The same rule with other conditions. */
  public Rule withWhen(Condition other) {
    return new Rule(id, place, other, conclusion, because, insteadOf);
  }

  /** The same rule with another conclusion. */
  public Rule withConclusion(Conclusion other) {
    return new Rule(id, place, when, other, because, insteadOf);
  }
}
