package io.faultwright.analysis.outcome;

import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Space;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Which readings tell the cell of an axis: the reading itself or what it is computed from, and what
 * its limits follow where it is held against them. The machine is known by its nameplate. A value
 * that is assumed unless it is given need not be taken for the sake of others.
 */
public final class Needs {
  private final KnowledgeBase knowledge;
  private final List<SortedSet<String>> needs;

  public Needs(Space space) {
    this.knowledge = space.knowledge();
    this.needs = space.axes().stream().map(axis -> needs(axis.subject())).toList();
  }

  /** For each axis, by position. */
  public List<SortedSet<String>> all() {
    return needs;
  }

  private SortedSet<String> needs(Axis.Subject subject) {
    SortedSet<String> observed = new TreeSet<>();
    if (subject instanceof Axis.OfReading of) {
      observed.addAll(observed(of.reading()));
    } else if (subject instanceof Axis.OfSide of) {
      observed.addAll(againstLimits(of.reading()));
    }
    return observed;
  }

  private SortedSet<String> againstLimits(String reading) {
    LimitsTable table = knowledge.limits().get(reading);
    SortedSet<String> all = observed(reading);
    table.drivers().stream().filter(this::isNotAssumed).forEach(id -> all.addAll(observed(id)));
    return all;
  }

  /** What has to be observed to know a reading. */
  private SortedSet<String> observed(String reading) {
    SortedSet<String> operands = knowledge.readings().get(reading).operands();
    SortedSet<String> observed = new TreeSet<>();
    if (operands.isEmpty()) {
      observed.add(reading);
    }
    operands.stream().filter(this::isNotAssumed).forEach(id -> observed.addAll(observed(id)));
    return observed;
  }

  private boolean isNotAssumed(String reading) {
    return knowledge.readings().get(reading).assumed().isEmpty();
  }
}
