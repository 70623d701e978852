package io.faultwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;

/** A small knowledge base under sign-off in a folder, and the commands on it. */
final class SmallBase {
  /** Who signs in most tests. */
  static final String ADA = "Ada Example";

  private static final String RULES =
      """
      handbook:
        title: Small
        maker: Brantmoor Cold
        revision: "1"
        date: 2026-03-02
        language: en
        disclaimer: Made up.
        sign-off: { rule: engineering, limits: engineering, symptom: [engineering, field-service] }
      readings:
        fan-current: { ask: "What does the fan draw?", unit: A, range: 0 to 5 }
      limits:
        fan-current: { by: [], rows: [{ low: 1, high: 2 }] }
      faults:
        fan-stands: { title: Fan stands, remedy: [Replace it.], verify: [Look.] }
        fan-tight: { title: Fan is tight, remedy: [Oil it.], verify: [Look.] }
      symptoms:
        warm:
          title: Too warm
          rules:
            low: { when: { fan-current: below limits }, conclude: fan-stands, because: So. }
            right: { when: { fan-current: within limits }, escalate: hotline, because: So. }
            high: { when: { fan-current: above 2 A }, conclude: fan-tight, because: So. }
      cases:
        low: { symptom: warm, given: { fan-current: 0 A }, expect: fan-stands }
        right: { symptom: warm, given: { fan-current: 1 A }, expect: { escalate: hotline } }
        high: { symptom: warm, given: { fan-current: 3 A }, expect: fan-tight }
      """;

  private final Path folder;
  private final Map<String, String> environment = new HashMap<>(System.getenv());
  private String out = "";
  private String err = "";

  SmallBase(Path folder) throws IOException {
    this.folder = folder;
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("handbook.yaml"), RULES);
  }

  Path folder() {
    return folder;
  }

  Path file(String path) {
    return folder.resolve(path);
  }

  void environment(String name, String value) {
    environment.put(name, value);
  }

  void write(String path, String text) throws IOException {
    Files.createDirectories(file(path).getParent());
    Files.writeString(file(path), text);
  }

  void edit(String path, String before, String after) throws IOException {
    String text = Files.readString(file(path));
    assertTrue(text.contains(before), path + " has no " + before);
    Files.writeString(file(path), text.replace(before, after));
  }

  /** Runs a command on the knowledge base. */
  int run(String command, String... arguments) {
    String[] all = new String[arguments.length + 2];
    all[0] = command;
    all[1] = folder.toString();
    System.arraycopy(arguments, 0, all, 2, arguments.length);
    StringWriter written = new StringWriter();
    StringWriter said = new StringWriter();
    Console console =
        new Console(
            new ByteArrayInputStream(new byte[0]),
            new PrintWriter(written, true),
            new PrintWriter(said, true),
            new Console.Terminals(false, false),
            environment);
    int code = Faultwright.execute(console, all);
    out = written.toString();
    err = said.toString();
    return code;
  }

  /** Signs all that a role has to sign, as somebody of that name. */
  void signAll(String role, String name, String... further) {
    String[] arguments = new String[further.length + 7];
    String[] who = {"--all", "--role", role, "--name", name, "--date", "2026-03-01"};
    System.arraycopy(who, 0, arguments, 0, who.length);
    System.arraycopy(further, 0, arguments, who.length, further.length);
    assertEquals(0, run("sign", arguments), () -> err);
  }

  /** Standard output of the last command. */
  String out() {
    return out;
  }

  /** Standard error of the last command. */
  String err() {
    return err;
  }

  /** Copies a knowledge base, so that a test can change it. */
  static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.sorted().toList()) {
        Path copy = to.resolve(from.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(copy);
        } else {
          Files.copy(file, copy);
        }
      }
    }
  }
}
