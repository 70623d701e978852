package io.faultwright.layout;

import io.faultwright.flow.Node.Check;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Cuts a tree into parts that fit a page. Only lines that enter a check are cut. Of all ways to cut
 * a tree into parts of a given weight, one with the fewest parts is taken, and of those one whose
 * parts are evenly filled. It is found bottom-up, exactly: for each subtree and each weight of the
 * part that holds its root, the best cuts below.
 */
final class Cutting {
  /** About twelve nodes a page. */
  static final int FULL = 26;

  private static final int LEAST = 6;

  private final Predicate<Part> fits;

  Cutting(Predicate<Part> fits) {
    this.fits = fits;
  }

  /** Where to cut, and what the parts below the cuts cost. */
  private record Plan(double cost, List<Tree> cuts) {
    /** Far more than any sum of squares, so that the number of parts counts first. */
    private static final double PART = 1_000_000;

    static final Comparator<Plan> CHEAPEST = Comparator.comparingDouble(Plan::cost);

    static Plan cheaper(Plan one, Plan other) {
      return other.cost < one.cost ? other : one;
    }

    Plan with(Plan other) {
      List<Tree> both = Stream.concat(cuts.stream(), other.cuts.stream()).toList();
      return new Plan(cost + other.cost, both);
    }

    /** This plan with the part on top closed. */
    Plan closed(int weight) {
      return new Plan(cost + PART + (double) weight * weight, cuts);
    }
  }

  /** The parts, that of the root first. */
  List<Part> parts(Tree tree) {
    return parts(tree, FULL).toList();
  }

  private Stream<Part> parts(Tree tree, int full) {
    Part part = Part.of(tree);
    if (full < LEAST || Part.weight(tree) <= full && fits.test(part)) {
      return Stream.of(part);
    }
    List<Tree> pieces = pieces(tree, full);
    return pieces.size() == 1
        ? parts(tree, full - 1)
        : pieces.stream().flatMap(piece -> parts(piece, full));
  }

  private static List<Tree> pieces(Tree tree, int full) {
    Set<Tree> cuts = Collections.newSetFromMap(new IdentityHashMap<>());
    closed(plans(tree, full)).ifPresent(plan -> cuts.addAll(plan.cuts));
    List<Tree> pieces = new ArrayList<>();
    Tree top = piece(tree, cuts, pieces);
    pieces.add(0, top);
    return pieces;
  }

  /** The best plan below a node for each weight of the part that holds the node. */
  private static Map<Integer, Plan> plans(Tree tree, int full) {
    Map<Integer, Plan> plans = new TreeMap<>();
    plans.put(Part.weight(new Tree(tree.node(), List.of())), new Plan(0, List.of()));
    for (Tree.Limb limb : tree.limbs()) {
      plans = joined(plans, choices(limb.tree(), full), full);
    }
    return plans;
  }

  /** A limb as a whole, or cut off: then a connector, of weight one, stands in its place. */
  private static Map<Integer, Plan> choices(Tree tree, int full) {
    Map<Integer, Plan> choices = plans(tree, full);
    if (tree.node() instanceof Check) {
      Plan cut = new Plan(0, List.of(tree));
      closed(choices).ifPresent(plan -> choices.merge(1, plan.with(cut), Plan::cheaper));
    }
    return choices;
  }

  private static Optional<Plan> closed(Map<Integer, Plan> plans) {
    return plans.entrySet().stream()
        .map(entry -> entry.getValue().closed(entry.getKey()))
        .min(Plan.CHEAPEST);
  }

  private static Map<Integer, Plan> joined(
      Map<Integer, Plan> left, Map<Integer, Plan> right, int full) {
    Map<Integer, Plan> joined = new TreeMap<>();
    left.forEach(
        (a, one) ->
            right.forEach(
                (b, other) -> {
                  if (a + b <= full) {
                    joined.merge(a + b, one.with(other), Plan::cheaper);
                  }
                }));
    return joined;
  }

  /** The tree down to its cuts; what hangs below each cut is added to the pieces. */
  private static Tree piece(Tree tree, Set<Tree> cuts, List<Tree> pieces) {
    List<Tree.Limb> limbs = new ArrayList<>();
    for (Tree.Limb limb : tree.limbs()) {
      Tree below = piece(limb.tree(), cuts, pieces);
      if (cuts.contains(limb.tree())) {
        pieces.add(below);
        below = Part.exitTo(below.node().id());
      }
      limbs.add(new Tree.Limb(limb.answer(), below));
    }
    return new Tree(tree.node(), limbs);
  }
}
