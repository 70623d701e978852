package io.faultwright.piece;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

/**
 * A part of what is published, before it is made: mostly a single file.
 *
 * @param name no other piece has it
 * @param inputs all that it is made from; absent where making it is quicker than looking that up
 * @param work makes it; may run on any thread
 */
public record Piece(String name, Optional<Fingerprint> inputs, Work work) {
  /** Makes a piece. */
  public interface Work {
    Made make() throws IOException;
  }

  /** Makes a file. */
  public interface Content {
    byte[] bytes() throws IOException;
  }

  /** A piece of one file that is always made. */
  public static Piece file(String path, Content content) {
    return new Piece(path, Optional.empty(), () -> Made.of(path, content.bytes(), List.of()));
  }

  /** A piece of one file that is made where its inputs have changed. */
  public static Piece file(String path, Fingerprint inputs, Content content) {
    return new Piece(path, Optional.of(inputs), () -> Made.of(path, content.bytes(), List.of()));
  }
}
