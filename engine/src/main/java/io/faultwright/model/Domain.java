package io.faultwright.model;

import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Unit;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** The values a reading can have. */
public sealed interface Domain {
  /** The result of the function for this kind of domain. */
  <T> T match(Function<Measured, T> measured, Function<Choice, T> choice);

  /**
   * A measured quantity.
   *
   * @param unit of every value, threshold and limit
   * @param range possible values, both ends included
   * @param resolution smallest step shown, for display and for choosing witnesses
   */
  record Measured(Unit unit, Interval range, Optional<BigFraction> resolution) implements Domain {
    @Override
    public <T> T match(Function<Measured, T> measured, Function<Choice, T> choice) {
      return measured.apply(this);
    }
  }

  /**
   * Exactly one of a few named values.
   *
   * @param values in the written order
   * @param yesNo whether it is a yes/no reading, with the values {@code yes} and {@code no}
   */
  record Choice(List<NamedValue> values, boolean yesNo) implements Domain {
    public Choice {
      values = List.copyOf(values);
    }

    @Override
    public <T> T match(Function<Measured, T> measured, Function<Choice, T> choice) {
      return choice.apply(this);
    }

    /** Ids of the values, in the written order. */
    public List<String> ids() {
      return values.stream().map(NamedValue::id).toList();
    }
  }
}
