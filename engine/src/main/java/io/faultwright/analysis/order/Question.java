package io.faultwright.analysis.order;

import io.faultwright.model.Access;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Something that can be asked about a situation.
 *
 * @param subject id of a reading, or of an equipment fact
 * @param limits whether a reading is held against its limits
 * @param takingOnly whether nothing is asked about a reading but whether it can be taken
 * @param axis which axis of the space it asks about
 * @param options the classes it tells apart, as cells of that axis, in the order of the answers
 * @param access what has to be opened or touched
 * @param minutes how long it takes
 */
public record Question(
    String subject,
    boolean limits,
    boolean takingOnly,
    int axis,
    List<BitSet> options,
    Access access,
    BigFraction minutes) {
  /** Quicker first, then by name. */
  static final Comparator<Question> QUICKEST =
      Comparator.comparing(Question::minutes)
          .thenComparing(Question::subject)
          .thenComparing(Question::limits);

  public Question {
    options = List.copyOf(options);
  }

  /** The cells of some options together. */
  public BitSet cells(BitSet chosen) {
    BitSet cells = new BitSet();
    chosen.stream().forEach(option -> cells.or(options.get(option)));
    return cells;
  }
}
