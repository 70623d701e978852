package io.faultwright.resolve;

import io.faultwright.model.Access;
import io.faultwright.model.Fault.Step;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;

/** Reads lists of instructions. */
final class StepResolver {
  private static final List<String> KEYS = List.of("do", "access", "cautions");

  private final Context context;
  private final CautionRule cautions;
  private final AccessResolver access;

  StepResolver(Context context, CautionRule cautions) {
    this.context = context;
    this.cautions = cautions;
    this.access = new AccessResolver(context.problems());
  }

  List<Step> steps(Fields fields, String key) {
    return fields.list(key).stream().map(this::step).toList();
  }

  private Step step(Node node) {
    if (node instanceof Scalar text && !text.text().isBlank()) {
      return new Step(
          text.place(),
          text.text().strip(),
          Access.OUTSIDE,
          cautions.forAccess(Access.OUTSIDE, List.of()));
    }
    Fields fields = new Fields(node, "a step", node.place(), KEYS, context.problems());
    Access needed = access.of(fields);
    return new Step(
        node.place(),
        fields.requireText("do"),
        needed,
        cautions.forAccess(needed, fields.oneOrMore("cautions")));
  }
}
