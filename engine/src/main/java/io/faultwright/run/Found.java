package io.faultwright.run;

import io.faultwright.model.Band;
import io.faultwright.model.Sorted;
import io.faultwright.model.Value;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.function.Function;
import java.util.function.Supplier;

/** What a situation says about the subject of a test. */
public sealed interface Found {
  /** Dispatches on what there is to say. */
  <T> T match(
      Function<OfReading, T> reading, Function<OfEquipment, T> equipment, Supplier<T> lacking);

  /**
   * A reading.
   *
   * @param value what was observed; absent: not known yet
   * @param operands values of what it is computed from, as far as they are known
   * @param bands what is within limits, where the test is against limits: one where the build is
   *     known, none where the limits are not known
   */
  record OfReading(Optional<Value> value, SortedMap<String, Value> operands, List<Band> bands)
      implements Found {
    public OfReading {
      operands = Sorted.copy(operands);
      bands = List.copyOf(bands);
    }

    @Override
    public <T> T match(
        Function<OfReading, T> reading, Function<OfEquipment, T> equipment, Supplier<T> lacking) {
      return reading.apply(this);
    }
  }

  /**
   * A fact of the equipment.
   *
   * @param values of the builds that the machine can be; one where it is known
   */
  record OfEquipment(SortedSet<String> values) implements Found {
    public OfEquipment {
      values = Sorted.set(values);
    }

    @Override
    public <T> T match(
        Function<OfReading, T> reading, Function<OfEquipment, T> equipment, Supplier<T> lacking) {
      return equipment.apply(this);
    }
  }

  /** The machine does not have the reading, or not the one that its limits follow. */
  record Lacking() implements Found {
    @Override
    public <T> T match(
        Function<OfReading, T> reading, Function<OfEquipment, T> equipment, Supplier<T> lacking) {
      return lacking.get();
    }
  }
}
