package io.faultwright.field;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How often a fault is met, before and after the confirmed jobs. The frequencies of the faults are
 * taken as the parameters of a Dirichlet distribution, as if each fault had been met so often
 * before; a confirmed job adds one. The mean of a fault's share is then its frequency over the sum
 * of all (Gelman et al., Bayesian Data Analysis, third edition, section 3.4; from memory).
 *
 * @param fault its id
 * @param before its frequency as it stands
 * @param counted confirmed jobs
 * @param shareBefore its share among all faults before
 * @param shareAfter its mean share after
 */
public record FrequencyUpdate(
    String fault,
    BigFraction before,
    long counted,
    BigFraction shareBefore,
    BigFraction shareAfter) {
  /** The updated frequency. */
  public BigFraction after() {
    return before.add(BigFraction.of(counted, 1));
  }
}
