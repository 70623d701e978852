package io.faultwright.analysis.operation;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.model.Sequence.Transition;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds phases that are never reached, and lines that are never taken, on any build. */
final class NeverReached {
  private final Sequence sequence;
  private final List<Explored> explored;
  private final Set<String> phases = new HashSet<>();
  private final Set<Transition> taken = new HashSet<>();

  private NeverReached(Sequence sequence, List<Explored> explored) {
    this.sequence = sequence;
    this.explored = explored;
    for (Explored one : explored) {
      phases.addAll(one.phases().keySet());
      taken.addAll(one.taken().keySet());
    }
  }

  static List<Finding> findings(Sequence sequence, List<Explored> explored) {
    if (explored.stream().anyMatch(one -> !one.isWhole())) {
      return List.of(tooLarge(sequence));
    }
    return new NeverReached(sequence, explored).all();
  }

  private static Finding tooLarge(Sequence sequence) {
    return Finding.of(
        FindingKind.SEQUENCE_TOO_LARGE,
        sequence.place(),
        "`" + sequence.id() + "` has too many states to look at all of them",
        "not computed: whether every phase is reached and every line taken; split the sequence, or"
            + " leave out inputs that it does not need");
  }

  private List<Finding> all() {
    List<Finding> findings = new ArrayList<>();
    for (Phase phase : sequence.phases()) {
      if (!phases.contains(phase.id())) {
        findings.add(unreached(phase));
      } else {
        phase.next().stream()
            .filter(line -> !taken.contains(line))
            .forEach(line -> findings.add(idle(phase, line)));
      }
    }
    return findings;
  }

  private Finding unreached(Phase phase) {
    List<Phase> before =
        sequence.phases().stream()
            .filter(one -> one.next().stream().anyMatch(line -> leadsTo(line, phase.id())))
            .toList();
    String why =
        before.isEmpty()
            ? ": no line leads there"
            : before.stream().noneMatch(one -> phases.contains(one.id()))
                ? ": the phases before it are never reached either"
                : ": no line that leads there is ever taken";
    Finding finding =
        Finding.of(
            FindingKind.PHASE_NEVER_REACHED,
            phase.place(),
            "phase `" + phase.id() + "` of `" + sequence.id() + "` is never reached" + why,
            "mend a line that leads there, or remove the phase");
    return before.stream()
        .flatMap(one -> reach(one.id()).stream())
        .findFirst()
        .map(shown -> shown.of(finding))
        .orElse(finding);
  }

  /** Whether a line goes there, or counts what leads there at its limit. */
  private boolean leadsTo(Transition line, String phase) {
    return line.go().equals(phase)
        || sequence.counters().stream()
            .filter(counter -> line.count().contains(counter.id()))
            .anyMatch(counter -> counter.go().filter(phase::equals).isPresent());
  }

  private Finding idle(Phase phase, Transition line) {
    boolean timed = line.event().isEmpty() && line.after().isPresent();
    Finding finding =
        timed
            ? Finding.of(
                FindingKind.TIMER_NEVER_EXPIRES,
                line.place(),
                Told.line(line) + " in phase `" + phase.id() + "` never comes",
                "another line always leads on before; mend the times, or remove this line")
            : Finding.of(
                FindingKind.LINE_NEVER_TAKEN,
                line.place(),
                "the line " + Told.line(line) + " in phase `" + phase.id() + "` is never taken",
                "mend what it waits for, or remove it");
    return longest(phase.id(), line)
        .or(() -> reach(phase.id()))
        .map(shown -> shown.of(finding))
        .orElse(finding);
  }

  /** A way on one program. */
  private record Example(Explored on, Reach reach) {
    Finding of(Finding finding) {
      return finding.shownBy(Told.build(on.program().build()), Told.course(on.program(), reach));
    }
  }

  private Optional<Example> reach(String phase) {
    return explored.stream()
        .filter(one -> one.phases().containsKey(phase))
        .findFirst()
        .map(one -> new Example(one, one.phases().get(phase)));
  }

  /** The way on which another line without an event ends the phase instead. */
  private Optional<Example> longest(String phase, Transition idle) {
    for (Explored one : explored) {
      for (Transition line : sequence.phase(phase).next()) {
        boolean instead = line != idle && line.event().isEmpty() && line.after().isPresent();
        if (instead && one.taken().containsKey(line)) {
          return Optional.of(new Example(one, one.taken().get(line)));
        }
      }
    }
    return Optional.empty();
  }
}
