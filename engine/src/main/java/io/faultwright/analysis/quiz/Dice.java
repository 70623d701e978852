package io.faultwright.analysis.quiz;

import io.faultwright.release.Hash;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Choices that look random and follow from a text: the same text, the same choices. */
final class Dice {
  private final Random random;

  private Dice(long seed) {
    this.random = new Random(seed);
  }

  /** The dice of some words. */
  static Dice of(Object... words) {
    StringBuilder text = new StringBuilder();
    for (Object word : words) {
      text.append(word).append('\n');
    }
    return new Dice(Long.parseUnsignedLong(Hash.of(text.toString()).substring(0, 16), 16));
  }

  /** A number from 0 to below the bound. */
  int below(int bound) {
    return random.nextInt(bound);
  }

  /** A number from 0 to below the bound. */
  long below(long bound) {
    return bound <= Integer.MAX_VALUE
        ? random.nextInt((int) bound)
        : Math.floorMod(random.nextLong(), bound);
  }

  /** Whether something happens that happens so often out of a hundred. */
  boolean in100(int often) {
    return random.nextInt(100) < often;
  }

  <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  /** The same in another order. */
  <T> List<T> shuffled(List<T> some) {
    List<T> shuffled = new ArrayList<>(some);
    for (int last = shuffled.size() - 1; last > 0; last--) {
      int other = random.nextInt(last + 1);
      T moved = shuffled.get(last);
      shuffled.set(last, shuffled.get(other));
      shuffled.set(other, moved);
    }
    return shuffled;
  }
}
