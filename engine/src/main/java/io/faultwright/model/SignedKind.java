package io.faultwright.model;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The kinds of thing that a person can sign. */
public enum SignedKind {
  SYMPTOM,
  RULE,
  LIMITS,
  CHART,
  GUIDE,
  SEQUENCE;

  /** The name in files and on the screen. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<SignedKind> of(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(SignedKind::word).toList();
  }
}
