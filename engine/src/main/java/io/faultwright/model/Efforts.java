package io.faultwright.model;

import java.util.Collection;
import java.util.SortedSet;
import java.util.TreeSet;

/** What it takes to take readings, where a set-up that several of them share is done once. */
public final class Efforts {
  private final KnowledgeBase knowledge;

  public Efforts(KnowledgeBase knowledge) {
    this.knowledge = knowledge;
  }

  /**
   * Some readings, with everything that has to be set up for them; equipment facts take nothing.
   */
  public Effort of(Collection<String> readings) {
    return of(readings, new TreeSet<>());
  }

  /**
   * As above, with what was set up for others already.
   *
   * @param taken readings that were taken before
   */
  public Effort of(Collection<String> readings, Collection<String> taken) {
    AccessWeights weights = knowledge.handbook().weights();
    SortedSet<String> toSetUp = setUps(readings);
    toSetUp.removeAll(setUps(taken));
    Effort effort = Effort.NONE;
    for (String id : readings) {
      if (knowledge.readings().containsKey(id)) {
        effort = effort.plus(Effort.of(knowledge.readings().get(id), weights));
      }
    }
    for (String id : toSetUp) {
      effort = effort.plus(Effort.of(knowledge.setUps().get(id), weights));
    }
    return effort;
  }

  /**
   * Ids of what has to be set up for some readings; what is computed needs what its operands do.
   */
  public SortedSet<String> setUps(Collection<String> readings) {
    SortedSet<String> setUps = new TreeSet<>();
    readings.forEach(id -> addSetUps(id, setUps));
    return setUps;
  }

  private void addSetUps(String id, SortedSet<String> setUps) {
    Reading reading = knowledge.readings().get(id);
    if (reading != null) {
      reading.setUp().ifPresent(setUps::add);
      reading.operands().forEach(operand -> addSetUps(operand, setUps));
    }
  }
}
