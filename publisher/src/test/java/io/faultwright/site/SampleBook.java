package io.faultwright.site;

import io.faultwright.model.Access;
import io.faultwright.model.AccessWeights;
import io.faultwright.model.Accuracy;
import io.faultwright.model.Caution;
import io.faultwright.model.Caution.Signal;
import io.faultwright.model.Conclusion.Conclude;
import io.faultwright.model.Conclusion.Escalate;
import io.faultwright.model.Conclusion.Exclude;
import io.faultwright.model.Conclusion.Refer;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.All;
import io.faultwright.model.Condition.Any;
import io.faultwright.model.Condition.CannotBeTaken;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.Not;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Condition.Pattern;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Domain;
import io.faultwright.model.Fault;
import io.faultwright.model.Guide;
import io.faultwright.model.Handbook;
import io.faultwright.model.HazardOrder;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Never;
import io.faultwright.model.Part;
import io.faultwright.model.Reading;
import io.faultwright.model.Rule;
import io.faultwright.model.SignOffRules;
import io.faultwright.model.Sorted;
import io.faultwright.model.Symptom;
import io.faultwright.model.Wordbook;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Units;
import io.faultwright.source.Place;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A small handbook about invented walk-in freezers, with every kind of thing in it. Every text of
 * the trainer's passes through {@code write}, so that a test can put anything into all of them.
 */
final class SampleBook {
  static final String GUIDE =
      """
      # Connecting gauges

      Take [the discharge pressure](reading:discharge-pressure) or see [the welcome](welcome.md).

      ## Hoses

      | Hose | Side |
      |------|-----:|
      | red  | high |
      | blue | low  |

      1. Purge.
      2. Connect. [More](#hoses), [outside](https://example.org/a?b=1&c=2).
      """;

  private final UnaryOperator<String> write;
  private int line;

  SampleBook(UnaryOperator<String> write) {
    this.write = write;
  }

  static KnowledgeBase plain() {
    return new SampleBook(text -> text).build();
  }

  KnowledgeBase build() {
    return new KnowledgeBase(
        handbook(),
        new SampleEquipment(write).build(),
        readings(),
        limits(),
        faults(),
        symptoms(),
        new TreeMap<>(),
        new TreeMap<>(),
        cautions(),
        parts(),
        guides(),
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeMap<>(),
        Wordbook.EMPTY);
  }

  private Place place() {
    return new Place("book.yaml", ++line, 1, 1);
  }

  private String t(String text) {
    return write.apply(text);
  }

  private Handbook handbook() {
    return new Handbook(
        place(),
        t("Walk-in freezers, service handbook"),
        t("Brantmoor Cold"),
        t("7"),
        "2026-03-02",
        "en",
        t("All figures are invented. Local codes and licensed practice come first."),
        Optional.of(t("+00 000 000")),
        Optional.empty(),
        Optional.of("welcome"),
        List.of(t("Printed copies are not kept up to date.")),
        Optional.empty(),
        AccessWeights.USUAL,
        List.of(),
        SignOffRules.NONE);
  }

  private SortedMap<String, Reading> readings() {
    SortedMap<String, Reading> readings = new TreeMap<>();
    add(readings, measured("ambient-temperature", "Ambient temperature", "°C", -20, 50));
    add(readings, measured("discharge-pressure", "Discharge pressure in defrost", "bar(g)", 0, 30));
    add(readings, choice("ice-after-defrost", "Ice after defrost", "untouched", "loose", "none"));
    add(readings, yesNo("fan-running", "Fan running", Access.OUTSIDE));
    add(readings, yesNo("valve-voltage", "Voltage at the defrost valve", Access.LIVE_VOLTAGE));
    return readings;
  }

  private static void add(SortedMap<String, Reading> readings, Reading reading) {
    readings.put(reading.id(), reading);
  }

  private Reading measured(String id, String title, String unit, int low, int high) {
    boolean circuit = id.contains("pressure");
    return reading(
        id,
        title,
        new Domain.Measured(
            Units.find(unit).orElseThrow(),
            Interval.closed(BigFraction.of(low), BigFraction.of(high)),
            Optional.of(BigFraction.of(1, 10))),
        circuit ? Access.REFRIGERANT_CIRCUIT : Access.OUTSIDE);
  }

