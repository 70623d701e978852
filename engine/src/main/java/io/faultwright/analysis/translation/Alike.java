package io.faultwright.analysis.translation;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Texts that are out of use, found again by the words they share with a new one. */
final class Alike {
  /** Twice the words in common, by the words of both, is at least this much. */
  private static final double ENOUGH = 0.6;

  private final SortedMap<String, Set<String>> left = new TreeMap<>();

  Alike(Collection<String> texts) {
    texts.forEach(text -> left.put(text, words(text)));
  }

  /** The text most like one, if any is like it; it is gone then. */
  Optional<String> take(String text) {
    Set<String> wanted = words(text);
    Optional<String> best =
        left.entrySet().stream()
            .filter(old -> likeness(wanted, old.getValue()) >= ENOUGH)
            .max(
                Comparator.comparingDouble(
                    (Map.Entry<String, Set<String>> old) -> likeness(wanted, old.getValue())))
            .map(Map.Entry::getKey);
    best.ifPresent(left::remove);
    return best;
  }

  boolean isLeft(String text) {
    return left.containsKey(text);
  }

  private static Set<String> words(String text) {
    return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
        .filter(word -> !word.isEmpty())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static double likeness(Set<String> one, Set<String> other) {
    long common = one.stream().filter(other::contains).count();
    return common == 0 ? 0 : 2.0 * common / (one.size() + other.size());
  }
}
