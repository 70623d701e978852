package io.faultwright.logbook;

import io.faultwright.logbook.Came.Began;
import io.faultwright.operation.Program;
import io.faultwright.operation.Reason;
import io.faultwright.operation.Watcher;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.Optional;
import java.util.function.Consumer;

/** The stays of a model in its phases, as far back as they matter. */
final class Stays implements Watcher {
  /**
   * A stay in a phase.
   *
   * @param to step at which the next began; {@link Program#NEVER} for the last
   */
  record Stay(Came came, long to) {
    long from() {
      return came.now().step();
    }

    int phase() {
      return came.now().phase();
    }
  }

  private final Consumer<Came> further;
  private final Deque<Stay> kept = new ArrayDeque<>();

  /**
   * @param further is told of every phase as it begins
   */
  Stays(Consumer<Came> further) {
    this.further = further;
  }

  @Override
  public void entered(long step, int phase, Reason reason) {
    Optional<Stay> last = Optional.ofNullable(kept.pollLast());
    Came came = new Came(new Began(step, phase, reason), last.map(one -> one.came().now()));
    last.map(one -> new Stay(one.came(), step)).filter(this::isNew).ifPresent(kept::add);
    kept.add(new Stay(came, Program.NEVER));
    further.accept(came);
  }

  /** A phase that is over at once counts once in a step, however often it comes. */
  private boolean isNew(Stay over) {
    if (over.from() < over.to()) {
      return true;
    }
    Iterator<Stay> back = kept.descendingIterator();
    boolean isNew = true;
    while (isNew && back.hasNext()) {
      Stay earlier = back.next();
      if (earlier.from() < over.from()) {
        return true;
      }
      isNew = earlier.phase() != over.phase();
    }
    return isNew;
  }

  /** Forgets what was over before a step. */
  void forget(long step) {
    while (kept.size() > 1 && kept.peek().to() < step) {
      kept.poll();
    }
  }

  Iterable<Stay> all() {
    return kept;
  }

  /** The last stay that had begun by a step. */
  Stay at(long step) {
    Iterator<Stay> back = kept.descendingIterator();
    Stay found = back.next();
    while (found.from() > step && back.hasNext()) {
      found = back.next();
    }
    return found;
  }
}
