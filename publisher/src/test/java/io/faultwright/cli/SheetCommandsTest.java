package io.faultwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Export and import as a trainer uses them. */
class SheetCommandsTest {
  private static final String LIMITS =
      """
      readings:
        ambient: { ask: "How warm?", unit: °C, range: -30 to 50 }
        pressure: { ask: "Which pressure?", unit: bar(g), range: 0 to 30 }
      limits:
        pressure:
          by: [ambient]
          between: interpolate
          rows:
            # in the cold
            - { ambient: -20 °C, low: 5.0, high: 7.5 }
            - { ambient: 45 °C, low: 17.5, high: 20.5 }
      """;

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private String kb;

  @BeforeEach
  void writeKnowledgeBase() throws IOException {
    kb = folder.resolve("kb").toString();
    write("kb/handbook.yaml", CommandLineTest.HEAD + CommandLineTest.SECOND);
    write("kb/limits.yaml", LIMITS);
  }

  @Test
  void outAndInAgainChangesNothing() throws IOException {
    for (String name : List.of("pressure.xlsx", "pressure.csv")) {
      String file = folder.resolve(name).toString();
      assertEquals(0, run("export", kb, "--to", file));
      assertEquals("written: " + file + "\n", out.toString());
      SortedMap<String, String> before = contents();
      assertEquals(0, run("import", kb, file));
      assertEquals("as before: pressure\nnothing was written: nothing changes\n", out.toString());
      assertEquals(before, contents());
    }
  }

  @Test
  void standardsAreWrittenToAFolder() throws IOException {
    Path to = folder.resolve("tables");
    assertEquals(0, run("export", kb, "--format", "dmn", "--to", to.toString()));
    assertTrue(Files.readString(to.resolve("ice-left.dmn")).contains("hitPolicy=\"UNIQUE\""));
    assertEquals(2, run("export", kb, "--format", "dmn", "--to", to.toString()));
    assertTrue(err.toString().contains("is there already"), err.toString());
    assertEquals(0, run("export", kb, "--format", "dmn", "--to", to.toString(), "--replace"));
    assertEquals(
        2, run("export", kb, "--format", "dmn", "--limits", "pressure", "--to", to.toString()));
    Files.writeString(to.resolve("note.txt"), "mine");
    assertEquals(2, run("export", kb, "--format", "dmn", "--to", to.toString(), "--replace"));
    assertTrue(err.toString().contains("`note.txt`"), err.toString());
  }

  @Test
  void aHandbookWithErrorsIsNotExported() throws IOException {
    write("kb/handbook.yaml", CommandLineTest.HEAD);
    Path to = folder.resolve("tables");
    assertEquals(1, run("export", kb, "--format", "dmn", "--to", to.toString()));
    assertTrue(err.toString().contains("error[gap]"), err.toString());
    assertTrue(err.toString().contains("nothing was written"), err.toString());
    assertFalse(Files.exists(to));
  }

  @Test
  void oneFigureIsOneChangedLine() throws IOException {
    String file = write("p.csv", "ambient;low;high\r\n-20;5,25;7,5\r\n45;17,5;20,5\r\n");
    String expected =
        """
        pressure in limits.yaml
          changed  { ambient: -20 °C, low: 5.0, high: 7.5 }
                     low: 5.0 -> 5.25
          comment  limits.yaml:9 # in the cold
                   kept at a row that changed; does it still hold?
          rows: 1 changed, 0 new, 0 gone, 1 as before
        """;
    SortedMap<String, String> before = contents();
    assertEquals(0, run("import", kb, file, "--limits", "pressure", "--preview"));
    assertEquals(expected + "nothing was written: this is a preview\n", out.toString());
    assertEquals(before, contents());
    assertEquals(0, run("import", kb, file, "--limits", "pressure"));
    assertEquals(expected + "written: limits.yaml\n", out.toString());
    before.put("kb/limits.yaml", LIMITS.replace("5.0", "5.25"));
    assertEquals(before, contents());
  }

