package io.faultwright.grading;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;

/**
 * Draws some of the participants so that anybody can repeat it: each gets the SHA-256 of the seed,
 * a colon and their own number or name in UTF-8; those with the lowest digests are drawn. The seed
 * is made known before the names are, such as from a public lottery.
 */
public final class Draw {
  private Draw() {}

  /**
   * One who took part in a draw.
   *
   * @param participant number or name
   * @param digest SHA-256 in hexadecimal digits
   */
  public record Ticket(String participant, String digest) {}

  /** All tickets, those drawn first at the front; the order of the participants does not count. */
  public static List<Ticket> tickets(String seed, Collection<String> participants) {
    return participants.stream()
        .distinct()
        .map(one -> new Ticket(one, digest(seed + ":" + one)))
        .sorted(Comparator.comparing(Ticket::digest))
        .toList();
  }

  private static String digest(String text) {
    try {
      MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(sha256.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("every Java has SHA-256", missing);
    }
  }
}
