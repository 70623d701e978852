package io.faultwright.report;

import io.faultwright.model.Band;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Value;
import io.faultwright.run.Found;
import io.faultwright.run.TestTrace;
import io.faultwright.wording.Wording;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** A test of a condition beside what was found, in words for people. */
final class TestWords {
  private static final String OPEN = "not known yet";
  private static final String LACKING = "not on this machine";

  private final Wording wording;

  TestWords(KnowledgeBase kb) {
    this.wording = new Wording(kb);
  }

  /** For instance {@code Discharge pressure: above limits (found 9.1 bar(g), limits 4 to 8)}. */
  String line(TestTrace test) {
    String found = found(test);
    String wanted = wanted(test);
    String needs = needs(test);
    return wanted
        + (wanted.endsWith(": " + found) ? "" : " (" + wordFor(found) + found + ")")
        + (needs.isEmpty() ? "" : "; needs " + needs);
  }

  String wanted(TestTrace test) {
    return test.wanted()
        ? wording.test(test.test())
        : wording.condition(new Condition.Not(test.test()));
  }

  String found(TestTrace test) {
    String subject = test.test().subject();
    return test.found()
        .match(
            reading ->
                reading.value().map(value -> value(subject, value, reading)).orElse(OPEN)
                    + limits(test, reading),
            equipment -> wording.oneOf(subject, equipment.values()),
            () -> LACKING);
  }

  /** With how it was computed, where it was, or why it could not be. */
  private String value(String subject, Value value, Found.OfReading reading) {
    String result = wording.value(subject, value);
    if (reading.operands().isEmpty() || reading.operands().containsValue(new Value.NotTaken())) {
      return result;
    }
    String computation = wording.computation(subject, reading.operands());
    return value instanceof Value.Number
        ? computation + " = " + result
        : computation + " lies outside what is known of the refrigerant";
  }

  /** What else has to be known, beyond the subject itself. */
  private String needs(TestTrace test) {
    return test.missing().stream()
        .filter(subject -> !subject.equals(test.test().subject()))
        .map(wording::subject)
        .collect(Collectors.joining(", "));
  }

  private static String wordFor(String found) {
    return found.startsWith(OPEN) || found.equals(LACKING) ? "" : "found ";
  }

  private String limits(TestTrace test, Found.OfReading reading) {
    boolean measured = reading.value().filter(Value.Number.class::isInstance).isPresent();
    boolean judged = test.test().pattern() instanceof Condition.AgainstLimits;
    if (!measured || !judged) {
      return "";
    }
    if (reading.bands().size() == 1) {
      return ", limits " + band(test.test().subject(), reading.bands().get(0));
    }
    return reading.bands().isEmpty() && test.missing().isEmpty() ? ", no limits for it" : "";
  }

  private String band(String subject, Band band) {
    List<String> ends =
        List.of(end("from ", subject, band.low()), end("up to ", subject, band.high()));
    return ends.stream().filter(end -> !end.isEmpty()).collect(Collectors.joining(" "));
  }

  private String end(String word, String subject, Optional<BigFraction> end) {
    return end.map(value -> word + wording.about(subject, value)).orElse("");
  }
}
