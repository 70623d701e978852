package io.faultwright.handin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.grading.CheckValue;
import io.faultwright.grading.Choice;
import io.faultwright.grading.HandIn;
import io.faultwright.grading.HandIn.Answer;
import io.faultwright.grading.ItemReport;
import io.faultwright.grading.PublishedAnswers;
import io.faultwright.handin.IssuedQuiz.Item;
import io.faultwright.handin.IssuedQuiz.Option;
import io.faultwright.handin.IssuedQuiz.Variant;
import io.faultwright.handin.Remark.Kind;
import io.faultwright.source.SourceFile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class GraderTest {
  private static final Course COURSE =
      new Course(
          "ice",
          "Ice",
          "Freezers",
          "Brantmoor Cold",
          "en",
          Optional.empty(),
          Optional.of(LocalDate.parse("2026-04-14")));

  /** Of participant 1 the first choice is right, of 2 the second; texts are those of all. */
  private static final IssuedQuiz QUIZ =
      new IssuedQuiz(
          "0b1c2d3e4f506172",
          "register-key",
          COURSE,
          60,
          Optional.of(LocalDate.parse("2026-04-21")),
          new TreeMap<>(Map.of("left", "Ice is left", "warm", "Room is warm")),
          List.of(
              new Variant(1, "key-1", items("red", "blue", 0)),
              new Variant(2, "key-2", items("blue", "red", 1)),
              new Variant(3, "key-3", items("red", "blue", 0))));

  private static List<Item> items(String first, String second, int right) {
    List<Option> options = List.of(new Option(first, ""), new Option(second, "later"));
    return List.of(
        new Item("one", "left", "Which?", options, right, "fault:a"),
        new Item("two", "warm", "Which?", options, right, "fault:b"));
  }

  private static String answers(int participant, String name, String at, int one, int two) {
    List<Answer> answers =
        List.of(new Answer("one", OptionalInt.of(one)), new Answer("two", OptionalInt.of(two)));
    HandIn handIn = new HandIn("ice", QUIZ.fingerprint(), participant, name, at, answers);
    return """
        {"what": "quiz answers", "session": "ice", "quiz": "%s", "participant": %s,
         "name": "%s", "handedIn": "%s",
         "answers": [{"item": "one", "choice": %s}, {"item": "two", "choice": %s}],
         "check": "%s"}
        """
        .formatted(
            QUIZ.fingerprint(),
            participant,
            name,
            at,
            one,
            two,
            CheckValue.of(handIn, "key-" + participant));
  }

  private static final String ADA = answers(1, "Ada Nør", "2026-04-14T10:32", 1, 1);

  private static Grades grade(String... files) {
    List<SourceFile> read = new ArrayList<>();
    for (String text : files) {
      String ending = text.startsWith("participant") ? ".csv" : ".json";
      read.add(SourceFile.of("file-" + (read.size() + 1) + ending, text));
    }
    return Grader.grade(QUIZ, read, List.of());
  }

  /** The only remark, as one line: its kind, first place, message and help. */
  private static String remark(Grades grades) {
    assertEquals(1, grades.remarks().size(), grades.remarks()::toString);
    Remark remark = grades.remarks().get(0);
    return remark.kind().word()
        + " "
        + remark.problem().places().get(0)
        + " "
        + remark.problem().message()
        + " / "
        + remark.problem().help();
  }

  private static void assertRefused(String expected, String file) {
    Grades grades = grade(ADA, file);
    assertEquals(expected, remark(grades));
    assertTrue(grades.isDoubtful());
    assertEquals(List.of("Ada Nør"), grades.entries().stream().map(Entry::name).toList());
  }

  @Test
  void marksEachByTheirOwnVariant() {
    Grades grades = grade(ADA, answers(2, "Bo", "2026-04-15T08:00", 2, 1));
    assertTrue(grades.remarks().isEmpty());
    assertEquals(
        List.of(2, 1), grades.entries().stream().map(e -> e.score().all().right()).toList());
    assertEquals(List.of(true, false), grades.entries().stream().map(Entry::passed).toList());
    assertEquals(List.of(3), grades.missing());
    assertEquals(0, grades.entries().get(1).score().topics().get("warm").right());
    ItemReport second = grades.report().orElseThrow().items().get(1);
    assertEquals(
        List.of("red 1", "blue 1"),
        second.choices().stream().map(choice -> choice.option() + " " + choice.count()).toList());
  }

  @Test
  void refusesAFileThatWasChanged() {
    assertRefused(
        "refused file-2.json:4:11 the file was changed after it was saved: its check value is that of"
            + " other answers, another name or another time / ask the participant to save and send it"
            + " once more",
        answers(2, "Bo", "2026-04-15T08:00", 1, 1)
            .replace("\"item\": \"two\", \"choice\": 1", "\"item\": \"two\", \"choice\": 2"));
  }

  @Test
  void refusesAFileWithAnotherName() {
    Grades grades = grade(ADA.replace("Ada", "Eve"));
    assertTrue(remark(grades).contains("was changed after it was saved"), remark(grades));
    assertTrue(grades.report().isEmpty());
  }

  @Test
  void refusesWhatHasNoCheckValue() {
    assertRefused(
        "refused file-2.json:1:1 a result file has no `check` / found `chek`; did you mean this?",
        answers(2, "Bo", "2026-04-15T08:00", 1, 1).replace("\"check\"", "\"chek\""));
  }

  @Test
  void refusesAnotherSessionAndAnotherMaking() {
    assertRefused(
        "refused file-2.json:1:37 the file is of another session: expected `ice`, found `gas` / grade"
            + " it with the quiz of that session",
        answers(2, "Bo", "2026-04-15T08:00", 1, 1).replace("\"ice\"", "\"gas\""));
    assertRefused(
        "refused file-2.json:1:52 the file is of another making of this quiz: expected"
            + " `0b1c2d3e4f506172`, found `ffffffffffffffff` / grade it with the `quiz.json` that was"
            + " written together with it",
        answers(2, "Bo", "2026-04-15T08:00", 1, 1).replace("0b1c2d3e4f506172", "ffffffffffffffff"));
  }

  @Test
  void refusesAnUnknownParticipantItemAndChoice() {
    String bo = answers(2, "Bo", "2026-04-15T08:00", 1, 1);
    assertRefused(
        "refused file-2.json:1:87 there is no participant `9`; the quiz was made for 1 to 3 / ask the"
            + " participant to save and send it once more",
        bo.replace("\"participant\": 2", "\"participant\": 9"));
    assertRefused(
        "refused file-2.json:3:70 expected a choice from 1 to 2, found 7 / ask the participant to save"
            + " and send it once more",
        bo.replace("\"two\", \"choice\": 1", "\"two\", \"choice\": 7"));
    Grades unknown = grade(bo.replace("\"two\"", "\"tow\""));
    assertEquals(
        List.of(
            "there is no answer to item `two` / ask the participant to save and send it once more",
            "the quiz has no item `tow` / did you mean `two`?"),
        unknown.remarks().stream()
            .map(one -> one.problem().message() + " / " + one.problem().help())
            .toList());
  }

  @Test
  void refusesANameThatIsNone() {
    assertRefused(
        "refused file-2.json:2:10 the name has 201 characters; expected at most 200 / ask for the name"
            + " alone",
        answers(2, "B".repeat(201), "2026-04-15T08:00", 1, 1));
    assertTrue(grade(answers(2, "山".repeat(200), "2026-04-15T08:00", 1, 1)).remarks().isEmpty());
  }

  @Test
  void refusesWhatIsNoResultFileAndNoJson() {
    assertRefused(
        "refused file-2.json:1:10 this is no result file: `what` is `grades`, expected `quiz answers` /"
            + " leave the file out",
        "{\"what\": \"grades\"}");
    assertRefused(
        "refused file-2.json:1:9 the file ends in the middle / it was cut off; get it once more",
        "{\"what\":");
  }

  @Test
  void countsTheSameAnswersOnceAndSaysSo() {
    Grades grades = grade(answers(1, "Ada Nør", "2026-04-15T09:00", 1, 1), ADA);
    assertEquals(
        "repeated file-1.json:1:1 participant 1 handed in the same answers twice / they are counted"
            + " once",
        remark(grades));
    assertEquals("2026-04-14T10:32", grades.entries().get(0).handedIn());
    assertFalse(grades.isDoubtful());
  }

  @Test
  void countsNeitherOfTwoThatDiffer() {
    Grades grades = grade(ADA, answers(1, "Ada Nør", "2026-04-15T09:00", 1, 2));
    assertTrue(
        remark(grades)
            .startsWith(
                "doubtful file-1.json:1:1 participant 1 handed in 2 times, with other answers or"
                    + " another name"),
        remark(grades));
    assertTrue(grades.isDoubtful());
    assertEquals(List.of(1, 2, 3), grades.missing());
  }

  @Test
  void gradesLateOnesAndDoesNotLetThemPass() {
    Grades grades =
        grade(
            answers(1, "Ada", "2026-04-21T23:59", 1, 1),
            answers(3, "Cy", "2026-04-22T00:00", 1, 1));
    assertEquals(
        "late file-2.json:1:1 participant 3 handed in on 2026-04-22T00:00, after 2026-04-21 / the"
            + " answers are graded, and do not count as passed",
        remark(grades));
    assertEquals(List.of(true, false), grades.entries().stream().map(Entry::passed).toList());
    assertEquals(List.of("1"), grades.drawable());
  }

  @Test
  void readsTablesByLettersAndNumbers() {
    Grades grades =
        grade(
            "participant;name;handed-in;1;2\n1;Ada;2026-04-14;a;1\n2;\"Bo; B\";2026-04-15T09:00;B;\n");
    assertEquals(
        List.of(2, 1), grades.entries().stream().map(e -> e.score().all().right()).toList());
    assertEquals("Bo; B", grades.entries().get(1).name());
    assertTrue(grades.entries().get(1).paper());
    assertTrue(grades.remarks().isEmpty(), grades.remarks()::toString);
  }

  /** A spreadsheet in Germany writes dates so when it saves a table (observed, no source). */
  @Test
  void readsDatesWithDotsAsASpreadsheetSavesThem() {
    Grades grades =
        grade(
            "participant;name;handed-in;1;2\r\n1;Ada;14.04.2026;a;1\r\n"
                + "2;Bo;1.4.2026 9:05;B;\r\n3;Cy;22.04.2026 00:00:00;B;\r\n");
    assertEquals(
        List.of("2026-04-14", "2026-04-01T09:05", "2026-04-22T00:00"),
        grades.entries().stream().map(Entry::handedIn).toList());
    assertEquals(List.of("late"), grades.remarks().stream().map(one -> one.kind().word()).toList());
  }

  @Test
  void saysWhatIsWrongInATableAndReadsTheOtherRows() {
    Grades grades =
        grade(
            """
            participant,name,handed-in,1,2
            1,Ada,2026-04-14,A,C
            2,,,,
            9,Bo,2026-04-14,A,B
            2,Bo,yesterday,A,B
            3,Cy,,A,B,B
            3,Cy,,A,B
            """);
    assertEquals(
        List.of(
            "refused 2:20 expected a letter from A to B or a number from 1 to 2, found `C`",
            "refused 4:1 there is no participant `9`; the quiz was made for 1 to 3",
            "refused 5:6 `yesterday` is not a date with a time",
            "refused 6:11 the row has more cells than the heading",
            "unchecked 7:1 nothing says when participant 3 handed in"),
        grades.remarks().stream()
            .map(
                one ->
                    one.kind().word()
                        + " "
                        + one.problem().places().get(0).line()
                        + ":"
                        + one.problem().places().get(0).column()
                        + " "
                        + one.problem().message())
            .toList());
    assertEquals(List.of(3), grades.entries().stream().map(Entry::participant).toList());
  }

  @Test
  void readsNoRowOfATableWithAWrongHeading() {
    Grades grades = grade("participant,nmae,handed-in,1,2\n1,Ada,2026-04-14,A,B\n");
    assertEquals(
        List.of(
            "the table has no column `name` / expected `participant`, `name`, `handed-in`, then 1 to"
                + " 2",
            "unknown column `nmae` / did you mean `name`?"),
        grades.remarks().stream()
            .map(one -> one.problem().message() + " / " + one.problem().help())
            .toList());
    assertTrue(grades.entries().isEmpty());
  }

  /** A table beside the file of the same participant: the one with a check value counts. */
  @Test
  void prefersWhatHasACheckValue() {
    Grades grades = grade("participant,name,1,2\n1,Ada Nør,A,A\n", ADA);
    assertEquals(List.of(Kind.REPEATED), grades.remarks().stream().map(Remark::kind).toList());
    assertFalse(grades.entries().get(0).paper());
  }

  /** Options with other texts for each participant are told apart by what they are. */
  @Test
  void tellsOptionsApartByWhatTheyAreWhereTextsDiffer() {
    List<Option> mine = List.of(new Option("3 K", ""), new Option("5 K", "other-model"));
    List<Option> yours = List.of(new Option("6 K", "other-model"), new Option("4 K", ""));
    IssuedQuiz quiz =
        new IssuedQuiz(
            "f",
            "register-key",
            COURSE,
            50,
            Optional.empty(),
            new TreeMap<>(Map.of("left", "Ice is left")),
            List.of(
                new Variant(1, "a", List.of(new Item("i", "left", "How much?", mine, 0, ""))),
                new Variant(2, "b", List.of(new Item("i", "left", "How much?", yours, 1, "")))));
    Grades grades =
        Grader.grade(
            quiz,
            List.of(SourceFile.of("t.csv", "participant,name,1\n1,Ada,B\n2,Bo,A\n")),
            List.of());
    List<Choice> choices = grades.report().orElseThrow().items().get(0).choices();
    assertEquals(
        List.of("the right one 0", "near miss: other-model 2"),
        choices.stream().map(one -> one.option() + " " + one.count()).toList());
  }

  /** The whole way from a table to the figures; source of the 0.69635 as of the answers. */
  @Test
  void publishedAnswersInATableGiveThePublishedReliability() {
    List<String> rows = PublishedAnswers.ROWS;
    List<Option> options = List.of(new Option("wrong", ""), new Option("right", ""));
    List<Item> items =
        IntStream.rangeClosed(1, 10)
            .mapToObj(i -> new Item("item-" + i, "left", "Which?", options, 1, "fault:a"))
            .toList();
    List<Variant> variants =
        IntStream.rangeClosed(1, 10).mapToObj(n -> new Variant(n, "key", items)).toList();
    IssuedQuiz quiz =
        new IssuedQuiz(
            "f",
            "register-key",
            COURSE,
            70,
            Optional.empty(),
            new TreeMap<>(Map.of("left", "Ice is left")),
            variants);
    String table =
        "participant,name,1,2,3,4,5,6,7,8,9,10\n"
            + IntStream.range(0, rows.size())
                .mapToObj(
                    i ->
                        (i + 1)
                            + ",Person,"
                            + rows.get(i)
                                .chars()
                                .mapToObj(c -> c == '1' ? "B" : "A")
                                .collect(Collectors.joining(",")))
                .collect(Collectors.joining("\n"));
    Grades grades = Grader.grade(quiz, List.of(SourceFile.of("t.csv", table)), List.of());
    assertEquals(0.69635, grades.report().orElseThrow().reliability().orElseThrow().kr20(), 5e-6);
    assertEquals(
        List.of("item-7", "item-9"),
        grades.report().orElseThrow().items().stream()
            .filter(item -> !item.flags().isEmpty())
            .map(ItemReport::item)
            .toList());
  }
}
