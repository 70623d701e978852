package io.faultwright.cli;

import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Map;

/** Runs commands, and keeps what the last one said. */
final class Shell {
  private StringWriter out = new StringWriter();
  private StringWriter err = new StringWriter();

  /** The exit code. */
  int run(String... args) {
    out = new StringWriter();
    err = new StringWriter();
    Console console =
        new Console(
            new ByteArrayInputStream(new byte[0]),
            new PrintWriter(out),
            new PrintWriter(err),
            new Console.Terminals(false, false),
            Map.of());
    return Faultwright.execute(console, args);
  }

  String out() {
    return out.toString();
  }

  String err() {
    return err.toString();
  }
}
