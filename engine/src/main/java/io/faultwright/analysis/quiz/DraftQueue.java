package io.faultwright.analysis.quiz;

import io.faultwright.model.Difficulty;
import io.faultwright.quiz.Item;
import io.faultwright.quiz.ItemKind;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Iterator;
import java.util.LinkedList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The items of one symptom in the order in which a quiz takes them: kinds in turn, and within a
 * kind first one about each thing.
 */
final class DraftQueue {
  /** In which turn kinds are taken: what the readings point to comes most often. */
  private static final List<ItemKind> TURNS =
      List.of(
          ItemKind.WHICH_FAULT,
          ItemKind.AGAINST_LIMITS,
          ItemKind.WHICH_FAULT,
          ItemKind.WHAT_SEPARATES,
          ItemKind.NEXT_CHECK,
          ItemKind.WHICH_FAULT,
          ItemKind.WHAT_FIRST,
          ItemKind.SAFE_ORDER);

  private final long seed;
  private final Map<ItemKind, List<Draft>> waiting = new EnumMap<>(ItemKind.class);
  private final Map<Draft, Optional<Item>> made = new IdentityHashMap<>();
  private int turn;

  DraftQueue(List<Draft> drafts, long seed) {
    this.seed = seed;
    Dice dice = Dice.of("queue", seed, drafts.isEmpty() ? "" : drafts.get(0).symptom());
    for (Draft draft : byTheme(dice.shuffled(drafts))) {
      waiting.computeIfAbsent(draft.kind(), none -> new LinkedList<>()).add(draft);
    }
  }

  /** The first about each thing, then the second about each, and so on. */
  private static List<Draft> byTheme(List<Draft> drafts) {
    Map<String, Integer> counts = new HashMap<>();
    Map<Draft, Integer> turns = new HashMap<>();
    drafts.forEach(
        draft -> turns.put(draft, counts.merge(draft.kind() + draft.theme(), 1, Integer::sum)));
    return drafts.stream().sorted(Comparator.comparing(turns::get)).toList();
  }

  /** An item with the draft that it is made of. */
  record Drawn(Draft draft, Item item) {}

  /** The next item of a difficulty that the quiz does not have yet; empty where there is none. */
  Optional<Drawn> next(Optional<Difficulty> difficulty, Taken taken) {
    for (int kinds = 0; kinds < TURNS.size(); kinds++) {
      ItemKind kind = TURNS.get(turn++ % TURNS.size());
      Optional<Drawn> next = next(waiting.getOrDefault(kind, List.of()), difficulty, taken);
      if (next.isPresent()) {
        return next;
      }
    }
    return Optional.empty();
  }

  private Optional<Drawn> next(List<Draft> drafts, Optional<Difficulty> difficulty, Taken taken) {
    for (Iterator<Draft> left = drafts.iterator(); left.hasNext(); ) {
      Draft draft = left.next();
      Optional<Item> item = made.computeIfAbsent(draft, one -> one.item(seed, 1));
      boolean fits = item.isEmpty() || difficulty.isEmpty() || isOf(item.get(), difficulty.get());
      if (fits) {
        left.remove();
      }
      if (fits && item.filter(taken::add).isPresent()) {
        return Optional.of(new Drawn(draft, item.get()));
      }
    }
    return Optional.empty();
  }

  private static boolean isOf(Item item, Difficulty difficulty) {
    return item.rating().difficulty() == difficulty;
  }
}
