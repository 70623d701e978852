package io.faultwright.wording;

import io.faultwright.model.Access;
import io.faultwright.model.AccessWeights;
import io.faultwright.model.Condition;
import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.Family;
import io.faultwright.model.Fault;
import io.faultwright.model.Handbook;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Model;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Option;
import io.faultwright.model.Reading;
import io.faultwright.model.ShownUnits;
import io.faultwright.model.SignOffRules;
import io.faultwright.model.Sorted;
import io.faultwright.model.Version;
import io.faultwright.model.Wordbook;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Units;
import io.faultwright.source.Place;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;

/** A small knowledge base built by hand, so that wording is tested without reading YAML. */
public final class SampleBase {
  public static final Place PLACE = new Place("rules.yaml", 1, 1, 1);

  private SampleBase() {}

  public static KnowledgeBase build() {
    return shownIn(Optional.empty());
  }

  /** The same, published in given units. */
  static KnowledgeBase shownIn(ShownUnits units) {
    return shownIn(Optional.of(units));
  }

  private static KnowledgeBase shownIn(Optional<ShownUnits> units) {
    return new KnowledgeBase(
        handbook(units),
        equipment(),
        readings(),
        new TreeMap<>(),
        new TreeMap<>(
            Map.of(
                "valve-stuck",
                fault("valve-stuck", "Valve stuck"),
                "fan-dead",
                fault("fan-dead", "Fan dead"))),
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeMap<>(),
        Wordbook.EMPTY);
  }

  private static Handbook handbook(Optional<ShownUnits> units) {
    return new Handbook(
        PLACE,
        "Sample",
        "Brantmoor Cold",
        "1",
        "2026-03-02",
        "en",
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        units,
        AccessWeights.USUAL,
        List.of(),
        SignOffRules.NONE);
  }

  private static Equipment equipment() {
    Option defrost =
        new Option(
            "defrost",
            PLACE,
            "Defrost",
            List.of(new NamedValue("hot-gas", "Hot gas"), new NamedValue("electric", "Electric")));
    return new Equipment(
        new TreeMap<>(
            Map.of(
                "fell", new Family("fell", PLACE, "Fell", ""),
                "tarn", new Family("tarn", PLACE, "Tarn", ""))),
        new TreeMap<>(Map.of("defrost", defrost)),
        models(),
        Optional.empty(),
        new TreeMap<>());
  }

  private static SortedMap<String, Model> models() {
    SortedMap<String, Model> models = new TreeMap<>();
    models.put("FL-12G1", model("FL-12G1", "fell", "hot-gas", "1.4", "2.9", "2.10"));
    models.put("FL-12E1", model("FL-12E1", "fell", "electric", "1.4", "2.9", "2.10"));
    models.put("TN-08G2", model("TN-08G2", "tarn", "hot-gas", "3.0"));
    models.put("TN-08E0", model("TN-08E0", "tarn", "electric"));
    return models;
  }

  private static Model model(String id, String family, String defrost, String... software) {
    return new Model(
        id,
        PLACE,
        id,
        family,
        new TreeMap<>(Map.of("defrost", defrost)),
        Arrays.stream(software).map(Version::new).toList(),
        Optional.empty(),
        new TreeMap<>());
  }

  private static SortedMap<String, Reading> readings() {
    Domain room =
        new Domain.Measured(
            Units.find("°C").orElseThrow(),
            Interval.closed(Decimals.parse("-40"), Decimals.parse("80")),
            Optional.empty());
    Domain ice =
        new Domain.Choice(
            List.of(
                new NamedValue("untouched", "Untouched"),
                new NamedValue("loose", "Loose"),
                new NamedValue("partly", "Partly"),
                new NamedValue("none", "No ice")),
            false);
    Domain fan =
        new Domain.Choice(List.of(new NamedValue("yes", "Yes"), new NamedValue("no", "No")), true);
    SortedMap<String, Reading> readings = new TreeMap<>();
    readings.put("room", reading("room", "Room", room));
    readings.put("ice", reading("ice", "Ice after the defrost", ice));
    readings.put("fan", reading("fan", "Fan runs", fan));
    return readings;
  }

  private static Reading reading(String id, String title, Domain domain) {
    return new Reading(
        id,
        PLACE,
        title,
        title + "?",
        domain,
        Access.OUTSIDE,
        BigFraction.ONE,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Sorted.set(List.of()),
        Optional.empty(),
        Condition.ALWAYS,
        Sorted.set(List.of()),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        new TreeSet<>());
  }

  private static Fault fault(String id, String title) {
    return new Fault(
        id,
        PLACE,
        title,
        "",
        List.of(),
        List.of(),
        Sorted.set(List.of()),
        List.of(),
        Sorted.set(List.of()),
        BigFraction.ONE,
        Optional.empty(),
        Condition.ALWAYS);
  }
}
