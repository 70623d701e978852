package io.faultwright.analysis.operation;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Sequence.Energised;
import io.faultwright.model.Sequence.Lasting;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.model.Sequence.Transition;
import io.faultwright.operation.Line;
import io.faultwright.operation.Lit;
import io.faultwright.operation.Program;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Tells of lines, and of times of outputs, that never come in a phase that is reached. */
final class NeverComes {
  private static final String MEND_TIMES = "mend the times, or remove ";

  private final List<Explored> explored;
  private final Examples examples;

  NeverComes(List<Explored> explored, Examples examples) {
    this.explored = explored;
    this.examples = examples;
  }

  /** A line that is never taken; empty where no build has a value for its time. */
  Optional<Finding> line(Phase phase, Transition line) {
    List<Line> known =
        reaching(phase)
            .flatMap(one -> Arrays.stream(one.program().lines(one.program().phase(phase.id()))))
            .filter(one -> one.source().equals(line))
            .toList();
    if (!known.isEmpty() && known.stream().allMatch(one -> one.after() == Program.NEVER)) {
      return Optional.empty();
    }
    return Optional.of(
        examples
            .end(phase.id(), one -> known.isEmpty() || Examples.has(one, phase.id(), line))
            .map(shown -> shown.of(finding(phase, line, known.isEmpty())))
            .orElseGet(() -> finding(phase, line, known.isEmpty())));
  }

  private static Finding finding(Phase phase, Transition line, boolean forNone) {
    if (forNone) {
      return never(
          line, phase, ": it is for no build that comes there", "mend its `applies`, or remove it");
    }
    if (!Shown.canHold(line)) {
      return never(line, phase, ": its states cannot hold together", "mend them, or remove it");
    }
    if (line.event().isPresent() || line.after().isEmpty()) {
      return never(line, phase, "", "mend what it waits for, or remove it");
    }
    return Finding.of(
        FindingKind.TIMER_NEVER_EXPIRES,
        line.place(),
        Told.line(line) + " in phase `" + phase.id() + "` never comes",
        "another line always leads on before; " + MEND_TIMES + "this line");
  }

  private static Finding never(Transition line, Phase phase, String why, String help) {
    return Finding.of(
        FindingKind.LINE_NEVER_TAKEN,
        line.place(),
        "the line " + Told.line(line) + " in phase `" + phase.id() + "` is never taken" + why,
        help);
  }

  /** Times of the outputs of a phase that are never over. */
  List<Finding> outputs(Phase phase) {
    List<Finding> findings = new ArrayList<>();
    for (Energised on : phase.on()) {
      List<Lit> known =
          reaching(phase)
              .flatMap(one -> Arrays.stream(one.program().lit(one.program().phase(phase.id()))))
              .filter(one -> one.source().equals(on))
              .toList();
      boolean reversed = !known.isEmpty() && known.stream().allMatch(NeverComes::isReversed);
      on.from()
          .filter(from -> isIdle(from, known.stream().map(Lit::from).toList()))
          .ifPresent(from -> findings.add(shown(phase, on, neverOn(phase, on, reversed))));
      on.until()
          .filter(until -> isIdle(until, known.stream().map(Lit::until).toList()))
          .ifPresent(until -> findings.add(shown(phase, on, neverOff(phase, on, until))));
    }
    return findings;
  }

  private static boolean isReversed(Lit lit) {
    return lit.until() <= lit.from();
  }

  private boolean isIdle(Lasting lasting, List<Long> steps) {
    return steps.stream().anyMatch(one -> one != Program.NEVER)
        && explored.stream().noneMatch(one -> one.over().contains(lasting));
  }

  private static Finding neverOn(Phase phase, Energised on, boolean reversed) {
    return Finding.of(
        FindingKind.TIMER_NEVER_EXPIRES,
        on.place(),
        "`" + on.output() + "` never comes on in phase `" + phase.id() + "`",
        reversed
            ? "it would go off before it is on; write an `until` that is later than `from`"
            : "the phase is always over before; " + MEND_TIMES + "the output here");
  }

  private static Finding neverOff(Phase phase, Energised on, Lasting until) {
    return Finding.of(
        FindingKind.TIMER_NEVER_EXPIRES,
        on.place(),
        "`until "
            + Told.lasting(until)
            + "` of `"
            + on.output()
            + "` in phase `"
            + phase.id()
            + "` never comes",
        "the phase is always over before; " + MEND_TIMES + "the `until`");
  }

  private Finding shown(Phase phase, Energised on, Finding finding) {
    return examples
        .end(
            phase.id(),
            one ->
                Arrays.stream(one.program().lit(one.program().phase(phase.id())))
                    .anyMatch(lit -> lit.source().equals(on)))
        .map(example -> example.of(finding))
        .orElse(finding);
  }

  private Stream<Explored> reaching(Phase phase) {
    return explored.stream().filter(one -> one.phases().containsKey(phase.id()));
  }
}
