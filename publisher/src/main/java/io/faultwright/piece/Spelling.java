package io.faultwright.piece;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;

/** Values one after the other as bytes, so that no two rows of values are spelled alike. */
final class Spelling {
  private static final int FIRST_LENGTH = 1024;

  private byte[] bytes = new byte[FIRST_LENGTH];
  private int length;

  /** What kind of value comes, or that one has ended. */
  void mark(char kind) {
    room(1);
    bytes[length++] = (byte) kind;
  }

  void text(char kind, String text) {
    bytes(kind, text.getBytes(StandardCharsets.UTF_8));
  }

  /** With its kind and its length. */
  void bytes(char kind, byte[] value) {
    mark(kind);
    room(Integer.BYTES + value.length);
    for (int shift = Integer.SIZE - Byte.SIZE; shift >= 0; shift -= Byte.SIZE) {
      bytes[length++] = (byte) (value.length >>> shift);
    }
    System.arraycopy(value, 0, bytes, length, value.length);
    length += value.length;
  }

  private void room(int more) {
    if (bytes.length - length < more) {
      bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, length + more));
    }
  }

  /** The SHA-256 of all of it. */
  byte[] digest() {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      digest.update(bytes, 0, length);
      return digest.digest();
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("every Java has SHA-256", missing);
    }
  }
}
