package io.faultwright.analysis.change;

import io.faultwright.change.Edit.Concern;
import io.faultwright.model.Chart;
import io.faultwright.model.Condition;
import io.faultwright.model.Derived;
import io.faultwright.model.Domain;
import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Reading;
import io.faultwright.model.SetUp;
import io.faultwright.quantity.Decimals;
import io.faultwright.wording.RuleText;
import io.faultwright.wording.Wording;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The parts of readings, faults, spare parts and cautions. */
final class WorkPassages {
  private final KnowledgeBase kb;
  private final Passages passages;
  private final Wording words;
  private final ConditionKey keys;

  WorkPassages(KnowledgeBase kb, Passages passages) {
    this.kb = kb;
    this.passages = passages;
    this.words = new Wording(kb);
    this.keys = new ConditionKey(kb);
  }

  void write() {
    kb.readings().values().forEach(this::reading);
    kb.faults().values().forEach(this::fault);
    kb.setUps().values().forEach(this::setUp);
    kb.parts()
        .values()
        .forEach(
            part ->
                passages
                    .thing(Concern.WORK, "part", part.id(), part.place())
                    .work("title", part.title())
                    .work("number", part.number()));
    kb.charts().values().forEach(this::chart);
    kb.cautions()
        .values()
        .forEach(
            caution ->
                passages
                    .thing(Concern.WORK, "caution", caution.id(), caution.place())
                    .work("signal", caution.signal().name())
                    .work("text", caution.text())
                    .lines("covers", sorted(caution.covers())));
  }

  private static List<String> sorted(Collection<?> values) {
    return List.copyOf(new TreeSet<>(values.stream().map(Object::toString).toList()));
  }

  private void reading(Reading reading) {
    Domain domain = reading.domain();
    passages
        .thing(Concern.RULES, "reading", reading.id(), reading.place())
        .rules("values", domain.match(m -> range(reading, m), WorkPassages::ids), values(reading))
        .rules("applies", keys.of(reading.applies()), words.condition(reading.applies()))
        .rules("difference", computed(reading), computed(reading))
        .work("unit", domain.<String>match(measured -> measured.unit().symbol(), choice -> ""))
        .lines("how", reading.how())
        .work("where", reading.where())
        .work("phase", reading.phase())
        .work("instrument", reading.instrument())
        .work("accuracy", words.accuracy(reading))
        .work("access", reading.access().word())
        .lines("cautions", reading.cautions())
        .text("title", reading.title())
        .text("ask", reading.ask())
        .text("titles of values", domain.<String>match(measured -> "", WorkPassages::titles))
        .text("normal", String.join("\n", reading.normal()))
        .work("set-up", reading.setUp())
        .lines("after", reading.after())
        .text("minutes", Decimals.show(reading.minutes()))
        .text("guide", reading.guide());
  }

  private void setUp(SetUp setUp) {
    passages
        .thing(Concern.WORK, "set-up", setUp.id(), setUp.place())
        .work("title", setUp.title())
        .work("access", setUp.access().word())
        .text("minutes", Decimals.show(setUp.minutes()));
  }

  private void chart(Chart chart) {
    passages
        .thing(Concern.WORK, "chart", chart.id(), chart.place())
        .text("title", chart.title())
        .work("symptom", chart.symptom())
        .put(Concern.WORK, "applies", keys.of(chart.applies()), words.condition(chart.applies()))
        .work("start", chart.start())
        .put(Concern.WORK, "steps", steps(chart, keys::of), steps(chart, words::condition));
  }

  private static String steps(Chart chart, Function<Condition, String> text) {
    return chart.steps().values().stream()
        .flatMap(
            step ->
                step.branches().stream()
                    .map(
                        branch ->
                            step.id() + ": " + text.apply(branch.when()) + target(branch.target())))
        .collect(Collectors.joining("\n"));
  }

  private static String target(Chart.Target target) {
    return " → "
        + target.match(
            Chart.Next::step,
            end -> end.answers().stream().map(RuleText::answer).collect(Collectors.joining(", ")));
  }

  /** What a reading is computed from; empty where it is observed. */
  private static String computed(Reading reading) {
    return reading.derived().map(Derived::toString).orElse("");
  }

  private String range(Reading reading, Domain.Measured measured) {
    return measured.unit().dimension() + " " + keys.interval(reading.id(), measured.range());
  }

  private static String ids(Domain.Choice choice) {
    return String.join(" ", new TreeSet<>(choice.ids()));
  }

  private static String titles(Domain.Choice choice) {
    return choice.values().stream()
        .sorted(Comparator.comparing(NamedValue::id))
        .map(value -> value.id() + ": " + value.title())
        .collect(Collectors.joining("\n"));
  }

  private String values(Reading reading) {
    return reading
        .domain()
        .match(
            measured -> words.interval(reading.id(), measured.range()),
            choice -> String.join(", ", choice.ids()));
  }

  private void fault(Fault fault) {
    passages
        .thing(Concern.RULES, "fault", fault.id(), fault.place())
        .put(Concern.WORK, "remedy", steps(fault.remedy(), true), steps(fault.remedy(), false))
        .put(
            Concern.WORK, "verification", steps(fault.verify(), true), steps(fault.verify(), false))
        .lines("parts", fault.parts())
        .lines("nameplate", fault.nameplate())
        .lines("cautions", fault.cautions())
        .put(Concern.WORK, "applies", keys.of(fault.applies()), words.condition(fault.applies()))
        .text("title", fault.title())
        .text("about", fault.about())
        .text("frequency", Decimals.show(fault.frequency()))
        .text("guide", fault.guide());
  }

  private static String steps(List<Fault.Step> steps, boolean key) {
    return steps.stream()
        .map(step -> key ? step.text() + step.access() + step.cautions() : step.text())
        .collect(Collectors.joining("\n"));
  }
}
