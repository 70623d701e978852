package io.faultwright.analysis.space;

import io.faultwright.analysis.space.Parts.Part;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * What many sets leave of some situations, worked out part by part and set by set. Until it is
 * whole, what is known bounds it from below and from above.
 */
public final class Remainder implements Bounded {
  private final Diagrams diagrams;
  private final Parts split;
  private final List<Part> parts;
  private int left = Diagrams.NONE;
  private int part;
  private int inPart;
  private int subtracted;

  Remainder(Diagrams diagrams, Parts split) {
    this(diagrams, split, set -> true);
  }

  /**
   * @param taken which sets, by position, are taken away
   */
  Remainder(Diagrams diagrams, Parts split, IntPredicate taken) {
    this.diagrams = diagrams;
    this.split = split;
    this.parts =
        split.all().stream()
            .map(
                all ->
                    new Part(all.situations(), Arrays.stream(all.sets()).filter(taken).toArray()))
            .toList();
    begin();
  }

  private void begin() {
    if (part < parts.size()) {
      inPart = parts.get(part).situations();
      subtracted = 0;
    }
  }

  @Override
  public int whole() {
    while (part < parts.size()) {
      int[] here = parts.get(part).sets();
      while (subtracted < here.length) {
        inPart = diagrams.minus(inPart, split.set(here[subtracted]));
        subtracted++;
      }
      left = diagrams.or(left, inPart);
      part++;
      begin();
    }
    return left;
  }

  @Override
  public int known() {
    return left;
  }

  @Override
  public BigInteger atLeast() {
    return part == parts.size()
        ? diagrams.count(left)
        : diagrams.count(left).add(diagrams.count(inPart).subtract(mayGo()).max(BigInteger.ZERO));
  }

  /** At most so many that the sets not yet subtracted may still take away from the part at hand. */
  private BigInteger mayGo() {
    int[] here = parts.get(part).sets();
    return Arrays.stream(here, subtracted, here.length)
        .mapToObj(set -> diagrams.countWithin(inPart, split.around(set)))
        .reduce(BigInteger.ZERO, BigInteger::add);
  }

  @Override
  public BigInteger atMost() {
    BigInteger open =
        part == parts.size()
            ? BigInteger.ZERO
            : IntStream.range(part + 1, parts.size())
                .mapToObj(later -> diagrams.count(parts.get(later).situations()))
                .reduce(diagrams.count(inPart), BigInteger::add);
    return diagrams.count(left).add(open);
  }
}
