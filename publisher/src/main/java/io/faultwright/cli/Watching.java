package io.faultwright.cli;

import io.faultwright.pipeline.Watch;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Shows a person how far long work has come, and how long each phase took. */
final class Watching implements Watch, AutoCloseable {
  private static final int WIDTH = 30;

  /** What the steps of a phase are, where they are not symptoms. */
  private static final Map<String, String> STEPS = Map.of("mistakes", "rules and tables");

  private record Timed(String phase, long since) {}

  private final Console console;
  private final boolean timings;
  private final List<Timed> phases = new ArrayList<>();

  Watching(Console console, boolean timings) {
    this.console = console;
    this.timings = timings;
  }

  @Override
  public synchronized void phase(String name) {
    phases.add(new Timed(name, System.nanoTime()));
    show(name);
  }

  @Override
  public synchronized void step(int done, int all) {
    String bar = "#".repeat(WIDTH * done / all);
    String phase = phases.isEmpty() ? "" : phases.get(phases.size() - 1).phase();
    String steps = STEPS.getOrDefault(phase, "symptoms");
    show(
        String.format(
            Locale.ROOT, "%s [%-" + WIDTH + "s] %d of %d %s", phase, bar, done, all, steps));
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
