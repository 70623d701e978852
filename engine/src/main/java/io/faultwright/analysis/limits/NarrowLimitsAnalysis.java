package io.faultwright.analysis.limits;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Domain.Measured;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.model.Reading;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import io.faultwright.source.Place;
import io.faultwright.wording.Wording;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Finds limits and stretches that are too narrow for the instrument: whatever it shows, the true
 * value may lie outside.
 *
 * <p>That is so exactly where the instrument's tolerance at the middle is more than half of the
 * width, for the middle is the value farthest from both ends. Between two rows the width runs in a
 * straight line and the tolerance is a convex function of the middle, so what is left over is
 * concave and least at one of the rows: looking at the rows is enough.
 */
public final class NarrowLimitsAnalysis {
  private static final BigFraction ZERO = BigFraction.ZERO;

  private final KnowledgeBase knowledge;
  private final Wording wording;

  private NarrowLimitsAnalysis(KnowledgeBase knowledge) {
    this.knowledge = knowledge;
    this.wording = new Wording(knowledge);
  }

  /** One finding for each row, and one for each stretch wherever it stands. */
  public static List<Finding> findings(KnowledgeBase knowledge) {
    NarrowLimitsAnalysis analysis = new NarrowLimitsAnalysis(knowledge);
    List<Finding> findings = new ArrayList<>();
    for (LimitsTable table : knowledge.limits().values()) {
      table.rows().forEach(row -> analysis.row(table, row).ifPresent(findings::add));
    }
    findings.addAll(analysis.stretches());
    return findings;
  }

  private Optional<Finding> row(LimitsTable table, Row row) {
    return row.low()
        .flatMap(low -> row.high().map(high -> Interval.closed(low, high)))
        .flatMap(
            band ->
                finding(
                    table.reading(),
                    band,
                    List.of(row.place()),
                    "the limits of `" + table.reading() + "` here, ",
                    "widen the limits, leave out the end that does not matter, or take the reading"
                        + " with a finer instrument"));
  }

  /** What a stretch is of, and which one it is. */
  private record Stretch(String reading, String words) implements Comparable<Stretch> {
    @Override
    public int compareTo(Stretch other) {
      int order = reading.compareTo(other.reading);
      return order != 0 ? order : words.compareTo(other.words);
    }
  }

  private List<Finding> stretches() {
    Map<Stretch, List<Condition.Test>> tests = new TreeMap<>();
    conditions()
        .flatMap(Condition::tests)
        .filter(test -> test.pattern() instanceof InInterval)
        .filter(test -> judgedAtBothEnds(test.subject(), interval(test)))
        .forEach(test -> tests.computeIfAbsent(key(test), key -> new ArrayList<>()).add(test));
    return tests.values().stream().flatMap(same -> stretch(same).stream()).toList();
  }

  private static Interval interval(Condition.Test test) {
    return ((InInterval) test.pattern()).interval();
  }

  private Stretch key(Condition.Test test) {
    return new Stretch(test.subject(), wording.interval(test.subject(), interval(test)));
  }

  private Optional<Finding> stretch(List<Condition.Test> same) {
    Condition.Test test = same.get(0);
    List<Place> places = same.stream().map(Condition.Test::place).distinct().sorted().toList();
    return finding(
        test.subject(),
        interval(test),
        places,
        "the stretch of `" + test.subject() + "`, ",
        "widen the stretch, ask for one end only, or take the reading with a finer instrument");
  }

  private Stream<Condition> conditions() {
    return Stream.of(
            knowledge.nevers().values().stream().map(never -> never.when()),
            knowledge.symptoms().values().stream().map(symptom -> symptom.recognise()),
            knowledge.symptoms().values().stream()
                .map(symptom -> symptom.first())
                .flatMap(Collection::stream)
                .map(first -> first.when()),
            knowledge.symptoms().values().stream()
                .flatMap(symptom -> symptom.nevers().values().stream())
                .map(never -> never.when()),
            knowledge.symptoms().values().stream()
                .flatMap(symptom -> symptom.rules().values().stream())
                .map(rule -> rule.when()))
        .flatMap(conditions -> conditions);
  }

  /** An end of the range is no end to judge: nothing lies beyond it. */
  private boolean judgedAtBothEnds(String reading, Interval interval) {
    Interval range = ((Measured) knowledge.readings().get(reading).domain()).range();
    return interval.low().filter(end -> isInside(end, range)).isPresent()
        && interval.high().filter(end -> isInside(end, range)).isPresent();
  }

  private static boolean isInside(End end, Interval range) {
    return end.value().compareTo(range.low().orElseThrow().value()) > 0
        && end.value().compareTo(range.high().orElseThrow().value()) < 0;
  }

  private Optional<Finding> finding(
      String id, Interval band, List<Place> places, String what, String help) {
    BigFraction low = band.low().orElseThrow().value();
    BigFraction high = band.high().orElseThrow().value();
    Reading reading = knowledge.readings().get(id);
    return tolerance(reading, low.add(high).divide(2))
        .filter(half -> high.subtract(low).compareTo(half.multiply(2)) < 0)
        .map(half -> Finding.of(kind(), places, what + words(reading, band, half), help));
  }

  private static FindingKind kind() {
    return FindingKind.NARROW_LIMITS;
  }

  private String words(Reading reading, Interval band, BigFraction half) {
    String instrument = reading.instrument().map(name -> " with `" + name + "`").orElse("");
    return wording.interval(reading.id(), band)
        + ", cannot be told: it is taken"
        + instrument
        + " to ±"
        + wording.difference(reading.id(), half);
  }

  /** The tolerance at a value; of a derived reading, what it is at least. */
  private Optional<BigFraction> tolerance(Reading reading, BigFraction shown) {
    if (reading.derived().isEmpty()) {
      return reading.tolerance(shown);
    }
    return reading.derived().get().terms().entrySet().stream()
        .flatMap(term -> least(term.getKey()).map(term.getValue().abs()::multiply).stream())
        .reduce(BigFraction::add);
  }

  /** The tolerance of an operand where it is least, which is nearest to zero. */
  private Optional<BigFraction> least(String operand) {
    Reading reading = knowledge.readings().get(operand);
    Interval range = ((Measured) reading.domain()).range();
    BigFraction low = range.low().orElseThrow().value();
    BigFraction high = range.high().orElseThrow().value();
    BigFraction nearest = low.signum() > 0 ? low : high.signum() < 0 ? high : ZERO;
    return tolerance(reading, nearest);
  }
}
