package io.faultwright.run;

import io.faultwright.model.Effort;
import io.faultwright.model.KnowledgeBase;
import java.util.Collection;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;

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
                .thenComparing(this::effort)
                .thenComparing(id -> id));
  }

  private Effort effort(String subject) {
    return Optional.ofNullable(base.readings().get(subject)).map(Effort::of).orElse(Effort.NONE);
  }
}
