package io.faultwright.analysis.space;

import java.util.Optional;
import java.util.function.Supplier;

/** A value that is worked out when first asked for. */
final class Lazy<T> {
  private final Supplier<T> supplier;
  private Optional<T> value = Optional.empty();

  Lazy(Supplier<T> supplier) {
    this.supplier = supplier;
  }

  T get() {
    if (value.isEmpty()) {
      value = Optional.of(supplier.get());
    }
    return value.get();
  }

  /** The value, where it was asked for before. */
  Optional<T> ifKnown() {
    return value;
  }
}
