package io.faultwright.resolve;

import io.faultwright.diagnostic.Problem;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Conclusion.Conclude;
import io.faultwright.model.Conclusion.Escalate;
import io.faultwright.model.Conclusion.Exclude;
import io.faultwright.model.Conclusion.Refer;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.SortedSet;

/** Reads what follows from a rule: exactly one of four keys. */
final class ConclusionResolver {
  static final List<String> KEYS = List.of("conclude", "exclude", "refer", "escalate");

  private static final Conclusion STAND_IN = new Escalate("");

  private final Context context;

  ConclusionResolver(Context context) {
    this.context = context;
  }

  Conclusion resolve(Definition symptom, Definition rule, Fields fields) {
    List<String> written = KEYS.stream().filter(fields::has).toList();
    if (written.size() > 1) {
      context
          .problems()
          .add(
              new Problem(
                  written.stream().map(fields::place).toList(),
                  rule.what() + " has " + Words.quoted(written) + " at once",
                  "keep one of them, and write a second rule for the other"));
    } else if (KEYS.stream().noneMatch(fields::mentions) && fields.readable()) {
      context
          .problems()
          .add(
              rule.place(),
              rule.what() + " has no outcome",
              "add `conclude: fault`, `exclude: fault`, `refer: symptom` or `escalate: hotline`");
    }
    return written.stream()
        .map(key -> conclusion(symptom, key, fields))
        .reduce((first, other) -> first)
        .orElse(STAND_IN);
  }

  private Conclusion conclusion(Definition symptom, String key, Fields fields) {
    return switch (key) {
      case "conclude" -> new Conclude(faults(key, fields));
      case "exclude" -> new Exclude(faults(key, fields));
      case "refer" -> fields.scalar(key).map(target -> refer(symptom, target)).orElse(STAND_IN);
      default -> new Escalate(fields.text(key).orElse(""));
    };
  }

  /** The faults that a key names, at least one. */
  SortedSet<String> faults(String key, Fields fields) {
    boolean empty =
        fields
            .find(key)
            .filter(node -> node instanceof ListNode list && list.items().isEmpty())
            .isPresent();
    if (empty) {
      context
          .problems()
          .add(fields.place(key), "`" + key + "` names no fault", "name at least one");
    }
    return context.names().references(Kind.FAULT, fields.oneOrMore(key));
  }

  private Conclusion refer(Definition symptom, Scalar target) {
    if (target.text().equals(symptom.id())) {
      context
          .problems()
          .add(target.place(), symptom.what() + " refers to itself", "name another symptom");
    }
    return new Refer(context.names().reference(Kind.SYMPTOM, target));
  }
}
