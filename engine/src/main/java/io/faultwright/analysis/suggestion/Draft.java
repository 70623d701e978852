package io.faultwright.analysis.suggestion;

import io.faultwright.analysis.coverage.Sighting;
import io.faultwright.model.Situation;
import java.util.List;

/**
 * A case in the making.
 *
 * @param sighting the situation, and what the rules say of it
 * @param closes what it shows that nothing before it did
 * @param pairs whether it is there for pairs of readings
 */
record Draft(Sighting sighting, List<String> closes, boolean pairs) {
  Draft {
    closes = List.copyOf(closes);
  }

  Situation situation() {
    return sighting.observed().given();
  }
}
