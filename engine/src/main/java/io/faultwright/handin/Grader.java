package io.faultwright.handin;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.grading.Given;
import io.faultwright.grading.ItemAnalysis;
import io.faultwright.grading.QuizReport;
import io.faultwright.grading.Score;
import io.faultwright.grading.Sheet;
import io.faultwright.handin.IssuedQuiz.Item;
import io.faultwright.handin.Remark.Kind;
import io.faultwright.source.SourceFile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;

/** Grades the files that were handed in; one that is bad does not stop the others. */
public final class Grader {
  private final IssuedQuiz quiz;
  private final List<List<List<String>>> options = new ArrayList<>();
  private final List<Remark> remarks = new ArrayList<>();

  private Grader(IssuedQuiz quiz) {
    this.quiz = quiz;
    OptionIds ids = new OptionIds(quiz);
    for (int item = 0; item < quiz.items().size(); item++) {
      options.add(ids.of(item));
    }
  }

  /**
   * The grades of files, each a table ({@code .csv}) or the file of one participant.
   *
   * @param unreadable files that are not text at all
   */
  public static Grades grade(IssuedQuiz quiz, List<SourceFile> files, List<Problem> unreadable) {
    return new Grader(quiz).grades(files, unreadable);
  }

  private Grades grades(List<SourceFile> files, List<Problem> unreadable) {
    unreadable.forEach(problem -> remarks.add(new Remark(Kind.REFUSED, problem)));
    SortedMap<Integer, List<Submission>> all = new TreeMap<>();
    for (SourceFile file : files) {
      read(file)
          .forEach(one -> all.computeIfAbsent(one.participant(), at -> new ArrayList<>()).add(one));
    }
    List<Entry> entries =
        all.values().stream().flatMap(some -> one(some).stream()).map(this::entry).toList();
    return new Grades(quiz, entries, missing(entries), report(entries), remarks);
  }

  private List<Submission> read(SourceFile file) {
    Problems problems = new Problems();
    boolean table = file.path().toLowerCase(Locale.ROOT).endsWith(".csv");
    List<Submission> read =
        table
            ? AnswerTable.read(file, quiz, problems)
            : ResultFile.read(file, quiz, problems).stream().toList();
    problems.sorted().forEach(problem -> remarks.add(new Remark(Kind.REFUSED, problem)));
    return read;
  }

  /**
   * The one that counts: where all have the same answers and name, the one handed in first, checked
   * ones before unchecked ones; nothing where they differ.
   */
  private Optional<Submission> one(List<Submission> some) {
    Submission first =
        some.stream()
            .min(
                Comparator.comparing(Submission::paper)
                    .thenComparing(one -> one.handIn().handedIn()))
            .orElseThrow();
    boolean differ = some.stream().anyMatch(other -> !isSame(first, other));
    if (differ) {
      doubt(some);
      return Optional.empty();
    }
    some.stream().filter(other -> other != first).forEach(other -> repeated(other, first));
    return Optional.of(first);
  }

  private static boolean isSame(Submission one, Submission other) {
    return one.choices().equals(other.choices())
        && PersonNames.onOneLine(one.handIn().name())
            .equals(PersonNames.onOneLine(other.handIn().name()));
  }

  private void doubt(List<Submission> some) {
    String who = "participant " + some.get(0).participant();
    Problem problem =
        new Problem(
            some.stream().map(Submission::place).toList(),
            who + " handed in " + some.size() + " times, with other answers or another name",
            "none of them is graded; keep the one that counts, take the others away, and grade"
                + " again");
    remarks.add(new Remark(Kind.DOUBTFUL, problem));
  }

  private void repeated(Submission other, Submission first) {
    Problem problem =
        new Problem(
            List.of(other.place(), first.place()),
            "participant " + other.participant() + " handed in the same answers twice",
            "they are counted once");
    remarks.add(new Remark(Kind.REPEATED, problem));
  }

  private Entry entry(Submission one) {
    String name = PersonNames.onOneLine(one.handIn().name());
    Optional<LocalDate> day = Moments.day(one.handIn().handedIn());
    boolean late =
        quiz.handInBy().isPresent() && day.isPresent() && day.get().isAfter(quiz.handInBy().get());
    remarks(one, name, late);
    Sheet sheet = sheet(one);
    return new Entry(
        one.participant(),
        name,
        one.handIn().handedIn(),
        one.paper(),
        late,
        sheet,
        Score.of(sheet, quiz.passMark()));
  }

  private void remarks(Submission one, String name, boolean late) {
    String who = "participant " + one.participant();
    if (late) {
      remark(
          Kind.LATE,
          one,
          who + " handed in on " + one.handIn().handedIn() + ", after " + quiz.handInBy().get(),
          "the answers are graded, and do not count as passed");
    }
    if (one.handIn().handedIn().isEmpty() && quiz.handInBy().isPresent()) {
      remark(
          Kind.UNCHECKED,
          one,
          "nothing says when " + who + " handed in",
          "the answers are taken to be in time");
    }
    if (name.isEmpty()) {
      remark(Kind.UNCHECKED, one, who + " gave no name", "a certificate needs one");
    }
  }

  private void remark(Kind kind, Submission one, String message, String help) {
    remarks.add(new Remark(kind, Problem.at(one.place(), message, help)));
  }

  private Sheet sheet(Submission one) {
    int variant = quiz.variants().indexOf(quiz.variant(one.participant()).orElseThrow());
    List<Given> given = new ArrayList<>();
    for (int i = 0; i < quiz.items().size(); i++) {
      Item item = quiz.variants().get(variant).items().get(i);
      List<String> ids = options.get(i).get(variant);
      OptionalInt choice = one.choices().get(i);
      Optional<String> chosen =
          choice.isPresent() ? Optional.of(ids.get(choice.getAsInt() - 1)) : Optional.empty();
      given.add(new Given(item.id(), item.symptom(), ids, ids.get(item.right()), chosen));
    }
    return new Sheet(Integer.toString(one.participant()), given);
  }

  private List<Integer> missing(List<Entry> entries) {
    List<Integer> there = entries.stream().map(Entry::participant).toList();
    return quiz.variants().stream()
        .map(IssuedQuiz.Variant::participant)
        .filter(number -> !there.contains(number))
        .toList();
  }

  private static Optional<QuizReport> report(List<Entry> entries) {
    return entries.isEmpty()
        ? Optional.empty()
        : Optional.of(ItemAnalysis.of(entries.stream().map(Entry::sheet).toList()));
  }
}
