package io.faultwright.cli;

import io.faultwright.pipeline.Watch;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Shows a person how far a long check has come, and how long each phase took. */
final class Watching implements Watch, AutoCloseable {
  private static final int WIDTH = 30;

  private record Timed(String phase, long since) {}

  private final Console console;
  private final boolean timings;
  private final List<Timed> phases = new ArrayList<>();

  Watching(Console console, boolean timings) {
    this.console = console;
    this.timings = timings;
  }

  @Override
  public void phase(String name) {
    phases.add(new Timed(name, System.nanoTime()));
    show(name);
  }

  @Override
  public synchronized void step(int done, int all) {
    String bar = "#".repeat(WIDTH * done / all);
    show(
        String.format(
            Locale.ROOT, "analyses [%-" + WIDTH + "s] %d of %d symptoms", bar, done, all));
  }

  private void show(String line) {
    if (console.showsProgress()) {
      console.say("\r\u001B[K" + line);
    }
  }

  /** Wipes the moving line; prints the timings where they were asked for. */
  @Override
  public void close() {
    show("");
    if (timings) {
      phase("end");
      for (int i = 0; i + 1 < phases.size(); i++) {
        long millis = (phases.get(i + 1).since() - phases.get(i).since()) / 1_000_000;
        console.say(String.format(Locale.ROOT, "%-10s %6d ms\n", phases.get(i).phase(), millis));
      }
    }
  }
}
