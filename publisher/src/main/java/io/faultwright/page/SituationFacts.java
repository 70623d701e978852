package io.faultwright.page;

import io.faultwright.model.DerivedValues;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.wording.Wording;
import java.util.List;
import java.util.stream.Stream;

/** Situations as labelled lines, with what follows from what is given. */
final class SituationFacts {
  private final Wording words;
  private final DerivedValues derived;

  SituationFacts(KnowledgeBase kb, Wording words) {
    this.words = words;
    this.derived = new DerivedValues(kb);
  }

  /** Equipment first, then readings. */
  List<Fact> of(Situation situation) {
    return Stream.concat(
            situation.equipment().entrySet().stream()
                .map(e -> fact(e.getKey(), words.value(e.getKey(), e.getValue()))),
            derived.complete(situation).readings().entrySet().stream()
                .map(e -> fact(e.getKey(), words.value(e.getKey(), e.getValue()))))
        .toList();
  }

  private Fact fact(String subject, String value) {
    return new Fact(words.subject(subject), value);
  }
}
