package io.faultwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GradeCommandTest {
  private static final int PARTICIPANTS = 12;

  @TempDir static Path shared;

  @TempDir Path folder;

  private static Participants participants;

  private final Shell shell = new Shell();
  private Path results;
  private Path to;

  @BeforeAll
  static void makeQuiz() throws IOException {
    Shell shell = new Shell();
    String base = "../engine/src/test/resources/quiz";
    String quiz = shared.resolve("quiz").toString();
    int code =
        shell.run(
            "quiz",
            base,
            "morning",
            "--seed",
            "7",
            "--participants",
            "" + PARTICIPANTS,
            "--to",
            quiz);
    assertEquals(0, code, shell::err);
    participants = new Participants(shared.resolve("quiz/quiz.json"));
  }

  @BeforeEach
  void handIn() throws IOException {
    results = folder.resolve("results");
    to = folder.resolve("grades");
    for (int number = 1; number <= PARTICIPANTS; number++) {
      double known = number % 10 / 10.0 + 0.1;
      participants.handIn(results, number, "Person " + number, "2026-04-15T09:00", known);
    }
  }

  private int grade(String... more) {
    Stream<String> first =
        Stream.of(
            "grade", shared.resolve("quiz").toString(), results.toString(), "--to", to.toString());
    return shell.run(Stream.concat(first, Stream.of(more)).toArray(String[]::new));
  }

  private String text(String name) throws IOException {
    return Files.readString(to.resolve(name));
  }

  private JsonNode json() throws IOException {
    return new ObjectMapper().readTree(text("grades.json"));
  }

  private Path result(int number) {
    return results.resolve("morning-%03d.json".formatted(number));
  }

  @Test
  void everyFileSaysTheSame() throws IOException {
    assertEquals(0, grade(), shell::err);
    JsonNode json = json();
    assertEquals(PARTICIPANTS, json.get("participants").size());
    List<String> rows = text("grades.csv").lines().toList();
    assertEquals(PARTICIPANTS + 1, rows.size());
    JsonNode ninth = json.get("participants").get(8);
    assertEquals(8, ninth.get("right").asInt(), "who knows all is right everywhere");
    assertTrue(ninth.get("passed").asBoolean());
    assertTrue(rows.get(9).startsWith("9,Person 9,2026-04-15T09:00,8,8,100,passed,100,100,1,1"));
    assertTrue(text("grades.txt").contains(" 9  Person 9"), text("grades.txt"));
    int passed = 0;
    for (JsonNode one : json.get("participants")) {
      passed += one.get("passed").asBoolean() ? 1 : 0;
    }
    assertTrue(shell.out().contains(": " + passed + " passed, "), shell.out());
    assertTrue(text("personal-data.txt").contains("To delete it"));
  }

  @Test
  void theSameFilesGiveTheSameBytes() throws IOException {
    assertEquals(0, grade("--draw", "3", "--draw-seed", "42"), shell::err);
    byte[] text = Files.readAllBytes(to.resolve("grades.txt"));
    byte[] json = Files.readAllBytes(to.resolve("grades.json"));
    assertEquals(0, grade("--draw", "3", "--draw-seed", "42"), shell::err);
    assertArrayEquals(text, Files.readAllBytes(to.resolve("grades.txt")));
    assertArrayEquals(json, Files.readAllBytes(to.resolve("grades.json")));
  }

  @Test
  void aBadFileStopsNoOtherAndEveryOneIsListed() throws IOException {
    Files.writeString(result(1), Files.readString(result(1)).replace("Person 1", "Person 2"));
    Files.writeString(result(2), Files.readString(result(2)).substring(0, 90));
    Files.write(result(3), new byte[] {(byte) 0xC3, 0x28});
    Files.copy(result(4), results.resolve("again.json"));
    Files.writeString(
        results.resolve("other.json"), participants.result(5, "Person 5", "2026-04-16T09:00", 0));
    Files.writeString(
        results.resolve("late.json"), participants.result(6, "Person 6", "2026-05-01T09:00", 1));
    Files.delete(result(6));
    Files.writeString(results.resolve("notes.txt"), "nothing");
    assertEquals(1, grade(), shell::err);
    for (String said :
        List.of(
            "results/morning-001.json",
            "was changed after it was saved",
            "the file ends in the middle",
            "the file is not UTF-8 text",
            "participant 5 handed in 2 times",
            "participant 4 handed in the same answers twice",
            "participant 6 handed in on 2026-05-01T09:00, after 2026-04-21",
            "`results/notes.txt` was not looked at")) {
      assertTrue(shell.err().contains(said), said + "\n" + shell.err());
    }
    assertTrue(shell.out().contains("8 participants of 12 graded"), shell.out());
    assertTrue(shell.out().contains("not graded: 1, 2, 3, 5"), shell.out());
    assertEquals(6, json().get("remarks").size());
    assertFalse(text("grades.json").contains(folder.toString()), "no path of this machine");
  }

  /** The pages named are pages of the site. */
  @Test
  void namesThePagesToImprove() throws IOException {
    assertEquals(0, grade(), shell::err);
    JsonNode hardest = json().get("symptoms").get(0);
    assertTrue(hardest.get("improve").get(0).asText().matches("(.*/)?symptom/[a-z-]+\\.html"));
    assertTrue(text("grades.txt").contains(hardest.get("improve").get(0).asText()));
  }

  /** Repeated here as the report tells anybody to; SHA-256 is that of the JDK. */
  @Test
  void theDrawCanBeRepeatedFromItsOwnWords() throws Exception {
    assertEquals(0, grade("--draw", "2", "--draw-seed", "Lotto 7 12 33"), shell::err);
    MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
    List<String> drawn =
        Stream.iterate(1, n -> n + 1)
            .limit(PARTICIPANTS)
            .map(n -> digest(sha256, "Lotto 7 12 33:" + n) + " " + n)
            .sorted()
            .limit(2)
            .map(line -> line.substring(65))
            .toList();
    assertTrue(text("draw.txt").startsWith("Drawn: " + String.join(", ", drawn) + "\n"));
  }

  private static String digest(MessageDigest sha256, String text) {
    return HexFormat.of().formatHex(sha256.digest(text.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void tablesAndFilesGoTogether() throws IOException {
    int items = participants.quiz().get("participants").get(0).get("items").size();
    StringBuilder table = new StringBuilder("participant,name,handed-in");
    StringBuilder row = new StringBuilder("1,=Eve,2026-04-15");
    for (int i = 1; i <= items; i++) {
      table.append(",").append(i);
      row.append(",A");
    }
    Files.delete(result(1));
    Files.writeString(results.resolve("paper.csv"), table + "\n" + row + "\n");
    assertEquals(0, grade(), shell::err);
    assertTrue(json().get("participants").get(0).get("paper").asBoolean());
    assertTrue(text("grades.csv").contains("'=Eve"), "no formula for a spreadsheet");
    assertTrue(text("grades.txt").contains("It has no check values"), text("grades.txt"));
  }

  @Test
  void aFolderWithoutAQuizIsSaid() {
    String nothing = folder.resolve("nothing").toString();
    assertEquals(2, shell.run("grade", nothing, results.toString(), "--to", to.toString()));
    assertTrue(shell.err().contains("nothing` cannot be read"), shell.err());
    assertEquals(
        2, shell.run("grade", results.toString(), results.toString(), "--to", to.toString()));
    assertTrue(shell.err().contains("quiz.json` cannot be read"), shell.err());
    assertFalse(Files.exists(to));
  }

  @Test
  void theQuizIsNotReplacedWithGrades() throws IOException {
    Path quiz = shared.resolve("quiz");
    byte[] before = Files.readAllBytes(quiz.resolve("quiz.json"));
    String name = quiz.toString();
    assertEquals(2, shell.run("grade", name, results.toString(), "--to", name));
    assertTrue(shell.err().contains("holds a quiz"), shell.err());
    assertArrayEquals(before, Files.readAllBytes(quiz.resolve("quiz.json")));
  }

  @Test
  void whereNothingCanBeGradedEarlierGradesStay() throws IOException {
    assertEquals(0, grade(), shell::err);
    String before = text("grades.json");
    for (int number = 1; number <= PARTICIPANTS; number++) {
      Files.writeString(result(number), "{}");
    }
    assertEquals(2, grade());
    assertTrue(shell.err().contains("nothing could be graded"), shell.err());
    assertEquals(before, text("grades.json"));
  }

  @Test
  void wrongUseIsSaid() throws IOException {
    assertEquals(2, grade("--draw", "2"));
    assertTrue(shell.err().contains("`--draw` and `--draw-seed` go together"), shell.err());
    String quiz = shared.resolve("quiz").toString();
    assertEquals(2, shell.run("grade", quiz, results + "x", "--to", to.toString()));
    assertTrue(shell.err().contains("is not there"), shell.err());
    assertTrue(shell.err().contains("did you mean"), shell.err());
    assertEquals(
        2, shell.run("grade", result(1).toString(), results.toString(), "--to", to.toString()));
    assertTrue(shell.err().contains("the file of a quiz has no `symptoms`"), shell.err());
    assertFalse(Files.exists(to));
  }
}