  private Reading choice(String id, String title, String... values) {
    return reading(
        id,
        title,
        new Domain.Choice(
            java.util.Arrays.stream(values).map(v -> new NamedValue(v, t("Ice " + v))).toList(),
            false),
        Access.OUTSIDE);
  }

  private Reading yesNo(String id, String title, Access access) {
    return reading(
        id,
        title,
        new Domain.Choice(List.of(new NamedValue("yes", "Yes"), new NamedValue("no", "No")), true),
        access);
  }

  private Reading reading(String id, String title, Domain domain, Access access) {
    return new Reading(
        id,
        place(),
        t(title),
        t("What about: " + title + "?"),
        domain,
        access,
        BigFraction.of(4),
        List.of(t("Wait two minutes into the defrost."), t("Read the value of " + title + ".")),
        Optional.of(t("At the unit.")),
        Optional.of(t("Defrost")),
        Optional.of(t("Gauge")),
        Optional.of(
            new Accuracy(
                List.of(new Accuracy.OfScale(BigFraction.of(1, 100), BigFraction.of(35))))),
        Sorted.set(access.hazardous() ? List.of(access.word()) : List.of()),
        access == Access.REFRIGERANT_CIRCUIT ? Optional.of("gauges") : Optional.empty(),
        id.equals("valve-voltage") ? test("defrost", "hot-gas") : Condition.ALWAYS,
        Sorted.set(List.<String>of()),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        new TreeSet<>());
  }

  private SortedMap<String, LimitsTable> limits() {
    SortedMap<String, LimitsTable> limits = new TreeMap<>();
    limits.put(
        "discharge-pressure",
        new LimitsTable(
            "discharge-pressure",
            place(),
            List.of("family", "ambient-temperature"),
            List.of("ambient-temperature"),
            Optional.of(LimitsTable.Between.INTERPOLATE),
            List.of(row("fell", 10, 82, 104), row("fell", 32, 121, 150), row("tarn", 10, 70, 90))));
    return limits;
  }

  private LimitsTable.Row row(String family, int ambient, int low, int high) {
    return new LimitsTable.Row(
        place(),
        new All(List.of(test("family", family))),
        List.of(Interval.point(BigFraction.of(ambient))),
        Optional.of(BigFraction.of(low, 10)),
        Optional.of(BigFraction.of(high, 10)));
  }

  private SortedMap<String, Fault> faults() {
    SortedMap<String, Fault> faults = new TreeMap<>();
    for (String id : List.of("valve-restricted", "valve-not-powered", "fan-stuck")) {
      faults.put(
          id,
          new Fault(
              id,
              place(),
              t("Fault " + id),
              t("What it is: " + id + "."),
              List.of(
                  step("Isolate the unit and recover the charge.", "refrigerant-circuit"),
                  step("Replace the valve.", "refrigerant-circuit"),
                  step("Evacuate and recharge.", "refrigerant-circuit", "live-voltage")),
              List.of(step("Start a defrost and watch the coil."), step("Read the pressure.")),
              Sorted.set(List.of("defrost-valve")),
              List.of(t("charge")),
              Sorted.set(List.of("goods")),
              BigFraction.ONE,
              Optional.empty(),
              Condition.ALWAYS));
    }
    return faults;
  }

  private Fault.Step step(String text, String... cautions) {
    return new Fault.Step(place(), t(text), Access.OUTSIDE, Sorted.set(List.of(cautions)));
  }

  private SortedMap<String, Symptom> symptoms() {
    SortedMap<String, Symptom> symptoms = new TreeMap<>();
    symptoms.put("ice-left", iceLeft());
    symptoms.put("room-too-warm", roomTooWarm());
    return symptoms;
  }

