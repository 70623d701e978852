package io.faultwright.model;

import static io.faultwright.model.Conditions.NOWHERE;

import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;

/** Builds small knowledge bases for tests, straight from records. */
public final class KnowledgeBaseBuilder {
  private final SortedMap<String, Family> families = new TreeMap<>();
  private final SortedMap<String, Option> options = new TreeMap<>();
  private final SortedMap<String, Model> models = new TreeMap<>();
  private final SortedMap<String, Reading> readings = new TreeMap<>();
  private final SortedMap<String, LimitsTable> limits = new TreeMap<>();
  private final SortedMap<String, Fault> faults = new TreeMap<>();
  private final SortedMap<String, Symptom> symptoms = new TreeMap<>();
  private final SortedMap<String, Never> nevers = new TreeMap<>();
  private final SortedMap<String, Case> cases = new TreeMap<>();

  public KnowledgeBaseBuilder option(String id, String... values) {
    options.put(id, new Option(id, NOWHERE, id, named(values)));
    return this;
  }

  /** A model, its family with it. */
  public KnowledgeBaseBuilder model(
      String id, String family, Map<String, String> chosen, String... software) {
    families.putIfAbsent(family, new Family(family, NOWHERE, family, ""));
    List<Version> versions = Arrays.stream(software).map(Version::new).toList();
    models.put(
        id,
        new Model(
            id,
            NOWHERE,
            id,
            family,
            new TreeMap<>(chosen),
            versions,
            Optional.empty(),
            new TreeMap<>()));
    return this;
  }

  /** Names the refrigerant of a model that stands before it. */
  public KnowledgeBaseBuilder refrigerant(String model, String refrigerant) {
    models.computeIfPresent(
        model,
        (id, old) ->
            new Model(
                id,
                old.place(),
                old.title(),
                old.family(),
                old.options(),
                old.software(),
                Optional.of(refrigerant),
                old.data()));
    return this;
  }

  /** Adds a line to the nameplate of a model that stands before it. */
  public KnowledgeBaseBuilder data(String model, String label, String text) {
    models.computeIfPresent(
        model,
        (id, old) -> {
          SortedMap<String, String> data = new TreeMap<>(old.data());
          data.put(label, text);
          return new Model(
              id,
              old.place(),
              old.title(),
              old.family(),
              old.options(),
              old.software(),
              old.refrigerant(),
              data);
        });
    return this;
  }

  public KnowledgeBaseBuilder choice(String id, String... values) {
    return reading(id, new Domain.Choice(named(values), false));
  }

  public KnowledgeBaseBuilder yesNo(String id) {
    return reading(id, new Domain.Choice(named("yes", "no"), true));
  }

  public KnowledgeBaseBuilder measured(String id, String unit, String low, String high) {
    Interval range = Interval.closed(Decimals.parse(low), Decimals.parse(high));
    return reading(
        id, new Domain.Measured(Units.find(unit).orElseThrow(), range, Optional.empty()));
  }

  public KnowledgeBaseBuilder reading(String id, Domain domain) {
    return reading(id, domain, Access.OUTSIDE, 1, Condition.ALWAYS);
  }

  public KnowledgeBaseBuilder reading(
      String id, Domain domain, Access access, int minutes, Condition applies) {
    return reading(id, domain, access, minutes, applies, Optional.empty());
  }

  /** The first minus the second; both stand before it. */
  public KnowledgeBaseBuilder difference(String id, String first, String second) {
    Unit unit = ((Domain.Measured) readings.get(first).domain()).unit();
    return derived(
        id,
        Units.ofDifferences(unit),
        Derived.difference(readings.get(first), readings.get(second)));
  }

  /** A reading computed from others that stand before it. */
  public KnowledgeBaseBuilder derived(String id, Unit unit, Derived form) {
    Domain domain = new Domain.Measured(unit, range(form), Optional.empty());
    return reading(id, domain, Access.OUTSIDE, 0, form.applies(readings), Optional.of(form));
  }

