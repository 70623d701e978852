package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Condition;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Sequence.Counter;
import io.faultwright.model.Sequence.Input;
import io.faultwright.model.Sequence.Lasting;
import io.faultwright.model.Sequence.Output;
import io.faultwright.model.Sequence.Row;
import io.faultwright.model.Sequence.Time;
import io.faultwright.model.Sequence.Timer;
import io.faultwright.model.Sorted;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Exact;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads what a sequence of operation has besides its phases. */
final class SequenceParts {
  private static final List<String> INPUT_KEYS = List.of("title", "states", "at-start");
  private static final List<String> TIME_KEYS = List.of("title", "lasts", "set", "reading");
  private static final List<String> TIMER_KEYS = List.of("title", "lasts", "during");
  private static final List<String> COUNTER_KEYS = List.of("title", "limit", "go");
  private static final Unit TIMES = Units.find("times").orElseThrow();

  /** Every count up to the limit is a state of its own to the proofs. */
  private static final BigFraction MOST_COUNTED = BigFraction.of(1_000);

  private final Context context;
  private final Problems problems;
  private final ConditionResolver facts;
  private final Durations durations;

  SequenceParts(Context context, ConditionResolver facts, Durations durations) {
    this.context = context;
    this.problems = context.problems();
    this.facts = facts;
    this.durations = durations;
  }

  Output output(Definition one) {
    return new Output(one.id(), one.place(), title(one));
  }

  /** The title alone; nothing written stands for the id in words. */
  private String title(Definition one) {
    if (one.body() instanceof Scalar text) {
      return text.text().isBlank() ? Words.title(one.id()) : text.text().strip();
    }
    return Fields.of(one, List.of("title"), problems).text("title").orElse(Words.title(one.id()));
  }

  Input input(Definition one) {
    if (one.body() instanceof Scalar) {
      return new Input(one.id(), one.place(), title(one), List.of(), Optional.empty());
    }
    if (one.body() instanceof ListNode) {
      return listed(one);
    }
    Fields fields = Fields.of(one, INPUT_KEYS, problems);
    List<NamedValue> states = fields.read("states", node -> states(one, node), List.of());
    return new Input(
        one.id(),
        one.place(),
        fields.text("title").orElse(Words.title(one.id())),
        states,
        atStart(fields, states));
  }

  /** Its states were meant. */
  private Input listed(Definition one) {
    String help = "write `" + one.id() + ": { states: […] }`, with the list behind `states:`";
    problems.add(one.body().place(), one.what() + " must be a map, found a list", help);
    List<NamedValue> states = new ArrayList<>();
    ((ListNode) one.body()).items().forEach(item -> state(item, states));
    return new Input(one.id(), one.place(), Words.title(one.id()), states, Optional.empty());
  }

  private List<NamedValue> states(Definition one, Node node) {
    List<NamedValue> states = new ArrayList<>();
    if (node instanceof MapNode map) {
      map.entries().forEach(entry -> state(entry.key(), title(entry), states));
    } else if (node instanceof ListNode list) {
      list.items().forEach(item -> state(item, states));
    }
    if (states.size() < 2) {
      problems.add(
          node.place(),
          one.what() + " needs at least two states",
          "write `states: [closed, open]`; leave `states` out for a push that is over at once");
    }
    return states;
  }

  private void state(Node item, List<NamedValue> states) {
    if (item instanceof Scalar id) {
      state(id, Words.title(id.text()), states);
    }
  }

  private void state(Scalar id, String title, List<NamedValue> states) {
    Ids.checkValue(id, problems);
    if (states.stream().anyMatch(known -> known.id().equals(id.text()))) {
      problems.add(id.place(), "the state " + Words.quoted(id.text()) + " is listed twice", "");
      return;
    }
    states.add(new NamedValue(id.text(), title));
  }

  private static String title(Entry entry) {
    return entry.value() instanceof Scalar title && !title.text().isBlank()
        ? title.text().strip()
        : Words.title(entry.name());
  }

  /** A list begins with the state at the start; a map has no order and has to say it. */
  private Optional<String> atStart(Fields fields, List<NamedValue> states) {
    Optional<Scalar> written = fields.scalar("at-start");
    List<String> ids = states.stream().map(NamedValue::id).toList();
    written
        .filter(word -> !ids.contains(word.text().strip()))
        .ifPresent(
            word ->
                problems.add(
                    word.place(),
                    "no such state " + Words.quoted(word.text()),
                    NearMatch.help(word.text().strip(), ids)));
    boolean ordered = fields.read("states", node -> node instanceof ListNode, true);
    if (!ordered && !fields.has("at-start")) {
      problems.add(
          fields.place("states"),
          "it is not said in which state the input is at the start",
          "add `at-start:` with one of " + Words.quoted(ids));
    }
    return written
        .map(word -> word.text().strip())
        .filter(ids::contains)
        .or(() -> ids.stream().findFirst());
  }

