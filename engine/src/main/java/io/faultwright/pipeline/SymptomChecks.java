package io.faultwright.pipeline;

import io.faultwright.analysis.space.Deadline;
import io.faultwright.model.Excerpts;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/** Checks symptoms side by side, each on its own and from its excerpt, within the time allowed. */
final class SymptomChecks {
  /** For what an analysis has to tidy up once its time is over. */
  private static final Duration GRACE = Duration.ofSeconds(5);

  private final KnowledgeBase kb;
  private final Excerpts excerpts;
  private final Watch watch;
  private final AtomicInteger done = new AtomicInteger();

  SymptomChecks(KnowledgeBase kb, Watch watch) {
    this.kb = kb;
    this.excerpts = new Excerpts(kb);
    this.watch = watch;
  }

  /**
   * One result for each symptom that is left, by id; not computed where the time was not enough.
   */
  List<SymptomCheck> run(Due due) {
    List<Symptom> symptoms = due.symptoms(kb);
    Deadline deadline = due.scope().time().map(Deadline::in).orElse(Deadline.NEVER);
    ExecutorService workers = workers();
    try {
      List<Future<SymptomCheck>> started =
          symptoms.stream()
              .map(s -> workers.submit(() -> check(s, symptoms.size(), deadline)))
              .toList();
      return IntStream.range(0, started.size())
          .mapToObj(i -> await(started.get(i), symptoms.get(i), deadline))
          .toList();
    } finally {
      workers.shutdownNow();
    }
  }

  /** Threads that do not keep the process alive when the time is over. */
  private static ExecutorService workers() {
    return Executors.newFixedThreadPool(
        Runtime.getRuntime().availableProcessors(),
        task -> {
          Thread thread = new Thread(task, "check");
          thread.setDaemon(true);
          return thread;
        });
  }

  private SymptomCheck check(Symptom symptom, int all, Deadline deadline) {
    SymptomCheck check = SymptomCheck.of(excerpts.forProof(symptom), symptom, deadline);
    watch.step(done.incrementAndGet(), all);
    return check;
  }

  private SymptomCheck await(Future<SymptomCheck> check, Symptom symptom, Deadline deadline) {
    try {
      long left = Math.max(0, deadline.nanosLeft()) + GRACE.toNanos();
      return check.get(left, TimeUnit.NANOSECONDS);
    } catch (TimeoutException late) {
      return SymptomCheck.notComputed(kb, symptom);
    } catch (ExecutionException failed) {
      throw new IllegalStateException("checking `" + symptom.id() + "` failed", failed.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("checking was interrupted", stopped);
    }
  }
}
