package io.faultwright.report;

import io.faultwright.field.Contrast;
import io.faultwright.field.Disagreement;
import io.faultwright.field.Ground;
import io.faultwright.field.Separation;
import io.faultwright.model.Answer;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.run.Status;
import io.faultwright.wording.RuleText;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What recorded jobs show about a rule, in words with the ids of the rule language. */
final class FieldWords {
  private final RuleText rules;

  FieldWords(KnowledgeBase kb) {
    this.rules = new RuleText(kb);
  }

  /** For instance {@code coil-lacks-air said evaporator-dirty}. */
  static String ground(Ground ground) {
    if (!ground.rules().isEmpty()) {
      return String.join(" and ", ground.rules()) + " said " + answers(ground.verdict().answers());
    }
    return ground.verdict().status() == Status.REFERRED
        ? "`first` said " + answers(ground.verdict().answers())
        : "no rule: " + StatusWords.of(ground.verdict());
  }

  /** Answers as {@code expect} would say them. */
  static String answers(Collection<Answer> answers) {
    return answers.isEmpty()
        ? "nothing yet"
        : answers.stream().map(RuleText::answer).collect(Collectors.joining("; "));
  }

  /** Where the first rows stand, file by file. */
  static String places(Disagreement rows) {
    Map<String, List<Integer>> files = new LinkedHashMap<>();
    rows.first()
        .forEach(
            place ->
                files.computeIfAbsent(place.file(), file -> new ArrayList<>()).add(place.line()));
    String first =
        files.entrySet().stream()
            .map(file -> file.getKey() + ", " + lines(file.getValue()))
            .collect(Collectors.joining("; "));
    return first + (rows.rows() > rows.first().size() ? ", …" : "");
  }

  private static String lines(List<Integer> lines) {
    String numbers = lines.stream().map(String::valueOf).collect(Collectors.joining(", "));
    return (lines.size() == 1 ? "line " : "lines ") + numbers;
  }

  /** What tells them from the rows that agree, or why nothing does; empty where no rule spoke. */
  String contrast(Ground ground, Contrast contrast) {
    return switch (contrast.kind()) {
      case SEPARATED -> separation(contrast.separation().orElseThrow());
      case NOTHING_SEPARATES -> "no reading that was given separates them from the rows that agree";
      case TOO_FEW -> "too few rows to tell what separates them";
      case NOTHING_AGREES -> "no row agrees, so there is nothing to set them against";
      case NOT_COUNTED -> "not compared: there are too many kinds of row";
      case NO_RULE -> isOpen(ground) ? "some reading that the rules ask for is not given" : "";
    };
  }

  private static boolean isOpen(Ground ground) {
    Status status = ground.verdict().status();
    return status == Status.NOTHING_YET || status == Status.ASK_FIRST;
  }

  private String separation(Separation found) {
    return found.disagreeing()
        + " of "
        + found.ofDisagreeing()
        + " have `"
        + condition(found)
        + "`, and "
        + found.agreeing()
        + " of the "
        + found.ofAgreeing()
        + " that agree";
  }

  String condition(Separation found) {
    return found.subject() + ": " + rules.pattern(found.subject(), found.pattern());
  }
}
