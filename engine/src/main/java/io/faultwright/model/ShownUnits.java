package io.faultwright.model;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The units in which a handbook shows its quantities. */
public enum ShownUnits {
  SI,
  US,
  /** As written, with the other system in brackets. */
  BOTH;

  /** The word used in YAML. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<ShownUnits> of(String word) {
    return Arrays.stream(values()).filter(units -> units.word().equals(word)).findFirst();
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(ShownUnits::word).toList();
  }
}
