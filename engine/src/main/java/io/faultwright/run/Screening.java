package io.faultwright.run;

import io.faultwright.compile.Candidates;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** Questions back: what a situation says that the knowledge base cannot mean. */
final class Screening {
  private final KnowledgeBase base;
  private final Map<String, Predicate<Value>> possible = new HashMap<>();

  Screening(KnowledgeBase base) {
    this.base = base;
    base.readings()
        .forEach((id, reading) -> possible.put(id, reading.domain().match(this::in, this::of)));
  }

  private Predicate<Value> in(Domain.Measured measured) {
    Interval range = measured.range();
    return value ->
        value instanceof Value.Number number
            ? range.contains(number.amount())
            : value instanceof Value.NotTaken;
  }

  private Predicate<Value> of(Domain.Choice choice) {
    Set<String> ids = Set.copyOf(choice.ids());
    return value ->
        value instanceof Value.Word word
            ? ids.contains(word.id())
            : value instanceof Value.NotTaken;
  }

  /** Equipment facts that the knowledge base does not have. */
  List<Note> strangeFacts(Situation situation) {
    return situation.equipment().keySet().stream()
        .filter(Predicate.not(base.equipment().attributes()::contains))
        .<Note>map(Note.NoSuchFact::new)
        .toList();
  }

  /** Readings that the knowledge base does not have, and values that a reading cannot have. */
  List<Note> strangeReadings(Situation situation) {
    List<Note> notes = new ArrayList<>();
    situation.readings().forEach((reading, value) -> screen(reading, value, notes));
    return notes;
  }

  private void screen(String reading, Value value, List<Note> notes) {
    Predicate<Value> domain = possible.get(reading);
    if (domain == null) {
      notes.add(new Note.NoSuchReading(reading));
    } else if (!domain.test(value)) {
      notes.add(new Note.NotPossible(reading, value));
    }
  }

  /** Whether some published build has every given equipment fact. */
  boolean builds(Situation situation) {
    return !Candidates.having(situation.equipment(), base.equipment().builds()).isEmpty();
  }
}
