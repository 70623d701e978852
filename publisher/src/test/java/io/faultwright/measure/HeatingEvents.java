package io.faultwright.measure;

import java.util.Random;

/**
 * Events of a machine that heats, cycle by cycle, always the same from a seed: a call, a release
 * that mostly comes and mostly closes in time, an end of the call. No event is kept.
 */
final class HeatingEvents {
  static final int CALL = 0;
  static final int SWITCH = 1;
  static final int RESET = 2;

  private static final int IN_A_CYCLE = 5;
  private static final int DRAINING = 60;
  private static final int RESTART = 240;

  private final Random random = new Random(20261130);
  private final long[] steps = new long[IN_A_CYCLE];
  private final int[] inputs = new int[IN_A_CYCLE];
  private final int[] states = new int[IN_A_CYCLE];
  private int count;
  private int at;
  private long time;

  long step;
  int input;
  int state;

  /** Goes on to the next event. */
  void next() {
    if (at == count) {
      cycle();
    }
    step = steps[at];
    input = inputs[at];
    state = states[at];
    at++;
  }

  private void cycle() {
    at = 0;
    count = 0;
    long began = time + 10 + random.nextInt(120);
    add(began, CALL, 1);
    long heating = began + DRAINING;
    int kind = random.nextInt(100);
    long over = kind < 2 ? stuck(heating) : kind < 5 ? longest(heating) : released(heating);
    add(over, CALL, 0);
    time = over + 1;
  }

  /** The switch opens and closes in time; something is released. */
  private long released(long heating) {
    long open = heating + 60 + random.nextInt(200);
    long closed = open + 2 + random.nextInt(20);
    add(open, SWITCH, 1);
    add(closed, SWITCH, 0);
    return closed + 30 + random.nextInt(500);
  }

  /** The switch stays open: it stops as full, and begins again when it is closed. */
  private long stuck(long heating) {
    long open = heating + 60 + random.nextInt(200);
    long closed = open + 30 + random.nextInt(600);
    add(open, SWITCH, 1);
    add(closed, SWITCH, 0);
    return closed + RESTART - 20;
  }

  /** Nothing is released; somebody presses the button, which does nothing here. */
  private long longest(long heating) {
    long over = heating + 360 + 20;
    add(over, RESET, -1);
    return over + 30;
  }

  private void add(long when, int what, int into) {
    steps[count] = when;
    inputs[count] = what;
    states[count] = into;
    count++;
  }
}
