package io.faultwright.review;

/**
 * Two rules that answer in one situation.
 *
 * @param one id of a rule
 * @param other id of the other
 * @param contradiction whether their answers exclude each other
 * @param region where both answer
 */
public record Overlap(String one, String other, boolean contradiction, Region region) {
  /** Whether a rule is one of the two. */
  public boolean concerns(String rule) {
    return one.equals(rule) || other.equals(rule);
  }

  /** The rule beside one of the two. */
  public String beside(String rule) {
    return one.equals(rule) ? other : one;
  }
}
