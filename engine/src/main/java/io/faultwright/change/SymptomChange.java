package io.faultwright.change;

import io.faultwright.finding.Share;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * What changed in a symptom that both revisions have. Without a region it is proved that no
 * situation has a different outcome.
 *
 * @param id identifier
 * @param title in the new revision
 * @param regions where the outcome changed; together exactly all such situations
 * @param share how many of the situations that can be told apart have a different outcome
 */
public record SymptomChange(String id, String title, List<ChangedRegion> regions, Share share) {
  public SymptomChange {
    regions = List.copyOf(regions);
  }

  /** Whether no situation has a different outcome. */
  public boolean unchanged() {
    return regions.isEmpty();
  }

  /** The same with every region changed. */
  public SymptomChange with(UnaryOperator<ChangedRegion> change) {
    return new SymptomChange(id, title, regions.stream().map(change).toList(), share);
  }
}
