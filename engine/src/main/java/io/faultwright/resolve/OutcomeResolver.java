package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Domain;
import io.faultwright.model.Reading;
import io.faultwright.model.Sequence.Outcome;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.model.Sequence.Tells;
import io.faultwright.quantity.Dimension;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/** Reads which readings tell what came of a sequence of operation. */
final class OutcomeResolver {
  /** The value of a reading that tells of a stop, where there was none. */
  static final String NO_STOP = "none";

  private static final String STOP = "stop";
  private static final String TIME_IN = "time in ";
  private static final String COUNT_OF = "count of ";

  private final Context context;
  private final Problems problems;
  private final SortedMap<String, Reading> readings;

  OutcomeResolver(Context context, SortedMap<String, Reading> readings) {
    this.context = context;
    this.problems = context.problems();
    this.readings = readings;
  }

  List<Outcome> resolve(
      List<Entry> written, List<Phase> phases, SequenceNames phaseNames, SequenceNames counters) {
    List<Outcome> outcomes = new ArrayList<>();
    for (Entry entry : written) {
      String reading = context.names().reference(Kind.READING, entry.key());
      if (entry.value() instanceof Scalar tells && !tells.text().isBlank()) {
        outcome(entry, tells, reading, phaseNames, counters)
            .filter(outcome -> fits(outcome, phases))
            .ifPresent(outcomes::add);
      } else {
        problems.add(entry.value().place(), "it is not said what the reading tells", help());
      }
    }
    return outcomes;
  }

  private static String help() {
    return "write `stop`, `time in` a phase, or `count of` a counter";
  }

  private Optional<Outcome> outcome(
      Entry entry, Scalar written, String reading, SequenceNames phases, SequenceNames counters) {
    String text = written.text().strip();
    if (text.equals(STOP)) {
      return Optional.of(new Outcome(entry.key().place(), reading, Tells.STOP, Optional.empty()));
    }
    if (text.startsWith(TIME_IN)) {
      String phase = phases.reference(written, text.substring(TIME_IN.length()).strip());
      return Optional.of(
          new Outcome(entry.key().place(), reading, Tells.TIME_IN, Optional.of(phase)));
    }
    if (text.startsWith(COUNT_OF)) {
      String counter = counters.reference(written, text.substring(COUNT_OF.length()).strip());
      return Optional.of(
          new Outcome(entry.key().place(), reading, Tells.COUNT_OF, Optional.of(counter)));
    }
    String help =
        phases.known(text)
            ? "write `" + TIME_IN + text + "`"
            : counters.known(text) ? "write `" + COUNT_OF + text + "`" : help();
    problems.add(written.place(), "a sequence does not tell " + Words.quoted(text), help);
    return Optional.empty();
  }

  /** Whether the reading has such values; reports it where it has not. */
  private boolean fits(Outcome outcome, List<Phase> phases) {
    Optional<Reading> reading = Optional.ofNullable(readings.get(outcome.reading()));
    return reading
        .map(
            known ->
                known
                    .domain()
                    .match(
                        measured -> measures(outcome, measured),
                        choice -> chooses(outcome, choice, phases)))
        .orElse(false);
  }

  private boolean measures(Outcome outcome, Domain.Measured measured) {
    Dimension wanted = outcome.tells() == Tells.TIME_IN ? Dimension.TIME : Dimension.COUNT;
    if (outcome.tells() == Tells.STOP) {
      problems.add(
          outcome.place(),
          "the reading " + Words.quoted(outcome.reading()) + " is measured and cannot tell a stop",
          "take a reading with `values`: the phases that are stops, and `" + NO_STOP + "`");
      return false;
    }
    if (measured.unit().dimension() != wanted) {
      String unit = wanted == Dimension.TIME ? "min" : "times";
      problems.add(
          outcome.place(),
          "the reading "
              + Words.quoted(outcome.reading())
              + " is in "
              + Words.quoted(measured.unit().symbol()),
          "take a reading with a unit such as `" + unit + "`");
      return false;
    }
    return true;
  }

  private boolean chooses(Outcome outcome, Domain.Choice choice, List<Phase> phases) {
    if (outcome.tells() != Tells.STOP) {
      problems.add(
          outcome.place(),
          "the reading " + Words.quoted(outcome.reading()) + " is a choice and tells no number",
          "take a reading with `unit` and `range`");
      return false;
    }
    List<String> needed = new ArrayList<>();
    phases.stream().filter(Phase::stop).map(Phase::id).forEach(needed::add);
    needed.add(NO_STOP);
    needed.removeAll(choice.ids());
    if (!needed.isEmpty()) {
      problems.add(
          outcome.place(),
          "the reading "
              + Words.quoted(outcome.reading())
              + (needed.size() == 1 ? " lacks the value " : " lacks the values ")
              + Words.quoted(needed),
          "a reading that tells the stop has a value for each phase that is a stop, of the same"
              + " id, and `"
              + NO_STOP
              + "`");
    }
    return needed.isEmpty();
  }
}
