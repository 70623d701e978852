package io.faultwright.run;

import io.faultwright.model.Sorted;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;

/** What became of a rule, and why. */
public sealed interface RuleTrace {
  /** Dispatches on what became of the rule. */
  <T> T match(
      Function<Fired, T> fired,
      Function<Silenced, T> silenced,
      Function<CouldFire, T> couldFire,
      Function<CannotFire, T> cannotFire);

  /**
   * It fires.
   *
   * @param because the tests that hold
   */
  record Fired(List<TestTrace> because) implements RuleTrace {
    public Fired {
      because = List.copyOf(because);
    }

    @Override
    public <T> T match(
        Function<Fired, T> fired,
        Function<Silenced, T> silenced,
        Function<CouldFire, T> couldFire,
        Function<CannotFire, T> cannotFire) {
      return fired.apply(this);
    }
  }

  /**
   * It is silent, because a rule that stands instead of it fires.
   *
   * @param by those rules
   */
  record Silenced(SortedSet<String> by) implements RuleTrace {
    public Silenced {
      by = Sorted.set(by);
    }

    @Override
    public <T> T match(
        Function<Fired, T> fired,
        Function<Silenced, T> silenced,
        Function<CouldFire, T> couldFire,
        Function<CannotFire, T> cannotFire) {
      return silenced.apply(this);
    }
  }

  /**
   * It may fire once more is known.
   *
   * @param open the tests that are not decided, its own or those of the rules it waits for
   * @param waitingFor rules that would silence it and could still hold
   */
  record CouldFire(List<TestTrace> open, SortedSet<String> waitingFor) implements RuleTrace {
    public CouldFire {
      open = List.copyOf(open);
      waitingFor = Sorted.set(waitingFor);
    }

    /** Readings and equipment facts that would have to be known. */
    public SortedSet<String> missing() {
      TreeSet<String> all = new TreeSet<>();
      open.forEach(test -> all.addAll(test.missing()));
      return Sorted.set(all);
    }

    @Override
    public <T> T match(
        Function<Fired, T> fired,
        Function<Silenced, T> silenced,
        Function<CouldFire, T> couldFire,
        Function<CannotFire, T> cannotFire) {
      return couldFire.apply(this);
    }
  }

  /**
   * It will not fire, whatever else becomes known.
   *
   * @param failed the tests that rule it out
   */
  record CannotFire(List<TestTrace> failed) implements RuleTrace {
    public CannotFire {
      failed = List.copyOf(failed);
    }

    @Override
    public <T> T match(
        Function<Fired, T> fired,
        Function<Silenced, T> silenced,
        Function<CouldFire, T> couldFire,
        Function<CannotFire, T> cannotFire) {
      return cannotFire.apply(this);
    }
  }
}
