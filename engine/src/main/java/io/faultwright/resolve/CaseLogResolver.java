package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Build;
import io.faultwright.model.Equipment;
import io.faultwright.model.Reading;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Event;
import io.faultwright.model.Sequence.Time;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.operation.OutcomeReadings;
import io.faultwright.operation.Outcomes;
import io.faultwright.operation.Program;
import io.faultwright.operation.Recorder;
import io.faultwright.operation.Restless;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Exact;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads the log of a case: what happened on the machine tells what the readings would have. */
final class CaseLogResolver {
  static final String LOG = "log";

  /** A time, which may be a number with its unit, and what happened. */
  private static final Pattern ENTRY =
      Pattern.compile("(\\d+(?:\\.\\d+)?\\s+(?:ms|s|min|h)|\\S+)\\s+(.+)");

  private static final List<String> KEYS = List.of("sequence", "entries", "until");

  /** What happened, and when. */
  private record Happened(BigFraction at, Event event) {}

  private final Context context;
  private final Problems problems;
  private final SortedMap<String, Sequence> sequences;
  private final SortedMap<String, Reading> readings;
  private final List<Build> builds;

  CaseLogResolver(
      Context context,
      SortedMap<String, Sequence> sequences,
      SortedMap<String, Reading> readings,
      Optional<Equipment> equipment) {
    this.context = context;
    this.problems = context.problems();
    this.sequences = sequences;
    this.readings = readings;
    this.builds = equipment.map(Equipment::builds).orElse(List.of());
  }

  /** The situation with what the log tells; as it is without a log. */
  Situation with(Definition definition, Fields fields, Situation given) {
    return fields.find(LOG).map(node -> with(definition, node, given)).orElse(given);
  }

  private Situation with(Definition definition, Node node, Situation given) {
    String what = "the log of " + definition.what();
    Fields fields = new Fields(node, what, node.place(), KEYS, problems);
    Optional<Sequence> sequence =
        fields
            .requireScalar("sequence")
            .map(id -> context.names().reference(Kind.SEQUENCE, id))
            .flatMap(id -> Optional.ofNullable(sequences.get(id)));
    fields.require("entries");
    Optional<Scalar> until = fields.requireScalar("until");
    if (sequence.isEmpty() || until.isEmpty() || builds.isEmpty()) {
      return given;
    }
    return build(node, sequence.get(), given)
        .map(build -> run(fields, until.get(), sequence.get(), build, given))
        .orElse(given);
  }

  /** The one build that is meant. */
  private Optional<Build> build(Node node, Sequence sequence, Situation given) {
    List<Build> meant =
        builds.stream()
            .filter(build -> build.satisfies(sequence.applies()))
            .filter(
                build ->
                    given.equipment().entrySet().stream()
                        .allMatch(
                            fact ->
                                build
                                    .attribute(fact.getKey())
                                    .filter(fact.getValue()::equals)
                                    .isPresent()))
            .toList();
    if (meant.size() == 1) {
      return Optional.of(meant.get(0));
    }
    problems.add(
        node.place(),
        meant.isEmpty()
            ? "the sequence " + Words.quoted(sequence.id()) + " does not run on this equipment"
            : "a log is of one machine, and " + meant.size() + " builds fit what is given",
        "give the `model` and the `software` of a machine with this sequence");
    return Optional.empty();
  }

  private Situation run(
      Fields fields, Scalar until, Sequence sequence, Build build, Situation given) {
    Durations durations = new Durations(context, sequence.step());
    List<Happened> happened = happened(fields, sequence, durations);
    Optional<BigFraction> end = end(until, durations, happened);
    if (!problems.isEmpty() || end.isEmpty()) {
      return given; // a sequence that could not be read as a whole does not run
    }
    OutcomeReadings tells = new OutcomeReadings(sequence, readings);
    SortedMap<String, BigFraction> set = tells.set(given.readings());
    Program delivered = Program.of(sequence, build);
    if (!set.entrySet().stream()
        .allMatch(one -> canBe(delivered, one.getKey(), one.getValue(), until.place()))) {
      return given;
    }
    Recorder recorder = new Recorder(delivered.with(set));
    try {
      happened.forEach(one -> recorder.happen(step(recorder, one.at()), one.event()));
      return told(until, tells.of(Outcomes.of(recorder.upTo(step(recorder, end.get())))), given);
    } catch (Restless restless) {
      // the check finds it; until it is mended, the log tells nothing
      return given;
    }
  }

