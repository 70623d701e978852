package io.faultwright.analysis.random;

import io.faultwright.model.Access;
import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** Knowledge bases whose readings take different effort, and whose faults are met differently. */
final class Priced {
  private Priced() {}

  /** The same knowledge base with random minutes, access and frequencies. */
  static KnowledgeBase of(KnowledgeBase base, Random random) {
    SortedMap<String, Reading> readings = new TreeMap<>();
    base.readings().forEach((id, reading) -> readings.put(id, priced(reading, random)));
    SortedMap<String, Fault> faults = new TreeMap<>();
    base.faults().forEach((id, fault) -> faults.put(id, frequent(fault, random)));
    return new KnowledgeBase(
        base.handbook(),
        base.equipment(),
        readings,
        base.limits(),
        faults,
        base.symptoms(),
        base.nevers(),
        base.cases(),
        base.cautions(),
        base.parts(),
        base.guides());
  }

  private static Reading priced(Reading of, Random random) {
    return new Reading(
        of.id(),
        of.place(),
        of.title(),
        of.ask(),
        of.domain(),
        Access.values()[random.nextInt(Access.values().length)],
        BigFraction.of(random.nextInt(4)),
        of.how(),
        of.where(),
        of.phase(),
        of.instrument(),
        of.accuracy(),
        of.cautions(),
        of.guide(),
        of.applies(),
        of.normal(),
        of.derived(),
        of.assumed());
  }

  private static Fault frequent(Fault of, Random random) {
    return new Fault(
        of.id(),
        of.place(),
        of.title(),
        of.about(),
        of.remedy(),
        of.verify(),
        of.parts(),
        of.nameplate(),
        of.cautions(),
        BigFraction.of(1 + random.nextInt(5)),
        of.guide(),
        of.applies());
  }
}
