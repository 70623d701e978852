package io.faultwright.flow;

import io.faultwright.analysis.order.CheckOrder;
import io.faultwright.analysis.order.Decisions;
import io.faultwright.analysis.order.Decisions.Arm;
import io.faultwright.analysis.order.Decisions.Asked;
import io.faultwright.analysis.order.Decisions.Told;
import io.faultwright.analysis.order.ScopedOrder;
import io.faultwright.analysis.order.ScopedOrders;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.wording.Wording;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;

/**
 * Derives the flowcharts of a symptom from its rules, one for each group of equipment on which they
 * differ; where a trainer wrote one, it is taken. A chart is sound: every situation that can happen
 * on its equipment has exactly one path, which ends at what the rules say in that situation.
 */
public final class ChartBuilder {
  private final KnowledgeBase knowledge;
  private final Symptom symptom;
  private final String scope;
  private final AnswerWords answers;
  private final CheckWords checks;
  private final OutcomeWords outcomes;
  private final Decisions decisions;
  private final SortedMap<String, Node> nodes = new TreeMap<>();
  private final List<Edge> edges = new ArrayList<>();
  private final Map<Integer, String> ids = new HashMap<>();
  private final Map<Integer, SortedSet<String>> known = new HashMap<>();

  private ChartBuilder(
      SymptomSpace space, Wording wording, List<Build> builds, String scope, Decisions decisions) {
    this.knowledge = space.space().knowledge();
    this.symptom = space.symptom();
    this.scope = scope;
    this.answers = new AnswerWords(space.space(), wording);
    this.checks = new CheckWords(knowledge, wording, builds);
    this.outcomes = new OutcomeWords(knowledge, symptom, wording);
    this.decisions = decisions;
  }

  /** The charts of a symptom, in a fixed order, at least one. */
  public static List<ScopedChart> charts(KnowledgeBase knowledge, Symptom symptom) {
    return charts(SymptomSpace.of(knowledge, symptom));
  }

  /**
   * The charts of a symptom on some equipment, whose space is known already: those that a trainer
   * wrote, and derived ones for what is left.
   */
  public static List<ScopedChart> charts(SymptomSpace space) {
    KnowledgeBase knowledge = space.space().knowledge();
    List<Build> left = new ArrayList<>(equipment(space));
    List<ScopedChart> charts = new ArrayList<>(AuthoredCharts.of(knowledge, space.symptom(), left));
    charts.forEach(chart -> left.removeAll(chart.builds()));
    if (charts.isEmpty()) {
      return derived(space);
    }
    if (!left.isEmpty()) {
      SymptomSpace rest =
          SymptomSpace.where(knowledge, space.symptom(), left, List.of(), Deadline.NEVER);
      ScopedOrders.of(rest).forEach(order -> charts.add(chart(rest, order)));
    }
    return List.copyOf(charts);
  }

  private static List<ScopedChart> derived(SymptomSpace space) {
    List<ScopedOrder> orders = ScopedOrders.of(space);
    return orders.isEmpty()
        ? List.of(chart(space, new ScopedOrder(equipment(space), 0, Optional.empty())))
        : orders.stream().map(order -> chart(space, order)).toList();
  }

  private static List<Build> equipment(SymptomSpace space) {
    return space.space().axes().get(0).cells().stream()
        .flatMap(cell -> ((Cell.Builds) cell).builds().stream())
        .sorted()
        .toList();
  }

  private static ScopedChart chart(SymptomSpace space, ScopedOrder order) {
    KnowledgeBase knowledge = space.space().knowledge();
    Wording wording = Wording.published(knowledge);
    String scope = scope(knowledge, wording, order.builds());
    Decisions decisions = order.checks().map(CheckOrder::decisions).orElseGet(Decisions::new);
    ChartBuilder builder = new ChartBuilder(space, wording, order.builds(), scope, decisions);
    Flowchart chart =
        order
            .checks()
            .map(checks -> builder.chart(checks.root()))
            .orElseGet(() -> builder.unworkable(reason(space)));
    return new ScopedChart(
        order.builds(),
        scope,
        chart,
        order.checks().map(CheckOrder::cost),
        order.checks().map(checks -> course(space, checks)).orElse(Course.NONE));
  }

  private static Course course(SymptomSpace space, CheckOrder checks) {
    return Courses.of(space.space(), space.symptom().place(), checks.decisions(), checks.root());
  }

  private static String reason(SymptomSpace space) {
    return space.possible() == Diagrams.NONE
        ? "The rules say that it cannot happen here"
        : "Too many ways for a chart";
  }

  /** The equipment in words; nothing where it is all of it. */
  static String scope(KnowledgeBase knowledge, Wording wording, List<Build> builds) {
    boolean everything = builds.size() == knowledge.equipment().builds().size();
    return everything ? "" : Words.upperFirst(wording.builds(builds));
  }

  private Flowchart chart(int root) {
    Node.Start start = start();
    known.putAll(new KnownSubjects(knowledge, decisions).before(root));
    edges.add(new Edge(start.id(), add(root), ""));
    return new Flowchart(symptom.id(), start, nodes, edges);
  }

  private Node.Start start() {
    Node.Start start = new Node.Start("start", symptom.title(), scope);
    nodes.put(start.id(), start);
    return start;
  }

  /** A chart that says no more than where to look instead. */
  private Flowchart unworkable(String reason) {
    Node.Start start = start();
    Node.Outcome end =
        new Node.Outcome("rules", Node.Ending.REFERRAL, "Work from the rules", reason);
    nodes.put(end.id(), end);
    edges.add(new Edge(start.id(), end.id(), ""));
    return new Flowchart(symptom.id(), start, nodes, edges);
  }

  /** The id of the node for a decision, which is added unless it stands there already. */
  private String add(int number) {
    String id = ids.get(number);
    return id != null ? id : addNew(number);
  }

  private String addNew(int number) {
    Node node =
        decisions.get(number) instanceof Told told
            ? outcomes.outcome(told.result())
            : check(number, (Asked) decisions.get(number));
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

  private Node check(int number, Asked asked) {
    String stem =
        "check." + asked.question().subject() + (asked.question().limits() ? ".limits" : "");
    String id = stem;
    for (int copy = 2; nodes.containsKey(id); copy++) {
      id = stem + "." + copy;
    }
    return checks.check(id, asked.question(), known.get(number));
  }
}
