package io.faultwright.report;

import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Reading;
import io.faultwright.run.Note;
import io.faultwright.run.TestTrace;
import io.faultwright.wording.Wording;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What a trace says besides its answers, in words for people. */
final class NoteWords {
  private final KnowledgeBase kb;
  private final Wording wording;
  private final TestWords tests;

  NoteWords(KnowledgeBase kb) {
    this.kb = kb;
    this.wording = new Wording(kb);
    this.tests = new TestWords(kb);
  }

  /** A line that says it, then a line for each test it rests on. */
  List<String> lines(Note note) {
    if (note instanceof Note.NoSuchReading strange) {
      return List.of("there is no reading `" + strange.reading() + "`");
    }
    if (note instanceof Note.NoSuchFact strange) {
      return List.of("equipment has no `" + strange.fact() + "`");
    }
    if (note instanceof Note.NotPossible strange) {
      return List.of(notPossible(strange));
    }
    return note instanceof Note.LimitsMissing missing
        ? List.of(limitsMissing(missing))
        : withTests(note);
  }

  private List<String> withTests(Note note) {
    if (note instanceof Note.NeverViolated violated) {
      return join("cannot all be: " + violated.because(), violated.tests());
    }
    if (note instanceof Note.NotRecognised other) {
      return join("this complaint needs", other.failed());
    }
    Note.First first = (Note.First) note;
    return join(
        "must be right first, otherwise work " + wording.symptom(first.otherwise()), first.tests());
  }

  private List<String> join(String head, List<TestTrace> reasons) {
    return Stream.concat(Stream.of(head), reasons.stream().map(test -> "- " + tests.line(test)))
        .toList();
  }

  private String notPossible(Note.NotPossible strange) {
    Reading reading = kb.readings().get(strange.reading());
    return "did you mean another value? "
        + wording.subject(strange.reading())
        + " is "
        + possible(reading)
        + ", found "
        + wording.value(strange.reading(), strange.value());
  }

  private String possible(Reading reading) {
    return reading
        .domain()
        .match(
            measured -> wording.interval(reading.id(), measured.range()), choice -> titles(choice));
  }

  private static String titles(Domain.Choice choice) {
    return choice.values().stream()
        .map(value -> value.title())
        .collect(Collectors.joining(", ", "one of ", ""));
  }

  private String limitsMissing(Note.LimitsMissing missing) {
    String builds =
        missing.builds().size() == 1
            ? wording.build(missing.builds().get(0))
            : wording.builds(missing.builds());
    return "no limits of " + wording.subject(missing.reading()) + at(missing) + " for " + builds;
  }

  private String at(Note.LimitsMissing missing) {
    LimitsTable table = kb.limits().get(missing.reading());
    return IntStream.range(0, missing.at().size())
        .mapToObj(i -> wording.about(table.drivers().get(i), missing.at().get(i)))
        .reduce((a, b) -> a + " and " + b)
        .map(where -> " at " + where)
        .orElse("");
  }
}
