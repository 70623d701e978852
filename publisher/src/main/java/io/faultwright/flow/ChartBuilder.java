package io.faultwright.flow;

import io.faultwright.analysis.outcome.Results;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.flow.Decisions.Arm;
import io.faultwright.flow.Decisions.Asked;
import io.faultwright.flow.Decisions.Told;
import io.faultwright.flow.Order.Priority;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.wording.Wording;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Derives the flowchart of a symptom from its rules. It is sound: every situation that can happen
 * has exactly one path, which ends at what the rules say in that situation.
 */
public final class ChartBuilder {
  /** How much larger a chart may be for asking what is easiest to reach first. */
  private static final double TOLERATED = 1.25;

  private final Symptom symptom;
  private final Wording wording;
  private final AnswerWords answers;
  private final CheckWords checks;
  private final OutcomeWords outcomes;
  private final Decisions decisions;
  private final SortedMap<String, Node> nodes = new TreeMap<>();
  private final List<Edge> edges = new ArrayList<>();
  private final Map<Integer, String> ids = new HashMap<>();

  private ChartBuilder(SymptomSpace space, Decisions decisions) {
    KnowledgeBase knowledge = space.space().knowledge();
    this.symptom = space.symptom();
    this.wording = Wording.published(knowledge);
    this.answers = new AnswerWords(space.space(), wording);
    this.checks = new CheckWords(knowledge, wording);
    this.outcomes = new OutcomeWords(knowledge, symptom, wording);
    this.decisions = decisions;
  }

  /** The chart of a symptom. */
  public static Flowchart build(KnowledgeBase knowledge, Symptom symptom) {
    return build(SymptomSpace.of(knowledge, symptom));
  }

  /** The chart of a symptom whose space is known already. */
  public static Flowchart build(SymptomSpace space) {
    return plan(space)
        .map(plan -> new ChartBuilder(space, plan.decisions()).chart(plan.root()))
        .orElseGet(() -> new ChartBuilder(space, new Decisions()).unworkable());
  }

  /** The plan that asks the easiest first, unless another is much smaller; empty for neither. */
  static Optional<Plan> plan(SymptomSpace space) {
    if (space.possible() == Diagrams.NONE) {
      return Optional.empty();
    }
    Optional<Plan> easy = plan(space, Priority.ACCESS);
    Optional<Plan> small = plan(space, Priority.COMPACTNESS);
    int least = small.map(Plan::size).orElse(Integer.MAX_VALUE);
    return easy.filter(plan -> plan.size() <= TOLERATED * least).or(() -> small);
  }

  static Optional<Plan> plan(SymptomSpace space, Priority priority) {
    return Plan.of(space, Results.of(space), new Order(space, Questions.of(space), priority));
  }

  private Flowchart chart(int root) {
    Node.Start start = start();
    edges.add(new Edge(start.id(), add(root), ""));
    return new Flowchart(symptom.id(), start, nodes, edges);
  }

  private Node.Start start() {
    String scope =
        symptom.applies().equals(Condition.ALWAYS) ? "" : wording.condition(symptom.applies());
    Node.Start start = new Node.Start("start", symptom.title(), scope);
    nodes.put(start.id(), start);
    return start;
  }

  /** A chart that says no more than where to look instead. */
  private Flowchart unworkable() {
    Node.Start start = start();
    Node.Outcome end =
        new Node.Outcome(
            "rules", Node.Ending.REFERRAL, "Work from the rules", "Too many ways for a chart");
    nodes.put(end.id(), end);
    edges.add(new Edge(start.id(), end.id(), ""));
    return new Flowchart(symptom.id(), start, nodes, edges);
  }

  /** The id of the node for a decision, which is added unless it stands there already. */
  private String add(int number) {
    String known = ids.get(number);
    return known != null ? known : addNew(number);
  }

  private String addNew(int number) {
    Node node =
        decisions.get(number) instanceof Told told
            ? outcomes.outcome(told.result())
            : check((Asked) decisions.get(number));
    nodes.put(node.id(), node);
    ids.put(number, node.id());
    if (decisions.get(number) instanceof Asked asked) {
      for (Arm arm : asked.arms()) {
        String answer = answers.words(asked.question(), arm.options());
        edges.add(new Edge(node.id(), add(arm.next()), answer));
      }
    }
    return node.id();
  }

  private Node check(Asked asked) {
    String stem =
        "check." + asked.question().subject() + (asked.question().limits() ? ".limits" : "");
    String id = stem;
    for (int copy = 2; nodes.containsKey(id); copy++) {
      id = stem + "." + copy;
    }
    return checks.check(id, asked.question());
  }
}
