package io.faultwright.cli;

import io.faultwright.report.Ink;
import java.io.InputStream;
import java.io.PrintWriter;
import java.util.Map;

/**
 * The streams a command talks through, and what they can show.
 *
 * @param in standard input
 * @param out standard output, for results
 * @param err standard error, for messages about the run itself
 * @param terminals which of the two outputs a person watches
 * @param environment environment variables
 */
record Console(
    InputStream in,
    PrintWriter out,
    PrintWriter err,
    Terminals terminals,
    Map<String, String> environment) {
  /**
   * Which outputs are terminals.
   *
   * @param out whether standard output is one
   * @param err whether standard error is one
   */
  record Terminals(boolean out, boolean err) {}

  /** Ink for results. */
  Ink outInk() {
    return Ink.of(terminals.out() && mayColour());
  }

  /** Ink for messages. */
  Ink errInk() {
    return Ink.of(terminals.err() && mayColour());
  }

  /** Whether a moving line on standard error can be seen. */
  boolean showsProgress() {
    return terminals.err() && !isDumb();
  }

  /** Whether a person asked for the stack traces of internal failures. */
  boolean tracing() {
    return !environment.getOrDefault("FAULTWRIGHT_TRACE", "").isEmpty();
  }

  private boolean mayColour() {
    return environment.getOrDefault("NO_COLOR", "").isEmpty() && !isDumb();
  }

  private boolean isDumb() {
    return environment.getOrDefault("TERM", "").equals("dumb");
  }

  /** Prints a result as it is, without anything added. */
  void print(String text) {
    out.print(text);
    out.flush();
  }

  /** Prints a message as it is. */
  void say(String text) {
    err.print(text);
    err.flush();
  }
}