  /** Wide enough for every refrigerant of the models. */
  private Interval range(Derived form) {
    List<Interval> ranges =
        models.values().stream()
            .flatMap(model -> form.range(this::range, model.refrigerant()).stream())
            .toList();
    return Interval.closed(
        ranges.stream()
            .map(one -> one.low().orElseThrow().value())
            .min(BigFraction::compareTo)
            .orElseThrow(),
        ranges.stream()
            .map(one -> one.high().orElseThrow().value())
            .max(BigFraction::compareTo)
            .orElseThrow());
  }

  private Interval range(String reading) {
    return ((Domain.Measured) readings.get(reading).domain()).range();
  }

  private KnowledgeBaseBuilder reading(
      String id,
      Domain domain,
      Access access,
      int minutes,
      Condition applies,
      Optional<Derived> derived) {
    readings.put(
        id,
        new Reading(
            id,
            NOWHERE,
            id,
            id + "?",
            domain,
            access,
            BigFraction.of(minutes),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            new TreeSet<>(),
            Optional.empty(),
            applies,
            new TreeSet<>(),
            derived,
            Optional.empty(),
            Optional.empty(),
            new TreeSet<>()));
    return this;
  }

  /** Restricts a reading to some equipment; before anything is computed from it. */
  public KnowledgeBaseBuilder applies(String id, Condition equipment) {
    Reading old = readings.get(id);
    return reading(id, old.domain(), old.access(), old.minutes().intValue(), equipment);
  }

  public KnowledgeBaseBuilder limits(LimitsTable table) {
    limits.put(table.reading(), table);
    return this;
  }

  /** A fault whose remedy needs these lines of the nameplate. */
  public KnowledgeBaseBuilder fault(String id, String... nameplate) {
    faults.put(
        id,
        new Fault(
            id,
            NOWHERE,
            id,
            "",
            List.of(),
            List.of(),
            new TreeSet<>(),
            List.of(nameplate),
            new TreeSet<>(),
            BigFraction.ONE,
            Optional.empty(),
            Condition.ALWAYS));
    return this;
  }

  /** A symptom, the faults its rules conclude or exclude with it. */
  public KnowledgeBaseBuilder symptom(SymptomBuilder symptom) {
    Symptom built = symptom.build();
    symptoms.put(built.id(), built);
    built.rules().values().forEach(rule -> faultsOf(rule.conclusion()).forEach(this::fault));
    return this;
  }

  private static Iterable<String> faultsOf(Conclusion conclusion) {
    if (conclusion instanceof Conclusion.Conclude conclude) {
      return conclude.faults();
    }
    return conclusion instanceof Conclusion.Exclude exclude ? exclude.faults() : List.of();
  }

  public KnowledgeBaseBuilder never(String id, Condition when) {
    nevers.put(id, new Never(id, NOWHERE, when, "it cannot happen"));
    return this;
  }

  public KnowledgeBaseBuilder recorded(
      String id, String symptom, Situation given, Answer... expect) {
    cases.put(
        id,
        new Case(
            id,
            NOWHERE,
            symptom,
            given,
            Sorted.set(List.of(expect)),
            true,
            "",
            Optional.empty(),
            List.of()));
    return this;
  }

  public KnowledgeBase build() {
    return new KnowledgeBase(
        handbook(),
        new Equipment(families, options, models, Optional.empty(), new TreeMap<>()),
        readings,
        limits,
        faults,
        symptoms,
        nevers,
        cases,
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeMap<>(),
        Wordbook.EMPTY);
  }

  private static Handbook handbook() {
    return new Handbook(
        NOWHERE,
        "Test handbook",
        "Brantmoor Cold",
        "1",
        "2026-03-02",
        "en",
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        AccessWeights.USUAL,
        List.of(),
        SignOffRules.NONE);
  }

  private static List<NamedValue> named(String... ids) {
    return Arrays.stream(ids).map(id -> new NamedValue(id, id)).toList();
  }
}
