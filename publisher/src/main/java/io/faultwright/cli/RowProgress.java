package io.faultwright.cli;

/** Shows a person how many rows were run. */
final class RowProgress implements AutoCloseable {
  private static final int EVERY = 10_000;

  private final Console console;
  private long rows;

  RowProgress(Console console) {
    this.console = console;
  }

  void row() {
    rows++;
    if (rows % EVERY == 0) {
      show(rows + " rows");
    }
  }

  private void show(String line) {
    if (console.showsProgress()) {
      console.say("\r\u001B[K" + line);
    }
  }

  /** Wipes the moving line. */
  @Override
  public void close() {
    show("");
  }
}
