package io.faultwright.resolve;

import io.faultwright.model.Build;
import io.faultwright.model.Case;
import io.faultwright.model.Equipment;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads the section {@code cases}. */
final class CaseResolver {
  private static final List<String> KEYS =
      List.of(
          "symptom",
          "given",
          CaseLogResolver.LOG,
          "expect",
          "rules-say",
          "note",
          "origin",
          "unclear");

  private final Context context;
  private final SituationResolver situations;
  private final ExpectResolver expectations;
  private final SortedMap<String, Symptom> symptoms;
  private final CaseLogResolver logs;
  private final List<Build> builds;

  /**
   * For the cases of all symptoms.
   *
   * @param equipment the published builds; none where they could not all be read
   */
  CaseResolver(
      Context context,
      Subjects subjects,
      SortedMap<String, Symptom> symptoms,
      CaseLogResolver logs,
      Optional<Equipment> equipment) {
    this.context = context;
    this.situations = new SituationResolver(context, subjects);
    this.expectations = new ExpectResolver(context);
    this.symptoms = symptoms;
    this.logs = logs;
    this.builds = equipment.map(Equipment::builds).orElse(List.of());
  }

  SortedMap<String, Case> resolveAll() {
    SortedMap<String, Case> cases = new TreeMap<>();
    context
        .outline()
        .of(Kind.CASE)
        .forEach((id, one) -> cases.put(id, resolve(one, fields(one), true)));
    return cases;
  }

  /** A case from outside the knowledge base, which need not say what it expects. */
  GivenCase given(Definition definition) {
    Fields fields = fields(definition);
    boolean judged = fields.has("expect");
    Case given = resolve(definition, fields, judged);
    return new GivenCase(given, given.confirmed());
  }

  private Fields fields(Definition definition) {
    return Fields.of(definition, KEYS, context.problems());
  }

  private Case resolve(Definition definition, Fields fields, boolean judged) {
    Optional<Scalar> written = fields.requireScalar("symptom");
    String id = written.map(one -> context.names().reference(Kind.SYMPTOM, one)).orElse("");
    Optional<Symptom> symptom = Optional.ofNullable(symptoms.get(id));
    fields.require("given");
    Situation given = logs.with(definition, fields, situations.resolve(fields.map("given")));
    checkEquipment(definition, fields, given, symptom);
    return new Case(
        definition.id(),
        definition.place(),
        id,
        given,
        judged ? expectations.resolve(fields, symptom) : new TreeSet<>(),
        judged && !expectations.isUnconfirmed(fields),
        fields.text("note").orElse(""),
        fields.text("origin"),
        fields.oneOrMore("unclear").stream().map(remark -> remark.text().strip()).toList());
  }

  private void checkEquipment(
      Definition definition, Fields fields, Situation given, Optional<Symptom> symptom) {
    List<Build> meant = builds.stream().filter(build -> agrees(build, given)).toList();
    if (builds.isEmpty()) {
      return;
    }
    if (meant.isEmpty()) {
      problem(
          fields,
          definition.what() + " is about equipment that is not published",
          "no model has " + facts(given) + "; correct one of them");
    } else if (symptom.isPresent()
        && meant.stream().noneMatch(build -> applies(symptom.get(), build))) {
      problem(
          fields,
          "symptom `"
              + symptom.get().id()
              + "` does not apply to the equipment of "
              + definition.what(),
          "its `applies` leaves out " + facts(given) + "; correct the case or `applies`");
    }
  }

  private static boolean agrees(Build build, Situation given) {
    return given.equipment().entrySet().stream()
        .allMatch(
            fact -> build.attribute(fact.getKey()).filter(fact.getValue()::equals).isPresent());
  }

  private static boolean applies(Symptom symptom, Build build) {
    return build.satisfies(symptom.applies());
  }

  private static String facts(Situation given) {
    List<String> facts =
        given.equipment().entrySet().stream()
            .map(fact -> fact.getKey() + ": " + fact.getValue())
            .toList();
    return facts.isEmpty() ? "every model" : Words.quoted(facts);
  }

  private void problem(Fields fields, String message, String help) {
    context.problems().add(fields.place("given"), message, help);
  }
}
