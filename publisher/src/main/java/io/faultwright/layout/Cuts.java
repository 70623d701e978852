package io.faultwright.layout;

import io.faultwright.flow.Node.Check;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the trees of a chart may be cut, and the parts that come of it. A place is a check that a
 * check leads to: only lines that enter such a check are cut.
 */
final class Cuts {
  private final List<Tree> trees;
  private final List<Tree> places = new ArrayList<>();
  private final Map<Tree, Integer> numbers = new IdentityHashMap<>();

  /** For each place the one right above it, or a number below 0 for the top of its tree. */
  private final List<Integer> above = new ArrayList<>();

  private final Map<Tree, Map<BitSet, Part>> known = new IdentityHashMap<>();

  Cuts(List<Tree> trees) {
    this.trees = List.copyOf(trees);
    for (int i = 0; i < trees.size(); i++) {
      below(top(trees.get(i)), -1 - i);
    }
  }

  /** The first check of a tree; it is not cut off from a start. */
  private static Tree top(Tree tree) {
    return tree.node() instanceof Check || tree.limbs().isEmpty()
        ? tree
        : tree.limbs().get(0).tree();
  }

  private void below(Tree tree, int number) {
    for (Tree.Limb limb : tree.limbs()) {
      if (limb.tree().node() instanceof Check) {
        int next = places.size();
        places.add(limb.tree());
        above.add(number);
        numbers.put(limb.tree(), next);
        below(limb.tree(), next);
      }
    }
  }

  /** How many places there are; they are numbered in reading order. */
  int count() {
    return places.size();
  }

  /** The place right above a place, or a number below 0 that stands for the top of its tree. */
  int above(int place) {
    return above.get(place);
  }

  /** The places right below a place. */
  BitSet below(int place) {
    BitSet below = new BitSet();
    for (int next = place + 1; next < above.size(); next++) {
      below.set(next, above.get(next) == place);
    }
    return below;
  }

  /** The places of some trees. */
  BitSet at(Collection<Tree> cut) {
    BitSet cuts = new BitSet();
    cut.forEach(tree -> cuts.set(numbers.get(tree)));
    return cuts;
  }

  /** The parts by id, tree by tree; where one is drawn in several places, the first counts. */
  Map<String, Part> parts(BitSet cuts) {
    Map<String, Part> parts = new LinkedHashMap<>();
    trees.forEach(tree -> add(part(tree, cuts), parts));
    cuts.stream().forEach(place -> add(part(places.get(place), cuts), parts));
    return parts;
  }

  private static void add(Part part, Map<String, Part> parts) {
    parts.putIfAbsent(part.id(), part);
  }

  /** The part with a top; the same object whenever it is asked for. */
  private Part part(Tree top, BitSet cuts) {
    BitSet first = new BitSet();
    first(top, cuts, first);
    return known
        .computeIfAbsent(top, none -> new HashMap<>())
        .computeIfAbsent(first, here -> Part.of(pruned(top, here)));
  }

  /** The cuts that are met first on the way down. */
  private void first(Tree tree, BitSet cuts, BitSet first) {
    for (Tree.Limb limb : tree.limbs()) {
      Integer number = numbers.get(limb.tree());
      if (number != null && cuts.get(number)) {
        first.set(number);
      } else {
        first(limb.tree(), cuts, first);
      }
    }
  }

  /** The tree without what is cut off; the very same object where nothing is. */
  private Tree pruned(Tree top, BitSet cuts) {
    List<Tree.Limb> limbs = new ArrayList<>();
    boolean whole = true;
    for (Tree.Limb limb : top.limbs()) {
      Integer number = numbers.get(limb.tree());
      Tree drawn =
          number != null && cuts.get(number)
              ? Part.exitTo(limb.tree().node().id())
              : pruned(limb.tree(), cuts);
      limbs.add(new Tree.Limb(limb.answer(), drawn));
      whole &= drawn == limb.tree();
    }
    return whole ? top : new Tree(top.node(), limbs);
  }
}
