package io.faultwright.output;

import java.io.IOException;

/** Takes the files of a folder, one by one. */
public interface Sink {
  /**
   * Adds a file.
   *
   * @param path relative to the folder, with forward slashes
   */
  void write(String path, byte[] content) throws IOException;

  /** Fills a folder through a sink. */
  interface Filler {
    void fill(Sink sink) throws IOException;
  }
}
