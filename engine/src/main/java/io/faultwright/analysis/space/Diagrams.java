package io.faultwright.analysis.space;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * Reduced ordered multi-valued decision diagrams over axes with finitely many cells. A diagram is
 * an {@code int}; equal sets of situations are the same {@code int}.
 *
 * <p>Algorithms after Bryant, "Graph-Based Algorithms for Boolean Function Manipulation", IEEE
 * Trans. Computers 35(8), 1986, with one child per cell (Srinivasan, Kam, Malik, Brayton, ICCAD
 * 1990).
 */
public final class Diagrams {
  /** The empty set. */
  public static final int NONE = 0;

  /** Everything. */
  public static final int ALL = 1;

  private final int[] sizes;
  private final NodeTable nodes = new NodeTable();
  private final PairCache ands = new PairCache();
  private final PairCache ors = new PairCache();
  private final PairCache differences = new PairCache();

  /**
   * @param sizes number of cells of every axis, in the order of the diagrams' levels
   */
  public Diagrams(int[] sizes) {
    this.sizes = sizes.clone();
  }

  /** How many axes there are. */
  public int axes() {
    return sizes.length;
  }

  /** Number of cells of an axis. */
  public int size(int axis) {
    return sizes[axis];
  }

  /** Situations whose cell on one axis is among those given. */
  public int literal(int axis, BitSet cells) {
    int[] children = new int[sizes[axis]];
    cells.stream().forEach(cell -> children[cell] = ALL);
    return node(axis, children);
  }

  /** Situations in both. */
  public int and(int a, int b) {
    if (a == NONE || b == NONE) {
      return NONE;
    }
    if (a == ALL || a == b) {
      return b;
    }
    if (b == ALL) {
      return a;
    }
    return a < b ? cached(ands, a, b, this::and) : cached(ands, b, a, this::and);
  }

  /** Situations in either. */
  public int or(int a, int b) {
    if (a == ALL || b == ALL) {
      return ALL;
    }
    if (a == NONE || a == b) {
      return b;
    }
    if (b == NONE) {
      return a;
    }
    return a < b ? cached(ors, a, b, this::or) : cached(ors, b, a, this::or);
  }

  /** Situations in the first and not in the second. */
  public int minus(int a, int b) {
    if (a == NONE || b == ALL || a == b) {
      return NONE;
    }
    if (b == NONE) {
      return a;
    }
    return cached(differences, a, b, this::minus);
  }

  /** All other situations. */
  public int not(int a) {
    return minus(ALL, a);
  }

  /** Whether every situation of the first is in the second. */
  public boolean within(int a, int b) {
    return minus(a, b) == NONE;
  }

  private interface Operation {
    int apply(int a, int b);
  }

  private int cached(PairCache cache, int a, int b, Operation operation) {
    int known = cache.get(a, b);
    if (known >= 0) {
      return known;
    }
    int axis = Math.min(axisOf(a), axisOf(b));
    int[] children = new int[sizes[axis]];
    for (int cell = 0; cell < children.length; cell++) {
      children[cell] = operation.apply(child(a, axis, cell), child(b, axis, cell));
    }
    int result = node(axis, children);
    cache.put(a, b, result, nodes.count());
    return result;
  }

  /** The axis a diagram looks at first; beyond the last axis for {@link #NONE} and {@link #ALL}. */
  public int axisOf(int diagram) {
    return diagram <= ALL ? sizes.length : nodes.axis(diagram);
  }

  /** What is left of a diagram once an axis, not above its first, lies in a cell. */
  public int child(int diagram, int axis, int cell) {
    return axisOf(diagram) == axis ? nodes.child(diagram, cell) : diagram;
  }

  private int node(int axis, int[] children) {
    for (int child : children) {
      if (child != children[0]) {
        return nodes.intern(axis, children);
      }
    }
    return children[0];
  }

  /**
   * The diagram with the children on one axis replaced.
   *
   * @param change from the children of that axis, one per cell, to the new ones
   */
  public int change(int diagram, int axis, UnaryOperator<int[]> change) {
    return change(diagram, axis, change, new HashMap<>());
  }

