package io.faultwright.analysis.quiz;

import io.faultwright.analysis.outcome.Result;
import io.faultwright.model.Build;
import io.faultwright.model.Situation;
import io.faultwright.quiz.Shown;
import java.util.List;

/**
 * A situation in which one thing is told, and what has to be shown of it to prove that.
 *
 * @param build the machine
 * @param full the whole situation
 * @param needed ids of the readings that prove it, in the order in which the chart asks; none can
 *     be left out
 * @param order the same with readings that tell nothing here
 * @param result what is told
 */
record Basis(Build build, Situation full, List<String> needed, List<String> order, Result result) {
  Basis {
    needed = List.copyOf(needed);
    order = List.copyOf(order);
  }

  /** What is shown of a situation with the same readings. */
  Shown shown(Situation varied) {
    return new Shown(Ground.showing(varied, order), order);
  }
}
