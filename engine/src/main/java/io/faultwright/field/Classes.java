package io.faultwright.field;

import io.faultwright.model.Condition.Pattern;
import io.faultwright.model.Value;
import java.util.stream.Stream;

/** The classes into which the values of one reading or equipment fact are counted. */
interface Classes {
  /** The class of a reading that cannot be taken. */
  int NOT_TAKEN = -1;

  /** The class of a value that its reading can have. */
  int of(Value value);

  /** Every way to split the classes in two that somebody would write as one condition. */
  Stream<Split> splits(Histogram wanted, Histogram others);

  /**
   * A condition, and how many rows of two samples meet it.
   *
   * @param pattern what the reading must be
   * @param wanted rows of the sample that is to be told apart
   * @param others rows of the other sample
   */
  record Split(Pattern pattern, long wanted, long others) {}
}
