package io.faultwright.find;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Text as it is looked up: plain lower-case words. The script takes a query apart likewise. */
final class Terms {
  private static final Pattern MARK = Pattern.compile("[\\p{M}\u00AD]");
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+");

  /** Begins at the beginning of a word, so that a very long one is looked at once. */
  private static final Pattern JOINED =
      Pattern.compile(
          "(?<![\\p{L}\\p{N}])[\\p{L}\\p{N}]++(?:[-\u2010-\u2013./_][\\p{L}\\p{N}]++)++");

  private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}]");

  private Terms() {}

  /**
   * The words of a text, and those with a hyphen or the like once more in one piece: {@code
   * BC-0412} is {@code 0412}, {@code bc} and {@code bc0412}.
   */
  static SortedSet<String> of(String text) {
    String plain = plain(text);
    SortedSet<String> terms = new TreeSet<>(found(WORD, plain));
    found(JOINED, plain).forEach(word -> terms.add(BETWEEN.matcher(word).replaceAll("")));
    return terms;
  }

  private static List<String> found(Pattern pattern, String text) {
    return pattern.matcher(text).results().map(MatchResult::group).toList();
  }

  /** Lower case without accents, {@code ß} as {@code ss}, the two small sigmas as one. */
  private static String plain(String text) {
    String decomposed = Normalizer.normalize(text, Normalizer.Form.NFKD);
    return MARK.matcher(decomposed)
        .replaceAll("")
        .toLowerCase(Locale.ROOT)
        .replace("\u00DF", "ss")
        .replace('\u03C2', '\u03C3');
  }
}
