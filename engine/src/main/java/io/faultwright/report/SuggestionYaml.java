package io.faultwright.report;

import io.faultwright.adequacy.Measured.Done;
import io.faultwright.adequacy.Suggestion;
import io.faultwright.model.Answer;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.wording.RuleText;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.stream.Collectors;

/** Suggested cases as YAML that can be put among the others. */
public final class SuggestionYaml {
  private static final int WIDTH = 110;
  private static final int SHOWN = 3;

  private final SituationText situations;

  public SuggestionYaml(KnowledgeBase kb) {
    this.situations = new SituationText(kb);
  }

  /** The cases, each with what it would show as a comment. */
  public String write(List<Suggestion> cases, Done done) {
    String stopped =
        done.whole()
            ? ""
            : "# Stopped before the end: "
                + done.pieces()
                + " of "
                + done.of()
                + " pieces of work done.\n";
    if (cases.isEmpty()) {
      return stopped + "# Nothing to suggest.\n";
    }
    return "# Nobody has confirmed these cases; until somebody does they count for nothing.\n"
        + "# Read each one. Write into `expect` what is right, and take `rules-say` out.\n"
        + stopped
        + "cases:\n"
        + cases.stream().map(this::suggestion).collect(Collectors.joining());
  }

  private String suggestion(Suggestion one) {
    return "  "
        + one.id()
        + ":\n"
        + comment(one.closes())
        + "    symptom: "
        + one.symptom()
        + "\n"
        + given(one)
        + "    expect: unconfirmed\n"
        + "    rules-say: "
        + answers(one.answers())
        + "\n";
  }

  private static String comment(List<String> closes) {
    String more = closes.size() > SHOWN ? "    # and " + (closes.size() - SHOWN) + " more\n" : "";
    return closes.stream()
            .limit(SHOWN)
            .map(words -> "    # shows: " + Columns.printable(words) + "\n")
            .collect(Collectors.joining())
        + more;
  }

  /** In braces, on as many lines as it takes. */
  private String given(Suggestion one) {
    List<String> entries = new ArrayList<>();
    situations
        .entries(one.given())
        .forEach((subject, value) -> entries.add(subject + ": " + value));
    StringBuilder text = new StringBuilder("    given:\n      { ");
    int column = 8;
    for (int i = 0; i < entries.size(); i++) {
      String entry = entries.get(i) + (i + 1 < entries.size() ? "," : " }");
      if (column + entry.length() > WIDTH) {
        text.append("\n        ");
        column = 8;
      } else if (i > 0) {
        text.append(" ");
      }
      text.append(entry);
      column += entry.length() + 1;
    }
    return (entries.isEmpty() ? "    given: {}" : text) + "\n";
  }

  /** As `expect` would say it. */
  private static String answers(SortedSet<Answer> answers) {
    if (answers.isEmpty()) {
      return "nothing yet";
    }
    if (answers.size() > 1) {
      return answers.stream().map(Answer::name).collect(Collectors.joining(", ", "[", "]"));
    }
    Answer only = answers.first();
    return only instanceof Answer.OfFault ? only.name() : "{ " + RuleText.answer(only) + " }";
  }
}
