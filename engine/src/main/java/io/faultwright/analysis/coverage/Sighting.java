package io.faultwright.analysis.coverage;

import io.faultwright.analysis.judge.Judge;
import io.faultwright.analysis.judge.Observed;
import io.faultwright.analysis.judge.Ruling;
import io.faultwright.model.Condition;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.model.Truth;

/**
 * A recorded situation, and what the rules say of it.
 *
 * @param symptom id of the symptom it was recorded in
 * @param observed the machine
 * @param ruling what the rules say
 */
public record Sighting(String symptom, Observed observed, Ruling ruling) {
  public static Sighting of(Judge judge, Symptom symptom, Situation situation) {
    Observed observed = judge.observe(symptom, situation);
    return new Sighting(symptom.id(), observed, judge.decide(symptom, observed));
  }

  /** Whether the rules were looked at. */
  public boolean worked() {
    return ruling.worked();
  }

  /** Whether a condition surely holds. */
  public boolean meets(Condition condition) {
    return observed.met(condition) == Truth.TRUE;
  }
}
