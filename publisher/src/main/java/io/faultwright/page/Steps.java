package io.faultwright.page;

import io.faultwright.model.Fault;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/** Instructions, each with its cautions before it. */
final class Steps {
  private final Cautions cautions;

  Steps(Desk desk) {
    this.cautions = new Cautions(desk);
  }

  /**
   * The steps of a list.
   *
   * @param before ids of cautions already printed above the list
   */
  List<Step> of(List<Fault.Step> steps, Collection<String> before) {
    Set<String> printed = new TreeSet<>(before);
    List<Step> items = new ArrayList<>();
    for (Fault.Step step : steps) {
      items.add(
          new Step(
              step.text(),
              cautions.of(those(step, id -> !printed.contains(id))),
              cautions.of(those(step, printed::contains))));
      printed.addAll(step.cautions());
    }
    return items;
  }

  private static List<String> those(Fault.Step step, Predicate<String> wanted) {
    return step.cautions().stream().filter(wanted).toList();
  }
}
