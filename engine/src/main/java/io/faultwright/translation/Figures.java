package io.faultwright.translation;

import io.faultwright.quantity.Units;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tells texts that are the same in every language from those that have words. */
final class Figures {
  private static final Pattern AMOUNT = Pattern.compile("[+−-]?\\d+(?:\\.\\d+)?\\s*(\\D*)");
  private static final Pattern WORD = Pattern.compile("\\p{IsLatin}{3}|[\\p{L}&&[^\\p{IsLatin}]]");

  private Figures() {}

  static boolean hasLetters(String text) {
    return text.codePoints().anyMatch(Character::isLetter);
  }

  /** Whether a text is an amount with its unit, or has nothing longer than an abbreviation. */
  static boolean isFigure(String text) {
    return isAmount(text) || !WORD.matcher(text).find();
  }

  private static boolean isAmount(String text) {
    Matcher amount = AMOUNT.matcher(text.strip());
    return amount.matches()
        && (amount.group(1).isBlank() || Units.find(amount.group(1).strip()).isPresent());
  }
}
