package io.faultwright.analysis.space;

/**
 * Two rules of a symptom.
 *
 * @param one id of the earlier
 * @param other id of the later
 */
public record RulePair(String one, String other) implements Comparable<RulePair> {
  @Override
  public int compareTo(RulePair that) {
    int order = one.compareTo(that.one);
    return order != 0 ? order : other.compareTo(that.other);
  }
}
