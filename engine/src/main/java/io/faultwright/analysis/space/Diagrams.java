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
  private final Remembered ands = new Remembered(new PairCache(), this::and);
  private final Remembered ors = new Remembered(new PairCache(), this::or);
  private final Remembered differences = new Remembered(new PairCache(), this::minus);
  private final Deadline deadline;
  private int steps;
  private final BoxQuestions questions;

  /**
   * @param sizes number of cells of every axis, in the order of the diagrams' levels
   */
  public Diagrams(int[] sizes) {
    this(sizes, Deadline.NEVER);
  }

  /**
   * @param sizes number of cells of every axis, in the order of the diagrams' levels
   * @param deadline after which operations throw {@link OutOfTime}
   */
  public Diagrams(int[] sizes, Deadline deadline) {
    this.sizes = sizes.clone();
    this.deadline = deadline;
    this.questions = new BoxQuestions(nodes, sizes);
  }

  /**
   * Does nothing while there is time; long loops outside of the operations ask too.
   *
   * @throws OutOfTime after the deadline
   */
  void checkTime() {
    deadline.check();
  }

  /** Whether there is a deadline at all. */
  boolean hurried() {
    return deadline != Deadline.NEVER;
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
    return node(axis, Runs.of(cells, sizes[axis], ALL, NONE));
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
    return a < b ? result(ands, a, b) : result(ands, b, a);
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
    return a < b ? result(ors, a, b) : result(ors, b, a);
  }

  /** Situations in the first and not in the second. */
  public int minus(int a, int b) {
    if (a == NONE || b == ALL || a == b) {
      return NONE;
    }
    if (b == NONE) {
      return a;
    }
    return result(differences, a, b);
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

  /**
   * An operation with what came of it before; it is used too often to be put together each time.
   */
  private record Remembered(PairCache results, Operation operation) {}

  private int result(Remembered remembered, int a, int b) {
    int known = remembered.results().get(a, b);
    if (known >= 0) {
      return known;
    }
    if ((++steps & 0xFFF) == 0) {
      deadline.check();
    }
    int result = runByRun(a, b, remembered.operation());
    remembered.results().put(a, b, result, nodes.count());
    return result;
  }

  private int runByRun(int a, int b, Operation operation) {
    int axis = Math.min(axisOf(a), axisOf(b));
    Runs runs = new Runs(runs(a, axis) + runs(b, axis));
    int ofA = 0;
    int ofB = 0;
    while (ofA < runs(a, axis)) {
      int endOfA = runEnd(a, axis, ofA);
      int endOfB = runEnd(b, axis, ofB);
      int child = operation.apply(runChild(a, axis, ofA), runChild(b, axis, ofB));
      runs.add(child, Math.min(endOfA, endOfB));
      ofA += endOfA <= endOfB ? 1 : 0;
      ofB += endOfB <= endOfA ? 1 : 0;
    }
    return node(axis, runs);
  }

  /** How many runs of cells a diagram tells apart on an axis, not above its first. */
  int runs(int diagram, int axis) {
    return axisOf(diagram) == axis ? nodes.runs(diagram) : 1;
  }

  /** The cell after the last of a run. */
  int runEnd(int diagram, int axis, int run) {
    return axisOf(diagram) == axis ? nodes.runEnd(diagram, run) : sizes[axis];
  }

  /** What is left of a diagram once an axis lies in a run. */
  int runChild(int diagram, int axis, int run) {
    return axisOf(diagram) == axis ? nodes.runChild(diagram, run) : diagram;
  }

  /** The axis a diagram looks at first; beyond the last axis for {@link #NONE} and {@link #ALL}. */
  public int axisOf(int diagram) {
    return diagram <= ALL ? sizes.length : nodes.axis(diagram);
  }

  /** What is left of a diagram once an axis, not above its first, lies in a cell. */
  public int child(int diagram, int axis, int cell) {
    return axisOf(diagram) == axis ? nodes.child(diagram, cell) : diagram;
  }

  private int node(int axis, Runs runs) {
    return runs.single() ? runs.pairs()[0] : nodes.intern(axis, runs);
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
    int result;
    if (first < axis) {
      Runs runs = new Runs(nodes.runs(diagram));
      for (int run = 0; run < nodes.runs(diagram); run++) {
        int child = nodes.runChild(diagram, run);
        runs.add(change(child, axis, change, done), nodes.runEnd(diagram, run));
      }
      result = node(first, runs);
    } else {
      int[] children = new int[sizes[axis]];
      Arrays.setAll(children, cell -> child(diagram, axis, cell));
      result = node(axis, Runs.of(change.apply(children)));
    }
    done.put(diagram, result);
    return result;
  }

  /**
   * What the cells on some axes leave open: every situation that agrees there with one of a
   * diagram.
   */
  public int keep(int diagram, BitSet axes) {
    return keep(diagram, axes, new HashMap<>());
  }

  private int keep(int diagram, BitSet axes, Map<Integer, Integer> done) {
    if (diagram <= ALL) {
      return diagram;
    }
    Integer known = done.get(diagram);
    if (known != null) {
      return known;
    }
    int axis = nodes.axis(diagram);
    Runs runs = new Runs(nodes.runs(diagram));
    int any = NONE;
    for (int run = 0; run < nodes.runs(diagram); run++) {
      int child = keep(nodes.runChild(diagram, run), axes, done);
      runs.add(child, nodes.runEnd(diagram, run));
      any = axes.get(axis) ? any : or(any, child);
    }
    int result = axes.get(axis) ? node(axis, runs) : any;
    done.put(diagram, result);
    return result;
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
    int start = 0;
    for (int run = 0; run < nodes.runs(diagram); run++) {
      int child = nodes.runChild(diagram, run);
      if (child != NONE) {
        cells[axis].set(start, nodes.runEnd(diagram, run));
        collect(child, axis + 1, cells, done);
      }
      start = nodes.runEnd(diagram, run);
    }
  }

  /** For every axis all of its cells. */
  BitSet[] everything() {
    BitSet[] everything = new BitSet[sizes.length];
    for (int axis = 0; axis < sizes.length; axis++) {
      everything[axis] = new BitSet(sizes[axis]);
      everything[axis].set(0, sizes[axis]);
    }
    return everything;
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
      int start = 0;
      for (int run = 0; run < nodes.runs(diagram); run++) {
        int end = nodes.runEnd(diagram, run);
        BigInteger each = count(nodes.runChild(diagram, run), axis + 1, done);
        below = below.add(each.multiply(BigInteger.valueOf(end - start)));
        start = end;
      }
      done.put(diagram, below);
    }
    return free.multiply(below);
  }

  /** Whether a diagram holds a situation whose cells all lie in the box, given a set per axis. */
  public boolean meets(int diagram, BitSet[] box) {
    return questions.meets(diagram, box);
  }

  /** Cells of an axis in which a diagram holds a situation whose other cells lie in the box. */
  BitSet reached(int diagram, BitSet[] box, int axis) {
    return questions.reached(diagram, box, axis);
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
