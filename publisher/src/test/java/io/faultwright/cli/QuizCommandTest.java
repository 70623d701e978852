package io.faultwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class QuizCommandTest {
  private static final Path BASE = Path.of("../engine/src/test/resources/quiz");
  private static final List<String> FILES =
      List.of(
          "hand-out/morning-001.html",
          "hand-out/morning-002.html",
          "hand-out/morning-003.html",
          "issued.yaml",
          "qti.zip",
          "quiz.json",
          "quiz.txt");
  private static final List<String> ON_PAPER = List.of("answers.csv", "key.csv", "paper.pdf");

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path kb;
  private Path to;

  @BeforeEach
  void copy() throws IOException {
    kb = folder.resolve("kb");
    to = folder.resolve("quiz");
    SmallBase.copy(BASE, kb);
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

  private int quiz(String... more) {
    List<String> first =
        List.of("quiz", kb.toString(), "morning", "--seed", "7", "--to", to.toString());
    return run(Stream.concat(first.stream(), Stream.of(more)).toArray(String[]::new));
  }

  private void change(String from, String into) throws IOException {
    for (String name : List.of("handbook.yaml", "sessions.yaml")) {
      Path file = kb.resolve(name);
      Files.writeString(file, Files.readString(file).replace(from, into));
    }
  }

  @Test
  void theFolderHoldsTheSameBytesForTheSameSeed() throws IOException {
    assertEquals(0, quiz("--participants", "3", "--paper"), err::toString);
    Map<String, byte[]> first = written();
    assertEquals(
        Stream.concat(FILES.stream(), ON_PAPER.stream()).sorted().toList(),
        List.copyOf(first.keySet()));
    assertEquals(0, quiz("--participants", "3", "--paper"), err::toString);
    Map<String, byte[]> second = written();
    first.forEach((name, bytes) -> assertArrayEquals(bytes, second.get(name), name));
    String text = Files.readString(to.resolve("quiz.txt"));
    assertTrue(text.contains("Participant 3"), text);
    assertTrue(text.contains("Why is no defrost called?"), text);
  }

  private Map<String, byte[]> written() throws IOException {
    Map<String, byte[]> written = new TreeMap<>();
    try (Stream<Path> files = Files.walk(to)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        String name = to.relativize(file).toString().replace('\\', '/');
        if (!name.startsWith(".")) {
          written.put(name, Files.readAllBytes(file));
        }
      }
    }
    return written;
  }

  @Test
  void paperIsPrintedWhereItIsAskedFor() throws IOException {
    assertEquals(0, quiz("--participants", "3"), err::toString);
    assertEquals(FILES, List.copyOf(written().keySet()));
  }

  /** What the tool hands out can be put into the session, and holds until the rule changes. */
  @Test
  void issuedItemsAreWithdrawnWhenTheirRuleChanges() throws IOException {
    assertEquals(0, quiz(), err::toString);
    String issued =
        Files.readString(to.resolve("issued.yaml")).replaceAll("(?m)^#.*\n", "").indent(6);
    change("      issued:\n", issued);
    assertEquals(0, run("check", kb.toString()), out::toString);
    assertFalse(out.toString().contains("withdrawn-item"), out::toString);
    change("software: below 2.10", "software: 2.9");
    change("{ line-temperature: above 65 °C }", "{ line-temperature: above 70 °C }");
    assertEquals(0, run("check", kb.toString()), out::toString);
    assertTrue(out.toString().contains("warning[withdrawn-item]"), out::toString);
    assertTrue(out.toString().contains("means something else now"), out::toString);
  }

  @Test
  void anOwnItemThatTheRulesContradictStopsTheQuizAndLeavesTheOldOne() throws IOException {
    assertEquals(0, quiz(), err::toString);
    String before = Files.readString(to.resolve("quiz.txt"));
    change(
        "right: { fault: software-old }\n          wrong: [{ fault: board-failed }",
        "right: { fault: board-failed }\n          wrong: [{ fault: software-old }");
    assertEquals(1, quiz(), err::toString);
    assertTrue(
        out.toString()
            .contains("item `version` says `board-failed`, the rules conclude `software-old`"),
        out::toString);
    assertEquals(before, Files.readString(to.resolve("quiz.txt")));
    assertEquals(1, run("check", kb.toString()), out::toString);
  }

  @Test
  void whatCannotBeHadIsSaid() throws IOException {
    assertEquals(2, run("quiz", kb.toString(), "mornin", "--seed", "1", "--to", to.toString()));
    assertTrue(err.toString().contains("there is no session `mornin`"), err::toString);
    assertTrue(err.toString().contains("did you mean `morning`?"), err::toString);
    assertEquals(2, quiz("--items", "0"));
    assertTrue(err.toString().contains("`--items` is 0; give 1 to 999"), err::toString);
    change(
        "- { symptom: room-warm, items: 1 }",
        "- { symptom: room-warm, items: 1, difficulty: hard }");
    assertEquals(2, quiz(), err::toString);
    assertTrue(
        err.toString().contains("1 hard items about `room-warm` are asked for, there are 0"),
        err::toString);
    assertFalse(Files.exists(to));
  }

  /** A session is no part of the handbook: with it or without it the site has the same bytes. */
  @Test
  void sessionsChangeNothingOnTheSite() throws IOException {
    change("right: { fault: software-old }", "right: { fault: relay-failed }");
    Path with = folder.resolve("with");
    Path without = folder.resolve("without");
    assertEquals(0, run("publish", kb.toString(), "--to", with.toString()), out::toString);
    Files.delete(kb.resolve("sessions.yaml"));
    assertEquals(0, run("publish", kb.toString(), "--to", without.toString()), out::toString);
    try (Stream<Path> files = Files.walk(with)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        Path other = without.resolve(with.relativize(file).toString());
        assertArrayEquals(Files.readAllBytes(file), Files.readAllBytes(other), file::toString);
      }
    }
  }
}
