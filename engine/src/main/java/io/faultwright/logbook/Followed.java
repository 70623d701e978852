package io.faultwright.logbook;

import io.faultwright.operation.Outcomes;
import io.faultwright.operation.Program;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * What the model did while it followed a log, and where the two part.
 *
 * @param program that was followed
 * @param within steps by which a clock may be wrong
 * @param entries how many entries the log had
 * @param seen how many of them tell what was seen
 * @param end step up to which it was followed
 * @param phases the phases it came into; of many the last ones
 * @param stops those of them that are stops; of many the last ones
 * @param partings where log and model part; of many the first ones
 * @param counts of every counter at the end, by id
 * @param outcomes what came of it in the model
 * @param stopSeen id of the stop that the log showed last; absent where it showed none
 */
public record Followed(
    Program program,
    long within,
    long entries,
    long seen,
    long end,
    Some<Came> phases,
    Some<Came> stops,
    Some<Parting> partings,
    SortedMap<String, Long> counts,
    Outcomes.Snapshot outcomes,
    Optional<String> stopSeen) {
  /**
   * Some of many.
   *
   * @param kept those that were kept, first to last
   * @param all how many there were
   */
  public record Some<T>(List<T> kept, long all) {
    public Some {
      kept = List.copyOf(kept);
    }
  }

  /** Whether log and model agree. */
  public boolean agrees() {
    return partings.all() == 0;
  }
}
