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
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Recorded jobs beside the rules, as a trainer uses it. */
class FieldCommandTest {
  private static final String MAP =
      """
      columns:
        Job: origin
        Ice: { is: ice, words: { fest: untouched, lose: loose } }
        Found: { is: expect, words: { Valve: valve-stuck, Fan: fan-dead } }
      always: { symptom: ice-left, model: FL-1 }
      """;
  private static final String JOBS =
      "Job;Ice;Found;Phone\n"
          + "1;fest;Valve;1\n"
          + "2;fest;Fan;1\n"
          + "3;fets;Fan;1\n"
          + "4;lose;;1\n"
          + "5;\"lose;Fan;1\n"
          + "6;lose;Fan;1\n";
  private static final String COUNTS =
      "6 rows read: 4 run, 2 skipped; of those run, 2 agreed, 1 disagreed,"
          + " 1 without a confirmed fault\n";

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private String input = "";
  private String kb;
  private String jobs;
  private String map;

  @BeforeEach
  void write() throws IOException {
    kb = folder.resolve("kb").toString();
    write("kb/handbook.yaml", CommandLineTest.HEAD + CommandLineTest.SECOND);
    jobs = write("jobs.csv", JOBS);
    map = write("map.yaml", MAP);
  }

  private String write(String path, String text) throws IOException {
    Path file = folder.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    return file.toString();
  }

  private int run(String... args) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    Console console =
        new Console(
            new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
            new PrintWriter(out, true),
            new PrintWriter(err, true),
            new Console.Terminals(false, false),
            Map.of());
    return Faultwright.execute(console, args);
  }

  @Test
  void skippedRowsAreListedAndTheOthersCounted() {
    assertEquals(2, run("field", kb, jobs, "--columns", map));
    assertTrue(out.toString().endsWith(COUNTS), out.toString());
    assertTrue(
        out.toString().contains("fan-dead was confirmed in 1: " + jobs + ", line 3"),
        out.toString());
    assertTrue(
        err.toString().contains("note: " + jobs + ":1:15: unknown column `Phone`"), err.toString());
    assertTrue(
        err.toString().contains("`ice` has no value `fets`, and the column map no such word"),
        err.toString());
    assertTrue(err.toString().contains("did you mean `fest`?"), err.toString());
    assertTrue(err.toString().contains("jobs.csv:4:3"), err.toString());
    assertTrue(err.toString().contains("jobs.csv:6:1"), err.toString());
    assertFalse(err.toString().contains("\tat "), err.toString());
  }

  @Test
  void runCountsTheSame() {
    assertEquals(2, run("run", kb, "--input", jobs, "--columns", map));
    assertTrue(out.toString().endsWith("4 cases: 2 passed, 1 failed\n"), out.toString());
    assertTrue(err.toString().endsWith(COUNTS), err.toString());
    assertEquals(2, run("run", kb, "--input", jobs, "--columns", map, "--format", "csv"));
    assertEquals(5, out.toString().lines().count());
    assertTrue(err.toString().endsWith(COUNTS), err.toString());
  }

  @Test
  void rowsCanBePrintedInstead() {
    assertEquals(2, run("field", kb, jobs, "--columns", map, "--format", "csv"));
    assertEquals(
        jobs + ",2,row-2,1,ice-left,answered,valve-stuck,no,valve,valve-stuck,agreed",
        out.toString().lines().skip(1).findFirst().orElseThrow());
    assertEquals(5, out.toString().lines().count());
    assertTrue(err.toString().endsWith(COUNTS), err.toString());
  }

  @Test
  void machinesReadTheSame() throws IOException {
    assertEquals(2, run("field", kb, jobs, "--columns", map, "--format", "json", "--frequencies"));
    JsonNode report = new ObjectMapper().readTree(out.toString());
    JsonNode rows = report.get("rows");
    assertEquals(6, rows.get("read").asInt());
    assertEquals(4, rows.get("run").asInt());
    assertEquals(2, rows.get("skipped").asInt());
    assertEquals(2, report.get("problems").size());
    assertEquals(
        "fan-dead",
        report.at("/symptoms/0/said/1/disagreements/0/confirmed/0").asText(),
        out.toString());
    assertEquals(2, report.at("/frequencies/0/counted").asInt());
  }

  @Test
  void exitCodeSaysWhetherSomethingDisagrees() throws IOException {
    String agreeing = write("a.csv", "Job;Ice;Found\n1;fest;Valve\n");
    assertEquals(0, run("field", kb, agreeing, "--columns", map));
    assertEquals("", err.toString());
    String other = write("b.csv", "Job;Ice;Found\n1;fest;Fan\n");
    assertEquals(1, run("field", kb, agreeing, other, "--columns", map));
    assertTrue(out.toString().contains("2 rows read"), out.toString());
  }

  @Test
  void yamlAndStandardInputAreReadToo() {
    input = "cases: { a: { symptom: ice-left, given: { ice: loose }, expect: fan-dead } }\n";
    assertEquals(0, run("field", kb, "-"));
    input = "symptom,ice,expect\nice-left,loose,fan-dead\n";
    assertEquals(0, run("field", kb, "-"));
    assertTrue(out.toString().contains("1 agreed"), out.toString());
  }

  @Test
  void frequenciesAreWrittenWhenAskedFor() throws IOException {
    Path file = folder.resolve("kb/handbook.yaml");
    String before = Files.readString(file);
    assertEquals(2, run("field", kb, jobs, "--columns", map, "--frequencies"));
    assertTrue(out.toString().contains("nothing was written"), out.toString());
    assertEquals(before, Files.readString(file));
    assertEquals(2, run("field", kb, jobs, "--columns", map, "--frequencies", "--write"));
    assertTrue(out.toString().endsWith("written: handbook.yaml\n"), out.toString());
    String after = Files.readString(file);
    assertEquals(
        before
            .replace("title: Valve stuck,", "title: Valve stuck, frequency: 2,")
            .replace("title: Fan dead,", "title: Fan dead, frequency: 3,"),
        after);
    assertEquals(0, run("check", kb));
  }

  @Test
  void mistakesAreExplained() throws IOException {
    assertEquals(2, run("field", kb));
    assertTrue(err.toString().contains("`FILE` is missing"), err.toString());
    assertEquals(2, run("field", kb, jobs, "--write"));
    assertTrue(err.toString().contains("`--write` goes with `--frequencies`"), err.toString());
    assertEquals(2, run("field", kb, folder.resolve("none.csv").toString()));
    assertTrue(err.toString().contains("cannot be read"), err.toString());
    assertEquals(2, run("run", kb, "--columns", map));
    assertTrue(err.toString().contains("`--columns` goes with `--input`"), err.toString());
    String broken = write("broken.yaml", "columns: { Ice: icy }\n");
    assertEquals(2, run("field", kb, jobs, "--columns", broken));
    assertTrue(err.toString().contains("did you mean `ice`?"), err.toString());
    assertTrue(err.toString().contains("1 | columns: { Ice: icy }"), err.toString());
    assertEquals("", out.toString());
  }

  @Test
  void tableWithoutASymptomShowsItsHeader() {
    assertEquals(2, run("field", kb, jobs));
    assertTrue(err.toString().contains("there is no column `symptom`"), err.toString());
    assertTrue(err.toString().contains("Job;Ice;Found;Phone"), err.toString());
  }
}
