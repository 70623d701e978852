package io.faultwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.faultwright.pipeline.Stop;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class CasesCommandTest {
  private static final String RULES = CommandLineTest.HEAD + CommandLineTest.SECOND;
  private static final String DEAD =
      "  dead: { symptom: ice-left, given: { model: FL-1, ice: loose }, expect: fan-dead }\n";

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private boolean terminal;

  @BeforeEach
  void write() throws IOException {
    write("whole", RULES);
    write("half", RULES.replace(DEAD, ""));
    write("failing", RULES.replace("expect: fan-dead", "expect: valve-stuck"));
  }

  private void write(String kb, String rules) throws IOException {
    Files.createDirectories(folder.resolve(kb));
    Files.writeString(folder.resolve(kb).resolve("handbook.yaml"), rules);
  }

  private String kb(String name) {
    return folder.resolve(name).toString();
  }

  private Console console() {
    return new Console(
        new ByteArrayInputStream(new byte[0]),
        new PrintWriter(out),
        new PrintWriter(err),
        new Console.Terminals(false, terminal),
        Map.of());
  }

  private int run(String... args) {
    return Faultwright.execute(console(), args);
  }

  @Test
  void casesThatShowEveryRuleLeaveNoneOpen() {
    assertEquals(0, run("cases", kb("whole")), err.toString());
    assertTrue(out.toString().startsWith("Small\n2 cases measured, 0 failed\n"), out.toString());
    assertTrue(out.toString().matches("(?s).*\\n  ice-left +2 +2/2 .*"), out.toString());
    assertEquals("", err.toString());
  }

  @Test
  void somethingOpenIsNoMistake() {
    assertEquals(0, run("cases", kb("half")));
    assertTrue(out.toString().contains("rules fired: 1 open"), out.toString());
    assertTrue(out.toString().contains("handbook.yaml:19"), out.toString());
  }

  @Test
  void answersOnTheChartCount() {
    run("cases", kb("half"));
    assertTrue(out.toString().contains("answers on the chart: 1 open"), out.toString());
    assertTrue(
        out.toString().contains("`How is the ice?` answered `Loose`  handbook.yaml:8"),
        out.toString());
  }

  @Test
  void failedCasesExitWithOne() {
    assertEquals(1, run("cases", kb("failing")));
    assertTrue(out.toString().contains("1 case measured, 1 failed"), out.toString());
  }

  @Test
  void mistakesAreCountedWhereAsked() throws IOException {
    assertEquals(0, run("cases", kb("half"), "--mistakes", "--format", "json"));
    JsonNode mistakes = new ObjectMapper().readTree(out.toString()).get("mistakes");
    assertTrue(mistakes.get("killed").asInt() > 0, mistakes.toString());
    assertTrue(mistakes.get("survived").asInt() > 0, mistakes.toString());
  }

  @Test
  void threeBoundaryValuesAndNoOthers() {
    assertEquals(0, run("cases", kb("whole"), "--boundary-values", "3"));
    assertEquals(2, run("cases", kb("whole"), "--boundary-values", "4"));
    assertTrue(err.toString().contains("`--boundary-values` cannot be `4`"), err.toString());
  }

  @Test
  void unknownSymptomExitsWithTwo() {
    assertEquals(2, run("cases", kb("whole"), "--symptom", "ice-lift"));
    assertTrue(err.toString().contains("did you mean `ice-left`?"), err.toString());
    assertEquals("", out.toString());
  }

  @Test
  void pageIsOneFileThatNeedsNoOther() throws IOException {
    Path page = folder.resolve("new/cases.html");
    assertEquals(0, run("cases", kb("half"), "--mistakes", "--page", page.toString()));
    String html = Files.readString(page);
    assertTrue(html.contains("<th scope=\"row\">fan</th>"), html);
    assertTrue(html.contains("handbook.yaml:19"), html);
    assertFalse(html.contains("src=") || html.contains("href=") || html.contains("<script"), html);
  }

  @Test
  void progressMovesOnATerminalOnly() {
    terminal = true;
    run("cases", kb("whole"), "--mistakes");
    assertTrue(err.toString().contains("coverage ["), err.toString());
    assertTrue(err.toString().contains("of 3 rules and tables"), err.toString());
    assertTrue(err.toString().endsWith("\r\u001B[K"), err.toString());
  }

  @Test
  @Timeout(30)
  void interruptedWorkIsAskedToEndAndWaitedFor() throws InterruptedException {
    Stop stop = new Stop(Optional.empty());
    Interruption interruption = new Interruption(stop, console());
    Thread ending = new Thread(interruption::interrupted);
    ending.start();
    ending.join(200);
    assertTrue(ending.isAlive(), "the process would end before the report is out");
    interruption.close();
    ending.join();
    assertTrue(err.toString().startsWith("stopping; the report follows"), err.toString());
  }

  /** SIGINT as a terminal sends it, to a process of its own that is at work. */
  @Test
  @Timeout(300)
  @DisabledOnOs(value = OS.WINDOWS, disabledReason = "there is no `kill` on Windows")
  void interruptedProcessPrintsWhatWasDone() throws Exception {
    Path messages = folder.resolve("err");
    Process process = start("cases", Path.of("..", "rules", "walk-in-freezers").toString());
    while (!Files.readString(messages).contains("coverage")) {
      assertTrue(process.isAlive(), "it ended before it was interrupted");
      Thread.sleep(50);
    }
    new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start().waitFor();
    process.waitFor();
    String report = Files.readString(folder.resolve("out"));
    assertTrue(report.matches("(?s).*\\nstopped: \\d+ of \\d+ pieces of work done\\n"), report);
    assertTrue(Files.readString(messages).contains("the report follows"));
  }

  /** A process whose standard error counts as a terminal, so that its progress is seen. */
  private Process start(String... args) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Dfaultwright.terminal=err");
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
    command.addAll(List.of(args));
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .redirectError(folder.resolve("err").toFile())
            .redirectOutput(folder.resolve("out").toFile());
    builder.environment().put("TERM", "xterm");
    return builder.start();
  }
}
