package io.faultwright.resolve;

import io.faultwright.diagnostic.Problem;
import io.faultwright.model.Answer;
import io.faultwright.model.Chart.Branch;
import io.faultwright.model.Chart.End;
import io.faultwright.model.Chart.Next;
import io.faultwright.model.Chart.Target;
import io.faultwright.model.Condition;
import io.faultwright.model.Sorted;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the answers to the steps of one chart: a pattern, and exactly one way on. */
final class BranchResolver {
  private static final String IS = "is";
  private static final List<String> TARGETS = List.of("next", "conclude", "refer", "escalate");
  private static final List<String> KEYS = List.of(IS, "next", "conclude", "refer", "escalate");
  private static final Target STAND_IN = end(new Answer.OfEscalation(""));

  private final Context context;
  private final ConditionResolver situation;
  private final ConclusionResolver conclusions;
  private final String symptom;
  private final Set<String> steps;

  /**
   * @param symptom id of the symptom that the chart works
   * @param steps ids of the chart's steps
   */
  BranchResolver(Context context, ConditionResolver situation, String symptom, Set<String> steps) {
    this.context = context;
    this.situation = situation;
    this.conclusions = new ConclusionResolver(context);
    this.symptom = symptom;
    this.steps = steps;
  }

  private static Target end(Answer answer) {
    return new End(Sorted.set(List.of(answer)));
  }

  /**
   * One answer.
   *
   * @param checked what the step looks at; empty where that is not known
   */
  Branch resolve(Definition step, Optional<Subject> checked, Node node) {
    String what = "an answer of " + step.what();
    Fields fields = new Fields(node, what, node.place(), KEYS, context.problems());
    Optional<Node> is = fields.require(IS);
    Condition when =
        checked
            .flatMap(subject -> is.flatMap(written -> situation.pattern(subject, written)))
            .orElse(Condition.ALWAYS);
    return new Branch(node.place(), when, target(what, node, fields));
  }

  private Target target(String what, Node node, Fields fields) {
    List<String> written = TARGETS.stream().filter(fields::has).toList();
    if (written.size() > 1) {
      context
          .problems()
          .add(
              new Problem(
                  written.stream().map(fields::place).toList(),
                  what + " has " + Words.quoted(written) + " at once",
                  "keep one of them"));
    } else if (TARGETS.stream().noneMatch(fields::mentions) && fields.readable()) {
      context
          .problems()
          .add(
              node.place(),
              what + " leads nowhere",
              "add `next: step`, `conclude: fault`, `refer: symptom` or `escalate: hotline`");
    }
    return written.stream().map(key -> target(key, fields)).findFirst().orElse(STAND_IN);
  }

  private Target target(String key, Fields fields) {
    return switch (key) {
      case "next" -> fields.scalar(key).<Target>map(this::next).orElse(STAND_IN);
      case "conclude" ->
          new End(
              Sorted.set(
                  conclusions.faults(key, fields).stream().map(Answer.OfFault::new).toList()));
      case "refer" -> fields.scalar(key).map(this::refer).orElse(STAND_IN);
      default -> end(new Answer.OfEscalation(fields.text(key).orElse("")));
    };
  }

  private Next next(Scalar step) {
    return new Next(context.names().reference(Kind.STEP, step, steps));
  }

  private Target refer(Scalar target) {
    if (target.text().equals(symptom)) {
      context
          .problems()
          .add(
              target.place(),
              "the chart refers to the symptom that it works",
              "name another symptom, or lead on with `next: step`");
    }
    return end(new Answer.OfReferral(context.names().reference(Kind.SYMPTOM, target)));
  }
}
