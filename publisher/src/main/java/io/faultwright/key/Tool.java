package io.faultwright.key;

import io.faultwright.output.Refused;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/** Another program, started with a list of arguments and never through a shell. */
final class Tool {
  /** Long enough for a person to type a passphrase or to touch a security key. */
  private static final long MINUTES = 5;

  private final String program;
  private final Map<String, String> environment;
  private final String help;

  /**
   * A program on the path.
   *
   * @param environment its environment variables
   * @param help how to get it
   */
  Tool(String program, Map<String, String> environment, String help) {
    this.program = program;
    this.environment = Map.copyOf(environment);
    this.help = help;
  }

  /**
   * What came of a run.
   *
   * @param code its exit code
   * @param out standard output
   * @param err standard error
   */
  record Result(int code, String out, String err) {
    boolean worked() {
      return code == 0;
    }

    /** The last thing it said. */
    String complaint() {
      String all = err.isBlank() ? out : err;
      String last = all.lines().filter(line -> !line.isBlank()).reduce("", (a, b) -> b).strip();
      return last.isEmpty() ? "it ended with exit code " + code : last.replace('`', '\'');
    }
  }

  /**
   * Runs it to its end.
   *
   * @throws Refused where it is not there
   */
  Result run(byte[] input, List<String> arguments) throws IOException {
    Process process = start(arguments);
    CompletableFuture<String> out = text(process.getInputStream());
    CompletableFuture<String> err = text(process.getErrorStream());
    try (OutputStream in = process.getOutputStream()) {
      in.write(input);
    } catch (IOException closedEarly) {
      // It did not want all of its input; its exit code tells why.
    }
    return new Result(await(process), out.join(), err.join());
  }

  private Process start(List<String> arguments) {
    ProcessBuilder builder = new ProcessBuilder();
    builder.command().add(program);
    builder.command().addAll(arguments);
    builder.environment().clear();
    builder.environment().putAll(environment);
    builder.environment().put("LC_ALL", "C");
    try {
      return builder.start();
    } catch (IOException missing) {
      throw new Refused("`" + program + "` cannot be started", help);
    }
  }

  private static CompletableFuture<String> text(InputStream stream) {
    return CompletableFuture.supplyAsync(
        () -> {
          try (stream) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
          } catch (IOException broken) {
            throw new UncheckedIOException(broken);
          }
        });
  }

  private int await(Process process) throws IOException {
    try {
      if (process.waitFor(MINUTES, TimeUnit.MINUTES)) {
        return process.exitValue();
      }
      process.destroyForcibly();
      throw new Refused("`" + program + "` did not end within " + MINUTES + " minutes", help);
    } catch (InterruptedException stopped) {
      process.destroyForcibly();
      Thread.currentThread().interrupt();
      throw new IOException("waiting for `" + program + "` was interrupted", stopped);
    }
  }
}
