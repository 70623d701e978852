package io.faultwright.resolve;

import io.faultwright.model.Condition;
import io.faultwright.model.Fault;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads the section {@code faults}. */
final class FaultResolver {
  private static final List<String> KEYS =
      List.of(
          "title",
          "about",
          "remedy",
          "verify",
          "parts",
          "nameplate",
          "cautions",
          "frequency",
          "guide",
          "applies");
  private static final Unit TIMES = Units.find("times").orElseThrow();

  private final Context context;
  private final ConditionResolver equipment;
  private final StepResolver steps;
  private final NameplateLabels labels;

  FaultResolver(
      Context context, ConditionResolver equipment, CautionRule cautions, NameplateLabels labels) {
    this.context = context;
    this.equipment = equipment;
    this.steps = new StepResolver(context, cautions);
    this.labels = labels;
  }

  SortedMap<String, Fault> resolveAll() {
    SortedMap<String, Fault> faults = new TreeMap<>();
    context.outline().of(Kind.FAULT).forEach((id, one) -> faults.put(id, resolve(one)));
    return faults;
  }

  private Fault resolve(Definition definition) {
    Fields fields = Fields.of(definition, KEYS, context.problems());
    Condition applies = fields.read("applies", equipment::all, Condition.ALWAYS);
    return new Fault(
        definition.id(),
        definition.place(),
        fields.requireText("title"),
        fields.text("about").orElse(""),
        steps.steps(fields, "remedy"),
        steps.steps(fields, "verify"),
        context.names().references(Kind.PART, fields.oneOrMore("parts")),
        labels.read(fields.oneOrMore("nameplate"), applies),
        new TreeSet<>(context.names().references(Kind.CAUTION, fields.oneOrMore("cautions"))),
        fields.scalar("frequency").map(this::frequency).orElse(BigFraction.ONE),
        fields.scalar("guide").map(guide -> context.names().reference(Kind.GUIDE, guide)),
        applies);
  }

  private BigFraction frequency(Scalar written) {
    BigFraction frequency =
        context
            .quantities()
            .number(written.place(), written.text(), TIMES, "`frequency`")
            .orElse(BigFraction.ONE);
    if (frequency.signum() <= 0) {
      context
          .problems()
          .add(
              written.place(),
              "`frequency` must be greater than zero",
              "write how often the fault is met, relative to the others");
    }
    return frequency;
  }
}
