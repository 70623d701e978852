package io.faultwright.piece;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Digests of whole files, each worked out once: those of an earlier publish are told again where a
 * content has the length and both checksums that it had then.
 */
public final class Digests {
  private final Map<String, String> before = new HashMap<>();
  private final SortedMap<String, String> asked = new TreeMap<>();

  /**
   * Digests that were told before.
   *
   * @param notes as {@link #notes} gives them
   */
  Digests(List<String> notes) {
    for (Iterator<String> words = notes.iterator(); words.hasNext(); ) {
      String sum = words.next();
      before.put(sum, words.hasNext() ? words.next() : "");
    }
  }

  /** The digest of a content, worked out by a function where it is not known. */
  public String of(FileContent content, Function<byte[], String> work) throws IOException {
    String sum = content.sum();
    String digest = before.containsKey(sum) ? before.get(sum) : work.apply(content.bytes());
    asked.put(sum, digest);
    return digest;
  }

  /** What was asked for, for the next time: sums and digests in turn. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    asked.forEach(
        (sum, digest) -> {
          notes.add(sum);
          notes.add(digest);
        });
    return notes;
  }
}
