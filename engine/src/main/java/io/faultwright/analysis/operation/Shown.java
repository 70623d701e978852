package io.faultwright.analysis.operation;

import io.faultwright.analysis.operation.Explored.Both;
import io.faultwright.analysis.operation.Explored.Pair;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Sequence.InState;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.model.Sequence.Transition;
import io.faultwright.operation.Line;
import io.faultwright.operation.Program;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a course of events can show; each thing once, on the first build that shows it. */
final class Shown {
  private final Map<Object, Finding> findings = new LinkedHashMap<>();

  private Shown() {}

  static List<Finding> findings(List<Explored> explored) {
    Shown shown = new Shown();
    explored.forEach(shown::look);
    return List.copyOf(shown.findings.values());
  }

  private void look(Explored explored) {
    Program program = explored.program();
    explored.undecided().forEach((pair, reach) -> add(program, reach, pair, atOnce(pair)));
    explored.together().forEach((both, reach) -> add(program, reach, both, together(both)));
    explored
        .restless()
        .ifPresent(reach -> add(program, reach, program.sequence(), restless(program)));
    explored
        .phases()
        .forEach(
            (id, reach) -> {
              Phase phase = program.sequence().phase(id);
              if (!phase.last() && isNeverLeft(program, id)) {
                add(program, reach, phase, neverLeft(program, phase));
              }
            });
  }

  private void add(Program program, Reach reach, Object key, Finding finding) {
    if (!findings.containsKey(key)) {
      findings.put(key, finding.shownBy(Told.build(program.build()), Told.course(program, reach)));
    }
  }

  private static Finding atOnce(Pair pair) {
    return Finding.of(
        FindingKind.LINES_AT_ONCE,
        List.of(pair.one().place(), pair.other().place()),
        "two lines can be taken at once: "
            + Told.line(pair.one())
            + ", and "
            + Told.line(pair.other()),
        "say which one goes first with `ahead-of`, or tell them apart by a state");
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
    return Finding.of(
        FindingKind.PHASE_NEVER_LEFT,
        phase.place(),
        "nothing leads on from phase `" + phase.id() + "` of `" + program.sequence().id() + "`",
        "add a line below `next`, or write `last: yes` if it is meant so");
  }

  /** Inputs may come into any state, and time passes: a line waits in vain only for a riddle. */
  static boolean isNeverLeft(Program program, String phase) {
    return Arrays.stream(program.lines(program.phase(phase))).noneMatch(Shown::canHold);
  }

  private static boolean canHold(Line line) {
    Transition source = line.source();
    long inputs = source.states().stream().map(InState::input).distinct().count();
    boolean consistent = inputs == source.states().stream().distinct().count();
    boolean withEvent =
        source
            .event()
            .map(
                event ->
                    source.states().stream()
                        .filter(state -> state.input().equals(event.input()))
                        .allMatch(state -> event.state().filter(state.state()::equals).isPresent()))
            .orElse(true);
    return consistent && withEvent && line.after() != Program.NEVER;
  }
}
