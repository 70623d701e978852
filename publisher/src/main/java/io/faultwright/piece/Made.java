package io.faultwright.piece;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A piece that is made.
 *
 * @param files their contents by path
 * @param notes what is to be known of it besides its files
 */
public record Made(SortedMap<String, byte[]> files, List<String> notes) {
  public Made {
    files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
    notes = List.copyOf(notes);
  }

  /** A single file. */
  public static Made of(String path, byte[] content, List<String> notes) {
    return new Made(new TreeMap<>(java.util.Map.of(path, content)), notes);
  }
}
