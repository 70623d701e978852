package io.faultwright.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

  /**
   * Adds a file with the content of another one.
   *
   * @param path relative to the folder, with forward slashes
   * @param same stands anywhere
   */
  default void take(String path, Path same) throws IOException {
    write(path, Files.readAllBytes(same));
  }

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
