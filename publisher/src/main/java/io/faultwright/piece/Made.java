package io.faultwright.piece;

import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A piece that is made.
 *
 * @param files their contents by path
 * @param notes what is to be known of it besides its files
 */
public record Made(SortedMap<String, FileContent> files, List<String> notes) {
  public Made {
    files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
    notes = List.copyOf(notes);
  }

  /** A single file. */
  public static Made of(String path, byte[] content, List<String> notes) {
    return new Made(new TreeMap<>(Map.of(path, FileContent.of(content))), notes);
  }

  /** The bytes of one of its files. */
  public byte[] bytes(String path) throws IOException {
    return files.get(path).bytes();
  }
}