  Time time(Definition one) {
    if (one.body() instanceof Scalar) {
      return new Time(
          one.id(),
          one.place(),
          Words.title(one.id()),
          rows(one, one.body(), "lasts", this::seconds),
          Optional.empty(),
          Optional.empty());
    }
    Fields fields = Fields.of(one, TIME_KEYS, problems);
    return new Time(
        one.id(),
        one.place(),
        fields.text("title").orElse(Words.title(one.id())),
        fields
            .require("lasts")
            .map(node -> rows(one, node, "lasts", this::seconds))
            .orElse(List.of()),
        fields.scalar("set").flatMap(durations::stretch),
        fields.scalar("reading").map(id -> context.names().reference(Kind.READING, id)));
  }

  private Optional<BigFraction> seconds(Scalar written) {
    return durations.read(written);
  }

  private Optional<BigFraction> howOften(Scalar written) {
    Optional<BigFraction> number =
        context.quantities().number(written.place(), written.text(), TIMES, "`limit`");
    if (number.isPresent() && (number.get().signum() <= 0 || !Exact.isWhole(number.get()))) {
      problems.add(
          written.place(),
          "a limit is a whole number greater than zero, found " + Words.quoted(written.text()),
          "write `limit: 3`");
      return Optional.empty();
    }
    if (number.filter(one -> Exact.compare(one, MOST_COUNTED) > 0).isPresent()) {
      problems.add(
          written.place(),
          "a limit is at most "
              + Decimals.show(MOST_COUNTED)
              + ", found "
              + Words.quoted(written.text()),
          "write `limit: 3`; a counter that only counts needs no `limit`");
      return Optional.empty();
    }
    return number;
  }

  /** One value for all equipment, or a list of values with the equipment they are for. */
  private List<Row> rows(
      Definition one, Node node, String key, Function<Scalar, Optional<BigFraction>> value) {
    if (node instanceof Scalar scalar) {
      return value.apply(scalar).stream()
          .map(known -> new Row(scalar.place(), Condition.ALWAYS, known))
          .toList();
    }
    if (node instanceof ListNode list) {
      return list.items().stream().flatMap(item -> row(one, item, key, value).stream()).toList();
    }
    problems.add(
        node.place(),
        "`" + key + "` takes one value or a list of values, found " + node.kind(),
        "write a line `- { applies: { … }, " + key + ": … }` for each value");
    return List.of();
  }

  private Optional<Row> row(
      Definition one, Node node, String key, Function<Scalar, Optional<BigFraction>> value) {
    Fields fields =
        new Fields(
            node, "a value of " + one.what(), node.place(), List.of(key, "applies"), problems);
    Condition applies = fields.read("applies", facts::all, Condition.ALWAYS);
    return fields
        .requireScalar(key)
        .flatMap(value)
        .map(known -> new Row(node.place(), applies, known));
  }

  /** A timer; empty where it is not said how long it runs. */
  Optional<Timer> timer(Definition one, SequenceNames times, SequenceNames phases) {
    Fields fields = Fields.of(one, TIMER_KEYS, problems);
    Optional<Lasting> lasting =
        fields.requireScalar("lasts").flatMap(written -> durations.lasting(written, times));
    fields.require("during");
    List<String> during = phases.references(fields.oneOrMore("during"));
    return lasting.map(
        known ->
            new Timer(
                one.id(),
                one.place(),
                fields.text("title").orElse(Words.title(one.id())),
                known,
                Sorted.set(during)));
  }

  Counter counter(Definition one, SequenceNames phases) {
    if (one.body() instanceof Scalar) {
      return new Counter(one.id(), one.place(), title(one), List.of(), Optional.empty());
    }
    Fields fields = Fields.of(one, COUNTER_KEYS, problems);
    List<Row> limit =
        fields.read("limit", node -> rows(one, node, "limit", this::howOften), List.of());
    Optional<Scalar> go = fields.has("limit") ? fields.requireScalar("go") : fields.scalar("go");
    if (fields.has("go") && !fields.has("limit")) {
      problems.add(fields.place("go"), one.what() + " has `go` and no `limit`", "add `limit: 3`");
    }
    return new Counter(
        one.id(),
        one.place(),
        fields.text("title").orElse(Words.title(one.id())),
        limit,
        go.map(phases::reference));
  }
}
