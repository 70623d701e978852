package io.faultwright.run;

import io.faultwright.model.Access;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import java.util.Collection;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Which reading or equipment fact to ask next: the one that most open conditions wait for; of
 * equals the easier to get at, then the quicker, then the first by id. The nameplate is outside and
 * takes no time.
 */
public final class NextReading {
  private final KnowledgeBase base;

  public NextReading(KnowledgeBase base) {
    this.base = base;
  }

  /** The choice, given what each open condition waits for. */
  public Optional<String> among(Collection<SortedSet<String>> open) {
    Map<String, Integer> waiting = new TreeMap<>();
    open.forEach(missing -> missing.forEach(id -> waiting.merge(id, 1, Integer::sum)));
    return waiting.keySet().stream()
        .min(
            Comparator.comparing((String id) -> -waiting.get(id))
                .thenComparing(this::access)
                .thenComparing(this::minutes)
                .thenComparing(id -> id));
  }

  private Access access(String subject) {
    return reading(subject).map(Reading::access).orElse(Access.OUTSIDE);
  }

  private BigFraction minutes(String subject) {
    return reading(subject).map(Reading::minutes).orElse(BigFraction.ZERO);
  }

  private Optional<Reading> reading(String subject) {
    return Optional.ofNullable(base.readings().get(subject));
  }
}
