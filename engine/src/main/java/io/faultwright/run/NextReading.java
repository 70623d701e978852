package io.faultwright.run;

import io.faultwright.model.Effort;
import io.faultwright.model.Efforts;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;

/**
 * Which reading or equipment fact to ask next: the one that most open conditions wait for; of
 * equals the easier to get at, then the quicker, then the first by id. The nameplate is outside and
 * takes no time. What is set up already takes no time again, and a reading waits for those that are
 * asked before it.
 */
public final class NextReading {
  private final KnowledgeBase base;
  private final Set<String> taken;
  private final Efforts efforts;

  /**
   * @param given what is known by now
   */
  public NextReading(KnowledgeBase base, Situation given) {
    this.base = base;
    this.taken = given.readings().keySet();
    this.efforts = new Efforts(base);
  }

  /** The choice, given what each open condition waits for. */
  public Optional<String> among(Collection<SortedSet<String>> open) {
    Map<String, Integer> waiting = new TreeMap<>();
    open.forEach(missing -> missing.forEach(id -> waiting.merge(id, 1, Integer::sum)));
    return waiting.keySet().stream()
        .filter(id -> base.before(id).stream().noneMatch(waiting::containsKey))
        .min(
            Comparator.comparing((String id) -> -waiting.get(id))
                .thenComparing(this::effort)
                .thenComparing(id -> id));
  }

  private Effort effort(String subject) {
    return efforts.of(List.of(subject), taken);
  }
}
