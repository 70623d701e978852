package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Condition;
import io.faultwright.model.Reading;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Apart;
import io.faultwright.model.Sequence.Course;
import io.faultwright.model.Sequence.Input;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.model.Sequence.Time;
import io.faultwright.model.Sequence.Timer;
import io.faultwright.model.Sorted;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads the section {@code sequences}. */
final class SequenceResolver {
  private static final List<String> KEYS =
      List.of(
          "title",
          "about",
          "applies",
          "step",
          "outputs",
          "inputs",
          "times",
          "timers",
          "counters",
          "phases",
          "start",
          "never-together",
          "outcomes",
          "courses");
  private static final List<String> APART_KEYS = List.of("outputs", "because");
  private static final Unit SECOND = Units.find("s").orElseThrow();

  private final Context context;
  private final Problems problems;
  private final ConditionResolver facts;
  private final OutcomeResolver outcomes;
  private final SettingRules settings;

  /**
   * @param readings those that could be read, by id
   */
  SequenceResolver(Context context, ConditionResolver facts, SortedMap<String, Reading> readings) {
    this.outcomes = new OutcomeResolver(context, readings);
    this.settings = new SettingRules(context.problems(), readings);
    this.context = context;
    this.problems = context.problems();
    this.facts = facts;
  }

  SortedMap<String, Sequence> resolveAll() {
    SortedMap<String, Sequence> sequences = new TreeMap<>();
    context
        .outline()
        .of(Kind.SEQUENCE)
        .forEach((id, one) -> resolve(one).ifPresent(known -> sequences.put(id, known)));
    return sequences;
  }

  /** The sequence; empty where no phase could be read. */
  private Optional<Sequence> resolve(Definition one) {
    Fields fields = Fields.of(one, KEYS, problems);
    SequenceNames outputs = names(fields, "outputs", "output");
    SequenceNames inputs = names(fields, "inputs", "input");
    SequenceNames times = names(fields, "times", "time");
    SequenceNames timers = names(fields, "timers", "timer");
    SequenceNames counters = names(fields, "counters", "counter");
    SequenceNames phases = names(fields, "phases", "phase");
    timers.apartFrom(times);
    fields.require("phases");
    BigFraction step = fields.scalar("step").flatMap(this::step).orElse(BigFraction.ONE);
    Durations durations = new Durations(context, step);
    SequenceParts parts = new SequenceParts(context, facts, durations);
    List<Input> known = inputs.each(parts::input);
    List<Time> lasting = times.each(parts::time);
    lasting.forEach(settings::check);
    EventWords events = new EventWords(known, inputs, problems);
    List<Timer> running =
        timers.each(timer -> parts.timer(timer, times, phases)).stream()
            .flatMap(Optional::stream)
            .toList();
    PhaseResolver phase =
        new PhaseResolver(
            problems,
            facts,
            durations,
            new PhaseResolver.Vocabulary(
                outputs, times, timers, counters, phases, running, events));
    List<Phase> resolved = phases.each(phase::phase);
    Optional<String> start = fields.requireScalar("start").map(phases::reference);
    CourseResolver course =
        new CourseResolver(context, facts, durations, times, lasting, phases, events);
    List<Course> courses = names(fields, "courses", "course").each(course::course);
    if (resolved.isEmpty() || start.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Sequence(
            one.id(),
            one.place(),
            fields.requireText("title"),
            fields.text("about").orElse(""),
            fields.read("applies", facts::all, Condition.ALWAYS),
            step,
            outputs.each(parts::output),
            known,
            lasting,
            running,
            counters.each(counter -> parts.counter(counter, phases)),
            resolved,
            start.get(),
            fields.list("never-together").stream().map(node -> apart(node, outputs)).toList(),
            outcomes.resolve(fields.map("outcomes"), resolved, phases, counters),
            courses));
  }

  private SequenceNames names(Fields fields, String key, String noun) {
    return new SequenceNames(noun, fields.map(key), problems);
  }

  private Optional<BigFraction> step(Scalar written) {
    Optional<BigFraction> step =
        context.quantities().number(written.place(), written.text(), SECOND, "`step`");
    if (step.isPresent() && step.get().signum() <= 0) {
      problems.add(written.place(), "a step is longer than no time", "write `step: 1 s`");
      return Optional.empty();
    }
    return step;
  }

  private Apart apart(Node node, SequenceNames outputs) {
    boolean plain = node instanceof ListNode;
    List<Scalar> written;
    String because = "";
    if (plain) {
      written = ((ListNode) node).items().stream().flatMap(this::scalar).toList();
    } else {
      Fields fields =
          new Fields(node, "a line of `never-together`", node.place(), APART_KEYS, problems);
      written = fields.scalars("outputs");
      because = fields.text("because").orElse("");
    }
    SortedSet<String> apart = Sorted.set(outputs.references(written));
    if (apart.size() < 2) {
      problems.add(
          node.place(), "`never-together` needs two outputs or more", "write `- [one, other]`");
    }
    return new Apart(node.place(), apart, because);
  }

  private Stream<Scalar> scalar(Node node) {
    if (node instanceof Scalar scalar) {
      return Stream.of(scalar);
    }
    problems.add(node.place(), "expected the id of an output, found " + node.kind(), "");
    return Stream.empty();
  }
}
