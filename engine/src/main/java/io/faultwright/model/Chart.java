package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.function.Function;

/**
 * The order in which a trainer wants a symptom to be worked, step by step. What it says at its ends
 * is checked against the rules.
 *
 * @param id identifier
 * @param place where it stands
 * @param title as printed
 * @param symptom id of the symptom it works
 * @param applies the equipment it is for, of that to which the symptom applies
 * @param start id of the step to begin with
 * @param steps by id
 */
public record Chart(
    String id,
    Place place,
    String title,
    String symptom,
    Condition applies,
    String start,
    SortedMap<String, Step> steps) {
  public Chart {
    steps = Sorted.copy(steps);
  }

  /** The same chart with other steps. */
  public Chart with(SortedMap<String, Step> others) {
    return new Chart(id, place, title, symptom, applies, start, others);
  }

  /**
   * One check.
   *
   * @param id identifier within the chart
   * @param place where it stands
   * @param check id of the reading, or the equipment fact, that is looked at
   * @param branches its answers, in the written order
   */
  public record Step(String id, Place place, String check, List<Branch> branches) {
    public Step {
      branches = List.copyOf(branches);
    }
  }

  /**
   * One answer to a check, and where it leads.
   *
   * @param place where it stands
   * @param when the values that take this way, a condition on what is checked
   * @param target where it leads
   */
  public record Branch(Place place, Condition when, Target target) {}

  /** Where an answer leads. */
  public sealed interface Target {
    /** Dispatches on the kind of target. */
    <T> T match(Function<Next, T> next, Function<End, T> end);

    /** The id of the step it leads to; empty where the chart ends. */
    default Optional<String> next() {
      return match(next -> Optional.of(next.step()), end -> Optional.empty());
    }
  }

  /** On to another step. */
  public record Next(String step) implements Target {
    @Override
    public <T> T match(Function<Next, T> next, Function<End, T> end) {
      return next.apply(this);
    }
  }

  /** The chart ends, with what the technician is told; at least one answer. */
  public record End(SortedSet<Answer> answers) implements Target {
    public End {
      answers = Sorted.set(answers);
    }

    @Override
    public <T> T match(Function<Next, T> next, Function<End, T> end) {
      return end.apply(this);
    }
  }
}
