package io.faultwright.operation;

import io.faultwright.operation.Timeline.On;
import io.faultwright.operation.Timeline.Stay;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** When outputs are on. */
final class Outputs {
  private Outputs() {}

  static List<On> on(Timeline timeline, String output) {
    List<On> all = new ArrayList<>();
    for (Stay stay : timeline.stays()) {
      for (Lit lit : timeline.program().lit(timeline.program().phase(stay.phase()))) {
        if (lit.source().output().equals(output)) {
          add(all, stay, lit);
        }
      }
    }
    return all;
  }

  static SortedSet<String> onAtEnd(Timeline timeline) {
    Stay last = timeline.stays().get(timeline.stays().size() - 1);
    long age = timeline.end() - last.from();
    SortedSet<String> on = new TreeSet<>();
    for (Lit lit : timeline.program().lit(timeline.program().phase(last.phase()))) {
      if (lit.from() <= age && age < lit.until()) {
        on.add(lit.source().output());
      }
    }
    return on;
  }

  private static void add(List<On> all, Stay stay, Lit lit) {
    if (lit.from() >= stay.steps()) {
      return;
    }
    long from = stay.from() + lit.from();
    long to =
        lit.until() == Program.NEVER ? stay.to() : Math.min(stay.to(), stay.from() + lit.until());
    if (to <= from) {
      return;
    }
    On last = all.isEmpty() ? new On(-1, -1) : all.get(all.size() - 1);
    if (last.to() >= from && last.from() <= from) {
      all.set(all.size() - 1, new On(last.from(), Math.max(last.to(), to)));
    } else {
      all.add(new On(from, to));
    }
  }
}