  @Test
  void aCommentIsLostOnlyOnDemand() throws IOException {
    String file = write("p.csv", "ambient,low,high\n45,17.5,20.5\n");
    SortedMap<String, String> before = contents();
    assertEquals(2, run("import", kb, file, "--limits", "pressure"));
    assertEquals(
        """
        error: this comment would be lost
          limits.yaml:9:7
            9 |       # in the cold
              |       ^^^^^^^^^^^^^
          help: move it away from rows that go, or import with `--drop-comments`
        """,
        err.toString());
    assertEquals(before, contents());
    assertEquals(0, run("import", kb, file, "--limits", "pressure", "--drop-comments"));
    assertFalse(Files.readString(folder.resolve("kb/limits.yaml")).contains("in the cold"));
  }

  @Test
  void badSheetsAndBadKnowledgeBasesLoseNothing() throws IOException {
    String wrong = write("wrong.csv", "ambient,low,high\n-20,5,x\n");
    String good = write("good.csv", "ambient,low,high\n-20,5,8\n45,17.5,20.5\n");
    SortedMap<String, String> before = contents();
    assertMistake("expected a number, found `x`", "import", kb, wrong, "--limits", "pressure");
    assertMistake("wrong.csv:2:7", "import", kb, wrong, "--limits", "pressure");
    assertMistake("did you mean `pressure`?", "import", kb, good, "--limits", "presure");
    assertMistake("is neither .xlsx nor .csv", "import", kb, good + ".ods");
    assertMistake("cannot be read", "import", kb, good.replace("good", "none"));
    assertMistake("`FILE` is missing", "import", kb);
    assertMistake("`--to FILE|FOLDER` is missing", "export", kb);
    assertMistake("is there already", "export", kb, "--to", good);
    assertMistake("did you mean `pressure`?", "export", kb, "--to", "x.csv", "--limits", "presure");
    assertEquals(before, contents());
    write("kb/broken.yaml", "readings: { a b: 1 }\n");
    before = contents();
    assertMistake("broken.yaml:1", "import", kb, good, "--limits", "pressure");
    assertMistake("broken.yaml:1", "export", kb, "--to", folder.resolve("n.csv").toString());
    assertEquals(before, contents());
  }

  @Test
  void replacesOnDemandTheFileThatIsThere() throws IOException {
    String file = folder.resolve("p.xlsx").toString();
    assertEquals(0, run("export", kb, "--to", file));
    byte[] first = Files.readAllBytes(Path.of(file));
    assertEquals(0, run("export", kb, "--to", file, "--replace"));
    assertArrayEquals(first, Files.readAllBytes(Path.of(file)));
  }

  @Test
  void onlyExportAndImportLoadTheSpreadsheetLibrary() throws Exception {
    String library = "org.dhatim.fastexcel";
    assertFalse(loaded("check", kb).contains(library));
    String file = folder.resolve("p.xlsx").toString();
    assertTrue(loaded("export", kb, "--to", file).contains(library), "the test sees no classes");
  }

  /** What a machine of its own says that it loads for a command. */
  private static String loaded(String... args) throws IOException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    List<String> command =
        Stream.concat(
                Stream.of(
                    java,
                    "-XX:TieredStopAtLevel=1",
                    "-Xlog:class+load",
                    "-cp",
                    System.getProperty("java.class.path"),
                    "io.faultwright.cli.Main"),
                Stream.of(args))
            .toList();
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }

  private void assertMistake(String words, String... args) {
    assertEquals(2, run(args));
    assertTrue(err.toString().contains(words), err.toString());
    assertFalse(err.toString().contains("\tat "), err.toString());
    assertEquals("", out.toString());
  }

  private SortedMap<String, String> contents() throws IOException {
    SortedMap<String, String> contents = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = folder.relativize(file).toString().replace('\\', '/');
        contents.put(name, new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
      }
    }
    contents.replaceAll((name, text) -> name.endsWith(".yaml") ? utf8(text) : text);
    return contents;
  }

  private static String utf8(String bytes) {
    return new String(bytes.getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8);
  }

  private String write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    return file.toString();
  }

  private int run(String... args) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    Console console =
        new Console(
            new ByteArrayInputStream(new byte[0]),
            new PrintWriter(out, true),
            new PrintWriter(err, true),
            new Console.Terminals(false, false),
            Map.of());
    return Faultwright.execute(console, args);
  }
}
