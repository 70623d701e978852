package io.faultwright.analysis.operation;

import io.faultwright.analysis.operation.Reach.Limit;
import io.faultwright.operation.Line;
import io.faultwright.operation.Program;
import java.util.ArrayList;
import java.util.List;

/** Moments cut where another line becomes ready. */
final class Pieces {
  /**
   * Moments at which the same lines are ready.
   *
   * @param limits what the clocks are, of the lines that need some time
   */
  record Piece(Bounds bounds, List<Line> ready, List<Limit> limits) {}

  private Pieces() {}

  /**
   * The pieces that are not empty.
   *
   * @param lines whose states hold
   */
  static List<Piece> of(Bounds bounds, List<Line> lines) {
    List<Piece> pieces = List.of(new Piece(bounds, List.of(), List.of()));
    for (Line line : lines) {
      List<Piece> cut = new ArrayList<>();
      pieces.forEach(piece -> cut(piece, line, cut));
      pieces = cut;
    }
    return pieces;
  }

  private static void cut(Piece piece, Line line, List<Piece> cut) {
    if (line.after() == 0) {
      cut.add(new Piece(piece.bounds(), with(piece.ready(), line), piece.limits()));
    } else if (line.after() == Program.NEVER) {
      cut.add(piece);
    } else {
      Bounds over = piece.bounds().atLeast(line.clock(), line.after());
      Bounds yet = piece.bounds().atMost(line.clock(), line.after() - 1);
      if (!over.isEmpty()) {
        Limit limit = new Limit(line.clock(), true, line.after());
        cut.add(new Piece(over, with(piece.ready(), line), with(piece.limits(), limit)));
      }
      if (!yet.isEmpty()) {
        Limit limit = new Limit(line.clock(), false, line.after() - 1);
        cut.add(new Piece(yet, piece.ready(), with(piece.limits(), limit)));
      }
    }
  }

  static <T> List<T> with(List<T> some, T more) {
    List<T> all = new ArrayList<>(some);
    all.add(more);
    return List.copyOf(all);
  }
}
