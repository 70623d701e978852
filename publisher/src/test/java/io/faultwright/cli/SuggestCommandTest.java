package io.faultwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SuggestCommandTest {
  private static final String DEAD =
      "  dead: { symptom: ice-left, given: { model: FL-1, ice: loose }, expect: fan-dead }\n";

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void writeRulesOfWhichOneHasNoCase() throws IOException {
    String rules = CommandLineTest.HEAD + CommandLineTest.SECOND;
    Files.writeString(folder.resolve("handbook.yaml"), rules.replace(DEAD, ""));
  }

  private int run(String... args) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    Console console =
        new Console(
            new ByteArrayInputStream(new byte[0]),
            new PrintWriter(out),
            new PrintWriter(err),
            new Console.Terminals(false, false),
            Map.of());
    return Faultwright.execute(console, args);
  }

  @Test
  void whatIsSuggestedCanBePutAmongTheCasesAndWaitsToBeConfirmed() {
    String file = folder.resolve("suggested.yaml").toString();
    assertEquals(
        0, run("suggest", folder.toString(), "--to-show", "rules", "--to", file), err::toString);
    assertEquals("1 to be confirmed, in `suggested.yaml`\n", err.toString());
    assertEquals(0, run("check", folder.toString()), err::toString);
    assertTrue(
        out.toString().contains("warning[case-unconfirmed]: nobody has confirmed case"),
        out::toString);
    assertTrue(out.toString().contains("warning[rule-untested]"), out::toString);
    assertTrue(out.toString().contains("1 case: 1 passed, 0 failed"), out::toString);
    assertEquals(0, run("suggest", folder.toString(), "--to-show", "rules"));
    assertEquals("# Nothing to suggest.\n", out.toString());
  }

  @Test
  void onceConfirmedItCounts() throws IOException {
    Path file = folder.resolve("suggested.yaml");
    run("suggest", folder.toString(), "--to-show", "rules", "--to", file.toString());
    String suggested = Files.readString(file);
    assertTrue(suggested.contains("    # shows: rule `"), suggested);
    Files.writeString(
        file, suggested.replace("    expect: unconfirmed\n", "").replace("rules-say:", "expect:"));
    assertEquals(0, run("check", folder.toString(), "--strict"), out::toString);
    assertTrue(out.toString().contains("2 cases: 2 passed, 0 failed"), out::toString);
  }

  @Test
  void aFileThatIsThereStaysAsItIs() throws IOException {
    Path file = folder.resolve("mine.yaml");
    Files.writeString(file, "# mine\n");
    assertEquals(2, run("suggest", folder.toString(), "--to", file.toString()));
    assertTrue(err.toString().contains("exists already"), err::toString);
    assertEquals("# mine\n", Files.readString(file));
  }

  @Test
  void theSameRulesGetTheSameSuggestions() {
    run("suggest", folder.toString());
    String first = out.toString();
    run("suggest", folder.toString());
    assertEquals(first, out.toString());
  }

  @Test
  void whatCannotBeAskedForIsSaid() {
    assertEquals(2, run("suggest", folder.toString(), "--to-show", "luck"));
    assertTrue(err.toString().contains("luck"), err::toString);
    assertEquals(2, run("suggest", folder.toString(), "--boundary-values", "4"));
    assertTrue(err.toString().contains("`--boundary-values` cannot be `4`"), err::toString);
    assertEquals(2, run("suggest", folder.toString(), "--symptom", "ice-lef"));
    assertTrue(err.toString().contains("did you mean `ice-left`?"), err::toString);
  }
}
