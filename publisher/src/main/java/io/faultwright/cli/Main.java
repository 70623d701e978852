package io.faultwright.cli;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Starts the command line of a process. */
public final class Main {
  /** Libraries that read fonts and write PDF say there what our own messages say better. */
  private static final Logger LIBRARIES = Logger.getLogger("org.apache");

  private Main() {}

  public static void main(String[] args) {
    LIBRARIES.setLevel(Level.OFF);
    Console console =
        new Console(
            System.in, writer(System.out), writer(System.err), terminals(), System.getenv());
    int code = Faultwright.execute(console, args);
    console.out().flush();
    console.err().flush();
    System.exit(code);
  }

  /** UTF-8 on every system, whatever its default. */
  private static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8));
  }

  /** What the launcher found out; without a launcher, both or neither. */
  private static Console.Terminals terminals() {
    String told = System.getProperty("faultwright.terminal");
    if (told == null) {
      boolean both = System.console() != null && Runtime.version().feature() < 22;
      return new Console.Terminals(both, both);
    }
    Set<String> names = Set.of(told.split(","));
    return new Console.Terminals(names.contains("out"), names.contains("err"));
  }
}
