package io.faultwright.pipeline;

import io.faultwright.model.Accuracy;
import io.faultwright.model.Accuracy.Fixed;
import io.faultwright.model.Accuracy.OfReading;
import io.faultwright.model.Accuracy.OfScale;
import io.faultwright.model.Build;
import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** Gives a random knowledge base instruments, and takes readings with them. */
final class RandomAccuracies {
  private final Random random;

  RandomAccuracies(long seed) {
    this.random = new Random(seed);
  }

  KnowledgeBase with(KnowledgeBase base) {
    SortedMap<String, Reading> readings = new TreeMap<>();
    base.readings().forEach((id, reading) -> readings.put(id, with(reading)));
    return new KnowledgeBase(
        base.handbook(),
        base.equipment(),
        readings,
        base.limits(),
        base.faults(),
        base.symptoms(),
        base.nevers(),
        base.cases(),
        base.cautions(),
        base.parts(),
        base.guides(),
        base.setUps(),
        base.charts(),
        base.sequences(),
        base.wordbook());
  }

  private Reading with(Reading reading) {
    boolean measured = reading.domain() instanceof Domain.Measured && reading.derived().isEmpty();
    return new Reading(
        reading.id(),
        reading.place(),
        reading.title(),
        reading.ask(),
        reading.domain(),
        reading.access(),
        reading.minutes(),
        reading.how(),
        reading.where(),
        reading.phase(),
        reading.instrument(),
        measured ? accuracy() : Optional.empty(),
        reading.cautions(),
        reading.guide(),
        reading.applies(),
        reading.normal(),
        reading.derived(),
        reading.assumed(),
        reading.setUp(),
        reading.after());
  }

  private Optional<Accuracy> accuracy() {
    Accuracy.Part fixed = new Fixed(BigFraction.of(1 + random.nextInt(8), 12));
    return switch (random.nextInt(6)) {
      case 0 -> Optional.empty();
      case 1 -> Optional.of(new Accuracy(List.of(new OfReading(BigFraction.of(1, 5)), fixed)));
      case 2 ->
          Optional.of(new Accuracy(List.of(new OfScale(BigFraction.of(1, 20), BigFraction.of(6)))));
      default -> Optional.of(new Accuracy(List.of(fixed)));
    };
  }

  Situation situation(KnowledgeBase base) {
    SortedMap<String, Value> readings = new TreeMap<>();
    for (Reading reading : base.readings().values()) {
      if (reading.derived().isEmpty() && random.nextInt(6) > 0) {
        readings.put(reading.id(), value(reading));
      }
    }
    return new Situation(equipment(base), readings);
  }

  private Value value(Reading reading) {
    if (random.nextInt(25) == 0) {
      return new Value.NotTaken();
    }
    return reading
        .domain()
        .match(
            measured -> new Value.Number(BigFraction.of(-8 + random.nextInt(25), 8)),
            choice -> new Value.Word(choice.ids().get(random.nextInt(choice.ids().size()))));
  }

  private SortedMap<String, String> equipment(KnowledgeBase base) {
    SortedMap<String, String> facts = new TreeMap<>();
    List<Build> builds = base.equipment().builds();
    Build build = builds.get(random.nextInt(builds.size()));
    switch (random.nextInt(4)) {
      case 0 -> {}
      case 1 -> facts.put(Equipment.FAMILY, build.model().family());
      default -> {
        facts.put(Equipment.MODEL, build.model().id());
        build.software().ifPresent(version -> facts.put(Equipment.SOFTWARE, version.text()));
      }
    }
    return facts;
  }
}
