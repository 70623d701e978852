package io.faultwright.analysis.change;

import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Box;
import io.faultwright.analysis.space.BoxWords;
import io.faultwright.analysis.space.Space;
import io.faultwright.finding.RegionTest;
import io.faultwright.model.KnowledgeBase;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Says a region of changed situations. It names the equipment on which the change really occurs,
 * and where limits changed, where it lies against both, even though the rest of the region's words
 * would imply them.
 */
final class TightWords {
  private static final String LIMITS = " limits";

  private final Space space;
  private final KnowledgeBase shared;
  private final BoxWords words;

  /**
   * @param possible the situations that can happen; cells outside them are not worth a word
   */
  TightWords(Space space, int possible) {
    this.space = space;
    this.shared = space.knowledge();
    this.words = new BoxWords(space, possible);
  }

  /**
   * Tests that hold together in the region, equipment first.
   *
   * @param inside the situations of the box that are meant
   */
  List<RegionTest> tests(Box box, int inside) {
    BitSet[] occurring = space.diagrams().occurring(inside);
    List<BitSet> cells = new ArrayList<>();
    for (int axis = 0; axis < space.axes().size(); axis++) {
      BitSet accepted = (BitSet) box.cells().get(axis).clone();
      if (isTold(space.axes().get(axis).subject())) {
        accepted.and(occurring[axis]);
      }
      cells.add(accepted);
    }
    return joined(words.tests(new Box(cells)).stream().map(this::renamed).distinct().toList());
  }

  /** Where a reading lies against its old and its new limits is one line. */
  private static List<RegionTest> joined(List<RegionTest> tests) {
    Map<String, RegionTest> byReading = new LinkedHashMap<>();
    for (RegionTest test : tests) {
      boolean judged = test.accepts().contains(LIMITS);
      byReading.merge(
          judged ? test.reading() + LIMITS : test.toString(),
          test,
          (one, other) -> new RegionTest(one.reading(), one.accepts() + ", " + other.accepts()));
    }
    return List.copyOf(byReading.values());
  }

  private boolean isTold(Axis.Subject subject) {
    if (subject instanceof Axis.OfSide side) {
      return isDoubled(base(side.reading()));
    }
    return subject instanceof Axis.OfEquipment
        || subject instanceof Axis.OfReading of && changedDrivers().contains(of.reading());
  }

  private boolean isDoubled(String reading) {
    return shared.readings().containsKey(reading + SharedNames.NOW);
  }

  private static String base(String name) {
    return name.endsWith(SharedNames.NOW)
        ? name.substring(0, name.length() - SharedNames.NOW.length())
        : name;
  }

  /** What the limits that changed follow, as far as the space asks about them. */
  private Set<String> changedDrivers() {
    Set<String> drivers = new TreeSet<>();
    shared.limits().values().stream()
        .filter(table -> isDoubled(base(table.reading())))
        .filter(table -> space.position(new Axis.OfSide(table.reading())).isPresent())
        .forEach(table -> drivers.addAll(table.drivers()));
    return drivers;
  }

  /** Without the names that only the comparison has; each says whose limits it means. */
  private RegionTest renamed(RegionTest test) {
    String base = base(test.reading());
    if (!isDoubled(base) || !test.accepts().contains(LIMITS)) {
      return new RegionTest(base, test.accepts());
    }
    boolean now = test.reading().endsWith(SharedNames.NOW);
    return new RegionTest(base, test.accepts() + (now ? SharedNames.NOW : SharedNames.BEFORE));
  }
}
