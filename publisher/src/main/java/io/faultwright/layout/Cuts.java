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

  /** For each place the first that is not below it. */
  private final List<Integer> ends = new ArrayList<>();

  /** The first place of each tree, and at last the number of all. */
  private final List<Integer> firsts = new ArrayList<>();

  private final Map<Tree, Map<BitSet, Part>> known = new IdentityHashMap<>();
  private final Map<Tree, Map<BitSet, Tree>> prunings = new IdentityHashMap<>();
  private final Map<Tree, Tree> exits = new IdentityHashMap<>();

  Cuts(List<Tree> trees) {
    this.trees = List.copyOf(trees);
    for (int i = 0; i < trees.size(); i++) {
      firsts.add(places.size());
      below(top(trees.get(i)), -1 - i);
    }
    firsts.add(places.size());
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
        ends.add(next);
        numbers.put(limb.tree(), next);
        below(limb.tree(), next);
        ends.set(next, places.size());
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
    for (int i = 0; i < trees.size(); i++) {
      add(part(trees.get(i), first(cuts, firsts.get(i), firsts.get(i + 1))), parts);
    }
    for (int place = cuts.nextSetBit(0); place >= 0; place = cuts.nextSetBit(place + 1)) {
      add(part(places.get(place), first(cuts, place + 1, ends.get(place))), parts);
    }
    return parts;
  }

  private static void add(Part part, Map<String, Part> parts) {
    parts.putIfAbsent(part.id(), part);
  }

  /** The part with a top and the cuts met first below it; the same object whenever asked for. */
  private Part part(Tree top, BitSet first) {
    Map<BitSet, Part> parts = known.computeIfAbsent(top, none -> new HashMap<>());
    Part before = parts.get(first);
    return before == null ? part(top, first, parts) : before;
  }

  private Part part(Tree top, BitSet first, Map<BitSet, Part> parts) {
    Part part = Part.of(pruned(top, first));
    parts.put(first, part);
    return part;
  }

  /** The cuts among some places that are met first on the way down: none is below another. */
  private BitSet first(BitSet cuts, int from, int to) {
    BitSet first = new BitSet();
    int place = cuts.nextSetBit(from);
    while (place >= 0 && place < to) {
      first.set(place);
      place = cuts.nextSetBit(ends.get(place));
    }
    return first;
  }

  /** The tree without what is cut off; the very same object where nothing is. */
  private Tree pruned(Tree top, BitSet cuts) {
    List<Tree.Limb> limbs = new ArrayList<>();
    boolean whole = true;
    for (Tree.Limb limb : top.limbs()) {
      Tree drawn = drawn(limb.tree(), cuts);
      limbs.add(new Tree.Limb(limb.answer(), drawn));
      whole &= drawn == limb.tree();
    }
    return whole ? top : new Tree(top.node(), limbs);
  }

  /** What is drawn of a tree; for the same cuts below it always the same object. */
  private Tree drawn(Tree tree, BitSet cuts) {
    Integer number = numbers.get(tree);
    if (number == null) {
      return pruned(tree, cuts);
    }
    if (cuts.get(number)) {
      return exits.computeIfAbsent(tree, cut -> Part.exitTo(cut.node().id()));
    }
    int next = cuts.nextSetBit(number);
    if (next < 0 || next >= ends.get(number)) {
      return tree;
    }
    BitSet below = (BitSet) cuts.clone();
    below.clear(0, number);
    below.clear(ends.get(number), Math.max(ends.get(number), below.length()));
    Map<BitSet, Tree> same = prunings.computeIfAbsent(tree, none -> new HashMap<>());
    Tree before = same.get(below);
    if (before == null) {
      before = pruned(tree, below);
      same.put(below, before);
    }
    return before;
  }
}
