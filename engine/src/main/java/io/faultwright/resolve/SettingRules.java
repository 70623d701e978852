package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Domain;
import io.faultwright.model.Reading;
import io.faultwright.model.Sequence.Row;
import io.faultwright.model.Sequence.Time;
import io.faultwright.quantity.Dimension;
import java.util.Optional;
import java.util.SortedMap;

/**
 * What has to be true of a time that can be set: as delivered it can be set so, a reading tells it.
 */
final class SettingRules {
  private final Problems problems;
  private final SortedMap<String, Reading> readings;

  /**
   * @param readings those that could be read, by id
   */
  SettingRules(Problems problems, SortedMap<String, Reading> readings) {
    this.problems = problems;
    this.readings = readings;
  }

  void check(Time time) {
    if (time.setting().isPresent()) {
      for (Row row : time.rows()) {
        SetTimes.fits(time, row.value(), row.place(), problems);
      }
    }
    time.reading()
        .flatMap(id -> Optional.ofNullable(readings.get(id)))
        .ifPresent(reading -> tells(time, reading));
  }

  private void tells(Time time, Reading reading) {
    Optional<Dimension> dimension = dimension(reading.domain());
    if (dimension.filter(one -> one == Dimension.TIME).isEmpty()) {
      problems.add(
          time.place(),
          "the reading " + Words.quoted(reading.id()) + " is no time and cannot tell how it is set",
          "take a reading with a unit such as `min`");
    }
  }

  private static Optional<Dimension> dimension(Domain domain) {
    return domain.match(
        measured -> Optional.of(measured.unit().dimension()), choice -> Optional.empty());
  }
}
