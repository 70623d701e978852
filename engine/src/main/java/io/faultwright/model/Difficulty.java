package io.faultwright.model;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How hard an item of a quiz is. */
public enum Difficulty {
  EASY,
  MEDIUM,
  HARD;

  /** As it is written. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(Difficulty::word).toList();
  }

  public static Optional<Difficulty> of(String word) {
    return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
  }
}
