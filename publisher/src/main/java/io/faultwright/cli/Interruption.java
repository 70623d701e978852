package io.faultwright.cli;

import io.faultwright.pipeline.Stop;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * While it is open, somebody who interrupts the process (Ctrl-C) still gets a report of what was
 * done: the work is asked to end, and the process waits until its report is out.
 */
final class Interruption implements AutoCloseable {
  /** Work that does not end within this many seconds is given up. */
  private static final int PATIENCE = 120;

  private final Stop stop;
  private final Console console;
  private final CountDownLatch reported = new CountDownLatch(1);
  private final Thread hook = new Thread(this::interrupted, "interruption");

  Interruption(Stop stop, Console console) {
    this.stop = stop;
    this.console = console;
    Runtime.getRuntime().addShutdownHook(hook);
  }

  /** What the work has to ask. */
  Stop stop() {
    return stop;
  }

  /** What happens as soon as the process is told to end. */
  void interrupted() {
    console.say((console.showsProgress() ? "\r\u001B[K" : "") + "stopping; the report follows\n");
    stop.now();
    try {
      if (!reported.await(PATIENCE, TimeUnit.SECONDS)) {
        console.say("the work did not end in time\n");
      }
    } catch (InterruptedException impatient) {
      Thread.currentThread().interrupt();
    }
  }

  /** The report is out, or there is none. */
  @Override
  public void close() {
    reported.countDown();
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException ending) {
      // The process is ending already, and the hook has been started.
      return;
    }
  }
}
