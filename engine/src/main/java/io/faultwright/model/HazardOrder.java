package io.faultwright.model;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Where the checks on live voltage and in the refrigerant circuit stand among the others. */
public enum HazardOrder {
  /** After the checks that need neither. */
  LAST,
  /** Wherever they cost least. */
  ANYWHERE;

  /** The word used in YAML. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<HazardOrder> of(String word) {
    return Arrays.stream(values()).filter(order -> order.word().equals(word)).findFirst();
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(HazardOrder::word).toList();
  }
}
