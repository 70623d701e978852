package io.faultwright.diagnostic;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the name a person most likely meant. */
public final class NearMatch {
  private NearMatch() {}

  /** The known name closest to the one written, where one is close enough to be worth saying. */
  public static Optional<String> of(String written, Collection<String> known) {
    String wanted = written.toLowerCase(Locale.ROOT);
    int allowed = Math.max(1, written.length() / 3);
    return known.stream()
        .filter(name -> Math.abs(name.length() - wanted.length()) <= allowed)
        .filter(name -> distance(wanted, name.toLowerCase(Locale.ROOT)) <= allowed)
        .min(
            Comparator.comparingInt(
                    (String name) -> distance(wanted, name.toLowerCase(Locale.ROOT)))
                .thenComparing(Comparator.naturalOrder()));
  }

  /** "did you mean `x`?", or the names there are where nothing is near and the list is short. */
  public static String help(String written, Collection<String> known) {
    return of(written, known)
        .map(name -> "did you mean `" + name + "`?")
        .orElseGet(() -> known.isEmpty() ? "" : "known here: " + listing(known));
  }

  private static String listing(Collection<String> known) {
    String names = known.stream().sorted().limit(12).reduce((a, b) -> a + "`, `" + b).orElse("");
    return "`" + names + "`" + (known.size() > 12 ? " and " + (known.size() - 12) + " more" : "");
  }

  /** Edits (insert, delete, replace, swap neighbours) between two words. */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : cheapest(d, a, b, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int cheapest(int[][] d, String a, String b, int i, int j) {
    int replace = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
    int best = Math.min(replace, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
  }
}
