package io.faultwright.analysis.quiz;

import io.faultwright.analysis.order.CheckOrder;
import io.faultwright.analysis.order.Decisions;
import io.faultwright.analysis.order.Decisions.Arm;
import io.faultwright.analysis.order.Decisions.Asked;
import io.faultwright.analysis.order.Question;
import io.faultwright.analysis.order.ScopedOrder;
import io.faultwright.analysis.order.ScopedOrders;
import io.faultwright.model.Build;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** The way of a situation through the derived order of checks. */
final class ChartPath {
  private final Ground ground;
  private final List<ScopedOrder> orders;

  ChartPath(Ground ground) {
    this.ground = ground;
    this.orders = ScopedOrders.of(ground.symptomSpace());
  }

  /**
   * A check on the way.
   *
   * @param scope number of the order among those of the symptom
   * @param decision its number in that order
   * @param subject id of the reading that it asks for
   * @param takes ids of all readings that have to be taken for it, those its limits follow first
   */
  record Stop(int scope, int decision, String subject, List<String> takes) {
    Stop {
      takes = List.copyOf(takes);
    }
  }

  /** The checks of a whole situation; none where there is no order for its machine. */
  List<Stop> of(Build build, int[] cells) {
    for (int scope = 0; scope < orders.size(); scope++) {
      Optional<CheckOrder> checks = orders.get(scope).checks();
      if (checks.isPresent() && orders.get(scope).builds().contains(build)) {
        return stops(scope, checks.get(), cells);
      }
    }
    return List.of();
  }

  private List<Stop> stops(int scope, CheckOrder checks, int[] cells) {
    List<Stop> stops = new ArrayList<>();
    int at = checks.root();
    while (checks.decisions().get(at) instanceof Asked asked) {
      stops.add(stop(scope, at, asked.question()));
      Optional<Integer> next = next(asked, cells[asked.question().axis()]);
      if (next.isEmpty()) {
        return stops;
      }
      at = next.get();
    }
    return stops;
  }

  private static Optional<Integer> next(Asked asked, int cell) {
    for (Arm arm : asked.arms()) {
      if (cell >= 0
          && arm.options().stream().anyMatch(o -> asked.question().options().get(o).get(cell))) {
        return Optional.of(arm.next());
      }
    }
    return Optional.empty();
  }

  private Stop stop(int scope, int decision, Question question) {
    List<String> takes = new ArrayList<>(new TreeSet<>(ground.needs(question.axis())));
    if (takes.remove(question.subject())) {
      takes.add(question.subject());
    }
    return new Stop(scope, decision, question.subject(), takes);
  }

  /** Every reading that an order for a machine asks for, in the order of its decisions. */
  List<String> subjects(Build build) {
    List<String> subjects = new ArrayList<>();
    for (ScopedOrder order : orders) {
      if (order.checks().isPresent() && order.builds().contains(build)) {
        Decisions decisions = order.checks().get().decisions();
        for (int i = 0; i < decisions.count(); i++) {
          if (decisions.get(i) instanceof Asked asked
              && !subjects.contains(asked.question().subject())) {
            subjects.add(asked.question().subject());
          }
        }
      }
    }
    return subjects;
  }
}
