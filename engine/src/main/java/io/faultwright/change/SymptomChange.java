package io.faultwright.change;

import io.faultwright.finding.RegionTest;
import io.faultwright.finding.Share;
import io.faultwright.model.Build;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * What changed in a symptom that both revisions have. Without a region it is proved that no
 * situation has a different outcome.
 *
 * @param id identifier
 * @param title in the new revision
 * @param regions where the outcome changed; together all such situations, unless there are more
 * @param more whether there are such situations outside of the regions: too many to read
 * @param share how many of the situations that can be told apart have a different outcome
 * @param builds every model with its software on which some situation has a different outcome, also
 *     outside of the regions
 */
public record SymptomChange(
    String id,
    String title,
    List<ChangedRegion> regions,
    boolean more,
    Share share,
    List<Build> builds) {
  public SymptomChange {
    regions = List.copyOf(regions);
    builds = builds.stream().sorted().toList();
  }

  /** Whether no situation has a different outcome. */
  public boolean unchanged() {
    return regions.isEmpty();
  }

  /** The regions, those together whose outcome changed in the same way; largest first. */
  public List<List<ChangedRegion>> alike() {
    Map<List<Outcome>, List<ChangedRegion>> alike = new LinkedHashMap<>();
    for (ChangedRegion region : regions) {
      List<Outcome> turn = List.of(region.before(), region.after());
      alike.computeIfAbsent(turn, key -> new ArrayList<>()).add(region);
    }
    return List.copyOf(alike.values());
  }

  /** What every region says of equipment and readings, where there are several. */
  public List<RegionTest> shared() {
    if (regions.size() < 2) {
      return List.of();
    }
    ChangedRegion first = regions.get(0);
    return Stream.concat(first.equipment().stream(), first.readings().stream())
        .filter(test -> regions.stream().allMatch(region -> region.says(test)))
        .toList();
  }

  /** The same with every region changed. */
  public SymptomChange with(UnaryOperator<ChangedRegion> change) {
    return new SymptomChange(id, title, regions.stream().map(change).toList(), more, share, builds);
  }
}
