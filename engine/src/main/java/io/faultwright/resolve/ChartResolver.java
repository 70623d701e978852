package io.faultwright.resolve;

import io.faultwright.model.Chart;
import io.faultwright.model.Chart.Step;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Equipment;
import io.faultwright.model.Symptom;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Reads the section {@code charts}. */
final class ChartResolver {
  private static final List<String> KEYS = List.of("title", "symptom", "applies", "start", "steps");
  private static final List<String> STEP_KEYS = List.of("check", "answers");

  private final Context context;
  private final ConditionResolver equipment;
  private final ConditionResolver situation;
  private final Map<String, Symptom> symptoms;
  private final Optional<Equipment> published;

  /**
   * @param published the equipment, where it could be read
   */
  ChartResolver(
      Context context,
      ConditionResolver equipment,
      ConditionResolver situation,
      Map<String, Symptom> symptoms,
      Optional<Equipment> published) {
    this.context = context;
    this.equipment = equipment;
    this.situation = situation;
    this.symptoms = symptoms;
    this.published = published;
  }

  SortedMap<String, Chart> resolveAll() {
    SortedMap<String, Chart> charts = new TreeMap<>();
    context.outline().of(Kind.CHART).forEach((id, one) -> charts.put(id, resolve(one)));
    return charts;
  }

  private Chart resolve(Definition definition) {
    Fields fields = Fields.of(definition, KEYS, context.problems());
    String symptom =
        fields
            .requireScalar("symptom")
            .map(named -> context.names().reference(Kind.SYMPTOM, named))
            .orElse("");
    Condition applies = fields.read("applies", equipment::all, Condition.ALWAYS);
    requireEquipment(definition, symptom, applies);
    fields.require("steps");
    List<Entry> steps = fields.map("steps");
    Set<String> ids = steps.stream().map(Entry::name).collect(Collectors.toSet());
    Optional<Scalar> start = fields.requireScalar("start");
    BranchResolver branches = new BranchResolver(context, situation, symptom, ids);
    return new Chart(
        definition.id(),
        definition.place(),
        fields.text("title").orElse(Words.title(definition.id())),
        symptom,
        applies,
        start.map(id -> context.names().reference(Kind.STEP, id, ids)).orElse(""),
        steps(steps, branches));
  }

  private SortedMap<String, Step> steps(List<Entry> written, BranchResolver branches) {
    SortedMap<String, Step> steps = new TreeMap<>();
    for (Entry entry : written) {
      Ids.check(Kind.STEP, entry.key(), context.problems());
      steps.put(entry.name(), step(Definition.of(Kind.STEP, entry), branches));
    }
    return steps;
  }

  private Step step(Definition definition, BranchResolver branches) {
    Fields fields = Fields.of(definition, STEP_KEYS, context.problems());
    Optional<Scalar> check = fields.requireScalar("check");
    Optional<Subject> subject = check.flatMap(situation::subject);
    fields
        .require("answers")
        .filter(node -> node instanceof ListNode list && list.items().isEmpty())
        .ifPresent(none -> noAnswers(definition, none));
    return new Step(
        definition.id(),
        definition.place(),
        check.map(Scalar::text).orElse(""),
        fields.list("answers").stream()
            .map(answer -> branches.resolve(definition, subject, answer))
            .toList());
  }

  private void noAnswers(Definition step, Node none) {
    context
        .problems()
        .add(none.place(), step.what() + " has no answers", "write `- { is: value, next: step }`");
  }

  /** A chart for no machine that its symptom is offered on would never be used. */
  private void requireEquipment(Definition chart, String symptom, Condition applies) {
    Optional.ofNullable(symptoms.get(symptom))
        .filter(known -> published.filter(all -> isOffered(all, known, applies)).isEmpty())
        .filter(known -> published.isPresent())
        .ifPresent(
            known -> {
              Place place = applies.tests().findFirst().map(Test::place).orElse(chart.place());
              context
                  .problems()
                  .add(
                      place,
                      chart.what()
                          + " is for no published model and software to which the symptom `"
                          + symptom
                          + "` applies",
                      "correct its `applies`, or that of the symptom");
            });
  }

  private static boolean isOffered(Equipment equipment, Symptom symptom, Condition applies) {
    return equipment.builds().stream()
        .anyMatch(build -> build.satisfies(symptom.applies()) && build.satisfies(applies));
  }
}
