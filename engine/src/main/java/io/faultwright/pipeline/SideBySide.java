package io.faultwright.pipeline;

import io.faultwright.analysis.space.OutOfTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Does pieces of work on all processors; their results come in the order of the pieces. */
final class SideBySide {
  private final Stop stop;
  private final Watch watch;

  SideBySide(Stop stop, Watch watch) {
    this.stop = stop;
    this.watch = watch;
  }

  /**
   * Does them until the work is stopped.
   *
   * @return how many were done
   */
  <T> int run(List<Supplier<T>> pieces, Consumer<T> each) {
    AtomicInteger ended = new AtomicInteger();
    List<Optional<T>> results =
        pieces.parallelStream()
            .map(
                piece -> {
                  Optional<T> result = once(piece);
                  watch.step(ended.incrementAndGet(), pieces.size());
                  return result;
                })
            .toList();
    List<T> done = new ArrayList<>();
    results.forEach(result -> result.ifPresent(done::add));
    done.forEach(each);
    return done.size();
  }

  private <T> Optional<T> once(Supplier<T> piece) {
    try {
      stop.deadline().check();
      return Optional.of(piece.get());
    } catch (OutOfTime late) {
      return Optional.empty();
    }
  }
}
