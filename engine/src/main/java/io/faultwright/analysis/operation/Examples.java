package io.faultwright.analysis.operation;

import io.faultwright.finding.Finding;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Transition;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The shortest ways that show why something never comes. */
final class Examples {
  private final Sequence sequence;
  private final List<Explored> explored;

  Examples(Sequence sequence, List<Explored> explored) {
    this.sequence = sequence;
    this.explored = explored;
  }

  /** A way on one program. */
  record Example(Explored on, Reach reach) {
    Finding of(Finding finding) {
      return finding.shownBy(Told.build(on.program().build()), Told.course(on.program(), reach));
    }
  }

  /** The way into a phase. */
  Optional<Example> reach(String phase) {
    return reach(phase, program -> true);
  }

  private Optional<Example> reach(String phase, Predicate<Explored> wanted) {
    return shortest(
        explored.stream()
            .filter(wanted)
            .filter(one -> one.phases().containsKey(phase))
            .map(one -> new Example(one, one.phases().get(phase)))
            .toList());
  }

  /** The way on which a time ends the phase, where there is one; else the way into the phase. */
  Optional<Example> end(String phase, Predicate<Explored> wanted) {
    List<Example> ends = new ArrayList<>();
    for (Explored one : explored) {
      for (Transition line : sequence.phase(phase).next()) {
        boolean timed = line.event().isEmpty() && line.after().isPresent();
        if (wanted.test(one) && timed && one.taken().containsKey(line)) {
          ends.add(new Example(one, one.taken().get(line)));
        }
      }
    }
    return shortest(ends).or(() -> reach(phase, wanted));
  }

  /** Whether a program has a line. */
  static boolean has(Explored one, String phase, Transition line) {
    return Arrays.stream(one.program().lines(one.program().phase(phase)))
        .anyMatch(known -> known.source().equals(line));
  }

  private static Optional<Example> shortest(List<Example> examples) {
    return examples.stream()
        .reduce((one, other) -> other.reach().isShorterThan(one.reach()) ? other : one);
  }
}
