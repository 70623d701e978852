package io.faultwright.report;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.run.RuleTrace;
import io.faultwright.run.Trace;
import io.faultwright.wording.RuleText;
import io.faultwright.wording.Wording;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What the rules say about cases, for people. */
public final class TraceText {
  private final KnowledgeBase kb;
  private final Wording wording;
  private final AnswerWords answers;
  private final RuleWords ruleWords;
  private final NoteWords noteWords;
  private final BorderlineWords borderlines;
  private final NameplateFigures nameplates;
  private final Ink ink;

  public TraceText(KnowledgeBase kb, Ink ink) {
    this.kb = kb;
    this.wording = new Wording(kb);
    this.answers = new AnswerWords(kb);
    this.ruleWords = new RuleWords(kb);
    this.noteWords = new NoteWords(kb);
    this.borderlines = new BorderlineWords(kb);
    this.nameplates = new NameplateFigures(kb);
    this.ink = ink;
  }

  /** Each case, and how many came out as expected. */
  public String write(RunReport report, boolean explain) {
    return report.runs().stream().map(run -> run(run, explain)).collect(Collectors.joining())
        + closing(report.runs().size(), report.passed(), report.failed());
  }

  /** One case. */
  public String run(CaseRun run, boolean explain) {
    Trace trace = run.trace();
    return ink.strong(run.recorded().id())
        + ": "
        + Columns.printable(wording.symptom(trace.symptom()))
        + "\n"
        + outcome(run)
        + Block.of(
            "note", trace.notes().stream().flatMap(n -> noteWords.lines(n).stream()).toList())
        + Block.of("borderline", run.borderline().map(borderlines::lines).orElse(List.of()))
        + result(run)
        + (explain ? rules(trace) : "")
        + "\n";
  }

  private String outcome(CaseRun run) {
    Trace trace = run.trace();
    return (trace.answers().isEmpty() || trace.contradictory()
            ? Block.of("outcome", StatusWords.of(trace))
            : "")
        + Block.of("answer", trace.answers().stream().map(answers::of).toList())
        + Block.of("nameplate", nameplates.line(run))
        + Block.of("still possible", answers.faults(trace.stillPossible()))
        + Block.of("ruled out", answers.faults(trace.ruledOut()))
        + Block.of("next", trace.next().map(this::ask).orElse(""));
  }

  private String ask(String subject) {
    return wording.subject(subject) + " (" + subject + ")";
  }

  private String result(CaseRun run) {
    return run.passed()
        .map(passed -> Block.of("expected", expected(run) + (passed ? ": passed" : ": failed")))
        .map(line -> run.passed().orElseThrow() ? line : ink.bad(line.stripTrailing()) + "\n")
        .orElse("");
  }

  private static String expected(CaseRun run) {
    return run.recorded().expect().isEmpty()
        ? "nothing yet"
        : run.recorded().expect().stream().map(RuleText::answer).collect(Collectors.joining(", "));
  }

  private String rules(Trace trace) {
    Comparator<Map.Entry<String, RuleTrace>> order =
        Comparator.comparing(rule -> RuleWords.rank(rule.getValue()));
    return trace.rules().entrySet().stream()
        .sorted(order.thenComparing(Map.Entry::getKey))
        .map(
            rule ->
                rule(
                    kb.symptoms().get(trace.symptom()).rules().get(rule.getKey()), rule.getValue()))
        .collect(Collectors.joining());
  }

  private String rule(Rule rule, RuleTrace trace) {
    return Block.of(RuleWords.state(trace), ruleWords.lines(rule, trace));
  }

  /** How many cases there were, and how they came out. */
  public String closing(long cases, long passed, long failed) {
    String expected = passed + failed == 0 ? "" : ": " + passed + " passed, " + failed + " failed";
    String text = Counts.of(cases, "case") + expected;
    return (failed > 0 ? ink.bad(text) : ink.good(text)) + "\n";
  }
}
