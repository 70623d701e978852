package io.faultwright.report;

import io.faultwright.operation.Program;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Exact;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/** Steps of a sequence as times of a clock, and as how long. */
final class StepTimes {
  private static final long MINUTE = 60;
  private static final long LONGEST_IN_SECONDS = 120;

  private final BigFraction step;

  StepTimes(Program program) {
    this.step = program.sequence().step();
  }

  private BigFraction seconds(long steps) {
    return step.multiply(BigInteger.valueOf(steps));
  }

  /** {@code 1:28}, or {@code 1:02:03} from an hour on. */
  String clock(long steps) {
    BigFraction seconds = seconds(steps);
    long whole = Exact.floor(seconds).longValue();
    String rest = Decimals.show(seconds.subtract(BigFraction.of(whole)));
    long minutes = whole / MINUTE;
    return (minutes < MINUTE
            ? Long.toString(minutes)
            : minutes / MINUTE + ":" + two(minutes % MINUTE))
        + ":"
        + two(whole % MINUTE)
        + (rest.startsWith("0.") ? rest.substring(1) : "");
  }

  private static String two(long number) {
    return number < 10 ? "0" + number : Long.toString(number);
  }

  /** {@code 25 s}, {@code 6 min}, {@code 2 min 30 s}. */
  String lasting(long steps) {
    BigFraction seconds = seconds(steps);
    long whole = Exact.floor(seconds).longValue();
    boolean even = Exact.isWhole(seconds);
    if (even && whole >= MINUTE && whole % MINUTE == 0) {
      return whole / MINUTE + " min";
    }
    return whole < LONGEST_IN_SECONDS || !even
        ? Decimals.show(seconds) + " s"
        : whole / MINUTE + " min " + whole % MINUTE + " s";
  }
}
