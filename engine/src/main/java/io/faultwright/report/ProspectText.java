package io.faultwright.report;

import io.faultwright.ambiguity.Prospect;
import io.faultwright.ambiguity.Prospect.Open;
import io.faultwright.ambiguity.Prospect.Step;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.run.Verdict;
import io.faultwright.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a case leaves open, and what to read next, for people. */
public final class ProspectText {
  private final Wording wording;
  private final AnswerWords answers;
  private final StepCautions cautions;
  private final Ink ink;

  public ProspectText(KnowledgeBase kb, Ink ink) {
    this.wording = new Wording(kb);
    this.answers = new AnswerWords(kb);
    this.cautions = new StepCautions(kb);
    this.ink = ink;
  }

  /**
   * The prospect.
   *
   * @param verdict what the rules say of the case as it is
   */
  public String write(Prospect prospect, Verdict verdict) {
    return ink.strong(prospect.recorded())
        + ": "
        + Columns.printable(wording.symptom(prospect.symptom()))
        + "\n"
        + (prospect.open().isEmpty() ? Block.of("outcome", StatusWords.of(verdict)) : "")
        + Block.of(label(prospect), prospect.open().stream().map(this::open).toList())
        + Block.of("ruled out", answers.faults(prospect.ruledOut()))
        + steps(prospect.steps());
  }

  private static String label(Prospect prospect) {
    return prospect.open().size() == 1 ? "surely" : "still possible";
  }

  private String open(Open open) {
    String told = open.answers().isEmpty() ? "no rule answers" : answers.all(open.answers());
    return Shares.words(open.likelihood()) + " " + told;
  }

  private String steps(List<Step> steps) {
    StringBuilder text = new StringBuilder();
    steps.stream()
        .limit(1)
        .forEach(step -> text.append(Block.of("before it", cautions.lines(step.taking()))));
    for (Step step : steps) {
      text.append(Block.of(step == steps.get(0) ? "next" : "or", words(step)));
    }
    return text.toString();
  }

  private static List<String> words(Step step) {
    List<String> lines = new ArrayList<>();
    lines.add(Takings.words(step.reading(), step.taking()));
    String decides =
        step.decides() == 0 ? "does not decide yet" : "decides in " + Shares.words(step.decides());
    lines.add(
        decides
            + step.expected()
                .map(all -> "; on average " + minutes(all.minutes()) + " min until it is decided")
                .orElse(""));
    return lines;
  }

  private static String minutes(double minutes) {
    return String.format(Locale.ROOT, minutes < 10 ? "%.1f" : "%.0f", minutes);
  }
}
