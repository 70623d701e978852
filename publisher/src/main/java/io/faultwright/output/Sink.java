package io.faultwright.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

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

  /** Fills a folder through a sink. */
  interface Filler {
    void fill(Sink sink) throws IOException;
  }
}
