package io.faultwright.analysis.operation;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.model.Sequence.Transition;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Finds phases that are never reached, and lines and times that never come, on any build. */
final class NeverReached {
  private final Sequence sequence;
  private final List<Explored> explored;
  private final Set<String> phases = new HashSet<>();
  private final Set<Transition> taken = new HashSet<>();
  private final Set<Transition> undecided = new HashSet<>();

  private NeverReached(Sequence sequence, List<Explored> explored) {
    this.sequence = sequence;
    this.explored = explored;
    for (Explored one : explored) {
      phases.addAll(one.phases().keySet());
      taken.addAll(one.taken().keySet());
      undecided.addAll(one.counted().keySet());
      one.undecided().keySet().forEach(pair -> undecided.addAll(List.of(pair.one(), pair.other())));
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
    Set<String> open = open();
    Examples examples = new Examples(sequence, explored);
    NeverComes never = new NeverComes(explored, examples);
    for (Phase phase : sequence.phases()) {
      if (phases.contains(phase.id())) {
        findings.addAll(never.outputs(phase));
        phase.next().stream()
            .filter(line -> !taken.contains(line) && !undecided.contains(line))
            .flatMap(line -> never.line(phase, line).stream())
            .forEach(findings::add);
      } else if (!open.contains(phase.id())) {
        findings.add(unreached(phase, examples));
      }
    }
    return findings;
  }

  /** Phases that may be reached once it is said which of two lines goes first. */
  private Set<String> open() {
    Set<String> open = new HashSet<>();
    Deque<Transition> lines = new ArrayDeque<>(undecided);
    while (!lines.isEmpty()) {
      Transition line = lines.poll();
      for (Phase phase : sequence.phases()) {
        if (leadsTo(line, phase.id()) && !phases.contains(phase.id()) && open.add(phase.id())) {
          lines.addAll(phase.next());
        }
      }
    }
    return open;
  }

  private Finding unreached(Phase phase, Examples examples) {
    List<Phase> before =
        sequence.phases().stream()
            .filter(one -> one.next().stream().anyMatch(line -> leadsTo(line, phase.id())))
            .toList();
    Finding finding =
        Finding.of(
            FindingKind.PHASE_NEVER_REACHED,
            phase.place(),
            "phase `"
                + phase.id()
                + "` of `"
                + sequence.id()
                + "` is never reached: "
                + why(phase.id(), before),
            "mend a line that leads there, or remove the phase");
    return before.stream()
        .flatMap(one -> examples.reach(one.id()).stream())
        .findFirst()
        .map(shown -> shown.of(finding))
        .orElse(finding);
  }

  private String why(String phase, List<Phase> before) {
    if (before.isEmpty()) {
      return "no line leads there";
    }
    if (before.stream().noneMatch(one -> phases.contains(one.id()))) {
      return "the phases before it are never reached either";
    }
    List<Transition> there = taken.stream().filter(line -> leadsTo(line, phase)).toList();
    if (there.isEmpty()) {
      return "no line that leads there is ever taken";
    }
    return there.stream().anyMatch(line -> line.go().equals(phase))
        ? "whenever a line that leads there is taken, a counter is at its limit and leads elsewhere"
        : "the counter that leads there is never at its limit";
  }

  /** Whether a line goes there, or counts what leads there at its limit. */
  private boolean leadsTo(Transition line, String phase) {
    return line.go().equals(phase)
        || sequence.counters().stream()
            .filter(counter -> line.count().contains(counter.id()))
            .anyMatch(counter -> counter.go().filter(phase::equals).isPresent());
  }
}
