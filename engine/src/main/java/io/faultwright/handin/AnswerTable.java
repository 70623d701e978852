package io.faultwright.handin;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.grading.HandIn;
import io.faultwright.grading.HandIn.Answer;
import io.faultwright.handin.IssuedQuiz.Item;
import io.faultwright.handin.IssuedQuiz.Variant;
import io.faultwright.input.TableRows;
import io.faultwright.input.TableRows.Row;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.Node.Scalar;
import java.io.BufferedReader;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Reads answers on paper that were typed into a table: columns {@code participant}, {@code name},
 * {@code handed-in}, then one for each item, headed 1, 2, 3 and so on.
 */
final class AnswerTable {
  private static final String PARTICIPANT = "participant";
  private static final String NAME = "name";
  private static final String HANDED_IN = "handed-in";

  private final IssuedQuiz quiz;
  private final Problems problems;
  private final Map<String, Integer> columns = new LinkedHashMap<>();

  private AnswerTable(IssuedQuiz quiz, Problems problems) {
    this.quiz = quiz;
    this.problems = problems;
  }

  /** The rows that fit the quiz; problems of the others are reported. */
  static List<Submission> read(SourceFile file, IssuedQuiz quiz, Problems problems) {
    return new AnswerTable(quiz, problems).rows(file);
  }

  private List<Submission> rows(SourceFile file) {
    TableRows rows = new TableRows(file.path(), new BufferedReader(new StringReader(file.text())));
    Optional<Row> heading = rows.next();
    heading.flatMap(Row::problem).ifPresent(problems::add);
    int before = problems.count();
    heading.ifPresent(row -> row.cells().forEach(this::column));
    heading.filter(row -> !row.cells().isEmpty()).ifPresent(this::requireAll);
    List<Submission> read = new ArrayList<>();
    if (problems.count() == before) {
      for (Optional<Row> row = rows.next(); row.isPresent(); row = rows.next()) {
        row.get().problem().ifPresent(problems::add);
        row.filter(one -> one.problem().isEmpty() && isHandedIn(one))
            .flatMap(this::submission)
            .ifPresent(read::add);
      }
    }
    return read;
  }

  private List<String> headings() {
    return Stream.concat(
            Stream.of(PARTICIPANT, NAME, HANDED_IN),
            IntStream.rangeClosed(1, quiz.items().size()).mapToObj(Integer::toString))
        .toList();
  }

  private void column(Scalar cell) {
    String heading = cell.text().strip().toLowerCase(Locale.ROOT);
    int index = columns.size();
    if (!heading.isEmpty() && !headings().contains(heading)) {
      problems.add(
          cell.place(),
          "unknown column `" + cell.text() + "`",
          NearMatch.of(heading, headings())
              .map(near -> "did you mean `" + near + "`?")
              .orElse("expected `participant`, `name`, `handed-in`, then 1 to " + items()));
    }
    if (columns.putIfAbsent(heading.isEmpty() ? " " + index : heading, index) != null) {
      problems.add(cell.place(), "column `" + cell.text() + "` stands twice", "keep one of them");
    }
  }

  private int items() {
    return quiz.items().size();
  }

  private void requireAll(Row heading) {
    headings().stream()
        .filter(name -> !columns.containsKey(name) && !name.equals(HANDED_IN))
        .findFirst()
        .ifPresent(
            name ->
                problems.add(
                    heading.cells().get(0).place(),
                    "the table has no column `" + name + "`",
                    "expected `participant`, `name`, `handed-in`, then 1 to " + items()));
  }

  private Optional<Scalar> cell(Row row, String column) {
    return Optional.ofNullable(columns.get(column))
        .filter(index -> index < row.cells().size())
        .map(row.cells()::get)
        .filter(cell -> !cell.isBlank());
  }

  /** A row with nothing but a number waits for a participant who did not hand in. */
  private boolean isHandedIn(Row row) {
    Optional<Integer> number = Optional.ofNullable(columns.get(PARTICIPANT));
    return IntStream.range(0, row.cells().size())
        .filter(i -> !number.equals(Optional.of(i)))
        .anyMatch(i -> !row.cells().get(i).isBlank());
  }

  private Optional<Submission> submission(Row row) {
    int before = problems.count();
    if (row.cells().size() > columns.size()) {
      problems.add(
          row.cells().get(columns.size()).place(),
          "the row has more cells than the heading",
          "write a text with a comma in quotes");
      return Optional.empty();
    }
    return variant(row)
        .map(variant -> new Submission(row.cells().get(0).place(), handIn(row, variant), true))
        .filter(one -> problems.count() == before);
  }

  private Optional<Variant> variant(Row row) {
    Optional<Scalar> number = cell(row, PARTICIPANT);
    if (number.isEmpty()) {
      problems.add(row.cells().get(0).place(), "the row has no `participant`", "write the number");
      return Optional.empty();
    }
    String text = number.get().text();
    Optional<Variant> variant =
        text.matches("\\d{1,9}") ? quiz.variant(Integer.parseInt(text)) : Optional.empty();
    if (variant.isEmpty()) {
      problems.add(
          number.get().place(), ResultFile.unknown(quiz, text), "look at the answer sheet again");
    }
    return variant;
  }

  private HandIn handIn(Row row, Variant variant) {
    Optional<Scalar> moment = cell(row, HANDED_IN);
    moment.ifPresent(cell -> Moments.require(Moments.iso(cell.text()), cell.place(), problems));
    cell(row, NAME).ifPresent(cell -> PersonNames.require(cell.text(), cell.place(), problems));
    List<Answer> answers = new ArrayList<>();
    for (int i = 0; i < items(); i++) {
      Item item = variant.items().get(i);
      answers.add(new Answer(item.id(), choice(cell(row, Integer.toString(i + 1)), item)));
    }
    return new HandIn(
        quiz.about().session(),
        quiz.fingerprint(),
        variant.participant(),
        cell(row, NAME).map(Scalar::text).orElse(""),
        moment.map(Scalar::text).map(Moments::iso).orElse(""),
        answers);
  }

  private OptionalInt choice(Optional<Scalar> cell, Item item) {
    if (cell.isEmpty()) {
      return OptionalInt.empty();
    }
    int most = item.options().size();
    OptionalInt choice = choice(cell.get().text());
    if (choice.isPresent() && choice.getAsInt() >= 1 && choice.getAsInt() <= most) {
      return choice;
    }
    problems.add(
        cell.get().place(),
        "expected a letter from A to "
            + (char) ('A' + most - 1)
            + " or a number from 1 to "
            + most
            + ", found `"
            + cell.get().text()
            + "`",
        "leave the cell empty where nothing was marked");
    return OptionalInt.empty();
  }

  private static OptionalInt choice(String text) {
    if (text.matches("[A-Za-z]")) {
      return OptionalInt.of(text.toUpperCase(Locale.ROOT).charAt(0) - 'A' + 1);
    }
    return text.matches("\\d{1,9}") ? OptionalInt.of(Integer.parseInt(text)) : OptionalInt.empty();
  }
}
