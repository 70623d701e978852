package io.faultwright.flow;

import io.faultwright.adequacy.Criterion;
import io.faultwright.adequacy.Goal;
import io.faultwright.adequacy.GoalStatus;
import io.faultwright.analysis.coverage.Sighting;
import io.faultwright.analysis.order.CheckOrder;
import io.faultwright.analysis.order.Decisions.Arm;
import io.faultwright.analysis.order.Decisions.Asked;
import io.faultwright.analysis.order.Question;
import io.faultwright.analysis.order.ScopedOrder;
import io.faultwright.analysis.order.ScopedOrders;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Symptom;
import io.faultwright.source.Place;
import io.faultwright.wording.Wording;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Walks recorded cases along the charts of a symptom: which of their answers do they give? A case
 * goes as far as what it says is enough to answer, on the chart for its machine.
 */
public final class ChartWalk {
  private final KnowledgeBase kb;
  private final SymptomSpace space;
  private final ScopedOrder scope;
  private final CheckOrder chart;
  private final String scopeWords;
  private final AnswerWords answers;
  private final CheckWords checks;
  private final Map<Line, SortedSet<Build>> given = new HashMap<>();

  /** An answer at a place of the chart: the number of the decision, and which of its arms. */
  private record Line(int decision, int arm) {}

  private ChartWalk(SymptomSpace space, ScopedOrder scope, CheckOrder chart, boolean alone) {
    this.kb = space.space().knowledge();
    this.space = space;
    this.scope = scope;
    this.chart = chart;
    Wording wording = Wording.published(kb);
    this.scopeWords = alone ? "" : ", on the chart for " + wording.builds(scope.builds());
    this.answers = new AnswerWords(space.space(), wording);
    this.checks = new CheckWords(kb, wording, scope.builds());
  }

  /**
   * Every answer on a symptom's charts, in their order; none where a chart is too large to be
   * drawn.
   *
   * @param cases of this symptom or of others, which are passed over
   * @param deadline after which this throws {@link io.faultwright.analysis.space.OutOfTime}
   */
  public static List<GoalStatus> goals(
      KnowledgeBase kb, Symptom symptom, List<Sighting> cases, Deadline deadline) {
    SymptomSpace space = SymptomSpace.of(kb, symptom, deadline);
    List<ScopedOrder> scopes = ScopedOrders.of(space);
    return scopes.stream()
        .flatMap(
            scope ->
                scope.checks().stream()
                    .map(chart -> new ChartWalk(space, scope, chart, scopes.size() == 1)))
        .flatMap(walk -> walk.goals(cases).stream())
        .toList();
  }

  private List<GoalStatus> goals(List<Sighting> cases) {
    cases.stream()
        .filter(one -> one.symptom().equals(space.symptom().id()) && one.ruling().canBe())
        .forEach(this::walk);
    Map<Line, SortedSet<Build>> possible = possible();
    List<GoalStatus> goals = new ArrayList<>();
    list(chart.root(), possible, new TreeMap<>(), new TreeSet<>(), goals);
    return goals;
  }

  private void walk(Sighting one) {
    GivenAnswers said = new GivenAnswers(space.space(), one.observed());
    SortedSet<Build> builds = builds(said.equipment());
    int number = chart.root();
    while (scope.builds().containsAll(builds)
        && chart.decisions().get(number) instanceof Asked asked) {
      Optional<Integer> arm = arm(asked, said.cells(asked.question()));
      if (arm.isEmpty()) {
        return;
      }
      given.computeIfAbsent(new Line(number, arm.get()), line -> new TreeSet<>()).addAll(builds);
      number = asked.arms().get(arm.get()).next();
    }
  }

  /** The arm that holds whatever the answer may be. */
  private static Optional<Integer> arm(Asked asked, BitSet may) {
    for (int arm = 0; arm < asked.arms().size(); arm++) {
      BitSet outside = (BitSet) may.clone();
      outside.andNot(asked.question().cells(asked.arms().get(arm).options()));
      if (!may.isEmpty() && outside.isEmpty()) {
        return Optional.of(arm);
      }
    }
    return Optional.empty();
  }

  /** On which builds each answer can be given. */
  private Map<Line, SortedSet<Build>> possible() {
    Diagrams diagrams = space.space().diagrams();
    int[] reached = new int[chart.root() + 1];
    reached[chart.root()] = scope.situations();
    Map<Line, SortedSet<Build>> possible = new HashMap<>();
    for (int number = chart.root(); number >= 0; number--) {
      if (chart.decisions().get(number) instanceof Asked asked) {
        for (int i = 0; i < asked.arms().size(); i++) {
          Arm arm = asked.arms().get(i);
          int part = part(reached[number], asked.question(), arm);
          reached[arm.next()] = diagrams.or(reached[arm.next()], part);
          possible.put(new Line(number, i), builds(part));
        }
      }
    }
    return possible;
  }

  private int part(int situations, Question question, Arm arm) {
    Diagrams diagrams = space.space().diagrams();
    return diagrams.and(
        situations, diagrams.literal(question.axis(), question.cells(arm.options())));
  }

  private SortedSet<Build> builds(int situations) {
    return situations == Diagrams.NONE
        ? new TreeSet<>()
        : builds(space.space().diagrams().occurring(situations)[0]);
  }

  private SortedSet<Build> builds(BitSet cells) {
    SortedSet<Build> builds = new TreeSet<>();
    cells.stream()
        .mapToObj(space.space().axes().get(0).cells()::get)
        .forEach(cell -> builds.addAll(((Cell.Builds) cell).builds()));
    return builds;
  }

  private void list(
      int number,
      Map<Line, SortedSet<Build>> possible,
      Map<String, Integer> places,
      SortedSet<Integer> seen,
      List<GoalStatus> goals) {
    if (!(chart.decisions().get(number) instanceof Asked asked) || !seen.add(number)) {
      return;
    }
    String question = checks.check("", asked.question()).question();
    int place = places.merge(question, 1, Integer::sum);
    for (int i = 0; i < asked.arms().size(); i++) {
      Line line = new Line(number, i);
      if (!possible.get(line).isEmpty()) {
        goals.add(status(line, asked, question, place, possible.get(line)));
      }
      list(asked.arms().get(i).next(), possible, places, seen, goals);
    }
  }

  private GoalStatus status(
      Line line, Asked asked, String question, int place, SortedSet<Build> possible) {
    SortedSet<Build> on = new TreeSet<>(given.getOrDefault(line, new TreeSet<>()));
    on.retainAll(possible);
    String words =
        "`"
            + question
            + "` answered `"
            + answers.words(asked.question(), asked.arms().get(line.arm()).options())
            + (place > 1 ? "`, where the chart asks it for time " + place : "`")
            + scopeWords;
    Goal goal =
        new Goal(
            Criterion.CHART,
            space.symptom().id(),
            Optional.empty(),
            words,
            place(asked.question().subject()));
    return new GoalStatus(goal, given.containsKey(line), possible, on);
  }

  private Place place(String subject) {
    return Optional.ofNullable(kb.readings().get(subject))
        .map(Reading::place)
        .orElse(space.symptom().place());
  }
}
