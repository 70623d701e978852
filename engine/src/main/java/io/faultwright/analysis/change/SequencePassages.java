package io.faultwright.analysis.change;

import io.faultwright.change.Edit.Concern;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Input;
import io.faultwright.model.Sequence.Outcome;
import io.faultwright.quantity.Decimals;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The parts of sequences of operation that are the same on all machines: texts, and what only a log
 * and the check ask for. What machines do is compared machine by machine.
 */
final class SequencePassages {
  private final KnowledgeBase kb;
  private final Passages passages;

  SequencePassages(KnowledgeBase kb, Passages passages) {
    this.kb = kb;
    this.passages = passages;
  }

  void write() {
    kb.sequences().values().forEach(this::sequence);
  }

  private void sequence(Sequence one) {
    String states = lines(one.inputs(), SequencePassages::states);
    String told = lines(one.outcomes(), SequencePassages::told);
    passages
        .thing(Concern.WORK, "sequence", one.id(), one.place())
        .rules("step", Decimals.show(one.step()), Decimals.show(one.step()) + " s")
        .rules("inputs", states, states)
        .rules("outcomes", told, told)
        .text("title", one.title())
        .text("about", one.about())
        .text("titles of parts", titles(one))
        .text("because", reasons(one));
  }

  private static <T> String lines(List<T> things, Function<T, String> line) {
    return things.stream().map(line).sorted().collect(Collectors.joining("\n"));
  }

  private static String states(Input input) {
    String ids =
        input.states().stream().map(NamedValue::id).sorted().collect(Collectors.joining(", "));
    return input.id()
        + (input.isPush() ? "" : ": " + ids)
        + input.atStart().map(state -> ", at start " + state).orElse("");
  }

  private static String told(Outcome outcome) {
    return outcome.reading() + ": " + outcome.tells() + outcome.of().map(" "::concat).orElse("");
  }

  private static String titles(Sequence one) {
    return Stream.of(
            one.outputs().stream().map(part -> named("output", part.id(), part.title())),
            one.inputs().stream().map(part -> named("input", part.id(), part.title())),
            one.inputs().stream()
                .flatMap(
                    input ->
                        input.states().stream()
                            .map(state -> named(input.id(), state.id(), state.title()))),
            one.times().stream().map(part -> named("time", part.id(), part.title())),
            one.timers().stream().map(part -> named("timer", part.id(), part.title())),
            one.counters().stream().map(part -> named("counter", part.id(), part.title())),
            one.phases().stream()
                .map(part -> named("phase", part.id(), part.title() + ". " + part.about())),
            one.courses().stream().map(part -> named("course", part.id(), part.title())))
        .flatMap(all -> all)
        .sorted()
        .collect(Collectors.joining("\n"));
  }

  private static String named(String kind, String id, String title) {
    return kind + " " + id + ": " + title;
  }

  private static String reasons(Sequence one) {
    return Stream.concat(
            one.phases().stream()
                .flatMap(
                    phase ->
                        phase.next().stream()
                            .map(line -> phase.id() + " → " + line.go() + ": " + line.because())),
            one.apart().stream()
                .map(apart -> String.join(" + ", apart.outputs()) + ": " + apart.because()))
        .sorted()
        .collect(Collectors.joining("\n"));
  }
}
