package io.faultwright.layout;

import io.faultwright.flow.Node.Check;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Cuts a tree into parts that fit a page. A part grows from its top: whatever is small enough to
 * stand on the page down to its last outcome is taken in whole; only while the page is rather empty
 * is a larger branch taken in a check at a time, which cuts more lines. Only lines that enter a
 * check are cut.
 */
final class Growth {
  private final Predicate<Part> fits;
  private final double empty;

  /**
   * Grows parts.
   *
   * @param fits whether a part fits a page
   * @param empty weight up to which a page is filled with the tops of larger branches
   */
  Growth(Predicate<Part> fits, double empty) {
    this.fits = fits;
    this.empty = empty;
  }

  /** The checks that a tree is cut above. */
  List<Tree> cuts(Tree tree) {
    List<Tree> all = new ArrayList<>();
    Deque<Tree> open = new ArrayDeque<>(List.of(tree));
    while (!open.isEmpty()) {
      Sprout sprout = new Sprout(open.pop());
      sprout.grow();
      all.addAll(sprout.cuts());
      sprout.cuts().forEach(open::add);
    }
    return all;
  }

  /** A part while it grows. */
  private final class Sprout {
    private final Tree tree;
    private final Set<Tree> cuts = Collections.newSetFromMap(new IdentityHashMap<>());

    Sprout(Tree tree) {
      this.tree = tree;
      cutBelow(tree.node() instanceof Check ? tree : tree.limbs().get(0).tree());
    }

    private void cutBelow(Tree node) {
      node.limbs().stream()
          .map(Tree.Limb::tree)
          .filter(below -> below.node() instanceof Check)
          .forEach(cuts::add);
    }

    List<Tree> cuts() {
      return tree.nodes().filter(cuts::contains).toList();
    }

    Part part() {
      return Part.of(pruned(tree));
    }

    private Tree pruned(Tree top) {
      List<Tree.Limb> limbs = new ArrayList<>();
      boolean whole = true;
      for (Tree.Limb limb : top.limbs()) {
        Tree below = limb.tree();
        Tree drawn = cuts.contains(below) ? Part.exitTo(below.node().id()) : pruned(below);
        limbs.add(new Tree.Limb(limb.answer(), drawn));
        whole &= drawn == below;
      }
      return whole ? top : new Tree(top.node(), limbs);
    }

    void grow() {
      boolean grown = true;
      while (grown) {
        grown = takeWhole() || part().weight() < empty && takeOne();
      }
    }

    private boolean takeWhole() {
      return smallestFirst().anyMatch(cut -> take(cut, List.of()));
    }

    /** Takes the top check of a branch; the checks right below it are cut off instead. */
    private boolean takeOne() {
      List<Tree> largestFirst = new ArrayList<>(smallestFirst().toList());
      Collections.reverse(largestFirst);
      return largestFirst.stream().anyMatch(this::takeTop);
    }

    private boolean takeTop(Tree cut) {
      List<Tree> below =
          cut.limbs().stream()
              .map(Tree.Limb::tree)
              .filter(tree -> tree.node() instanceof Check)
              .toList();
      return take(cut, below);
    }

    private Stream<Tree> smallestFirst() {
      return cuts().stream().sorted(Comparator.comparing(Tree::size));
    }

    private boolean take(Tree cut, List<Tree> instead) {
      cuts.remove(cut);
      cuts.addAll(instead);
      Part larger = part();
      if (larger.weight() <= Part.FULL && fits.test(larger)) {
        return true;
      }
      instead.forEach(cuts::remove);
      cuts.add(cut);
      return false;
    }
  }
}
