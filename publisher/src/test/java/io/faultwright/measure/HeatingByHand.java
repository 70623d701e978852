package io.faultwright.measure;

/**
 * The heating cycle of the tests on software 2.10, written as a programmer would: the yardstick.
 */
final class HeatingByHand {
  static final int STANDBY = 0;
  static final int DRAINING = 1;
  static final int HEATING = 2;
  static final int RELEASING = 3;
  static final int BUILDING = 4;
  static final int FULL_STOP = 5;
  static final int LONG_STOP = 6;
  static final int RESTART = 7;

  private static final long[] LASTS = {-1, 60, 360, 25, 600, -1, -1, 240};

  private int phase = STANDBY;
  private long began;
  private long now;
  private boolean call;
  private boolean open;
  private int longHeats;
  long phases = 1;
  long stops;

  /** Something happens; everything that was due before follows first. */
  void happen(long step, int input, int state) {
    passTo(step);
    if (input == HeatingEvents.CALL) {
      call = state == 1;
    } else if (input == HeatingEvents.SWITCH) {
      boolean before = open;
      open = state == 1;
      turned(step, before);
    } else if (phase == LONG_STOP) {
      longHeats = 0;
      enter(step, RESTART);
    }
  }

  private void turned(long step, boolean before) {
    if (open && !before && phase == HEATING) {
      enter(step, RELEASING);
    } else if (!open && before && phase == RELEASING) {
      longHeats = 0;
      enter(step, BUILDING);
    }
  }

  /** Everything follows that is due before a step. */
  void passTo(long step) {
    long next = due();
    while (next < step) {
      follow(next);
      next = due();
    }
    now = Math.max(now, step);
  }

  /** The step at which the phase is over without an event. */
  private long due() {
    boolean atOnce =
        phase == STANDBY && call || phase == BUILDING && !call || phase == FULL_STOP && !open;
    if (atOnce) {
      return Math.max(began, now);
    }
    return LASTS[phase] < 0 ? Long.MAX_VALUE : began + LASTS[phase];
  }

  private void follow(long step) {
    now = step;
    switch (phase) {
      case STANDBY -> enter(step, DRAINING);
      case DRAINING -> enter(step, HEATING);
      case HEATING -> enter(step, ++longHeats >= 3 ? LONG_STOP : BUILDING);
      case RELEASING -> enter(step, FULL_STOP);
      case BUILDING -> enter(step, step - began >= LASTS[BUILDING] ? DRAINING : STANDBY);
      case FULL_STOP -> enter(step, RESTART);
      default -> enter(step, STANDBY);
    }
  }

  private void enter(long step, int next) {
    phase = next;
    began = step;
    phases++;
    stops += next == FULL_STOP || next == LONG_STOP ? 1 : 0;
  }

  int phase() {
    return phase;
  }
}
