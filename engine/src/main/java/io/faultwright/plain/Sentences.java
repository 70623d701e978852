package io.faultwright.plain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Texts as sentences, and sentences as words, in the way ASD-STE100 counts them (from memory): a
 * colon ends a sentence as a full stop does; text in brackets is a sentence of its own; words with
 * a hyphen are one; so is a number, and a number with its unit is one.
 */
final class Sentences {
  private static final Pattern BRACKETS = Pattern.compile("\\(([^()]*)\\)");

  /** After the mark comes a blank: that of {@code 0.5 bar} or {@code 10:30} ends nothing. */
  private static final Pattern ENDS = Pattern.compile("(?<=[.!?:])\\s+|\\n+");

  /** Points behind which a sentence goes on. */
  private static final Pattern SHORTENED =
      Pattern.compile("(?i).*\\b(e\\.g|i\\.e|approx|max|min|no|fig)\\.");

  private static final Pattern NUMBER = Pattern.compile("[-+±−]?\\d[\\d.,:/]*%?");

  /** Symbols that stand behind a number; a longer word is a word. */
  private static final Pattern UNIT =
      Pattern.compile(
          "(°C|°F|K|°|%|V|kV|mV|A|mA|W|kW|Ω|kΩ|MΩ|Hz|Pa|kPa|hPa|MPa|bar|mbar|mm|cm|m|km|g|kg|l|ml"
              + "|s|min|h|Nm|N|psi|in|ft|lb|oz|rpm|L|ohm|ohms)(\\([a-z]+\\))?[.,;:]*");

  private Sentences() {}

  /** The sentences of a text, those in brackets after the one they stand in. */
  static List<String> of(String text) {
    List<String> sentences = new ArrayList<>();
    List<String> inner = new ArrayList<>();
    Matcher brackets = BRACKETS.matcher(text.replaceAll("(?<=\\w)\\(([a-z])\\)", "$1"));
    String outer = brackets.replaceAll(found -> add(inner, found.group(1)));
    split(outer).forEach(sentences::add);
    inner.stream().filter(one -> one.strip().contains(" ")).forEach(sentences::add);
    return sentences;
  }

  private static String add(List<String> inner, String text) {
    inner.add(text);
    return "";
  }

  private static List<String> split(String text) {
    List<String> sentences = new ArrayList<>();
    String begun = "";
    for (String piece : ENDS.split(text.strip())) {
      String whole = begun.isEmpty() ? piece : begun + " " + piece;
      boolean goesOn = SHORTENED.matcher(piece).matches();
      if (!goesOn && !whole.isBlank()) {
        sentences.add(whole.strip());
      }
      begun = goesOn ? whole : "";
    }
    if (!begun.isBlank()) {
      sentences.add(begun.strip());
    }
    return sentences;
  }

  /** The words of a sentence as they are counted. */
  static List<String> words(String sentence) {
    List<String> words = new ArrayList<>();
    boolean number = false;
    for (String piece : Arrays.asList(sentence.strip().split("\\s+"))) {
      if (piece.codePoints().anyMatch(Character::isLetterOrDigit) || isLoneUnit(number, piece)) {
        if (!(number && UNIT.matcher(piece).matches())) {
          words.add(piece);
        }
      }
      number = NUMBER.matcher(piece).matches();
    }
    return words;
  }

  /** {@code %} and {@code °} hold no letter; behind a number they belong to it anyway. */
  private static boolean isLoneUnit(boolean number, String piece) {
    return number && UNIT.matcher(piece).matches();
  }
}
