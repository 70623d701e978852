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
import io.faultwright.words.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Derives the flowcharts of a symptom from its rules, one for each group of equipment on which they
 * differ; where a trainer wrote one, it is taken. A chart is sound: every situation that can happen
 * on its equipment has exactly one path, which ends at what the rules say in that situation.
 */
public final class ChartBuilder {
  private final KnowledgeBase knowledge;
  private final Symptom symptom;
  private final String scope;
  private final Words say;
  private final AnswerWords answers;
  private final CheckWords checks;
  private final OutcomeWords outcomes;
  private final Decisions decisions;
  private final SortedMap<String, Node> nodes = new TreeMap<>();
  private final List<Edge> edges = new ArrayList<>();
  private final Map<Integer, String> ids = new HashMap<>();
  private final Map<Integer, SortedSet<String>> known = new HashMap<>();

  private ChartBuilder(
      SymptomSpace space, KnowledgeBase shown, ScopedOrder order, String scope, Wording wording) {
    this.knowledge = shown;
    this.symptom = shown.symptoms().get(space.symptom().id());
    this.say = wording.say();
    this.scope = scope;
    this.answers = new AnswerWords(space.space(), wording);
    this.checks = new CheckWords(knowledge, wording, order.builds());
    this.outcomes = new OutcomeWords(knowledge, symptom, wording);
    this.decisions = order.checks().map(CheckOrder::decisions).orElseGet(Decisions::new);
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
    return charts(space, List.of(space.space().knowledge())).get(0);
  }

  /**
   * The same charts in the words of several knowledge bases, for each of those. The order of the
   * checks is worked out once.
   *
   * @param shown the knowledge base of the space in several languages
   */
  public static List<List<ScopedChart>> charts(SymptomSpace space, List<KnowledgeBase> shown) {
    KnowledgeBase knowledge = space.space().knowledge();
    List<Build> left = new ArrayList<>(equipment(space));
    List<Authored> authored = AuthoredCharts.courses(knowledge, space.symptom(), left);
    authored.forEach(one -> left.removeAll(one.course().builds()));
    SymptomSpace rest = authored.isEmpty() ? space : rest(space, left);
    List<ScopedOrder> orders = left.isEmpty() ? List.of() : orders(rest, authored.isEmpty());
    return shown.stream()
        .map(
            words ->
                Stream.concat(
                        authored.stream().map(one -> AuthoredCharts.drawn(words, one)),
                        orders.stream().map(order -> chart(rest, words, order)))
                    .toList())
        .toList();
  }

  private static SymptomSpace rest(SymptomSpace space, List<Build> left) {
    return SymptomSpace.where(
        space.space().knowledge(), space.symptom(), left, List.of(), Deadline.NEVER);
  }

  private static List<ScopedOrder> orders(SymptomSpace space, boolean all) {
    List<ScopedOrder> orders = ScopedOrders.of(space);
    return orders.isEmpty() && all
        ? List.of(new ScopedOrder(equipment(space), 0, Optional.empty()))
        : orders;
  }

  private static List<Build> equipment(SymptomSpace space) {
    return space.space().axes().get(0).cells().stream()
        .flatMap(cell -> ((Cell.Builds) cell).builds().stream())
        .sorted()
        .toList();
  }

  private static ScopedChart chart(SymptomSpace space, KnowledgeBase shown, ScopedOrder order) {
    Wording wording = Wording.published(shown);
    String scope = scope(shown, wording, order.builds());
    ChartBuilder builder = new ChartBuilder(space, shown, order, scope, wording);
    Flowchart chart =
        order
            .checks()
            .map(checks -> builder.chart(checks.root()))
            .orElseGet(() -> builder.unworkable(reason(space, wording.say())));
    return new ScopedChart(
        order.builds(),
        scope,
        chart,
        order.checks().map(CheckOrder::cost),
        order.checks().map(checks -> builder.course(space, checks)).orElse(Course.NONE));
  }

  /** The course of a chart that is drawn. */
  private Course course(SymptomSpace space, CheckOrder checks) {
    return Courses.of(
        space.space(), space.symptom().place(), checks.decisions(), checks.root(), ids);
  }

  private static String reason(SymptomSpace space, Words say) {
    return space.possible() == Diagrams.NONE
        ? say.say("The rules say that it cannot happen here")
        : say.say("Too many ways for a chart");
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
        new Node.Outcome("rules", Node.Ending.REFERRAL, say.say("Work from the rules"), reason);
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
