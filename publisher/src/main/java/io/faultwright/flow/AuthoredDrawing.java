package io.faultwright.flow;

import io.faultwright.analysis.chart.ChartCourse;
import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.flow.AuthoredAnswers.Said;
import io.faultwright.model.Chart;
import io.faultwright.model.Chart.Branch;
import io.faultwright.model.Chart.End;
import io.faultwright.model.Chart.Step;
import io.faultwright.model.Chart.Target;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Sorted;
import io.faultwright.wording.Wording;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Draws an authored chart as it was written. Steps and answers that nothing comes to are left out,
 * and so is a step whose answers all lead to the same.
 */
final class AuthoredDrawing {
  private final KnowledgeBase knowledge;
  private final Chart chart;
  private final ChartCourse course;
  private final Diagrams diagrams;
  private final AuthoredAnswers answers;
  private final CheckWords checks;
  private final OutcomeWords outcomes;
  private final SortedMap<String, Node> nodes = new TreeMap<>();
  private final List<Edge> edges = new ArrayList<>();
  private final Map<String, String> ids = new HashMap<>();
  private final Map<String, Drawn> drawn = new LinkedHashMap<>();

  /**
   * A step that is drawn.
   *
   * @param arms for each node that answers lead to, those answers
   */
  private record Drawn(String id, Step step, Map<String, List<Branch>> arms) {}

  /**
   * @param shown the knowledge base in the language of the drawing
   */
  AuthoredDrawing(Chart chart, ChartCourse course, KnowledgeBase shown, Wording wording) {
    this.knowledge = shown;
    this.chart = chart;
    this.course = course;
    this.diagrams = course.symptom().space().diagrams();
    this.answers = new AuthoredAnswers(course, wording);
    this.checks = new CheckWords(knowledge, wording, course.builds());
    this.outcomes = new OutcomeWords(knowledge, knowledge.symptoms().get(chart.symptom()), wording);
  }

  /**
   * The flowchart.
   *
   * @param scope what stands below its title
   */
  Flowchart chart(String scope) {
    Node.Start start = new Node.Start("start", chart.title(), scope);
    nodes.put(start.id(), start);
    edges.add(new Edge(start.id(), step(chart.start()), ""));
    List<Drawn> fromTheTop = new ArrayList<>(drawn.values());
    Collections.reverse(fromTheTop);
    Map<String, Set<String>> known = new HashMap<>();
    fromTheTop.forEach(one -> draw(one, known));
    return new Flowchart(chart.symptom(), start, nodes, edges);
  }

  /** The id of the node at which a step begins. What a step leads to is drawn before it. */
  private String step(String id) {
    String known = ids.get(id);
    if (known == null) {
      known = newStep(chart.steps().get(id));
      ids.put(id, known);
    }
    return known;
  }

  private String newStep(Step step) {
    Map<String, List<Branch>> arms = new LinkedHashMap<>();
    for (Branch branch : step.branches()) {
      int part = diagrams.and(course.at(step), course.where(branch));
      if (part != Diagrams.NONE) {
        String next = target(branch.target(), part);
        arms.computeIfAbsent(next, fresh -> new ArrayList<>()).add(branch);
      }
    }
    if (arms.size() == 1) {
      return arms.keySet().iterator().next();
    }
    String id = node(step);
    drawn.put(id, new Drawn(id, step, arms));
    return id;
  }

  /** The id of the node that asks a step. */
  static String node(Step step) {
    return "step." + step.id();
  }

  private String target(Target target, int part) {
    return target.match(next -> step(next.step()), end -> outcome(end, part));
  }

  private String outcome(End end, int part) {
    Node.Outcome outcome = outcomes.outcome(new Result(end.answers(), part, 0));
    nodes.put(outcome.id(), outcome);
    return outcome.id();
  }

  /**
   * Adds a step and its lines.
   *
   * @param known for each node, what was asked about on every way to it
   */
  private void draw(Drawn one, Map<String, Set<String>> known) {
    Set<String> before = known.getOrDefault(one.id, Set.of());
    nodes.put(one.id, checks.check(one.id, answers.question(one.step), Sorted.set(before)));
    Set<String> after = new TreeSet<>(before);
    after.addAll(KnownSubjects.read(knowledge, answers.question(one.step)));
    List<Said> said = new ArrayList<>();
    one.arms.forEach(
        (next, branches) -> {
          said.add(answers.said(one.step, branches, next));
          known.merge(next, new TreeSet<>(after), AuthoredDrawing::both);
        });
    said.stream()
        .sorted(Said.ORDER)
        .forEach(line -> edges.add(new Edge(one.id, line.next(), line.words())));
  }

  private static Set<String> both(Set<String> one, Set<String> other) {
    one.retainAll(other);
    return one;
  }
}
