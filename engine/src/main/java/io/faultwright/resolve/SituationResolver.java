package io.faultwright.resolve;

import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads what is known about a machine. */
final class SituationResolver {
  private final Context context;
  private final Subjects subjects;
  private final NamedPatterns named;
  private final VersionPatterns versions;
  private final QuantityPatterns quantities;

  SituationResolver(Context context, Subjects subjects) {
    this.context = context;
    this.subjects = subjects;
    this.named = new NamedPatterns(context.problems());
    this.versions = new VersionPatterns(context.problems());
    this.quantities = new QuantityPatterns(context.quantities(), context.problems());
  }

  Situation resolve(List<Entry> entries) {
    SortedMap<String, String> equipment = new TreeMap<>();
    SortedMap<String, Value> readings = new TreeMap<>();
    for (Entry entry : entries) {
      subjects.find(entry.key()).ifPresent(subject -> read(subject, entry, equipment, readings));
    }
    return new Situation(equipment, readings);
  }

  private void read(
      Subject subject,
      Entry entry,
      SortedMap<String, String> equipment,
      SortedMap<String, Value> readings) {
    if (!(entry.value() instanceof Scalar written) || written.text().isBlank()) {
      context
          .problems()
          .add(
              entry.value().place(),
              "a situation has one value for "
                  + Words.quoted(subject.id())
                  + ", found "
                  + entry.value().kind(),
              "write the value that was found, or leave the line out");
    } else if (!subject.operands().isEmpty()) {
      context
          .problems()
          .add(
              entry.key().place(),
              Words.quoted(subject.id()) + " is computed, it is not given",
              "give " + Words.and(subject.operands()));
    } else if (subject.reading()) {
      value(subject, written).ifPresent(value -> readings.put(subject.id(), value));
    } else {
      fact(subject, written).ifPresent(value -> equipment.put(subject.id(), value));
    }
  }

  private Optional<String> fact(Subject subject, Scalar written) {
    String text = written.text().strip();
    return subject.match(
        choice -> named.value(written.place(), text, choice),
        software ->
            versions
                .version(written.place(), text)
                .flatMap(version -> versions.published(written.place(), version, software))
                .map(version -> version.text()),
        quantity -> Optional.empty());
  }

  private Optional<Value> value(Subject subject, Scalar written) {
    String text = written.text().strip();
    if (text.equals(PatternResolver.CANNOT_BE_TAKEN)) {
      return Optional.of(new Value.NotTaken());
    }
    return subject.match(
        choice -> named.value(written.place(), text, choice).map(Value.Word::new),
        software -> Optional.empty(),
        quantity -> quantities.amount(written.place(), text, quantity).map(Value.Number::new));
  }
}
