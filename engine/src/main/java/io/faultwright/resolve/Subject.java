package io.faultwright.resolve;

import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.Sorted;
import io.faultwright.model.Version;
import java.util.List;
import java.util.SortedSet;
import java.util.function.Function;

/** What a line of a condition can be about. */
sealed interface Subject {
  /** Its id. */
  String id();

  /** Whether it is a reading, not a fact of the equipment. */
  boolean reading();

  /** What it is computed from; none where it is not. */
  default SortedSet<String> operands() {
    return Sorted.set(List.of());
  }

  /** Dispatches on the kind of subject. */
  <T> T match(
      Function<Named, T> named, Function<Software, T> software, Function<Quantity, T> quantity);

  /**
   * One of a few named values: a family, a model, an option, a choice.
   *
   * @param id its id
   * @param values ids of its values
   * @param reading whether it is a reading
   * @param complete whether no other value can exist
   */
  record Named(String id, List<String> values, boolean reading, boolean complete)
      implements Subject {
    @Override
    public <T> T match(
        Function<Named, T> named, Function<Software, T> software, Function<Quantity, T> quantity) {
      return named.apply(this);
    }
  }

  /**
   * The control software.
   *
   * @param published every published version, oldest first
   * @param complete whether no other version can be published
   */
  record Software(List<Version> published, boolean complete) implements Subject {
    @Override
    public String id() {
      return Equipment.SOFTWARE;
    }

    @Override
    public boolean reading() {
      return false;
    }

    @Override
    public <T> T match(
        Function<Named, T> named, Function<Software, T> software, Function<Quantity, T> quantity) {
      return software.apply(this);
    }
  }

  /**
   * A measured reading.
   *
   * @param id its id
   * @param domain its unit and range
   * @param limits whether a table of limits judges it, or might
   * @param operands what it is computed from; none where it is observed
   */
  record Quantity(String id, Domain.Measured domain, boolean limits, SortedSet<String> operands)
      implements Subject {
    public Quantity {
      operands = Sorted.set(operands);
    }

    @Override
    public boolean reading() {
      return true;
    }

    @Override
    public <T> T match(
        Function<Named, T> named, Function<Software, T> software, Function<Quantity, T> quantity) {
      return quantity.apply(this);
    }
  }
}
