package io.faultwright.release;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4) in hexadecimal digits. */
public final class Hash {
  private Hash() {}

  /** Of a text in UTF-8. */
  public static String of(String text) {
    return of(text.getBytes(StandardCharsets.UTF_8));
  }

  static String of(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("every Java has SHA-256", missing);
    }
  }
}
