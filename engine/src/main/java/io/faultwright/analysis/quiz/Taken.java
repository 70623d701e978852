package io.faultwright.analysis.quiz;

import io.faultwright.quiz.Item;
import io.faultwright.quiz.Shown;
import io.faultwright.quiz.Stem;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What a quiz asks already: no item comes twice, and no two are about the same situation. */
final class Taken {
  private final Set<String> ids = new HashSet<>();
  private final Set<Object> situations = new HashSet<>();

  /** Takes an item; whether it may be taken. */
  boolean add(Item item) {
    Object situation = situation(item.stem());
    if (ids.contains(item.id()) || situations.contains(situation)) {
      return false;
    }
    ids.add(item.id());
    situations.add(situation);
    return true;
  }

  /** What is shown of a machine, or all that is asked where no reading is shown. */
  static Object situation(Stem stem) {
    if (stem instanceof Stem.AgainstLimits against) {
      return List.of(against.machine().situation(), against.reading(), against.value());
    }
    return stem.shown()
        .map(Shown::situation)
        .filter(shown -> !shown.readings().isEmpty())
        .<Object>map(shown -> shown)
        .orElse(stem);
  }
}
