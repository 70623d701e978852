package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Condition;
import io.faultwright.model.Sequence.After;
import io.faultwright.model.Sequence.Energised;
import io.faultwright.model.Sequence.Event;
import io.faultwright.model.Sequence.InState;
import io.faultwright.model.Sequence.Lasting;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.model.Sequence.Timer;
import io.faultwright.model.Sequence.Transition;
import io.faultwright.model.Sorted;
import io.faultwright.quantity.Exact;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads the phases of a sequence of operation. */
final class PhaseResolver {
  private static final List<String> KEYS =
      List.of("title", "about", "display", "stop", "last", "on", "next");
  private static final List<String> NEXT_KEYS =
      List.of("when", "after", "applies", "go", "count", "reset", "ahead-of", "because");
  private static final List<String> ON_KEYS = List.of("output", "from", "until", "applies");
  private static final Pattern WINDOW =
      Pattern.compile("(\\S+)(?:\\s+from\\s+(.+?))?(?:\\s+until\\s+(.+))?");

  /**
   * What the phases may name.
   *
   * @param known timers that could be read
   */
  record Vocabulary(
      SequenceNames outputs,
      SequenceNames times,
      SequenceNames timers,
      SequenceNames counters,
      SequenceNames phases,
      List<Timer> known,
      EventWords events) {}

  private final Problems problems;
  private final ConditionResolver facts;
  private final Durations durations;
  private final Vocabulary words;

  PhaseResolver(Problems problems, ConditionResolver facts, Durations durations, Vocabulary words) {
    this.problems = problems;
    this.facts = facts;
    this.durations = durations;
    this.words = words;
  }

  Phase phase(Definition one) {
    Fields fields = Fields.of(one, KEYS, problems);
    List<Transition> next =
        fields.list("next").stream().flatMap(node -> next(one, node).stream()).toList();
    boolean last = flag(fields, "last");
    if (last && next.stream().anyMatch(line -> !line.go().equals(one.id()))) {
      problems.add(
          fields.place("last"),
          one.what() + " is the last and has `next` as well",
          "keep one of the two");
    }
    return new Phase(
        one.id(),
        one.place(),
        fields.text("title").orElse(Words.title(one.id())),
        fields.text("about").orElse(""),
        fields.text("display"),
        flag(fields, "stop"),
        last,
        fields.list("on").stream().flatMap(node -> on(node).stream()).toList(),
        next);
  }

  private boolean flag(Fields fields, String key) {
    Optional<Scalar> written = fields.scalar(key);
    written
        .filter(word -> !List.of("yes", "no").contains(word.text().strip()))
        .ifPresent(
            word ->
                problems.add(
                    word.place(),
                    "`" + key + "` takes `yes` or `no`, found " + Words.quoted(word.text()),
                    "write `" + key + ": yes`, or remove it"));
    return written.filter(word -> word.text().strip().equals("yes")).isPresent();
  }

  private Optional<Energised> on(Node node) {
    return energised(node).filter(this::isOnForAWhile);
  }

  /** Both ends may be written as such; what a name stands for is a matter of the equipment. */
  private boolean isOnForAWhile(Energised one) {
    Optional<BigFraction> from = one.from().flatMap(Lasting::seconds);
    Optional<BigFraction> until = one.until().flatMap(Lasting::seconds);
    if (from.isEmpty() || until.isEmpty() || Exact.compare(from.get(), until.get()) < 0) {
      return true;
    }
    problems.add(
        one.place(),
        Words.quoted(one.output()) + " is to go off before it is on",
        "write an `until` that is later than `from`; both count from the beginning of the phase");
    return false;
  }

  private Optional<Energised> energised(Node node) {
    if (node instanceof Scalar written) {
      return window(written);
    }
    Fields fields = new Fields(node, "an output", node.place(), ON_KEYS, problems);
    return fields
        .requireScalar("output")
        .map(
            written ->
                new Energised(
                    words.outputs().reference(written),
                    node.place(),
                    fields.scalar("from").flatMap(this::lasting),
                    fields.scalar("until").flatMap(this::lasting),
                    fields.read("applies", facts::all, Condition.ALWAYS)));
  }

  private Optional<Lasting> lasting(Scalar written) {
    return durations.lasting(written, words.times());
  }

  private Optional<Energised> window(Scalar written) {
    Matcher parts = WINDOW.matcher(written.text().strip());
    if (!parts.matches()) {
      problems.add(
          written.place(),
          "expected an output such as `pump until 40 s`, found " + Words.quoted(written.text()),
          "write the output, and `from` or `until` with a time behind it");
      return Optional.empty();
    }
    return Optional.of(
        new Energised(
            words.outputs().reference(written, parts.group(1)),
            written.place(),
            part(written, parts.group(2)),
            part(written, parts.group(3)),
            Condition.ALWAYS));
  }

  private Optional<Lasting> part(Scalar written, String text) {
    return Optional.ofNullable(text)
        .flatMap(one -> durations.lasting(written, one.strip(), words.times()));
  }

  private Optional<Transition> next(Definition phase, Node node) {
    Fields fields = new Fields(node, "a line of `next`", node.place(), NEXT_KEYS, problems);
    List<Event> events = new ArrayList<>();
    List<InState> states = new ArrayList<>();
    int before = problems.count();
    List<Scalar> conditions = fields.oneOrMore("when");
    conditions.forEach(written -> when(written, events, states));
    boolean none = conditions.isEmpty() && problems.count() == before;
    boolean misspelt = fields.mentions("when") && !fields.has("when");
    if (fields.readable() && none && !misspelt && !fields.mentions("after")) {
      problems.add(
          node.place(),
          "a line of `next` says neither `when` nor `after`",
          "write what leads on, as in `when: door-switch opens` or `after: 6 min`");
    }
    Optional<After> after = fields.scalar("after").flatMap(written -> after(phase, written));
    return fields
        .requireScalar("go")
        .map(words.phases()::reference)
        .map(
            go ->
                new Transition(
                    node.place(),
                    events.stream().findFirst(),
                    states,
                    after,
                    fields.read("applies", facts::all, Condition.ALWAYS),
                    go,
                    Sorted.set(words.counters().references(fields.oneOrMore("count"))),
                    Sorted.set(words.counters().references(fields.oneOrMore("reset"))),
                    Sorted.set(words.phases().references(fields.oneOrMore("ahead-of"))),
                    fields.text("because").orElse("")));
  }

  private void when(Scalar written, List<Event> events, List<InState> states) {
    if (EventWords.isState(written.text())) {
      words.events().state(written).ifPresent(states::add);
    } else if (events.isEmpty()) {
      words.events().event(written).ifPresent(events::add);
    } else {
      problems.add(
          written.place(),
          "`when` has two events, and no two come at the same moment",
          "write one event; write the other as a state, as in `door-switch is open`");
    }
  }

  private Optional<After> after(Definition phase, Scalar written) {
    String text = written.text().strip();
    if (!Durations.isWritten(text) && words.timers().known(text)) {
      words.known().stream()
          .filter(timer -> timer.id().equals(text) && !timer.during().contains(phase.id()))
          .forEach(
              timer ->
                  problems.add(
                      written.place(),
                      "the timer " + Words.quoted(text) + " does not run in " + phase.what(),
                      "add the phase to its `during`"));
      return Optional.of(new After(Optional.empty(), Optional.of(text)));
    }
    return lasting(written).map(time -> new After(Optional.of(time), Optional.empty()));
  }
}