  private Symptom iceLeft() {
    SortedMap<String, Rule> rules = new TreeMap<>();
    rule(
        rules,
        "restricted",
        new All(
            List.of(
                test("ice-after-defrost", "untouched"),
                test("valve-voltage", "yes"),
                test("discharge-pressure", new AgainstLimits(EnumSet.of(Side.ABOVE))))),
        new Conclude(Sorted.set(List.of("valve-restricted"))));
    rule(
        rules,
        "no-voltage",
        new All(
            List.of(
                test("valve-voltage", "no"),
                new Any(
                    List.of(
                        test("ice-after-defrost", "loose"),
                        new All(
                            List.of(
                                test("fan-running", "yes"),
                                test(
                                    "ambient-temperature",
                                    new InInterval(Interval.above(BigFraction.of(-10)))))))),
                new Not(test("software", "2.9")))),
        new Conclude(Sorted.set(List.of("valve-not-powered", "fan-stuck"))));
    rule(
        rules,
        "fan",
        test("fan-running", "no"),
        new Exclude(Sorted.set(List.of("valve-restricted"))));
    rule(rules, "warm", test("fan-running", "no"), new Refer("room-too-warm"));
    rule(rules, "unknown", test("valve-voltage", new CannotBeTaken()), new Escalate(t("hotline")));
    SortedMap<String, Never> nevers = new TreeMap<>();
    nevers.put(
        "hot-without-volt",
        new Never(
            "hot-without-volt",
            place(),
            new All(List.of(test("valve-voltage", "no"), test("ice-after-defrost", "none"))),
            t("Without voltage no gas flows.")));
    return new Symptom(
        "ice-left",
        place(),
        t("Ice is left on the coil after a hot-gas defrost"),
        t("The defrost ends, yet ice stays."),
        test("defrost", "hot-gas"),
        test("ice-after-defrost", "untouched", "loose"),
        List.of(
            new Symptom.First(
                place(), new All(List.of(test("fan-running", "yes"))), "room-too-warm")),
        rules,
        nevers,
        Sorted.set(List.of()),
        Optional.of("gauges"),
        HazardOrder.LAST);
  }

  private Symptom roomTooWarm() {
    SortedMap<String, Rule> rules = new TreeMap<>();
    rule(rules, "fan", test("fan-running", "no"), new Conclude(Sorted.set(List.of("fan-stuck"))));
    return new Symptom(
        "room-too-warm",
        place(),
        t("Room is too warm"),
        t("The goods thaw."),
        Condition.ALWAYS,
        Condition.ALWAYS,
        List.of(),
        rules,
        new TreeMap<>(),
        Sorted.set(List.of()),
        Optional.empty(),
        HazardOrder.LAST);
  }

  private void rule(
      SortedMap<String, Rule> rules,
      String id,
      Condition when,
      io.faultwright.model.Conclusion conclusion) {
    rules.put(
        id,
        new Rule(
            id,
            place(),
            when,
            conclusion,
            t("Because of " + id + "."),
            Sorted.set(id.equals("warm") ? List.of("fan") : List.of())));
  }

  private Condition test(String subject, String... values) {
    return test(subject, new OneOf(Sorted.set(List.of(values))));
  }

  private Condition test(String subject, Pattern pattern) {
    return new Test(subject, pattern, place());
  }

  private SortedMap<String, Caution> cautions() {
    SortedMap<String, Caution> cautions = new TreeMap<>();
    caution(cautions, "live-voltage", Signal.DANGER, "Mains voltage kills. Prove it dead first.");
    caution(cautions, "refrigerant-circuit", Signal.WARNING, "Gas under pressure. Wear goggles.");
    caution(cautions, "hot-pipe", Signal.CAUTION, "The pipe burns.");
    caution(cautions, "goods", Signal.NOTICE, "Move the goods first.");
    return cautions;
  }

  private void caution(SortedMap<String, Caution> cautions, String id, Signal signal, String text) {
    Set<Access> covers = Access.of(id).map(Set::of).orElse(Set.of());
    cautions.put(id, new Caution(id, place(), signal, t(text), covers));
  }

  private SortedMap<String, Part> parts() {
    SortedMap<String, Part> parts = new TreeMap<>();
    parts.put(
        "defrost-valve",
        new Part("defrost-valve", place(), t("Hot-gas valve"), Optional.of(t("BC-0412"))));
    return parts;
  }

  private SortedMap<String, Guide> guides() {
    SortedMap<String, Guide> guides = new TreeMap<>();
    guides.put("gauges", guide("gauges", "Connecting gauges", GUIDE + "\n" + prose("The end.")));
    guides.put(
        "welcome",
        guide("welcome", "How to use it", "# How to use it\n\n" + prose("Pick a complaint.")));
    return guides;
  }

  /** A paragraph of Markdown in which entities are not read. */
  private String prose(String text) {
    return t(text).replace("&", "\\&");
  }

  private static Guide guide(String id, String title, String text) {
    return new Guide(id, new Place("guides/" + id + ".md", 1, 1, 1), title, text);
  }
}
