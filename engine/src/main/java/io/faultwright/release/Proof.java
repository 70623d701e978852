package io.faultwright.release;

/**
 * Whether it is known that the person named in a sign-off gave it.
 *
 * @param state what is known
 * @param reason why a signature does not count; else empty
 */
public record Proof(State state, String reason) {
  /** Nobody has a key of that name: anyone can have written the name. */
  public static final Proof UNVERIFIED = new Proof(State.UNVERIFIED, "");

  /** The person's own key signed it. */
  public static final Proof VERIFIED = new Proof(State.VERIFIED, "");

  /** There is a signature, and it was not looked at. */
  public static final Proof UNCHECKED = new Proof(State.UNCHECKED, "");

  /** What can be known of it. */
  public enum State {
    UNVERIFIED,
    VERIFIED,
    UNCHECKED,
    BROKEN
  }

  /**
   * It is not that person's signature under what the sign-off says.
   *
   * @param reason lower case, no full stop, names in backticks
   */
  public static Proof broken(String reason) {
    return new Proof(State.BROKEN, reason);
  }

  /** For people: whether to believe the name. */
  public String words() {
    return switch (state) {
      case UNVERIFIED -> "unverified name";
      case VERIFIED -> "verified by key";
      case UNCHECKED -> "signature not looked at";
      case BROKEN -> "broken signature";
    };
  }
}
