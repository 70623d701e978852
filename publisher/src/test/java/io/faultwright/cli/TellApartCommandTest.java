package io.faultwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
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

class TellApartCommandTest {
  private static final String OPEN =
      "cases:\n  open: { symptom: ice-left, given: { model: FL-1 }, expect: nothing yet }\n";

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void write() throws IOException {
    Files.writeString(
        folder.resolve("handbook.yaml"), CommandLineTest.HEAD + CommandLineTest.SECOND);
    Files.writeString(folder.resolve("cases.yaml"), OPEN);
  }

  private int run(String... args) {
    Console console =
        new Console(
            new ByteArrayInputStream(new byte[0]),
            new PrintWriter(out),
            new PrintWriter(err),
            new Console.Terminals(false, false),
            Map.of());
    String[] all = new String[args.length + 2];
    all[0] = "tell-apart";
    all[1] = folder.toString();
    System.arraycopy(args, 0, all, 2, args.length);
    return Faultwright.execute(console, all);
  }

  @Test
  void everyTwoFaultsAreToldApartByTheEasiestReading() {
    assertEquals(0, run(), err.toString());
    assertTrue(out.toString().contains("2 faults, 1 pair: all told apart\n"), out.toString());
    assertTrue(out.toString().contains("  by ice (1 min, outside)\n"), out.toString());
    assertTrue(out.toString().contains("    fan-dead from valve-stuck\n"), out.toString());
    assertEquals("", err.toString());
  }

  @Test
  void namedFaultsAreSaidInDetail() {
    assertEquals(0, run("valve-stuck", "--symptom", "ice-left"), err.toString());
    assertTrue(out.toString().contains("  alone          always by ice (1 min"), out.toString());
  }

  @Test
  void jsonSaysTheSame() throws IOException {
    assertEquals(0, run("--format", "json"), err.toString());
    JsonNode pair = new ObjectMapper().readTree(out.toString()).at("/symptoms/0/pairs/0");
    assertEquals("ice", pair.at("/cheapest/take/0").asText());
    assertTrue(pair.get("always").asBoolean());
    assertTrue(pair.get("both").isNull());
  }

  @Test
  void aCaseIsToldWhatToReadNext() {
    assertEquals(0, run("--case", "open"), err.toString());
    assertTrue(
        out.toString().contains("  still possible 50 % Fan dead (fan-dead)\n"), out.toString());
    assertTrue(out.toString().contains("  next           ice (1 min, outside)\n"), out.toString());
    assertTrue(out.toString().contains("decides in 100 %"), out.toString());
  }

  @Test
  void aDecidedCaseHasNothingToReadNext() throws IOException {
    assertEquals(0, run("--case", "stuck", "--format", "json"), err.toString());
    JsonNode prospect = new ObjectMapper().readTree(out.toString());
    assertEquals(1.0, prospect.at("/stillPossible/0/likelihood").asDouble());
    assertEquals(0, prospect.get("next").size());
  }

  @Test
  void whatIsNotThereIsNamedWithTheNearest() {
    assertEquals(2, run("valve-stuk"));
    assertTrue(err.toString().contains("there is no fault `valve-stuk`"), err.toString());
    assertTrue(err.toString().contains("did you mean `valve-stuck`?"), err.toString());
    assertEquals(2, run("--case", "opn"));
    assertTrue(err.toString().contains("did you mean `open`?"), err.toString());
    assertEquals(2, run("--symptom", "ice-lef"));
    assertTrue(err.toString().contains("did you mean `ice-left`?"), err.toString());
  }

  @Test
  void aCaseGoesWithNothingElse() {
    assertEquals(2, run("valve-stuck", "--case", "open"));
    assertTrue(err.toString().contains("give `--case` alone"), err.toString());
  }
}
