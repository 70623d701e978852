package io.faultwright.model;

import java.util.function.Function;
import java.util.function.Supplier;
import org.apache.commons.numbers.fraction.BigFraction;

/** What was observed for one reading. */
public sealed interface Value {
  /** Dispatches on the kind of value. */
  <T> T match(Function<Word, T> word, Function<Number, T> number, Supplier<T> notTaken);

  /** A choice, {@code yes} and {@code no} included. */
  record Word(String id) implements Value {
    @Override
    public <T> T match(Function<Word, T> word, Function<Number, T> number, Supplier<T> notTaken) {
      return word.apply(this);
    }
  }

  /** A quantity in its reading's unit. */
  record Number(BigFraction amount) implements Value {
    @Override
    public <T> T match(Function<Word, T> word, Function<Number, T> number, Supplier<T> notTaken) {
      return number.apply(this);
    }
  }

  /** The reading is known to be impossible to take. */
  record NotTaken() implements Value {
    @Override
    public <T> T match(Function<Word, T> word, Function<Number, T> number, Supplier<T> notTaken) {
      return notTaken.get();
    }
  }
}
