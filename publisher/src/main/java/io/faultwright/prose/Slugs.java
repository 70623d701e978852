package io.faultwright.prose;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Ids of headings, unique within a text. */
final class Slugs {
  private final Set<String> used = new HashSet<>();

  /** An id made of the heading's letters and digits; a number is added where it is taken. */
  String next(String heading) {
    String plain =
        heading
            .strip()
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^\\p{L}\\p{N}]+", "-")
            .replaceAll("^-|-$", "");
    String base = plain.isEmpty() ? "part" : plain;
    String id = base;
    for (int i = 2; !used.add(id); i++) {
      id = base + "-" + i;
    }
    return id;
  }
}
