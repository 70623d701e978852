package io.faultwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CommandLineTest {
  static final String HEAD =
      """
      handbook:
        { title: Small, maker: Brantmoor Cold, revision: "1", date: 2026-03-02, language: en,
          disclaimer: Made up. }
      equipment:
        families: { fell: { title: Fell } }
        models: { FL-1: { title: Fell 1, family: fell, options: {} } }
      readings:
        ice: { ask: "How is the ice?", values: [untouched, loose, none], normal: none }
      faults:
        valve-stuck: { title: Valve stuck, remedy: [Replace it.], verify: [Look.] }
        fan-dead: { title: Fan dead, remedy: [Replace it.], verify: [Look.] }
      cases:
        stuck: { symptom: ice-left, given: { model: FL-1, ice: untouched }, expect: valve-stuck }
        dead: { symptom: ice-left, given: { model: FL-1, ice: loose }, expect: fan-dead }
      symptoms:
        ice-left:
          title: Ice is left
          recognise: { ice: [untouched, loose] }
          rules:
            valve: { when: { ice: untouched }, conclude: valve-stuck, because: It is. }
      """;
  static final String SECOND =
      "      fan: { when: { ice: loose }, conclude: fan-dead, because: It is. }\n";

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private String input = "";
  private boolean terminal;
  private Map<String, String> environment = Map.of();

  @BeforeEach
  void writeKnowledgeBases() throws IOException {
    write("clean/handbook.yaml", HEAD + SECOND);
    write("gap/handbook.yaml", HEAD);
    write("broken/handbook.yaml", HEAD.replace("ice: loose", "icy: loose"));
  }

  @Test
  void cleanKnowledgeBaseExitsWithZero() {
    assertEquals(0, run("check", kb("clean")));
    assertTrue(out.toString().endsWith("no errors, no warnings\n"), out.toString());
    assertEquals("", err.toString());
  }

  @Test
  void formatsOfForgesHaveTheSameExitCodes() throws Exception {
    assertEquals(0, run("check", kb("clean"), "--format", "sarif"));
    assertEquals(0, run("check", kb("clean"), "--format", "junit"));
    assertEquals(1, run("check", kb("gap"), "--format", "junit"));
    assertTrue(out.toString().contains("handbook.yaml:16:3"), out.toString());
    String page = "https://handbook.example/findings";
    assertEquals(1, run("check", kb("gap"), "--format", "sarif", "--pages", page));
    assertTrue(out.toString().contains("\"" + page + "/gap.md\""), out.toString());
    out.getBuffer().setLength(0);
    assertEquals(2, run("check", kb("broken"), "--format", "sarif"));
    JsonNode result = new ObjectMapper().readTree(out.toString()).at("/runs/0/results/0");
    assertEquals("unreadable-input", result.get("ruleId").asText());
    assertEquals(2, run("check", kb("missing"), "--format", "junit"));
    assertTrue(out.toString().contains("errors=\"1\""), out.toString());
    assertEquals("", err.toString());
    assertEquals(2, run("check", kb("gap"), "--pages", "docs/findings"));
    assertTrue(err.toString().contains("`--pages` cannot be `docs/findings`"), err.toString());
  }

  @Test
  void errorsExitWithOne() {
    assertEquals(1, run("check", kb("gap")));
    assertTrue(out.toString().contains("error[gap]"), out.toString());
    assertTrue(out.toString().contains("handbook.yaml:16:3"), out.toString());
    assertEquals("", err.toString());
  }

  @Test
  void jsonOfACheckGoesToStandardOutput() throws IOException {
    assertEquals(1, run("check", kb("gap"), "--format", "json"));
    JsonNode report = new ObjectMapper().readTree(out.toString());
    assertEquals("gap", report.get("findings").get(0).get("kind").asText());
    assertTrue(report.get("findings").get(0).get("replayed").asBoolean());
    assertEquals("", err.toString());
  }

  @Test
  void unreadableInputExitsWithTwo() throws IOException {
    assertEquals(2, run("check", kb("broken")));
    assertEquals("", out.toString());
    assertTrue(err.toString().contains("handbook.yaml:14:52"), err.toString());
    assertTrue(err.toString().contains("did you mean `ice`?"), err.toString());
  }

  @Test
  void unreadableInputIsJsonForMachines() throws IOException {
    assertEquals(2, run("check", kb("broken"), "--format", "json"));
    JsonNode problem = new ObjectMapper().readTree(out.toString()).get("problems").get(0);
    assertEquals(14, problem.get("places").get(0).get("line").asInt());
    assertEquals("", err.toString());
  }

  @Test
  void warningsCountWhenStrict() throws IOException {
    String unused = "readings:\n  spare: { ask: \"Spare?\", values: yes/no }\n";
    write("clean/more.yaml", unused);
    assertEquals(0, run("check", kb("clean")));
    assertEquals(1, run("check", kb("clean"), "--strict"));
  }

  @Test
  void wrongUseExitsWithTwoAndSaysWhatWasMeant() {
    assertMistake("there is no command `chek`", "did you mean `check`?", "chek", kb("clean"));
    assertMistake(
        "there is no option `--symptm`",
        "did you mean `--symptom`?",
        "check",
        kb("clean"),
        "--symptm",
        "x");
    assertMistake("`KB` is missing", "--help", "check");
    assertMistake("a command is missing", "--help");
    assertMistake(
        "`--seconds` cannot be `0`", "`--seconds N`", "check", kb("clean"), "--seconds", "0");
    assertMistake("`--format` cannot be `xml`", "", "check", kb("clean"), "--format", "xml");
    assertMistake("is one argument too many", "", "check", kb("clean"), "twice");
    assertMistake("is not there", "did you mean `" + kb("clean") + "`?", "check", kb("claen"));
    assertMistake(
        "is a file, not a folder", "give the folder", "check", kb("clean") + "/handbook.yaml");
    assertMistake(
        "there is no symptom `ice-lost`",
        "did you mean `ice-left`?",
        "check",
        kb("clean"),
        "--symptom",
        "ice-lost");
    assertMistake("there is no case `stack`", "`stuck`", "run", kb("clean"), "stack");
    assertMistake(
        "not both", "--help", "run", kb("clean"), "stuck", "--input", kb("clean") + "/x.csv");
    assertMistake("cannot be read", "check", "run", kb("clean"), "--input", kb("none.csv"));
  }

  private void assertMistake(String message, String help, String... args) {
    err.getBuffer().setLength(0);
    assertEquals(2, run(args));
    assertTrue(err.toString().contains(message), err.toString());
    assertTrue(err.toString().contains(help), err.toString());
    assertFalse(err.toString().contains("\tat "), err.toString());
    assertEquals("", out.toString());
  }

  @Test
  void casesOfTheKnowledgeBaseRun() {
    assertEquals(0, run("run", kb("clean")));
    assertTrue(out.toString().endsWith("2 cases: 2 passed, 0 failed\n"), out.toString());
  }

  @Test
  void failedCaseExitsWithOne() {
    assertEquals(1, run("run", kb("gap")));
    assertEquals(0, run("run", kb("gap"), "stuck"));
  }

  @Test
  void casesComeFromStandardInput() throws IOException {
    input = "case,symptom,ice\nx,ice-left,loose\ny,ice-left,lose\n";
    assertEquals(2, run("run", kb("clean"), "--input", "-", "--format", "json"));
    JsonNode report = new ObjectMapper().readTree(out.toString());
    assertEquals("fan-dead", report.get("cases").get(0).get("answers").get(0).asText());
    assertTrue(report.get("cases").get(0).get("passed").isNull());
    assertEquals(3, report.get("problems").get(0).get("places").get(0).get("line").asInt());
  }

  @Test
  void reportOfACheckCanBePipedIntoRun() {
    assertEquals(1, run("check", kb("gap"), "--format", "json"));
    input = out.toString();
    out.getBuffer().setLength(0);
    assertEquals(0, run("run", kb("gap"), "--input", "-", "--format", "csv"));
    assertTrue(out.toString().contains("finding-1,ice-left,no-answer"), out.toString());
  }

  @Test
  void explanationNamesTheTests() {
    assertEquals(0, run("run", kb("clean"), "dead", "--explain"));
    assertTrue(out.toString().contains("cannot fire"), out.toString());
    assertTrue(out.toString().contains("(found Loose)"), out.toString());
  }

  @Test
  void colourIsForTerminalsOnly() {
    run("check", kb("gap"));
    assertFalse(out.toString().contains("\u001B"));
    terminal = true;
    run("check", kb("gap"));
    assertTrue(out.toString().contains("\u001B[1;31merror[gap]"), out.toString());
  }

  @Test
  void noColorIsRespected() {
    terminal = true;
    environment = Map.of("NO_COLOR", "1");
    run("check", kb("gap"));
    run("--help");
    assertFalse(out.toString().contains("\u001B"), out.toString());
  }

  @Test
  void dumbTerminalGetsNeitherColourNorMovingLines() {
    terminal = true;
    environment = Map.of("TERM", "dumb");
    run("check", kb("gap"));
    assertFalse(out.toString().contains("\u001B"));
    assertEquals("", err.toString());
  }

  @Test
  void progressMovesOnATerminalAndIsWipedAtTheEnd() {
    terminal = true;
    run("check", kb("clean"));
    assertTrue(err.toString().contains("1 of 1 symptoms"), err.toString());
    assertTrue(err.toString().endsWith("\r\u001B[K"), err.toString());
  }

  @Test
  void timingsGoToStandardErrorOnly() {
    run("check", kb("clean"));
    String without = out.toString();
    out.getBuffer().setLength(0);
    run("check", kb("clean"), "--timings");
    assertEquals(without, out.toString());
    assertTrue(err.toString().matches("(?s)(\\w+ +\\d+ ms\\R){5}"), err.toString());
  }

  @Test
  void helpAndVersionExitWithZero() {
    assertEquals(0, run("--help"));
    assertEquals(0, run("check", "--help"));
    assertEquals(0, run("--version"));
    assertTrue(out.toString().contains("Exit codes: 0 clean"), out.toString());
    assertTrue(out.toString().contains("faultwright "), out.toString());
  }

  @Test
  void errorsKeepAnythingFromBeingPublished() {
    Path to = folder.resolve("site");
    assertEquals(1, run("publish", kb("gap"), "--to", to.toString()));
    assertFalse(Files.exists(to));
    assertTrue(err.toString().contains("error[gap]"), err.toString());
    assertTrue(err.toString().contains("nothing was published"), err.toString());
    assertEquals("", out.toString());
  }

  @Test
  void draftIsPublishedInSpiteOfErrorsAndMarked() throws IOException {
    Path to = folder.resolve("site");
    assertEquals(0, run("publish", kb("gap"), "--to", to.toString(), "--draft"), err.toString());
    assertTrue(Files.readString(to.resolve("index.html")).contains("DRAFT"));
  }

  @Test
  void cleanHandbookIsPublished() throws IOException {
    Path to = folder.resolve("site");
    assertEquals(0, run("publish", kb("clean"), "--to", to.toString()), err.toString());
    assertFalse(Files.readString(to.resolve("index.html")).contains("DRAFT"));
    assertTrue(out.toString().startsWith("published to "), out.toString());
  }

  @Test
  void textsWithoutATranslationAreToldOf() throws IOException {
    write(
        "german/handbook.yaml",
        (HEAD + SECOND).replace("language: en", "language: en, translated-to: [de]")
            + "translations:\n  de: { Ice is left: Eis bleibt }\n");
    Path to = folder.resolve("site");
    assertEquals(0, run("publish", kb("german"), "--to", to.toString()), err.toString());
    assertTrue(err.toString().contains("warning: some texts have no translation"), err.toString());
  }

  @Test
  void picturesOfGuidesArePublishedWithThem() throws IOException {
    write("clean/guides/valve.md", "# Valve\n\n![The valve](pictures/valve.png)\n");
    write("clean/guides/pictures/valve.png", "picture");
    write("clean/guides/.hidden.png", "secret");
    Path to = folder.resolve("site");
    assertEquals(0, run("publish", kb("clean"), "--to", to.toString()), err.toString());
    try (Stream<Path> files = Files.walk(to)) {
      List<String> names = files.map(file -> file.getFileName().toString()).toList();
      assertTrue(names.contains("valve.png"), names.toString());
      assertFalse(names.contains(".hidden.png"), names.toString());
    }
  }

  @Test
  void linkToNothingKeepsAReleaseBackAndIsToldOfADraft() throws IOException {
    write("clean/guides/valve.md", "# Valve\n\n![The valve](missing.png)\n");
    Path to = folder.resolve("site");
    assertEquals(2, run("publish", kb("clean"), "--to", to.toString()));
    assertFalse(Files.exists(to));
    assertTrue(err.toString().contains("guides/valve.md:3"), err.toString());
    err.getBuffer().setLength(0);
    assertEquals(0, run("publish", kb("clean"), "--to", to.toString(), "--draft"));
    assertTrue(err.toString().contains("guides/valve.md:3"), err.toString());
  }

  @Test
  void foreignFolderIsNotOverwritten() throws IOException {
    write("site/thesis.txt", "mine");
    assertEquals(2, run("publish", kb("clean"), "--to", folder.resolve("site").toString()));
    assertTrue(err.toString().contains("thesis.txt"), err.toString());
    assertEquals("mine", Files.readString(folder.resolve("site/thesis.txt")));
  }

  private String kb(String name) {
    return folder.resolve(name).toString();
  }

  private void write(String name, String text) throws IOException {
    Files.createDirectories(folder.resolve(name).getParent());
    Files.writeString(folder.resolve(name), text);
  }

  private int run(String... args) {
    Console console =
        new Console(
            new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
            new PrintWriter(out, true),
            new PrintWriter(err, true),
            new Console.Terminals(terminal, terminal),
            environment);
    return Faultwright.execute(console, args);
  }
}
