package io.faultwright.report;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Value;
import io.faultwright.run.Borderline;
import io.faultwright.run.Borderline.End;
import io.faultwright.run.Borderline.Near;
import io.faultwright.run.Verdict;
import io.faultwright.wording.RuleText;
import io.faultwright.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** What is said where another outcome is within the tolerances. */
final class BorderlineWords {
  private final KnowledgeBase kb;
  private final Wording wording;
  private final AnswerWords answers;

  BorderlineWords(KnowledgeBase kb) {
    this.kb = kb;
    this.wording = new Wording(kb);
    this.answers = new AnswerWords(kb);
  }

  List<String> lines(Borderline borderline) {
    return borderline instanceof Borderline.Found found
        ? lines(found)
        : List.of("not computed: too many readings lie too near to something");
  }

  private List<String> lines(Borderline.Found found) {
    List<String> lines = new ArrayList<>(found.near().stream().map(this::near).toList());
    found.others().forEach(other -> lines.add("could also be: " + outcome(other.verdict())));
    lines.add(advice(found));
    return lines;
  }

  private String advice(Borderline.Found found) {
    return found
        .next()
        .map(id -> wording.subject(id) + " (" + id + ")")
        .map(
            reading -> found.decides() ? "take " + reading + " to decide" : reading + " may decide")
        .orElse("no other reading decides: measure again, or with a finer instrument");
  }

  private String near(Near near) {
    return wording.subject(near.reading())
        + (near.end() == End.NO_LIMITS
            ? " is near to where its limits have no figure"
            : " is " + distance(near) + " from " + end(near))
        + known(near.reading(), near.tolerance())
        + near.followed().entrySet().stream().map(this::followed).collect(Collectors.joining());
  }

  private String distance(Near near) {
    return near.distance().signum() == 0
        ? "no distance"
        : wording.difference(near.reading(), near.distance());
  }

  private String followed(Map.Entry<String, BigFraction> driver) {
    return "; that follows "
        + wording.subject(driver.getKey())
        + known(driver.getKey(), driver.getValue());
  }

  private String known(String reading, BigFraction tolerance) {
    return tolerance.signum() == 0 ? "" : ", taken to ±" + wording.difference(reading, tolerance);
  }

  private String end(Near near) {
    String at = wording.about(near.reading(), near.at());
    return switch (near.end()) {
      case LOWER_LIMIT -> "its lower limit " + at;
      case UPPER_LIMIT -> "its upper limit " + at;
      default -> wording.value(near.reading(), new Value.Number(near.at()));
    };
  }

  private String outcome(Verdict verdict) {
    String told = answers.all(verdict.answers());
    return told.isEmpty() || verdict.contradictory()
        ? StatusWords.of(verdict) + (told.isEmpty() ? "" : ": " + told)
        : told;
  }

  /** An outcome in one cell of a table: ids, or the status where there is no answer. */
  static String cell(Borderline borderline) {
    return borderline instanceof Borderline.Found found
        ? found.others().stream()
            .map(other -> cell(other.verdict()))
            .collect(Collectors.joining(" | "))
        : "not computed";
  }

  private static String cell(Verdict verdict) {
    return verdict.answers().isEmpty()
        ? verdict.status().word()
        : verdict.answers().stream().map(RuleText::answer).collect(Collectors.joining("; "));
  }

  /** The id of what a reading is near to, for machines. */
  static String word(End end) {
    return end.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  String amount(String reading, BigFraction amount) {
    return new RuleText(kb).value(reading, new Value.Number(amount));
  }

  String difference(String reading, BigFraction amount) {
    return wording.difference(reading, amount);
  }
}
