package io.faultwright.output;

import java.io.IOException;
import java.util.Map;
import java.util.SortedMap;

/** Takes the files of a folder, one by one. */
public interface Sink {
  /**
   * Adds a file.
   *
   * @param path relative to the folder, with forward slashes
   */
  void write(String path, byte[] content) throws IOException;

  /** Adds several files, by their paths. */
  default void writeAll(SortedMap<String, byte[]> files) throws IOException {
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      write(file.getKey(), file.getValue());
    }
  }

  /** Fills a folder through a sink. */
  interface Filler {
    void fill(Sink sink) throws IOException;
  }
}
