package io.faultwright.run;

import io.faultwright.model.Situation;
import io.faultwright.model.Sorted;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** That another outcome is within what the instruments can tell. */
public sealed interface Borderline {
  /** So many combinations that it was not worked out. */
  record NotComputed() implements Borderline {}

  /**
   * It is.
   *
   * @param near the readings that lie too near to something
   * @param others what else the rules would say, each with a situation in which they do
   * @param next a reading not taken yet that tells the outcomes apart, for some of its values at
   *     least
   * @param decides whether it does so for all of its values
   */
  record Found(List<Near> near, List<Other> others, Optional<String> next, boolean decides)
      implements Borderline {
    public Found {
      near = List.copyOf(near);
      others = List.copyOf(others);
    }
  }

  /**
   * Another outcome.
   *
   * @param verdict what the rules say
   * @param example a situation within the tolerances in which they say so
   */
  record Other(Verdict verdict, Situation example) {}

  /**
   * A reading near to something that decides.
   *
   * @param reading id
   * @param end what it is near to
   * @param at where that lies, in the reading's unit
   * @param distance how far away, in the reading's unit
   * @param tolerance how far off the reading may be; zero where it counts as exact
   * @param followed readings that move the limit, with how far off they may be
   */
  record Near(
      String reading,
      End end,
      BigFraction at,
      BigFraction distance,
      BigFraction tolerance,
      SortedMap<String, BigFraction> followed) {
    public Near {
      followed = Sorted.copy(followed);
    }
  }

  /** What a reading can be near to. */
  enum End {
    THRESHOLD,
    LOWER_LIMIT,
    UPPER_LIMIT,
    /** The table of limits begins or ends near by. */
    NO_LIMITS
  }
}
