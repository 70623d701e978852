package io.faultwright.analysis.ambiguity;

import io.faultwright.ambiguity.Distinction.Single;
import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.model.FaultPair;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;

/** What each reading on its own says about which of two faults it is. */
final class SingleReadings {
  private final Space space;
  private final Diagrams diagrams;
  private final Takings takings;
  private final SortedSet<String> readings = new TreeSet<>();

  SingleReadings(Space space, Takings takings) {
    this.space = space;
    this.diagrams = space.diagrams();
    this.takings = takings;
    for (Axis axis : space.axes()) {
      if (axis.subject() instanceof Axis.OfReading of) {
        readings.add(of.reading());
      }
    }
  }

  /**
   * Those that settle it for some of their values at least.
   *
   * @param one the situations of the first fault, some at least
   * @param other those of the other, none of them among the first
   */
  List<Single> of(FaultPair pair, int one, int other) {
    return readings.stream()
        .map(reading -> single(reading, pair, one, other))
        .filter(single -> single.settles() > 0)
        .sorted(
            Comparator.comparing((Single single) -> single.taking().effort())
                .thenComparing(Single::reading))
        .toList();
  }

  private Single single(String reading, FaultPair pair, int one, int other) {
    SortedSet<String> taken = takings.whole(reading);
    BitSet known = takings.known(taken);
    int likeOne = diagrams.keep(one, known);
    int likeOther = diagrams.keep(other, known);
    BigFraction ofOne = share(diagrams.minus(one, likeOther), one);
    BigFraction ofOther = share(diagrams.minus(other, likeOne), other);
    BigFraction often = frequency(pair.one());
    BigFraction oftenOther = frequency(pair.other());
    BigFraction settled =
        ofOne.multiply(often).add(ofOther.multiply(oftenOther)).divide(often.add(oftenOther));
    return new Single(
        reading,
        takings.taking(taken),
        diagrams.and(likeOne, likeOther) == Diagrams.NONE,
        Ratios.rounded(settled.doubleValue()));
  }

  private BigFraction share(int part, int whole) {
    return BigFraction.of(space.distinguishable(part), space.distinguishable(whole));
  }

  private BigFraction frequency(String fault) {
    return space.knowledge().faults().get(fault).frequency();
  }
}
