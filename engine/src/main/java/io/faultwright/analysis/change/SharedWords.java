package io.faultwright.analysis.change;

import io.faultwright.finding.RegionTest;
import io.faultwright.model.KnowledgeBase;
import java.util.List;

/** The words of a region without the names that only the comparison has. */
final class SharedWords {
  private static final String LIMITS = " limits";

  private SharedWords() {}

  /** The same tests; where the limits changed, each says whose limits it means. */
  static List<RegionTest> of(KnowledgeBase shared, List<RegionTest> tests) {
    return tests.stream().map(test -> of(shared, test)).distinct().toList();
  }

  private static RegionTest of(KnowledgeBase shared, RegionTest test) {
    String name = test.reading();
    boolean judged = test.accepts().contains(LIMITS);
    if (name.endsWith(SharedNames.NOW)) {
      String base = name.substring(0, name.length() - SharedNames.NOW.length());
      return new RegionTest(base, test.accepts() + (judged ? SharedNames.NOW : ""));
    }
    return judged && shared.readings().containsKey(name + SharedNames.NOW)
        ? new RegionTest(name, test.accepts() + SharedNames.BEFORE)
        : test;
  }
}
