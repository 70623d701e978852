package io.faultwright.page;

import java.text.CollationKey;
import java.text.Collator;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * The order in which a reader looks things up: by title, from A to Z, numbers by their value. The
 * files in which things are written, and their order there, do not count.
 */
public final class Alphabet {
  private static final Pattern DIGITS = Pattern.compile("\\d+");
  private static final int WIDTH = 12;

  private Alphabet() {}

  /** The things from A to Z; those of one title in the order in which they come. */
  public static <T> List<T> sorted(Collection<T> things, Function<T, String> title) {
    Collator collator = Collator.getInstance(Locale.ROOT);
    return things.stream()
        .map(thing -> Filed.of(thing, title.apply(thing), collator))
        .sorted(
            Comparator.<Filed<T>, CollationKey>comparing(Filed::key).thenComparing(Filed::title))
        .map(Filed::thing)
        .toList();
  }

  private record Filed<T>(T thing, String title, CollationKey key) {
    static <T> Filed<T> of(T thing, String title, Collator collator) {
      return new Filed<>(thing, title, collator.getCollationKey(evenlyLong(title)));
    }
  }

  /** With zeros before numbers, so that 8 comes before 12. */
  private static String evenlyLong(String title) {
    return DIGITS
        .matcher(title)
        .replaceAll(
            number -> "0".repeat(Math.max(0, WIDTH - number.group().length())) + number.group());
  }
}
