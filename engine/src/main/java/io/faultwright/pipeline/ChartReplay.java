package io.faultwright.pipeline;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Answer;
import io.faultwright.model.Chart;
import io.faultwright.model.Chart.Branch;
import io.faultwright.model.Chart.Step;
import io.faultwright.model.Chart.Target;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Condition;
import io.faultwright.model.HazardOrder;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.run.Runner;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Walks a witness through an authored chart, where Drools judges every answer: each answer is
 * compiled as a rule of a symptom that stands for the chart.
 */
final class ChartReplay {
  /** Between step and position in the names of these rules; no trainer's id has a blank. */
  private static final String BLANK = " ";

  private final KnowledgeBase kb;
  private final Runner rules;
  private Optional<Runner> charts = Optional.empty();

  /**
   * @param rules runs the symptoms of the knowledge base
   */
  ChartReplay(KnowledgeBase kb, Runner rules) {
    this.kb = kb;
    this.rules = rules;
  }

  /** What one meets on the ways that a situation can take. */
  private static final class Walk {
    private final Set<FindingKind> met = EnumSet.noneOf(FindingKind.class);
    private final Set<SortedSet<Answer>> ends = new LinkedHashSet<>();
  }

  /** Whether the way of a finding's witness is as the finding says. */
  boolean agrees(Finding finding, Situation witness) {
    Chart chart = kb.charts().get(finding.chart().orElseThrow());
    Walk walk = new Walk();
    Set<String> taken = charts().run(chart.id(), witness).fired();
    follow(chart, chart.start(), taken, new TreeSet<>(), walk);
    SortedSet<Answer> said = rules.run(chart.symptom(), witness).answers();
    if (walk.ends.stream().anyMatch(end -> !end.equals(said))) {
      walk.met.add(FindingKind.CHART_DIFFERS);
    }
    return walk.met.contains(finding.kind());
  }

  private void follow(
      Chart chart, String id, Set<String> taken, SortedSet<String> before, Walk walk) {
    if (before.contains(id)) {
      walk.met.add(FindingKind.CHART_LOOP);
      return;
    }
    SortedSet<String> done = new TreeSet<>(before);
    done.add(id);
    Step step = chart.steps().get(id);
    Set<Target> targets = new LinkedHashSet<>();
    IntStream.range(0, step.branches().size())
        .filter(position -> taken.contains(id + BLANK + position))
        .forEach(position -> targets.add(step.branches().get(position).target()));
    if (targets.size() > 1) {
      walk.met.add(FindingKind.CHART_ANSWERS_OVERLAP);
    } else if (targets.isEmpty()) {
      walk.met.add(FindingKind.CHART_ANSWER_MISSING);
    }
    for (Target target : targets) {
      target.match(
          next -> {
            follow(chart, next.step(), taken, done, walk);
            return true;
          },
          end -> walk.ends.add(end.answers()));
    }
  }

  private Runner charts() {
    if (charts.isEmpty()) {
      KnowledgeBase asSymptoms = asSymptoms();
      charts = Optional.of(new Runner(asSymptoms, RuleCompiler.compile(asSymptoms)));
    }
    return charts.get();
  }

  private KnowledgeBase asSymptoms() {
    SortedMap<String, Symptom> symptoms = new TreeMap<>();
    kb.charts().forEach((id, chart) -> symptoms.put(id, asSymptom(chart)));
    return new KnowledgeBase(
        kb.handbook(),
        kb.equipment(),
        kb.readings(),
        kb.limits(),
        kb.faults(),
        symptoms,
        new TreeMap<>(),
        new TreeMap<>(),
        kb.cautions(),
        kb.parts(),
        kb.guides(),
        kb.setUps(),
        kb.charts(),
        kb.sequences(),
        kb.wordbook());
  }

  private static Symptom asSymptom(Chart chart) {
    SortedMap<String, Rule> answers = new TreeMap<>();
    for (Step step : chart.steps().values()) {
      for (int position = 0; position < step.branches().size(); position++) {
        Branch branch = step.branches().get(position);
        String id = step.id() + BLANK + position;
        answers.put(
            id,
            new Rule(
                id,
                branch.place(),
                branch.when(),
                new Conclusion.Escalate(""),
                "",
                new TreeSet<>()));
      }
    }
    return new Symptom(
        chart.id(),
        chart.place(),
        chart.title(),
        "",
        Condition.ALWAYS,
        Condition.ALWAYS,
        List.of(),
        answers,
        new TreeMap<>(),
        new TreeSet<>(),
        Optional.empty(),
        HazardOrder.LAST);
  }
}
