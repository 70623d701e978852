package io.faultwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FollowCommandTest {
  private static final Path CYCLE =
      Path.of("..", "engine", "src", "test", "resources", "sequences", "heating-cycle");

  @TempDir Path folder;

  private final Shell shell = new Shell();

  @BeforeEach
  void write() throws IOException {
    write("noted.log", "0:10 call becomes made\n2:38 release-switch opens\n3:03 shows FULL\n");
    write("early.log", "0:10 call becomes made\n1:10 heater on\n3:10 heater off\n");
  }

  private Path write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private int follow(String... further) {
    return follow(CYCLE, "heating-cycle", further);
  }

  private int follow(Path base, String sequence, String... further) {
    List<String> all = new ArrayList<>(List.of("follow", base.toString(), sequence));
    all.addAll(List.of(further));
    return shell.run(all.toArray(String[]::new));
  }

  private String in(String name) {
    return folder.resolve(name).toString();
  }

  private void said(String text) {
    assertTrue((shell.out() + shell.err()).contains(text), shell.out() + shell.err());
  }

  @Test
  void aLogThatAgreesEndsWellAndTellsTheStop() {
    assertEquals(0, follow("--model", "MO-1", "--software", "2.10", "--log", in("noted.log")));
    said("Release switch opened at 2:38 and had not closed 25 s later\n");
    said("log and model agree: 3 entries up to 3:03, 1 of them observed, clock within 1 s\n");
    assertEquals("", shell.err());
  }

  @Test
  void aLogThatPartsSaysWhereAndEndsWithOne() {
    assertEquals(1, follow("--model", "MO-1", "--software", "2.9", "--log", in("early.log")));
    said("log and model part at 3:10\n  log says       now Heater off (");
    said("model says     Heater on since 1:10, in Heating since 1:10\n");
    said("it waited for  Release switch opens, then Releasing\n");
    said(
        "Longest heating: 3 min over at 4:10, then Building, or Stopped after three longest"
            + " heatings at 3 of 3\n");
  }

  @Test
  void theClockMayBeWrongByAsMuchAsIsSaid() {
    assertEquals(0, followEarly("1 min"));
    assertEquals(1, followEarly("59 s"));
  }

  private int followEarly(String within) {
    return follow(
        "--model", "MO-1", "--software", "2.9", "--log", in("early.log"), "--within", within);
  }

  @Test
  void softwareMayBeLeftOutWhereThereIsOne() {
    assertEquals(0, follow("--model", "MO-2", "--log", in("noted.log")));
    assertEquals(2, follow("--model", "MO-1", "--log", in("noted.log")));
    said("`MO-1` has several software versions");
    said("add `--software` with one of `2.9`, `2.10`");
  }

  @Test
  void whatIsNotThereIsNamedWithTheNearest() {
    assertEquals(2, follow(CYCLE, "heating-cycl", "--model", "MO-1", "--log", "x"));
    said("there is no sequence `heating-cycl`");
    said("did you mean `heating-cycle`?");
    assertEquals(2, follow("--model", "MO-3", "--log", "x"));
    said("there is no model `MO-3`");
    assertEquals(2, follow("--model", "MO-1", "--software", "2.1", "--log", "x"));
    said("did you mean `2.10`?");
    assertEquals(2, follow("--model", "MO-2", "--log", in("nothing.log")));
    said("cannot be read");
    assertEquals(2, follow("--model", "MO-2"));
    said("`--log FILE` is missing");
    assertEquals(2, follow("--model", "MO-2", "--log", in("noted.log"), "--within", "2"));
    said("the time `2` has no unit");
    assertEquals(2, follow("--model", "MO-2", "--log", in("noted.log"), "--last", "-1"));
    said("`--last` is zero or more");
  }

  @Test
  void whatALogCannotMeanIsShownWithItsLine() throws IOException {
    write("wrong.log", "0:10 call becomes made\n1:10 heter on\n");
    assertEquals(2, follow("--model", "MO-2", "--log", in("wrong.log")));
    said("    2 | 1:10 heter on\n");
    said("help: did you mean `heater`?");
    assertEquals("", shell.out());
  }

  @Test
  void aTableNeedsAMapOfItsColumns() throws IOException {
    write("a.csv", "Time;Call;Heat\n0:00;0;off\n0:10;1;off\n1:10;1;on\n4:10;1;off\n");
    assertEquals(2, follow("--model", "MO-1", "--software", "2.9", "--log", in("a.csv")));
    said("add `--columns MAP`");
    write(
        "map.yaml",
        """
        time: Time
        columns:
          Call: { is: call, words: { 0: none, 1: made } }
          Heat: heater
        """);
    assertEquals(0, followTable("2.9"), shell.err());
    assertEquals(1, followTable("2.10"));
    write("map.yaml", "time: Time\ncolumns: { Call: cal }\n");
    assertEquals(2, followTable("2.9"));
    said("    2 | columns: { Call: cal }\n");
    said("did you mean `call`?");
  }

  private int followTable(String software) {
    return follow(
        "--model",
        "MO-1",
        "--software",
        software,
        "--log",
        in("a.csv"),
        "--columns",
        in("map.yaml"));
  }

  @Test
  void timesAreSetWithinWhatTheControllerTakes() throws IOException {
    Path base = copy("lasts: 60 s }", "lasts: 60 s, set: 30 s to 5 min }");
    write("set.log", "0:10 call becomes made\n2:10 phase heating\n");
    assertEquals(0, followSet(base, "drain-time=2 min"), shell.err());
    assertEquals(1, followSet(base, "drain-time=123 s"));
    assertEquals(2, followSet(base, "drain-time=10 min"));
    said("`drain-time` can be set from 30 s to 300 s, found 600 s");
    assertEquals(2, followSet(base, "drain-tim=2 min"));
    said("did you mean `drain-time`?");
    assertEquals(2, followSet(base, "restart-delay=2 min"));
    said("`restart-delay` cannot be set on the controller");
  }

  @Test
  void aSequenceThatDoesNotComeToRestIsNamed() throws IOException {
    String head = Files.readString(CYCLE.resolve("handbook.yaml"));
    Path base = Files.createDirectory(folder.resolve("restless"));
    Files.writeString(base.resolve("handbook.yaml"), head);
    Files.writeString(
        base.resolve("restless.yaml"),
        """
        sequences:
          restless:
            title: Restless
            inputs: { call: { states: [none, made] } }
            start: one
            phases:
              one: { next: [{ when: call is made, go: other }] }
              other: { next: [{ when: call is made, go: one }] }
        """);
    write("call.log", "0:10 call becomes made\n");
    assertEquals(2, follow(base, "restless", "--model", "MO-2", "--log", in("call.log")));
    said("at 10 s phase follows phase without end");
    said("restless.yaml:2:3");
    assertEquals("", shell.out());
  }

  /** The knowledge base with something else in its sequence. */
  private Path copy(String old, String other) throws IOException {
    Path base = Files.createDirectory(folder.resolve("base"));
    try (DirectoryStream<Path> files = Files.newDirectoryStream(CYCLE, "*.yaml")) {
      for (Path file : files) {
        String text = Files.readString(file).replace(old, other);
        Files.writeString(base.resolve(file.getFileName()), text);
      }
    }
    return base;
  }

  private int followSet(Path base, String set) {
    return follow(base, "heating-cycle", "--model", "MO-2", "--set", set, "--log", in("set.log"));
  }

  @Test
  void jsonSaysTheSame() throws IOException {
    String[] asked = {"--model", "MO-2", "--format", "json", "--last", "2", "--log"};
    List<String> all = new ArrayList<>(List.of(asked));
    all.add(in("noted.log"));
    assertEquals(0, follow(all.toArray(String[]::new)), shell.err());
    JsonNode json = new ObjectMapper().readTree(shell.out());
    assertTrue(json.get("agrees").asBoolean());
    assertEquals("full-stop", json.at("/outcomes/stop").asText());
    assertEquals(25, json.at("/outcomes/lastStay/releasing").asInt());
    assertEquals(2, json.at("/phases/last").size());
    assertEquals(5, json.at("/phases/all").asInt());
  }

  @Test
  void aTimeAfterTheLastEntryMayBeAskedFor() throws IOException {
    write("short.log", "0:10 call becomes made\n2:38 release-switch opens\n");
    assertEquals(0, follow("--model", "MO-2", "--log", in("short.log"), "--until", "3:02"));
    said("stopped        not once");
    assertEquals(0, follow("--model", "MO-2", "--log", in("short.log"), "--until", "3:03"));
    said("stopped        3:03 Stopped as full");
  }

  /** What a controller's program on Windows writes has its degree sign in one byte. */
  @Test
  void aTableSaysHowItsLettersAreWritten() throws IOException {
    Charset windows = Charset.forName("windows-1252");
    String map = "time: Time\ncolumns: { \"Fühler °C\": display }\n";
    String table = "Time,Fühler °C\n0:00,REDY\n0:10,REDY\n";
    Path log = folder.resolve("windows.csv");
    Files.write(log, table.getBytes(windows));
    write("map.yaml", map);
    write("windows.yaml", "encoding: windows-1252\n" + map);
    write("wide.yaml", "encoding: utf-16\n" + map);
    assertEquals(2, followed(log, "map.yaml"));
    said("is not UTF-8 text");
    said("say how it is written in the map of columns, such as `encoding: windows-1252`");
    assertEquals(0, followed(log, "windows.yaml"), shell::err);
    Files.write(log, table.getBytes(StandardCharsets.UTF_16));
    assertEquals(0, followed(log, "wide.yaml"), shell::err);
    write("map.yaml", "encoding: windows-125\n" + map);
    assertEquals(2, followed(log, "map.yaml"));
    said("a log cannot be encoded as `windows-125`");
    said("did you mean `windows-125");
  }

  private int followed(Path log, String map) {
    return follow(
        "--model", "MO-1", "--software", "2.10", "--log", log.toString(), "--columns", in(map));
  }
}
