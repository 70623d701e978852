package io.faultwright.run;

import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** Questions back: what a situation says that the knowledge base cannot mean. */
final class Screening {
  private final KnowledgeBase base;

  Screening(KnowledgeBase base) {
    this.base = base;
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
    return situation.readings().entrySet().stream().flatMap(e -> strange(e).stream()).toList();
  }

  /** Whether some published build has every given equipment fact. */
  boolean builds(Situation situation) {
    return base.equipment().builds().stream()
        .anyMatch(
            build ->
                situation.equipment().entrySet().stream()
                    .allMatch(
                        fact ->
                            build.attribute(fact.getKey()).equals(Optional.of(fact.getValue()))));
  }

  private Optional<Note> strange(Map.Entry<String, Value> given) {
    Reading reading = base.readings().get(given.getKey());
    if (reading == null) {
      return Optional.of(new Note.NoSuchReading(given.getKey()));
    }
    return possible(reading.domain(), given.getValue())
        ? Optional.empty()
        : Optional.of(new Note.NotPossible(reading.id(), given.getValue()));
  }

  private static boolean possible(Domain domain, Value value) {
    return value.match(
        word -> domain.match(measured -> false, choice -> choice.ids().contains(word.id())),
        number -> domain.match(m -> m.range().contains(number.amount()), choice -> false),
        () -> true);
  }
}
