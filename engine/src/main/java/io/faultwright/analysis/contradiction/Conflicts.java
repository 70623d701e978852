package io.faultwright.analysis.contradiction;

import io.faultwright.model.Answer;
import io.faultwright.model.Conclusion;
import io.faultwright.model.FaultPair;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;

/** Which conclusions exclude each other. */
final class Conflicts {
  private static final String SEPARATE =
      "add the reading that separates them, or let one win with `instead-of`";

  private final Set<FaultPair> together;

  Conflicts(Set<FaultPair> together) {
    this.together = together;
  }

  Optional<Conflict> between(Conclusion a, Conclusion b) {
    return answers(a.answers(), b.answers())
        .or(() -> excluded(a, b.answers()))
        .or(() -> excluded(b, a.answers()));
  }

  private Optional<Conflict> answers(SortedSet<Answer> left, SortedSet<Answer> right) {
    for (Answer one : left) {
      for (Answer other : right) {
        if (!one.equals(other) && !mayStandTogether(one, other)) {
          return Optional.of(new Conflict(words(one) + " and " + words(other), help(one, other)));
        }
      }
    }
    return Optional.empty();
  }

  private boolean mayStandTogether(Answer one, Answer other) {
    return bothFaults(one, other) && together.contains(FaultPair.of(one.name(), other.name()));
  }

  private static boolean bothFaults(Answer one, Answer other) {
    return one instanceof Answer.OfFault && other instanceof Answer.OfFault;
  }

  private static String help(Answer one, Answer other) {
    return bothFaults(one, other)
        ? SEPARATE
            + ", or list `together: [["
            + one.name()
            + ", "
            + other.name()
            + "]]` if both can be present"
        : SEPARATE;
  }

  private static Optional<Conflict> excluded(Conclusion excluding, SortedSet<Answer> answers) {
    if (!(excluding instanceof Conclusion.Exclude exclude)) {
      return Optional.empty();
    }
    return answers.stream()
        .filter(answer -> answer instanceof Answer.OfFault)
        .filter(answer -> exclude.faults().contains(answer.name()))
        .findFirst()
        .map(answer -> new Conflict(words(answer) + " as present and as ruled out", SEPARATE));
  }

  private static String words(Answer answer) {
    if (answer instanceof Answer.OfFault fault) {
      return "fault `" + fault.fault() + "`";
    }
    return answer instanceof Answer.OfReferral referral
        ? "a referral to `" + referral.symptom() + "`"
        : "an escalation to `" + answer.name() + "`";
  }
}
