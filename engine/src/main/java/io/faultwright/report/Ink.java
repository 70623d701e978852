package io.faultwright.report;

import io.faultwright.finding.Severity;
import java.util.Locale;

/** Colour for a terminal, or none. */
public enum Ink {
  PLAIN,
  COLOURED;

  private static final String RED = "31";
  private static final String YELLOW = "33";
  private static final String BLUE = "34";
  private static final String GREEN = "32";
  private static final String BOLD = "1";

  public static Ink of(boolean coloured) {
    return coloured ? COLOURED : PLAIN;
  }

  String strong(String text) {
    return paint(BOLD, text);
  }

  String frame(String text) {
    return paint(BLUE, text);
  }

  String good(String text) {
    return paint(GREEN, text);
  }

  String bad(String text) {
    return paint(BOLD + ";" + RED, text);
  }

  String uneasy(String text) {
    return paint(BOLD + ";" + YELLOW, text);
  }

  String severity(Severity severity, String text) {
    return severity == Severity.ERROR ? bad(text) : uneasy(text);
  }

  static String word(Severity severity) {
    return severity.name().toLowerCase(Locale.ROOT);
  }

  private String paint(String code, String text) {
    return this == PLAIN || text.isEmpty() ? text : "\u001B[" + code + "m" + text + "\u001B[0m";
  }
}
