package io.faultwright.piece;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Makes pieces side by side on all processors, and takes those that were made from the same before
 * as they are. What comes out is in the order of what goes in, on any number of processors.
 */
public final class Workshop {
  private static final String DIGESTS = "digests of files";
  private static final Fingerprint NOTHING = new Fingerprint("");

  private final Ledger before;
  private final SortedMap<String, Entry> entries = new TreeMap<>();
  private final SortedMap<String, List<String>> notes = new TreeMap<>();
  private final Digests digests;
  private final Fingerprints fingerprints = Fingerprints.inWrittenOrder();

  /**
   * A workshop.
   *
   * @param before what was made earlier
   */
  public Workshop(Ledger before) {
    this.before = before;
    this.digests = new Digests(before.notes(DIGESTS));
  }

  /** Takes a piece that is made, in its turn. */
  public interface Taker {
    void take(Made made) throws IOException;
  }

  /** All pieces, made. */
  public List<Made> make(List<Piece> pieces) throws IOException {
    List<Made> made = new ArrayList<>();
    make(pieces, made::add);
    return made;
  }

  /** Makes pieces, and hands each over as soon as its turn has come. */
  public void make(List<Piece> pieces, Taker taker) throws IOException {
    ExecutorService workers = workers();
    try {
      List<Future<Finished>> started = new ArrayList<>();
      pieces.forEach(piece -> started.add(workers.submit(() -> finished(piece))));
      for (int i = 0; i < pieces.size(); i++) {
        Finished finished = await(started.get(i));
        started.set(i, null);
        note(finished);
        taker.take(finished.made());
      }
    } finally {
      workers.shutdownNow();
    }
  }

  /** Threads that do not keep the process alive. */
  private static ExecutorService workers() {
    return Executors.newFixedThreadPool(
        Runtime.getRuntime().availableProcessors(),
        task -> {
          Thread thread = new Thread(task, "publish");
          thread.setDaemon(true);
          return thread;
        });
  }

  private record Finished(String name, Optional<Fingerprint> inputs, Made made) {}

  private Finished finished(Piece piece) throws IOException {
    Piece.Begun begun = piece.start().begin();
    Optional<Made> kept = begun.inputs().flatMap(inputs -> before.find(piece.name(), inputs));
    Made made = kept.isPresent() ? kept.get() : begun.work().make();
    return new Finished(piece.name(), begun.inputs(), made);
  }

  private static Finished await(Future<Finished> making) throws IOException {
    try {
      return making.get();
    } catch (ExecutionException failed) {
      throw raised(failed.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IOException("publishing was interrupted", stopped);
    }
  }

  /** What went wrong, as if it had been on this thread. */
  private static IOException raised(Throwable cause) {
    if (cause instanceof IOException trouble) {
      return trouble;
    }
    if (cause instanceof Error error) {
      throw error;
    }
    throw cause instanceof RuntimeException mistake ? mistake : new IllegalStateException(cause);
  }

  private void note(Finished finished) {
    notes.put(finished.name(), finished.made().notes());
    finished.inputs().ifPresent(inputs -> note(Entry.of(finished.name(), inputs, finished.made())));
  }

  /** Whether something of that name was made, or known, from the same before. */
  public boolean knew(String name, Fingerprint inputs) {
    return before.has(name, inputs);
  }

  /** Notes that something is known that is no file, such as a proof. */
  public void note(String name, Fingerprint inputs) {
    note(new Entry(name, inputs, List.of(), List.of()));
  }

  private void note(Entry entry) {
    if (entries.put(entry.name(), entry) != null) {
      throw new IllegalArgumentException("`" + entry.name() + "` is made twice");
    }
  }

  /** The notes of a piece that was made here; nothing where there is none of that name. */
  public Optional<List<String>> notes(String name) {
    return Optional.ofNullable(notes.get(name));
  }

  /** Takes the fingerprints of what pieces are made from; things that they share once. */
  public Fingerprints fingerprints() {
    return fingerprints;
  }

  /** Digests of files, those of an earlier publish among them. */
  public Digests digests() {
    return digests;
  }

  /** The ledger of all that was made; nothing where the program cannot be told from another. */
  public Optional<byte[]> ledger() {
    SortedMap<String, Entry> all = new TreeMap<>(entries);
    all.put(DIGESTS, new Entry(DIGESTS, NOTHING, List.of(), digests.notes()));
    return Program.fingerprint().map(program -> Ledger.bytes(program, all.values()));
  }
}
