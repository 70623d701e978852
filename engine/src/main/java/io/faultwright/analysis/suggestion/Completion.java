package io.faultwright.analysis.suggestion;

import io.faultwright.analysis.coverage.Sighting;
import io.faultwright.analysis.judge.Judge;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * Adds to a situation what brings it to an answer, from what people recorded in a case of the same
 * symptom, and takes away what nothing needs. More readings never take back what was known, so a
 * situation keeps what it shows.
 */
final class Completion {
  private final Judge judge;
  private final Symptom symptom;
  private final List<Situation> recorded;

  /**
   * @param recorded the situations of cases of the symptom
   */
  Completion(Judge judge, Symptom symptom, Collection<Situation> recorded) {
    this.judge = judge;
    this.symptom = symptom;
    this.recorded = List.copyOf(recorded);
  }

  /**
   * The situation with what it needs for an answer, as it was where no case helps.
   *
   * @param keeps whether a situation still shows what it is for
   */
  Situation complete(Situation start, Predicate<Sighting> keeps) {
    Sighting alone = sighting(start);
    if (!alone.ruling().answers().isEmpty()) {
      return trimmed(start, keeps);
    }
    return recorded.stream()
        .map(other -> joined(start, other))
        .filter(joined -> isAnswered(joined, keeps))
        .map(joined -> trimmed(joined, keeps))
        .min(Comparator.comparingInt((Situation one) -> one.readings().size()))
        .orElseGet(() -> trimmed(start, keeps));
  }

  private boolean isAnswered(Situation situation, Predicate<Sighting> keeps) {
    Sighting one = sighting(situation);
    return one.worked() && !one.ruling().answers().isEmpty() && keeps.test(one);
  }

  private static Situation joined(Situation start, Situation other) {
    SortedMap<String, Value> readings = new TreeMap<>(other.readings());
    readings.putAll(start.readings());
    return new Situation(start.equipment(), readings);
  }

  /** Without the readings whose loss changes neither the answer nor what is shown. */
  Situation trimmed(Situation situation, Predicate<Sighting> keeps) {
    Situation kept = situation;
    for (String reading : situation.readings().keySet()) {
      SortedMap<String, Value> fewer = new TreeMap<>(kept.readings());
      fewer.remove(reading);
      Situation without = new Situation(kept.equipment(), fewer);
      if (isAsGood(without, kept, keeps)) {
        kept = without;
      }
    }
    return kept;
  }

  private boolean isAsGood(Situation one, Situation than, Predicate<Sighting> keeps) {
    Sighting fewer = sighting(one);
    Sighting more = sighting(than);
    return fewer.ruling().stage() == more.ruling().stage()
        && fewer.ruling().answers().equals(more.ruling().answers())
        && keeps.test(fewer);
  }

  Sighting sighting(Situation situation) {
    return Sighting.of(judge, symptom, situation);
  }
}
