package io.faultwright.offline;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;

/** What tells one content from another: its SHA-256, or the beginning of it. */
public final class Fingerprint {
  /** 64 bits: enough to tell files apart and to notice one that came damaged. */
  private static final int DIGITS = 16;

  private Fingerprint() {}

  /** The first 16 hexadecimal digits. */
  public static String of(byte[] content) {
    return HexFormat.of().formatHex(sha256(content)).substring(0, DIGITS);
  }

  /** As a content security policy names a script or a style sheet that stands in the page. */
  public static String source(byte[] content) {
    return "'sha256-" + Base64.getEncoder().encodeToString(sha256(content)) + "'";
  }

  private static byte[] sha256(byte[] content) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(content);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
