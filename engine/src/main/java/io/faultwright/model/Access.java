package io.faultwright.model;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What has to be opened or touched, from the easiest to the gravest. */
public enum Access {
  OUTSIDE,
  PANEL,
  LIVE_VOLTAGE,
  REFRIGERANT_CIRCUIT;

  /** The word used in YAML, for instance {@code live-voltage}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whether work of this kind can injure and needs its caution first. */
  public boolean hazardous() {
    return this == LIVE_VOLTAGE || this == REFRIGERANT_CIRCUIT;
  }

  public static Optional<Access> of(String word) {
    return Arrays.stream(values()).filter(access -> access.word().equals(word)).findFirst();
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(Access::word).toList();
  }
}
