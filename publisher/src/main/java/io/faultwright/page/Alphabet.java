package io.faultwright.page;

import java.text.CollationKey;
import java.text.Collator;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * The order in which a reader looks things up: by title, from A to Z, numbers by their value. The
 * files in which things are written, and their order there, do not count.
 */
public final class Alphabet {
  private static final Pattern DIGITS = Pattern.compile("\\d+");
  private static final int WIDTH = 12;

  /** Titles are sorted again and again, and a key takes long to make. */
  private static final Map<String, CollationKey> KEYS = new ConcurrentHashMap<>();

  private Alphabet() {}

  /** The things from A to Z; those of one title in the order in which they come. */
  public static <T> List<T> sorted(Collection<T> things, Function<T, String> title) {
    if (things.size() < 2) {
      return List.copyOf(things);
    }
    return things.stream()
        .map(thing -> Filed.of(thing, title.apply(thing)))
        .sorted(
            Comparator.<Filed<T>, CollationKey>comparing(Filed::key).thenComparing(Filed::title))
        .map(Filed::thing)
        .toList();
  }

  private record Filed<T>(T thing, String title, CollationKey key) {
    static <T> Filed<T> of(T thing, String title) {
      CollationKey known = KEYS.get(title);
      return new Filed<>(thing, title, known == null ? Alphabet.key(title) : known);
    }
  }

  private static CollationKey key(String title) {
    return KEYS.computeIfAbsent(
        title, text -> Collator.getInstance(Locale.ROOT).getCollationKey(evenlyLong(text)));
  }

  /** With zeros before numbers, so that 8 comes before 12. */
  private static String evenlyLong(String title) {
    return DIGITS
        .matcher(title)
        .replaceAll(
            number -> "0".repeat(Math.max(0, WIDTH - number.group().length())) + number.group());
  }
}
