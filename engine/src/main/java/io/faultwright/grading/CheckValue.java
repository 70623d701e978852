package io.faultwright.grading;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Tells whether a file is still as it was handed in. The key of a participant stands in that
 * participant's own page, so this finds what others changed, and what was changed by hand; it
 * cannot find what a participant saves anew with their own page.
 *
 * <p>Source: RFC 2104 (HMAC) and FIPS 180-4 (SHA-256), as every Java has them.
 */
public final class CheckValue {
  private static final int DIGITS = 32;

  private CheckValue() {}

  /** The check value of what was handed in: 32 hexadecimal digits in lower case. */
  public static String of(HandIn handIn, String key) {
    return keyed(key, handIn.canonical());
  }

  /**
   * The key of a participant: 32 hexadecimal digits. Who knows no right answers cannot know it.
   *
   * @param answers the quiz with all its answers, as text
   */
  public static String key(String answers, int participant) {
    return keyed(answers, "faultwright participant " + participant);
  }

  /**
   * The key of the check values of certificates: 32 hexadecimal digits. It stands in no
   * participant's page.
   *
   * @param answers the quiz with all its answers, as text
   */
  public static String registerKey(String answers) {
    return keyed(answers, "faultwright register");
  }

  /** HMAC-SHA256 of a text, its first 32 hexadecimal digits. */
  public static String keyed(String key, String text) {
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(new SecretKeySpec(key.getBytes(StandardCharsets.UTF_8), "HmacSHA256"));
      byte[] digest = mac.doFinal(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest).substring(0, DIGITS);
    } catch (GeneralSecurityException missing) {
      throw new IllegalStateException("every Java has HmacSHA256", missing);
    }
  }
}
