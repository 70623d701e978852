package io.faultwright.flow;

import io.faultwright.analysis.judge.Observed;
import io.faultwright.flow.Course.Arm;
import io.faultwright.flow.Course.Pick;
import io.faultwright.flow.Course.Step;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Truth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How far what is known of a machine leads along a chart.
 *
 * @param nodes ids of the nodes that are come to, the start first; the last one is the check that
 *     cannot be answered yet, or the end
 * @param end what is told there; absent where a check is open
 */
public record Way(List<String> nodes, Optional<Course.End> end) {
  private static final String START = "start";

  public Way {
    nodes = List.copyOf(nodes);
  }

  /**
   * The way.
   *
   * @param chart one that is for the machine
   */
  public static Way along(KnowledgeBase kb, ScopedChart chart, Observed observed) {
    List<Step> steps = chart.course().steps();
    List<String> nodes = new ArrayList<>(List.of(START));
    Optional<Step> at = steps.isEmpty() ? Optional.empty() : start(chart);
    Optional<Course.End> end = Optional.empty();
    while (at.isPresent()) {
      Step step = at.get();
      if (chart.chart().nodes().containsKey(step.node())) {
        nodes.add(step.node());
      }
      end = step instanceof Course.End told ? Optional.of(told) : Optional.empty();
      at =
          step instanceof Course.Ask ask
              ? next(kb, ask, observed).map(steps::get)
              : Optional.empty();
    }
    return new Way(nodes, end);
  }

  private static Optional<Step> start(ScopedChart chart) {
    return Optional.of(chart.course().steps().get(chart.course().start()));
  }

  private static Optional<Integer> next(KnowledgeBase kb, Course.Ask ask, Observed observed) {
    return ask.arms().stream().filter(arm -> holds(kb, arm, observed)).map(Arm::next).findFirst();
  }

  private static boolean holds(KnowledgeBase kb, Arm arm, Observed observed) {
    return isAmong(arm, observed)
        || arm.picks().stream().anyMatch(pick -> holds(kb, pick, observed));
  }

  /** Whether every machine that it can be is among those of the answer. */
  private static boolean isAmong(Arm arm, Observed observed) {
    return !observed.builds().isEmpty()
        && observed.builds().stream()
            .allMatch(
                build ->
                    arm.picks().stream()
                        .anyMatch(
                            pick ->
                                pick instanceof Course.IsOneOf some
                                    && some.builds().contains(build)));
  }

  private static boolean holds(KnowledgeBase kb, Pick pick, Observed observed) {
    if (pick instanceof Course.Meets meets) {
      return observed.met(meets.condition()) == Truth.TRUE;
    }
    if (pick instanceof Course.IsAbsent absent) {
      return subjects(kb, absent).anyMatch(reading -> isAbsent(kb, reading, observed));
    }
    return pick instanceof Course.HasNoFigure none && hasNoFigure(kb, none.reading(), observed);
  }

  /** The reading, and what its limits follow where it is held against them. */
  private static Stream<String> subjects(KnowledgeBase kb, Course.IsAbsent absent) {
    return Stream.concat(
        Stream.of(absent.reading()),
        absent.limits() ? drivers(kb, absent.reading()).stream() : Stream.of());
  }

  private static List<String> drivers(KnowledgeBase kb, String reading) {
    return Optional.ofNullable(kb.limits().get(reading))
        .map(LimitsTable::drivers)
        .orElse(List.of());
  }

  private static boolean isAbsent(KnowledgeBase kb, String reading, Observed observed) {
    return observed.builds().stream()
        .noneMatch(build -> build.satisfies(kb.readings().get(reading).applies()));
  }

  /** Everything that the limits follow is known, and there are none. */
  private static boolean hasNoFigure(KnowledgeBase kb, String reading, Observed observed) {
    return observed.builds().size() == 1
        && observed.amount(reading).isPresent()
        && drivers(kb, reading).stream().allMatch(id -> observed.amount(id).isPresent())
        && observed.band(reading).isEmpty();
  }
}