  /** Whether a time can be as it is given; reports it where it cannot. */
  private boolean canBe(Program delivered, String id, BigFraction seconds, Place place) {
    Sequence sequence = delivered.sequence();
    Time time = sequence.time(id);
    if (delivered.seconds(time).filter(seconds::equals).isPresent()) {
      return true;
    }
    if (!Exact.isWhole(seconds.divide(sequence.step()))) {
      problems.add(
          place,
          "the log runs with "
              + Words.quoted(id)
              + " at "
              + Decimals.show(seconds)
              + " s, as "
              + Words.quoted(time.reading().orElseThrow())
              + " is given, no multiple of the step of "
              + Decimals.show(sequence.step())
              + " s",
          "give a time that can be set");
      return false;
    }
    return SetTimes.fits(time, seconds, place, problems);
  }

  private List<Happened> happened(Fields fields, Sequence sequence, Durations durations) {
    List<Happened> happened = new ArrayList<>();
    BigFraction last = BigFraction.ZERO;
    for (Node entry : fields.list("entries")) {
      last = read(entry, durations, sequence, happened, last);
    }
    return happened;
  }

  /** The time at which the log ends. */
  private Optional<BigFraction> end(Scalar until, Durations durations, List<Happened> happened) {
    Optional<BigFraction> end = durations.told(until);
    if (end.filter(one -> happened.stream().anyMatch(at -> at.at().compareTo(one) > 0))
        .isPresent()) {
      problems.add(until.place(), "the log ends before its last entry", "write a later time");
    }
    return end;
  }

  /** What the log tells, and what is given beside it. */
  private Situation told(Scalar until, SortedMap<String, Value> log, Situation given) {
    SortedMap<String, Value> values = new TreeMap<>(log);
    for (Map.Entry<String, Value> one : given.readings().entrySet()) {
      Value other = values.put(one.getKey(), one.getValue());
      if (other != null && !other.equals(one.getValue())) {
        problems.add(
            until.place(),
            "the log tells another value of " + Words.quoted(one.getKey()) + " than `given`",
            "leave it out of `given`, or correct the log");
      }
    }
    return new Situation(given.equipment(), values);
  }

  private static long step(Recorder recorder, BigFraction seconds) {
    return seconds.divide(recorder.machine().program().sequence().step()).longValue();
  }

  private BigFraction read(
      Node node, Durations durations, Sequence sequence, List<Happened> into, BigFraction last) {
    Matcher parts = ENTRY.matcher(node instanceof Scalar text ? text.text().strip() : "");
    if (!(node instanceof Scalar written) || !parts.matches()) {
      problems.add(
          node.place(), "expected a time and what happened", "write `1:28 door-switch opens`");
      return last;
    }
    Optional<BigFraction> time = durations.moment(written.place(), parts.group(1));
    Optional<Event> event = event(written, parts.group(2), sequence);
    if (time.isPresent() && time.get().compareTo(last) < 0) {
      problems.add(
          written.place(), "the time goes back", "put the entries in the order of their times");
    } else if (time.isPresent() && event.isPresent()) {
      into.add(new Happened(time.get(), event.get()));
    }
    return time.filter(one -> one.compareTo(last) > 0).orElse(last);
  }

  private Optional<Event> event(Scalar written, String text, Sequence sequence) {
    Scalar alone = new Scalar(text, false, written.place());
    Optional<Told> seen =
        new LogWords(sequence, new Problems())
            .entry(alone)
            .filter(told -> !(told instanceof Told.Happened));
    if (seen.isPresent()) {
      problems.add(
          written.place(),
          "a case is told what happens at inputs, and " + Words.quoted(text) + " is what was seen",
          "leave it out; `faultwright follow` compares what was seen");
      return Optional.empty();
    }
    return EventWords.of(sequence, problems).event(written, text);
  }
}
