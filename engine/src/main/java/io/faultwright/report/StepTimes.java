package io.faultwright.report;

import io.faultwright.operation.Program;
import io.faultwright.wording.Clock;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/** Steps of a sequence as times of a clock, and as how long. */
final class StepTimes {
  private final BigFraction step;

  StepTimes(Program program) {
    this.step = program.sequence().step();
  }

  private BigFraction seconds(long steps) {
    return step.multiply(BigInteger.valueOf(steps));
  }

  /** {@code 1:28}, or {@code 1:02:03} from an hour on. */
  String clock(long steps) {
    return Clock.of(seconds(steps));
  }

  /** {@code 25 s}, {@code 6 min}, {@code 2 min 30 s}. */
  String lasting(long steps) {
    return Clock.lasting(seconds(steps));
  }
}
