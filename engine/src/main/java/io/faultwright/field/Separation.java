package io.faultwright.field;

import io.faultwright.model.Condition.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A condition that many disagreeing rows of a rule meet, and few agreeing ones.
 *
 * @param subject reading or equipment fact
 * @param pattern what it is in the disagreeing rows
 * @param disagreeing disagreeing rows that meet it
 * @param ofDisagreeing disagreeing rows that give the subject
 * @param agreeing agreeing rows that meet it
 * @param ofAgreeing agreeing rows that give the subject
 */
public record Separation(
    String subject,
    Pattern pattern,
    long disagreeing,
    long ofDisagreeing,
    long agreeing,
    long ofAgreeing) {
  /** By how much the shares differ, from -1 to 1; exact. */
  BigFraction advantage() {
    return BigFraction.of(disagreeing, 1)
        .divide(BigFraction.of(ofDisagreeing, 1))
        .subtract(BigFraction.of(agreeing, 1).divide(BigFraction.of(ofAgreeing, 1)));
  }
}
