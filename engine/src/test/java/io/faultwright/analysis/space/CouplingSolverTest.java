package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.z3.BoolExpr;
import com.microsoft.z3.Context;
import com.microsoft.z3.Solver;
import com.microsoft.z3.Status;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The space of readings that hang together against a solver for real arithmetic that knows nothing
 * of it: Z3, which decides linear real arithmetic (Dutertre and de Moura, "A Fast Linear-Arithmetic
 * Solver for DPLL(T)", CAV 2006). {@code -Drandom.solved=5000} runs more knowledge bases.
 */
class CouplingSolverTest {
  private static final int COUNT = Integer.getInteger("random.solved", 150);

  /** How many combinations of each knowledge base are asked about. */
  private static final int ASKED = 20;

  @Test
  void aCombinationIsAllowedExactlyWhereTheSolverFindsAPoint() {
    int[] met = new int[2];
    for (long seed = 0; seed < COUNT; seed++) {
      compare(seed, met);
    }
    assertTrue(met[0] > COUNT && met[1] > COUNT, "allowed and refused: " + Arrays.toString(met));
  }

  private static void compare(long seed, int[] met) {
    Space space = CoupledKnowledge.of(seed).space();
    Random random = new Random(seed);
    try (Context context = new Context()) {
      SolverSpace solved = new SolverSpace(context, space);
      Solver solver = context.mkSolver();
      for (int i = 0; i < ASKED; i++) {
        int[] path = changed(Paths.any(space, space.consistent(), random), space, random);
        if (solved.speaksOf(path)) {
          boolean allowed = Paths.holds(space, space.consistent(), path);
          assertEquals(
              isSatisfiable(solver, solved.point(path)),
              allowed,
              seed + ": " + Arrays.toString(path));
          met[allowed ? 0 : 1]++;
        }
      }
    }
  }

  /** The combination with up to two cells replaced by any. */
  private static int[] changed(int[] path, Space space, Random random) {
    for (int changes = random.nextInt(3); changes > 0; changes--) {
      int axis = 1 + random.nextInt(path.length - 1);
      path[axis] = random.nextInt(space.diagrams().size(axis));
    }
    return path;
  }

  @SuppressWarnings("unchecked") // the solver takes an array of a generic type
  private static boolean isSatisfiable(Solver solver, BoolExpr statement) {
    solver.push();
    solver.add(statement);
    Status status = solver.check();
    solver.pop();
    if (status == Status.UNKNOWN) {
      throw new AssertionError(solver.getReasonUnknown());
    }
    return status == Status.SATISFIABLE;
  }
}
