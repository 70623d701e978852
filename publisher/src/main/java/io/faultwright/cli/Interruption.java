package io.faultwright.cli;

import io.faultwright.pipeline.Stop;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * What becomes of long work when a person presses Ctrl-C: it is stopped, and the process ends only
 * when what was done until then has been printed. To be closed after that.
 */
final class Interruption implements AutoCloseable {
  private static final int LONGEST_SECONDS = 20;

  private final CountDownLatch printed = new CountDownLatch(1);
  private final Stop stop;
  private final Thread hook = new Thread(this::end, "interruption");

  Interruption(Stop stop) {
    this.stop = stop;
    Runtime.getRuntime().addShutdownHook(hook);
  }

  /** When the work has to end. */
  Stop stop() {
    return stop;
  }

  private void end() {
    stop.now();
    try {
      printed.await(LONGEST_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException impatient) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    printed.countDown();
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException ending) {
      // the process is ending, and the hook lets it
      return;
    }
  }
}