  private int change(
      int diagram, int axis, UnaryOperator<int[]> change, Map<Integer, Integer> done) {
    Integer known = done.get(diagram);
    if (known != null) {
      return known;
    }
    int first = axisOf(diagram);
    int[] children = new int[sizes[Math.min(first, axis)]];
    for (int cell = 0; cell < children.length; cell++) {
      int child = child(diagram, Math.min(first, axis), cell);
      children[cell] = first < axis ? change(child, axis, change, done) : child;
    }
    int result = first < axis ? node(first, children) : node(axis, change.apply(children));
    done.put(diagram, result);
    return result;
  }

  /** Situations that lie in the diagram for at least one cell of the axis among those given. */
  public int some(int diagram, int axis, BitSet cells) {
    return change(
        diagram,
        axis,
        children -> {
          int any = cells.stream().map(cell -> children[cell]).reduce(NONE, this::or);
          return filled(children.length, any);
        });
  }

  /** Situations that lie in the diagram for every cell of the axis among those given. */
  public int every(int diagram, int axis, BitSet cells) {
    return change(
        diagram,
        axis,
        children -> {
          int all = cells.stream().map(cell -> children[cell]).reduce(ALL, this::and);
          return filled(children.length, all);
        });
  }

  private static int[] filled(int length, int value) {
    int[] same = new int[length];
    Arrays.fill(same, value);
    return same;
  }

  /** For every axis the cells in which some situation of a diagram lies. */
  public BitSet[] occurring(int diagram) {
    BitSet[] cells = new BitSet[sizes.length];
    Arrays.setAll(cells, axis -> new BitSet(sizes[axis]));
    if (diagram != NONE) {
      collect(diagram, 0, cells, new HashMap<>());
    }
    return cells;
  }

  /** Marks every cell of the axes that are passed over; below a diagram each is visited once. */
  private void collect(int diagram, int from, BitSet[] cells, Map<Integer, Boolean> done) {
    int axis = axisOf(diagram);
    for (int skipped = from; skipped < axis; skipped++) {
      cells[skipped].set(0, sizes[skipped]);
    }
    if (diagram == ALL || done.put(diagram, true) != null) {
      return;
    }
    for (int cell = 0; cell < sizes[axis]; cell++) {
      int child = nodes.child(diagram, cell);
      if (child != NONE) {
        cells[axis].set(cell);
        collect(child, axis + 1, cells, done);
      }
    }
  }

  /** Number of cell combinations in a diagram, over all axes. */
  public BigInteger count(int diagram) {
    return count(diagram, 0, new HashMap<>());
  }

  private BigInteger count(int diagram, int from, Map<Integer, BigInteger> done) {
    int axis = axisOf(diagram);
    BigInteger free = BigInteger.ONE;
    for (int skipped = from; skipped < axis; skipped++) {
      free = free.multiply(BigInteger.valueOf(sizes[skipped]));
    }
    if (diagram <= ALL) {
      return diagram == NONE ? BigInteger.ZERO : free;
    }
    BigInteger below = done.get(diagram);
    if (below == null) {
      below = BigInteger.ZERO;
      for (int cell = 0; cell < sizes[axis]; cell++) {
        below = below.add(count(child(diagram, axis, cell), axis + 1, done));
      }
      done.put(diagram, below);
    }
    return free.multiply(below);
  }

  /** Whether a diagram holds a situation whose cells all lie in the box, given a set per axis. */
  public boolean meets(int diagram, BitSet[] box) {
    return meets(diagram, box, new BitSet());
  }

  private boolean meets(int diagram, BitSet[] box, BitSet refuted) {
    if (diagram <= ALL) {
      return diagram == ALL;
    }
    if (refuted.get(diagram)) {
      return false;
    }
    int axis = axisOf(diagram);
    BitSet cells = box[axis];
    for (int cell = cells.nextSetBit(0); cell >= 0; cell = cells.nextSetBit(cell + 1)) {
      if (meets(nodes.child(diagram, cell), box, refuted)) {
        return true;
      }
    }
    refuted.set(diagram);
    return false;
  }

  /** The set of situations whose cells all lie in the box, given a non-empty set per axis. */
  public int box(BitSet[] box) {
    int diagram = ALL;
    for (int axis = sizes.length - 1; axis >= 0; axis--) {
      diagram = and(literal(axis, box[axis]), diagram);
    }
    return diagram;
  }
}
