package io.faultwright.handin;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.grading.CheckValue;
import io.faultwright.grading.HandIn;
import io.faultwright.grading.HandIn.Answer;
import io.faultwright.handin.IssuedQuiz.Item;
import io.faultwright.handin.IssuedQuiz.Variant;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.JsonReader;
import io.faultwright.syntax.Node;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads the file that a participant handed in, and holds it against the quiz. */
final class ResultFile {
  private static final String WHAT = "quiz answers";
  private static final String AGAIN = "ask the participant to save and send it once more";

  private final IssuedQuiz quiz;
  private final Problems problems;

  private ResultFile(IssuedQuiz quiz, Problems problems) {
    this.quiz = quiz;
    this.problems = problems;
  }

  /** The answers; nothing where a problem was reported. */
  static Optional<Submission> read(SourceFile file, IssuedQuiz quiz, Problems problems) {
    int before = problems.count();
    Optional<Submission> read =
        JsonReader.read(file, problems)
            .root()
            .flatMap(root -> new ResultFile(quiz, problems).submission(root));
    return read.filter(one -> problems.count() == before);
  }

  private Optional<Submission> submission(Node root) {
    Members file = new Members(root, "a result file", problems);
    if (!is(file) || !fits(file)) {
      return Optional.empty();
    }
    return variant(file).flatMap(variant -> submission(file, variant));
  }

  private boolean is(Members file) {
    Optional<String> what = file.text("what");
    if (what.isPresent() && !what.get().equals(WHAT)) {
      problems.add(
          file.place("what"),
          "this is no result file: `what` is `" + what.get() + "`, expected `" + WHAT + "`",
          "leave the file out");
    }
    return what.equals(Optional.of(WHAT));
  }

  /** Of this session and this making of its quiz; else the rest means nothing. */
  private boolean fits(Members file) {
    return fits(
            file,
            "session",
            quiz.about().session(),
            "is of another session",
            "grade it with the quiz of that session")
        && fits(
            file,
            "quiz",
            quiz.fingerprint(),
            "is of another making of this quiz",
            "grade it with the `quiz.json` that was written together with it");
  }

  private boolean fits(Members file, String key, String expected, String message, String help) {
    Optional<String> found = file.text(key);
    if (found.isPresent() && !found.get().equals(expected)) {
      String both = ": expected `" + expected + "`, found `" + found.get() + "`";
      problems.add(file.place(key), "the file " + message + both, help);
    }
    return found.equals(Optional.of(expected));
  }

  private Optional<Variant> variant(Members file) {
    OptionalInt number = file.number("participant");
    if (number.isEmpty()) {
      return Optional.empty();
    }
    Optional<Variant> variant = quiz.variant(number.getAsInt());
    if (variant.isEmpty()) {
      problems.add(
          file.place("participant"), unknown(quiz, Integer.toString(number.getAsInt())), AGAIN);
    }
    return variant;
  }

  /** There is no such participant. */
  static String unknown(IssuedQuiz quiz, String found) {
    return "there is no participant `"
        + found
        + "`; the quiz was made for 1 to "
        + quiz.variants().size();
  }

  private Optional<Submission> submission(Members file, Variant variant) {
    int before = problems.count();
    String name = file.text("name").orElse("");
    PersonNames.require(name, file.place("name"), problems);
    String handedIn = file.text("handedIn").orElse("");
    Moments.require(handedIn, file.place("handedIn"), problems);
    Optional<String> check = file.text("check");
    Map<String, Answer> answers = answers(file, variant);
    if (problems.count() > before) {
      return Optional.empty();
    }
    HandIn handIn = handIn(variant, name, handedIn, List.copyOf(answers.values()));
    if (!CheckValue.of(handIn, variant.key()).equals(check.orElse(""))) {
      problems.add(
          file.place("check"),
          "the file was changed after it was saved: its check value is that of other answers,"
              + " another name or another time",
          AGAIN);
    }
    List<Answer> inOrder = variant.items().stream().map(item -> answers.get(item.id())).toList();
    return Optional.of(
        new Submission(file.owner(), handIn(variant, name, handedIn, inOrder), false));
  }

  private HandIn handIn(Variant variant, String name, String handedIn, List<Answer> answers) {
    return new HandIn(
        quiz.about().session(), quiz.fingerprint(), variant.participant(), name, handedIn, answers);
  }

  private Map<String, Answer> answers(Members file, Variant variant) {
    Map<String, Item> items = new LinkedHashMap<>();
    variant.items().forEach(item -> items.put(item.id(), item));
    Map<String, Answer> given = new LinkedHashMap<>();
    file.list("answers").forEach(node -> add(node, items, given));
    List<String> missing = items.keySet().stream().filter(id -> !given.containsKey(id)).toList();
    if (!missing.isEmpty()) {
      String first = "there is no answer to item `" + missing.get(0) + "`";
      String more = missing.size() == 1 ? "" : " and " + (missing.size() - 1) + " more";
      problems.add(file.place("answers"), first + more, AGAIN);
    }
    return given;
  }

  private void add(Node node, Map<String, Item> items, Map<String, Answer> given) {
    Members answer = new Members(node, "an answer", problems);
    Optional<String> id = answer.text("item");
    OptionalInt choice = answer.optionalNumber("choice");
    if (id.isEmpty()) {
      return;
    }
    if (!items.containsKey(id.get())) {
      problems.add(
          answer.place("item"),
          "the quiz has no item `" + id.get() + "`",
          NearMatch.of(id.get(), items.keySet()).map(ResultFile::meant).orElse(AGAIN));
    } else if (given.putIfAbsent(id.get(), new Answer(id.get(), choice)) != null) {
      problems.add(answer.place("item"), "item `" + id.get() + "` is answered twice", AGAIN);
    } else if (choice.isPresent()) {
      requireWithin(choice.getAsInt(), items.get(id.get()), answer);
    }
  }

  private static String meant(String near) {
    return "did you mean `" + near + "`?";
  }

  private void requireWithin(int choice, Item item, Members answer) {
    if (choice < 1 || choice > item.options().size()) {
      problems.add(
          answer.place("choice"),
          "expected a choice from 1 to " + item.options().size() + ", found " + choice,
          AGAIN);
    }
  }
}
