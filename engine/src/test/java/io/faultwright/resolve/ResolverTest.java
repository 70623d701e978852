package io.faultwright.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.Access;
import io.faultwright.model.AccessWeights;
import io.faultwright.model.Answer;
import io.faultwright.model.Case;
import io.faultwright.model.Chart;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Condition;
import io.faultwright.model.Domain;
import io.faultwright.model.FaultPair;
import io.faultwright.model.HazardOrder;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Model;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Reading;
import io.faultwright.model.Rule;
import io.faultwright.model.SetUp;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class ResolverTest {
  private static final KnowledgeBase FREEZER = Resolver.resolve(Knowledge.sources());
  private static final Symptom ICE = FREEZER.symptoms().get("ice-left-after-defrost");

  private static BigFraction number(String text) {
    return Decimals.parse(text);
  }

  private static Interval point(String text) {
    return Interval.point(number(text));
  }

  /** A condition without places, as text. */
  private static String show(Condition condition) {
    return condition.match(
        all -> "all" + all.parts().stream().map(ResolverTest::show).toList(),
        any -> "any" + any.parts().stream().map(ResolverTest::show).toList(),
        not -> "not(" + show(not.part()) + ")",
        test -> test.subject() + " " + show(test.pattern()));
  }

  private static String show(Condition.Pattern pattern) {
    return pattern.match(
        oneOf -> oneOf.values().toString(),
        in -> show(in.interval()),
        limits -> limits.sides().toString(),
        cannot -> "cannot be taken");
  }

  private static String show(Interval interval) {
    String low = interval.low().map(e -> (e.included() ? "[" : "(") + show(e)).orElse("(");
    return low + ".." + interval.high().map(e -> show(e) + (e.included() ? "]" : ")")).orElse(")");
  }

  private static String show(Interval.End end) {
    return Decimals.show(end.value());
  }

  private static String when(String rule) {
    return show(ICE.rules().get(rule).when());
  }

  @Test
  void handbook() {
    assertEquals("Walk-in freezers, service handbook", FREEZER.handbook().title());
    assertEquals("2026-03-02", FREEZER.handbook().date());
    assertEquals(
        "For trained technicians. Local codes come first.", FREEZER.handbook().disclaimer());
    assertEquals(Optional.of("welcome"), FREEZER.handbook().start());
    assertEquals(2, FREEZER.handbook().notes().size());
  }

  @Test
  void weightsOfTheHandbookBesideTheUsualOnes() {
    AccessWeights weights = FREEZER.handbook().weights();
    assertEquals(BigFraction.ONE, weights.of(Access.OUTSIDE));
    assertEquals(number("2.5"), weights.of(Access.PANEL));
    assertEquals(number("5"), weights.of(Access.LIVE_VOLTAGE));
    assertEquals(number("5"), weights.of(Access.REFRIGERANT_CIRCUIT));
  }

  @Test
  void setUpsAndWhatComesBefore() {
    SetUp gauges = FREEZER.setUps().get("gauges-connected");
    assertEquals(number("6"), gauges.minutes());
    assertEquals(Access.REFRIGERANT_CIRCUIT, gauges.access());
    assertEquals(Access.OUTSIDE, FREEZER.setUps().get("panel-open").access());
    Reading pressure = FREEZER.readings().get("discharge-pressure-in-defrost");
    assertEquals(Optional.of("gauges-connected"), pressure.setUp());
    assertEquals(Set.of("ambient-temperature", "fan-running"), pressure.after());
    assertEquals(Optional.empty(), FREEZER.readings().get("noise").setUp());
  }

  @Test
  void chartsOfTheTrainer() {
    Chart chart = FREEZER.charts().get("ice-by-hand");
    assertEquals("ice-left-after-defrost", chart.symptom());
    assertEquals("all[family [fell], software [2.10, 3.0, 3.2]]", show(chart.applies()));
    assertEquals("cooling", chart.start());
    assertEquals(Set.of("cooling", "fan", "superheat", "build"), chart.steps().keySet());
    assertEquals(
        List.of(
            "fan-running [no] -> End[answers=[OfFault[fault=coil-fouled], OfFault[fault=fan-dead]]]",
            "fan-running [yes] -> Next[step=superheat]",
            "fan-running cannot be taken -> End[answers=[OfEscalation[to=hotline]]]"),
        branches(chart.steps().get("fan")));
    assertEquals(
        List.of(
            "any[coil-superheat [BELOW], coil-superheat [30..)] -> Next[step=build]",
            "not(coil-superheat [WITHIN]) -> End[answers=[OfEscalation[to=hotline]]]"),
        branches(chart.steps().get("superheat")));
    assertEquals(11, chart.steps().get("cooling").branches().get(0).place().line());
  }

  private static List<String> branches(Chart.Step step) {
    return step.branches().stream()
        .map(branch -> show(branch.when()) + " -> " + branch.target())
        .toList();
  }

  @Test
  void hazardousChecksComeLastUnlessSaidOtherwise() {
    assertEquals(HazardOrder.ANYWHERE, ICE.hazards());
    assertEquals(HazardOrder.LAST, FREEZER.symptoms().get("room-too-warm").hazards());
  }

  @Test
  void nameplateDecodesModels() {
    Model fell = FREEZER.equipment().models().get("FL-12G1");
    assertEquals("fell", fell.family());
    assertEquals(Map.of("defrost", "hot-gas", "controller", "k1"), fell.options());
    assertEquals("Fell 12", fell.title());
    assertEquals(Map.of("charge", "1.1 kg", "supply", "230 V 1~ 50 Hz"), fell.data());
  }

  @Test
  void softwareOfTheControllerOldestFirst() {
    assertEquals("[1.4, 2.9, 2.10]", software("FL-12G1"));
    assertEquals("[3.0, 3.2]", software("TN-20G2"));
    assertEquals("[]", software("TN-20E0"));
    assertEquals(8, FREEZER.equipment().builds().size());
  }

  private static String software(String model) {
    return FREEZER.equipment().models().get(model).software().toString();
  }

  @Test
  void titlesDefaultToTheIdInWords() {
    assertEquals("Tarn", FREEZER.equipment().families().get("tarn").title());
    assertEquals("TN-20G2", FREEZER.equipment().models().get("TN-20G2").title());
    assertEquals("K2", FREEZER.equipment().options().get("controller").values().get(1).title());
    Reading pressure = FREEZER.readings().get("discharge-pressure-in-defrost");
    assertEquals("Discharge pressure in defrost", pressure.title());
    assertEquals(new NamedValue("steady-hum", "Steady hum"), choice("noise").values().get(0));
  }

  private static Domain.Choice choice(String reading) {
    return (Domain.Choice) FREEZER.readings().get(reading).domain();
  }

  @Test
  void measuredReading() {
    Reading reading = FREEZER.readings().get("discharge-pressure-in-defrost");
    Domain.Measured domain = (Domain.Measured) reading.domain();
    assertEquals("bar(g)", domain.unit().symbol());
    assertEquals("[0..30]", show(domain.range()));
    assertEquals(Optional.of(number("0.1")), domain.resolution());
    assertEquals(number("4"), reading.minutes());
    assertEquals(List.of("Connect the gauge.", "Wait two minutes."), reading.how());
    assertEquals("all[defrost [hot-gas]]", show(reading.applies()));
  }

  @Test
  void readingDefaults() {
    Reading reading = FREEZER.readings().get("noise");
    assertEquals(Access.OUTSIDE, reading.access());
    assertEquals(BigFraction.ONE, reading.minutes());
    assertEquals(Condition.ALWAYS, reading.applies());
    assertEquals(Set.of("steady-hum", "nothing"), reading.normal());
    assertEquals(BigFraction.ONE, FREEZER.faults().get("coil-fouled").frequency());
  }

  @Test
  void yesNoReading() {
    assertTrue(choice("fan-running").yesNo());
    assertEquals(
        List.of(new NamedValue("yes", "Yes"), new NamedValue("no", "No")),
        choice("fan-running").values());
  }

  @Test
  void cautionsThatCoverAnAccessAreAdded() {
    assertEquals(
        Set.of("hot-surface", "pressure"),
        FREEZER.readings().get("discharge-pressure-in-defrost").cautions());
    assertEquals(Set.of("live-voltage"), FREEZER.readings().get("valve-voltage").cautions());
    var remedy = FREEZER.faults().get("defrost-valve-restricted").remedy();
    assertEquals(
        List.of("[pressure]", "[]", "[hot-surface, live-voltage]"),
        remedy.stream().map(step -> step.cautions().toString()).toList());
  }

  @Test
  void limitsInterpolatedInTheReadingsUnit() {
    LimitsTable table = FREEZER.limits().get("discharge-pressure-in-defrost");
    assertEquals(List.of("ambient-temperature"), table.drivers());
    assertEquals(Optional.of(LimitsTable.Between.INTERPOLATE), table.between());
    LimitsTable.Row first = table.rows().get(0);
    assertEquals(List.of(point("10")), first.at());
    assertEquals(Optional.of(number("8.2")), first.low());
    assertEquals(Optional.of(number("10.4")), first.high(), "1040 kPa(g)");
    assertEquals(List.of(point("32")), table.rows().get(1).at(), "89.6 °F");
    assertEquals("all[not(family [fell])]", show(table.rows().get(2).builds()));
    assertEquals(Optional.empty(), table.rows().get(2).high());
    assertEquals(Condition.ALWAYS, table.rows().get(3).builds());
  }

  @Test
  void limitsInSteps() {
    LimitsTable table = FREEZER.limits().get("coil-superheat");
    assertEquals(List.of("software", "ambient-temperature", "defrost"), table.by());
    assertEquals("[-10..10]", show(table.rows().get(0).at().get(0)));
    assertEquals("all[software [2.10, 3.0, 3.2]]", show(table.rows().get(0).builds()));
    assertEquals("all[software [1.4, 2.9], defrost [hot-gas]]", show(table.rows().get(1).builds()));
  }

  @Test
  void limitsWithoutColumns() {
    LimitsTable table = FREEZER.limits().get("ambient-temperature");
    assertEquals(List.of(), table.by());
    assertEquals(Optional.empty(), table.between());
    assertEquals(Optional.of(number("-20")), table.rows().get(0).low());
  }

  @Test
  void symptom() {
    assertEquals("all[defrost [hot-gas], software [2.10, 3.0, 3.2]]", show(ICE.applies()));
    assertEquals("all[ice-after-defrost [loose, untouched]]", show(ICE.recognise()));
    assertEquals("room-too-warm", ICE.first().get(0).otherwise());
    assertEquals("all[cooling-cycle [normal]]", show(ICE.first().get(0).when()));
    assertEquals(Set.of(FaultPair.of("fan-dead", "defrost-valve-stuck")), ICE.together());
    assertEquals(
        "all[valve-voltage [no], discharge-pressure-in-defrost (25..)]",
        show(ICE.nevers().get("no-volt-but-hot").when()));
    assertEquals(Condition.ALWAYS, FREEZER.symptoms().get("room-too-warm").applies());
  }

  @Test
  void conditions() {
    assertEquals(
        "all[ice-after-defrost [untouched], valve-voltage [yes],"
            + " discharge-pressure-in-defrost [ABOVE],"
            + " any[fan-running [no], all[ambient-temperature (-10..), not(noise [rattle])]],"
            + " not(coil-superheat [4..8])]",
        when("valve-restricted"));
    assertEquals(
        "all[fan-running [no], all[noise [nothing], family [fell, tarn]]]", when("fan-off"));
    assertEquals(
        "all[any[coil-superheat [BELOW], coil-superheat [30..), coil-superheat cannot be taken]]",
        when("not-the-coil"));
    assertEquals(
        "all[ambient-temperature (..-30], software [2.10, 2.9], not(model [FL-12G1])]",
        when("cold"));
    assertEquals(Condition.ALWAYS, ICE.rules().get("ask").when());
  }

  @Test
  void conclusions() {
    assertEquals(Set.of("coil-fouled", "fan-dead"), faults("fan-off"));
    assertEquals(new Conclusion.Refer("room-too-warm"), ICE.rules().get("cold").conclusion());
    assertEquals(new Conclusion.Escalate("hotline"), ICE.rules().get("ask").conclusion());
    Conclusion exclude = ICE.rules().get("not-the-coil").conclusion();
    assertEquals(Set.of("coil-fouled"), ((Conclusion.Exclude) exclude).faults());
    assertEquals(Set.of("fan-off"), ICE.rules().get("valve-restricted").insteadOf());
  }

  private static Set<String> faults(String rule) {
    return ((Conclusion.Conclude) ICE.rules().get(rule).conclusion()).faults();
  }

  @Test
  void rowsOfATableAreRules() {
    assertEquals(
        "all[ice-after-defrost [untouched], valve-voltage [yes],"
            + " discharge-pressure-in-defrost (..10)]",
        when("valve-stuck"));
    assertEquals(
        "all[ice-after-defrost [loose, none], discharge-pressure-in-defrost [5..5],"
            + " software [2.9, 3.2]]",
        when("table-escalates"));
  }

  @Test
  void placesOfRulesAndTests() {
    Rule written = ICE.rules().get("valve-restricted");
    assertEquals(new Place("rules/symptoms.yaml", 16, 7, 16), written.place());
    Condition.Test line = (Condition.Test) ((Condition.All) written.when()).parts().get(0);
    assertEquals(new Place("rules/symptoms.yaml", 18, 11, 28), line.place());
    Rule row = ICE.rules().get("valve-stuck");
    assertEquals(47, row.place().line());
    assertEquals(11, row.place().column());
    Condition.Test cell = (Condition.Test) ((Condition.All) row.when()).parts().get(1);
    assertEquals(new Place("rules/symptoms.yaml", 47, 50, 3), cell.place());
  }

  @Test
  void caseInTheReadingsUnits() {
    Case one = FREEZER.cases().get("fell-12-valve-stuck");
    assertEquals(Map.of("model", "FL-12G1", "software", "2.10"), one.given().equipment());
    assertEquals(
        Map.of(
            "ambient-temperature", new Value.Number(number("27")),
            "discharge-pressure-in-defrost", new Value.Number(number("9")),
            "noise", new Value.NotTaken(),
            "valve-voltage", new Value.Word("yes")),
        one.given().readings());
    assertEquals(Set.of(new Answer.OfFault("defrost-valve-stuck")), one.expect());
    assertEquals(Optional.of("Service report 12, invented"), one.origin());
  }

  @Test
  void expectations() {
    assertEquals(
        Set.of(new Answer.OfFault("fan-dead"), new Answer.OfFault("coil-fouled")), expect("both"));
    assertEquals(Set.of(new Answer.OfReferral("room-too-warm")), expect("referred"));
    assertEquals(Set.of(new Answer.OfEscalation("hotline")), expect("asked"));
    assertEquals(Set.of(new Answer.OfEscalation("hotline")), expect("asked-by-name"));
    assertEquals(Set.of(), expect("open"));
  }

  private static Set<Answer> expect(String id) {
    return FREEZER.cases().get(id).expect();
  }

  @Test
  void guidesAreNamedByTheirFirstHeading() {
    assertEquals("Connecting gauges", FREEZER.guides().get("connecting-gauges").title());
    assertEquals("welcome", FREEZER.guides().get("welcome").title());
    assertEquals("No heading here.\n", FREEZER.guides().get("welcome").markdown());
  }

  @Test
  void withoutEquipmentThereIsOneModel() {
    String text =
        "handbook: { title: T, maker: M, revision: 1, date: 2026-01-01, language: en,"
            + " disclaimer: D }\n";
    KnowledgeBase small =
        Resolver.resolve(new Sources(List.of(SourceFile.of("handbook.yaml", text))));
    assertEquals(1, small.equipment().builds().size());
    assertEquals("equipment", small.equipment().models().firstKey());
    assertEquals(List.of(), small.equipment().versions());
  }
}
