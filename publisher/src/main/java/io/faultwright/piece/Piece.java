package io.faultwright.piece;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * A part of what is published, before it is made: mostly a single file.
 *
 * @param name no other piece has it
 * @param start says what it is made from, and how; may run on any thread
 */
public record Piece(String name, Start start) {
  /** Begins a piece: whatever is quicker than making it. */
  public interface Start {
    Begun begin() throws IOException;
  }

  /**
   * A piece that is begun.
   *
   * @param inputs all that it is made from; absent where making it is quicker than looking that up
   * @param work makes it; may run on any thread
   */
  public record Begun(Optional<Fingerprint> inputs, Work work) {
    /** A single file. */
    public static Begun file(String path, Fingerprint inputs, Content content) {
      return new Begun(Optional.of(inputs), one(path, content));
    }
  }

  /** Makes a piece. */
  public interface Work {
    Made make() throws IOException;
  }

  /** Makes a file. */
  public interface Content {
    byte[] bytes() throws IOException;
  }

  /** A piece that is made where its inputs have changed. */
  public static Piece of(String name, Fingerprint inputs, Work work) {
    return new Piece(name, () -> new Begun(Optional.of(inputs), work));
  }

  /** A piece whose files are made already. */
  public static Piece ready(String name, SortedMap<String, FileContent> files) {
    return new Piece(name, () -> new Begun(Optional.empty(), () -> new Made(files, List.of())));
  }

  /** A piece of one file that is always made. */
  public static Piece file(String path, Content content) {
    return new Piece(path, () -> new Begun(Optional.empty(), one(path, content)));
  }

  /** A piece of one file that is made where its inputs have changed. */
  public static Piece file(String path, Fingerprint inputs, Content content) {
    return new Piece(path, () -> Begun.file(path, inputs, content));
  }

  private static Work one(String path, Content content) {
    return () -> Made.of(path, content.bytes(), List.of());
  }
}
