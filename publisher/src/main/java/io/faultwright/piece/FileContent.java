package io.faultwright.piece;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** What a file holds: made just now, or standing in an earlier publish. */
public sealed interface FileContent {
  /** All of it. */
  byte[] bytes() throws IOException;

  /** Its length and checksums; what has others differs. */
  String sum();

  /** Where it stands already. */
  Optional<Path> standsAt();

  /** Content that was made just now. */
  static FileContent of(byte[] bytes) {
    return new Fresh(bytes, Sums.of(bytes));
  }

  /** The content of a file of an earlier publish, which is read where it is asked for. */
  static FileContent of(Path file) throws IOException {
    return new Kept(file, Sums.of(file));
  }

  /** Content in memory. */
  record Fresh(byte[] bytes, String sum) implements FileContent {
    @Override
    public Optional<Path> standsAt() {
      return Optional.empty();
    }
  }

  /** Content in a file. */
  record Kept(Path file, String sum) implements FileContent {
    @Override
    public byte[] bytes() throws IOException {
      return Files.readAllBytes(file);
    }

    @Override
    public Optional<Path> standsAt() {
      return Optional.of(file);
    }
  }
}
