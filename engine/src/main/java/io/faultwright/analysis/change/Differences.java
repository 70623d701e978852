package io.faultwright.analysis.change;

import io.faultwright.analysis.space.Box;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Regions;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.Witness;
import io.faultwright.change.ChangedRegion;
import io.faultwright.change.Outcome;
import io.faultwright.finding.RegionTest;
import io.faultwright.finding.Share;
import io.faultwright.model.Build;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Where two outcomes differ, in boxes of one kind of difference each. */
final class Differences {
  /** Boxes for one change of an outcome; nobody reads more. */
  private static final int MOST = 16;

  private final OutcomePairs outcomes;
  private final Space space;
  private final Diagrams diagrams;
  private final int belonging;
  private final TightWords words;
  private int changed = Diagrams.NONE;
  private boolean more;

  Differences(OutcomePairs outcomes) {
    this.outcomes = outcomes;
    this.space = outcomes.space();
    this.diagrams = space.diagrams();
    this.belonging = outcomes.belonging();
    this.words = new TightWords(space, belonging);
  }

  /** Largest first. */
  List<ChangedRegion> regions() {
    List<ChangedRegion> regions = new ArrayList<>();
    outcomes
        .before()
        .forEach(
            (from, here) ->
                outcomes
                    .after()
                    .forEach((to, there) -> regions.addAll(regions(from, here, to, there))));
    regions.sort(Comparator.comparing(region -> -region.share().high()));
    return regions;
  }

  private List<ChangedRegion> regions(Outcome from, int here, Outcome to, int there) {
    int both = diagrams.and(belonging, diagrams.and(here, there));
    if (from.equals(to) || both == Diagrams.NONE) {
      return List.of();
    }
    changed = diagrams.or(changed, both);
    Regions regions = new Regions(space);
    List<Box> boxes = regions.cover(both, belonging, MOST);
    more |= regions.without(both, boxes) != Diagrams.NONE;
    return boxes.stream().map(box -> region(from, to, both, box)).toList();
  }

  private ChangedRegion region(Outcome from, Outcome to, int both, Box box) {
    int inside = diagrams.and(both, diagrams.box(box.cells().toArray(BitSet[]::new)));
    List<RegionTest> tests = words.tests(box, inside);
    List<String> facts = space.knowledge().equipment().attributes();
    return new ChangedRegion(
        from,
        to,
        tests.stream().filter(test -> facts.contains(test.reading())).toList(),
        tests.stream().filter(test -> !facts.contains(test.reading())).toList(),
        withoutAids(new Witness(space).of(inside)),
        share(inside),
        false);
  }

  private static Situation withoutAids(Situation witness) {
    SortedMap<String, Value> readings = new TreeMap<>(witness.readings());
    readings.keySet().removeIf(SharedNames::isAid);
    return new Situation(witness.equipment(), readings);
  }

  /** Whether some situations are in none of the regions that were found. */
  boolean more() {
    return more;
  }

  /** All situations whose outcome changed. */
  Share share() {
    return share(changed);
  }

  /** The equipment on which some outcome changed; it is the first axis. */
  List<Build> builds() {
    if (changed == Diagrams.NONE) {
      return List.of();
    }
    List<Cell> cells = space.axes().get(0).cells();
    return diagrams.occurring(changed)[0].stream()
        .mapToObj(cells::get)
        .flatMap(cell -> ((Cell.Builds) cell).builds().stream())
        .toList();
  }

  private Share share(int part) {
    BigInteger all = space.distinguishable(belonging);
    double figure = all.signum() == 0 ? 0 : ratio(space.distinguishable(part), all);
    return new Share(figure, figure, true);
  }

  private static double ratio(BigInteger part, BigInteger all) {
    return new BigDecimal(part)
        .divide(new BigDecimal(all), MathContext.DECIMAL64)
        .round(new MathContext(9))
        .doubleValue();
  }
}
