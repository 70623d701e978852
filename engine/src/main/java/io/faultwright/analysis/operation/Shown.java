package io.faultwright.analysis.operation;

import io.faultwright.analysis.operation.Explored.Both;
import io.faultwright.analysis.operation.Explored.Pair;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Sequence.InState;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.model.Sequence.Transition;
import io.faultwright.operation.Program;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a course of events can show; each thing once, on the build with the shortest. */
final class Shown {
  private record Example(Program program, Reach reach, Finding finding) {
    boolean isLonger(Example other) {
      return other.reach.isShorterThan(reach);
    }
  }

  private final Map<Object, Example> examples = new LinkedHashMap<>();

  private Shown() {}

  static List<Finding> findings(List<Explored> explored) {
    Shown shown = new Shown();
    explored.forEach(shown::look);
    return shown.examples.values().stream()
        .map(
            one ->
                one.finding.shownBy(
                    Told.build(one.program.build()), Told.course(one.program, one.reach)))
        .toList();
  }

  private void look(Explored explored) {
    Program program = explored.program();
    explored.undecided().forEach((pair, reach) -> add(program, reach, pair, atOnce(pair)));
    explored.counted().forEach((line, reach) -> add(program, reach, line, counted(program, line)));
    explored.together().forEach((both, reach) -> add(program, reach, both, together(both)));
    explored
        .restless()
        .ifPresent(reach -> add(program, reach, program.sequence(), restless(program)));
    explored
        .phases()
        .forEach(
            (id, reach) -> {
              Phase phase = program.sequence().phase(id);
              if (!phase.last() && isNeverLeft(explored, id)) {
                add(program, reach, phase, neverLeft(program, phase));
              }
            });
  }

  private void add(Program program, Reach reach, Object key, Finding finding) {
    examples.merge(
        key,
        new Example(program, reach, finding),
        (old, other) -> old.isLonger(other) ? other : old);
  }

  private static Finding atOnce(Pair pair) {
    boolean circle =
        pair.one().aheadOf().contains(pair.other().go())
            || pair.other().aheadOf().contains(pair.one().go());
    return Finding.of(
        FindingKind.LINES_AT_ONCE,
        List.of(pair.one().place(), pair.other().place()),
        "two lines can be taken at once: "
            + Told.line(pair.one())
            + ", and "
            + Told.line(pair.other()),
        circle
            ? "they go ahead of each other in a circle; take one `ahead-of` away"
            : "say which one goes first with `ahead-of`, or tell them apart by a state");
  }

  private static Finding counted(Program program, Transition line) {
    List<String> counters =
        line.count().stream()
            .map(program.sequence()::counter)
            .flatMap(
                counter ->
                    counter.go().map(go -> "`" + counter.id() + "` leads to `" + go + "`").stream())
            .toList();
    return Finding.of(
        FindingKind.LINES_AT_ONCE,
        line.place(),
        "two counters come to their limits at once with the line "
            + Told.line(line)
            + ": "
            + String.join(", and ", counters),
        "let them lead to one phase, or count them in different lines");
  }

  private static Finding together(Both both) {
    String because = both.apart().because();
    return Finding.of(
        FindingKind.ENERGISED_TOGETHER,
        both.apart().place(),
        "`"
            + both.one()
            + "` and `"
            + both.other()
            + "` are on together in phase `"
            + both.phase()
            + "`"
            + (because.isEmpty() ? "" : ": " + because.replaceAll("\\.$", "")),
        "switch one of them off in this phase, or for a part of it with `from` and `until`");
  }

  private static Finding restless(Program program) {
    return Finding.of(
        FindingKind.SEQUENCE_NEVER_RESTS,
        program.sequence().place(),
        "in `" + program.sequence().id() + "` phase follows phase within one step, without end",
        "let one of these lines wait for an event or a time");
  }

  private static Finding neverLeft(Program program, Phase phase) {
    boolean nothing = program.lines(program.phase(phase.id())).length == 0;
    boolean back = !nothing && phase.next().stream().allMatch(line -> line.go().equals(phase.id()));
    return Finding.of(
        FindingKind.PHASE_NEVER_LEFT,
        phase.place(),
        (back ? "nothing but itself follows" : "nothing leads on from")
            + " phase `"
            + phase.id()
            + "` of `"
            + program.sequence().id()
            + "`",
        "add a line below `next`, or write `last: yes` if it is meant so");
  }

  /** Whether nothing leads to another phase; where not all was looked at, as it is written. */
  static boolean isNeverLeft(Explored explored, String phase) {
    Program program = explored.program();
    return explored.isWhole()
        ? !explored.left().contains(phase)
        : Arrays.stream(program.lines(program.phase(phase)))
            .noneMatch(line -> canHold(line.source()) && line.after() != Program.NEVER);
  }

  /** Whether the states of a line can hold together, and with its event. */
  static boolean canHold(Transition line) {
    long inputs = line.states().stream().map(InState::input).distinct().count();
    boolean consistent = inputs == line.states().stream().distinct().count();
    return consistent
        && line.event()
            .map(
                event ->
                    line.states().stream()
                        .filter(state -> state.input().equals(event.input()))
                        .allMatch(state -> event.state().filter(state.state()::equals).isPresent()))
            .orElse(true);
  }
}
