package io.faultwright.analysis.suggestion;

import java.util.SplittableRandom;

/** The best of what is offered, by lot among equals. */
final class Choice {
  private final SplittableRandom random;
  private int best = -1;
  private int worth = Integer.MIN_VALUE;
  private int equals;

  Choice(SplittableRandom random) {
    this.random = random;
  }

  /** Whether an offer of this worth could be taken. */
  boolean wants(int offered) {
    return offered >= worth;
  }

  void offer(int what, int offered) {
    if (offered > worth) {
      worth = offered;
      equals = 0;
    }
    if (offered == worth && random.nextInt(++equals) == 0) {
      best = what;
    }
  }

  /** What was chosen, or -1 if nothing was offered. */
  int best() {
    return best;
  }

  /** Its worth; the least number if nothing was offered. */
  int worth() {
    return worth;
  }
}
