package io.faultwright.measure;

import io.faultwright.model.Build;
import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.quantity.Interval;
import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** Whole records for the handbook {@code pace}, always the same of a seed. */
final class PaceCases {
  /** One record in so many has a value out of its range. */
  private static final int STRANGE = 50;

  /** The coil fan stands in one record of so many, the coil is iced in another. */
  private static final int SELDOM = 6;

  private final KnowledgeBase knowledge;
  private final Random random;

  PaceCases(KnowledgeBase knowledge, long seed) {
    this.knowledge = knowledge;
    this.random = new Random(seed);
  }

  Situation next() {
    SortedMap<String, String> equipment = new TreeMap<>();
    List<Build> builds = knowledge.equipment().builds();
    Build build = builds.get(random.nextInt(builds.size()));
    equipment.put(Equipment.MODEL, build.model().id());
    build.software().ifPresent(version -> equipment.put(Equipment.SOFTWARE, version.text()));
    SortedMap<String, Value> readings = new TreeMap<>();
    knowledge.readings().values().forEach(one -> readings.put(one.id(), value(one)));
    likely(readings, "fan-running", "yes");
    likely(readings, "coil-face", "clear");
    return new Situation(equipment, readings);
  }

  private void likely(SortedMap<String, Value> readings, String reading, String value) {
    if (random.nextInt(SELDOM) > 0) {
      readings.put(reading, new Value.Word(value));
    }
  }

  private Value value(Reading reading) {
    return reading
        .domain()
        .match(
            this::amount,
            choice -> new Value.Word(choice.ids().get(random.nextInt(choice.ids().size()))));
  }

  /** A multiple of a tenth, as a display shows it. */
  private Value amount(Domain.Measured measured) {
    Interval range = measured.range();
    int low = range.low().orElseThrow().value().multiply(10).intValue();
    int high = range.high().orElseThrow().value().multiply(10).intValue();
    int beyond = random.nextInt(STRANGE * 8) == 0 ? high - low + 1 : 0;
    return new Value.Number(BigFraction.of(low + beyond + random.nextInt(high - low + 1), 10));
  }
}
