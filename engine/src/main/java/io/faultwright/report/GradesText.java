package io.faultwright.report;

import io.faultwright.diagnostic.Problem;
import io.faultwright.grading.Score;
import io.faultwright.grading.Share;
import io.faultwright.handin.Course;
import io.faultwright.handin.Entry;
import io.faultwright.handin.Grades;
import io.faultwright.handin.IssuedQuiz;
import io.faultwright.handin.Remark;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Grades to read: who passed, what to look at, which symptoms and items go wrong. */
public final class GradesText {
  /** What the figures cannot tell, said in every report. */
  static final List<String> UNSEEN =
      List.of(
          "Who answered. A name is what somebody typed.",
          "Help by others, and answers that were passed on.",
          "What a participant saves anew with their own page: it holds the key of the check value.",
          "A clock that is set back. The time is that of the participant's device.",
          "Changes of a table. It has no check values.");

  private final Grades grades;
  private final IssuedQuiz quiz;
  private final UnaryOperator<String> address;

  /**
   * @param address where a page of the handbook stands, such as {@code fault:charge-low}
   */
  public GradesText(Grades grades, UnaryOperator<String> address) {
    this.grades = grades;
    this.quiz = grades.quiz();
    this.address = address;
  }

  /** The report. */
  public String write() {
    List<String> parts = new ArrayList<>();
    parts.add(heading());
    parts.add(summary());
    parts.add(participants());
    if (!grades.remarks().isEmpty()) {
      parts.add("To look at\n" + remarks());
    }
    grades
        .report()
        .ifPresent(
            report -> {
              parts.add(weakSpots());
              parts.add(new ItemsText(quiz, report, address).write());
            });
    parts.add("What this cannot detect\n" + lines(UNSEEN));
    return String.join("\n", parts);
  }

  private static String lines(List<String> lines) {
    return lines.stream()
        .map(line -> "  " + Columns.printable(line) + "\n")
        .collect(Collectors.joining());
  }

  private String heading() {
    Course about = quiz.about();
    String held = about.date().map(day -> ", held " + day).orElse("");
    String until =
        quiz.handInBy().map(LocalDate::toString).map(day -> ", answers until " + day).orElse("");
    return Columns.printable(about.title())
        + "\n"
        + Columns.printable(about.handbook() + ", " + about.maker())
        + "\n"
        + Columns.printable("Session " + about.session() + held + until)
        + "\n"
        + "Quiz "
        + Columns.printable(quiz.fingerprint())
        + "\n\nNames and marks of persons. For the trainer only."
        + " Delete this folder when it is needed no more.\n";
  }

  /** One line for the terminal, and the second paragraph of the report. */
  public String summary() {
    long passed = grades.entries().stream().filter(Entry::passed).count();
    long late = grades.entries().stream().filter(Entry::late).count();
    String rest = grades.missing().isEmpty() ? "" : "not graded: " + numbers() + "\n";
    return Counts.of(grades.entries().size(), "participant")
        + " of "
        + quiz.variants().size()
        + " graded; pass mark "
        + quiz.passMark()
        + " %: "
        + passed
        + " passed, "
        + (grades.entries().size() - passed)
        + " did not"
        + (late == 0 ? "" : " (" + late + " late)")
        + "\n"
        + rest;
  }

  private String numbers() {
    return grades.missing().stream().map(String::valueOf).collect(Collectors.joining(", "));
  }

  private String participants() {
    List<String> symptoms = List.copyOf(quiz.symptoms().keySet());
    AlignedRows rows = new AlignedRows();
    List<String> head = new ArrayList<>(List.of("", "right", "", "result", "handed in"));
    symptoms.forEach(id -> head.add(letter(symptoms.indexOf(id))));
    rows.add(head);
    grades.entries().forEach(entry -> rows.add(row(entry, symptoms)));
    String legend =
        symptoms.stream()
            .map(id -> letter(symptoms.indexOf(id)) + "  " + quiz.symptoms().get(id))
            .map(line -> "  " + Columns.printable(line) + "\n")
            .collect(Collectors.joining());
    return "Participants\n" + rows.text() + "\n" + legend;
  }

  private static String letter(int index) {
    return index < 26 ? String.valueOf((char) ('A' + index)) : "S" + (index + 1);
  }

  /** Numbers end below each other. */
  private String numbered(int number) {
    int width = Integer.toString(quiz.variants().size()).length();
    String digits = Integer.toString(number);
    return " ".repeat(Math.max(0, width - digits.length())) + digits;
  }

  private List<String> row(Entry entry, List<String> symptoms) {
    Score score = entry.score();
    List<String> row =
        new ArrayList<>(
            List.of(
                numbered(entry.participant())
                    + "  "
                    + (entry.name().isEmpty() ? "-" : entry.name()),
                words(score.all()),
                Figures.percent(score.all().share()) + " %",
                result(entry),
                entry.handedIn().isEmpty() ? "-" : entry.handedIn()));
    symptoms.forEach(
        id -> row.add(score.topics().containsKey(id) ? words(score.topics().get(id)) : "-"));
    return row;
  }

  /** What became of a participant, in one word. */
  static String result(Entry entry) {
    return entry.passed() ? "passed" : entry.late() ? "late" : "not passed";
  }

  private static String words(Share share) {
    return share.right() + "/" + share.of();
  }

  private String remarks() {
    return grades.remarks().stream().map(GradesText::remark).collect(Collectors.joining());
  }

  private static String remark(Remark remark) {
    Problem problem = remark.problem();
    String places =
        problem.places().stream()
            .map(place -> "    " + Columns.printable(place.toString()) + "\n")
            .collect(Collectors.joining());
    String help = problem.help().isEmpty() ? "" : "    " + Columns.printable(problem.help()) + "\n";
    return "  "
        + remark.kind().word()
        + ": "
        + Columns.printable(problem.message())
        + "\n"
        + places
        + help;
  }

  private String weakSpots() {
    AlignedRows rows = new AlignedRows();
    rows.add(List.of("symptom", "right"));
    List<WeakSpot> spots = WeakSpot.of(grades);
    spots.forEach(
        spot ->
            rows.add(
                List.of(
                    quiz.symptoms().get(spot.symptom()),
                    Figures.percent(spot.share().share()) + " %")));
    String pages = spots.stream().map(spot -> pages(spot)).collect(Collectors.joining());
    return "What is answered wrong most, by symptom\n"
        + rows.text()
        + (pages.isEmpty() ? "" : "\nPages to improve first\n" + pages);
  }

  private String pages(WeakSpot spot) {
    return spot.pages().isEmpty()
        ? ""
        : "  "
            + Columns.printable(quiz.symptoms().get(spot.symptom()))
            + "\n"
            + spot.pages().stream()
                .map(page -> "    " + Columns.printable(address.apply(page)) + "\n")
                .collect(Collectors.joining());
  }
}
