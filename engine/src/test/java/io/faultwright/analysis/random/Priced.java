package io.faultwright.analysis.random;

import io.faultwright.model.Access;
import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.SetUp;
import io.faultwright.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** Knowledge bases whose readings take different effort, and whose faults are met differently. */
public final class Priced {
  private Priced() {}

  /** The same knowledge base with random minutes, access, set-ups and frequencies. */
  public static KnowledgeBase of(KnowledgeBase base, Random random) {
    SortedMap<String, Reading> readings = new TreeMap<>();
    SortedMap<String, SetUp> setUps = setUps(random);
    base.readings().forEach((id, reading) -> readings.put(id, priced(reading, setUps, random)));
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
        base.guides(),
        setUps,
        base.charts(),
        base.sequences(),
        base.wordbook());
  }

  private static SortedMap<String, SetUp> setUps(Random random) {
    SortedMap<String, SetUp> setUps = new TreeMap<>();
    for (String id : List.of("one", "other")) {
      Access access = Access.values()[random.nextInt(Access.values().length)];
      setUps.put(
          id, new SetUp(id, new Place("", 1, 1, 1), id, BigFraction.of(random.nextInt(4)), access));
    }
    return setUps;
  }

  private static Reading priced(Reading of, SortedMap<String, SetUp> setUps, Random random) {
    Access own = Access.values()[random.nextInt(Access.values().length)];
    Optional<SetUp> setUp =
        of.derived().isPresent()
            ? Optional.empty()
            : Optional.ofNullable(setUps.get(List.of("one", "other", "").get(random.nextInt(3))));
    Access access =
        setUp.map(SetUp::access).filter(graver -> graver.compareTo(own) > 0).orElse(own);
    return new Reading(
        of.id(),
        of.place(),
        of.title(),
        of.ask(),
        of.domain(),
        access,
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
        of.assumed(),
        setUp.map(SetUp::id),
        of.after());
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
