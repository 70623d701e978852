package io.faultwright.analysis.space;

import io.faultwright.analysis.space.Parts.Part;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * What many sets leave of some situations, worked out part by part and set by set. Until it is
 * whole, what is known bounds it from below and from above.
 */
public final class Remainder implements Bounded {
  /** Looking at so many nodes takes about a second. */
  private static final long MANY = 40_000_000;

  private final Diagrams diagrams;
  private final BitSet[] everything;
  private final Parts split;
  private final List<Part> parts;
  private int left = Diagrams.NONE;
  private int part;
  private int inPart;
  private int subtracted;
  private double stays;
  private int noted;

  Remainder(Diagrams diagrams, Parts split) {
    this(diagrams, split, set -> true);
  }

  /**
   * @param taken which sets, by position, are taken away
   */
  Remainder(Diagrams diagrams, Parts split, IntPredicate taken) {
    this.diagrams = diagrams;
    this.everything = diagrams.everything();
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
      stays = 0;
      noted = 0;
    }
  }

  @Override
  public int whole() {
    while (part < parts.size()) {
      int[] here = parts.get(part).sets();
      while (subtracted < here.length) {
        inPart = diagrams.minus(inPart, split.set(here[subtracted]));
        subtracted++;
        noteBound();
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
  public double atLeast() {
    double surely = all(left).atLeast(everything);
    return part == parts.size() ? surely : surely + Math.max(stays, staying());
  }

  /** Remembers what surely stays, each time the work has doubled; later it takes too long. */
  private void noteBound() {
    if (diagrams.hurried() && inPart > 2 * noted) {
      stays = Math.max(stays, staying());
      noted = inPart;
    }
  }

  /** What surely stays of the part at hand: the sets to come take away at most what each meets. */
  private double staying() {
    int[] to = Arrays.stream(parts.get(part).sets()).skip(subtracted).toArray();
    Fractions open = all(inPart);
    if ((long) to.length * open.size() > MANY) {
      return 0;
    }
    double going = Arrays.stream(to).mapToDouble(set -> open.atMost(split.around(set))).sum();
    return open.atLeast(everything) - going;
  }

  @Override
  public double atMost() {
    double sum = all(left).atMost(everything);
    if (part < parts.size()) {
      sum += all(inPart).atMost(everything);
    }
    for (Part later : parts.subList(Math.min(part + 1, parts.size()), parts.size())) {
      sum += all(later.situations()).atMost(everything);
    }
    return Math.min(1, sum);
  }

  private Fractions all(int diagram) {
    return new Fractions(diagrams, diagram);
  }
}
