package io.faultwright.field;

import java.util.Optional;

/**
 * How many rows there were, and what became of them.
 *
 * @param read rows with something in them
 * @param run those that could be judged
 * @param skipped those that could not be read
 * @param agreed run rows in which the rules say what was confirmed
 * @param disagreed run rows in which they say something else, or nothing
 * @param open run rows in which nothing was confirmed
 */
public record RowCounts(long read, long run, long skipped, long agreed, long disagreed, long open) {
  /** No row yet. */
  public static final RowCounts NONE = new RowCounts(0, 0, 0, 0, 0, 0);

  public RowCounts {
    if (read != run + skipped || run != agreed + disagreed + open) {
      throw new IllegalStateException("rows went astray: " + read + " read, " + run + " run");
    }
  }

  public RowCounts plus(RowCounts other) {
    return new RowCounts(
        read + other.read,
        run + other.run,
        skipped + other.skipped,
        agreed + other.agreed,
        disagreed + other.disagreed,
        open + other.open);
  }

  /** Counts rows one by one. */
  public static final class Counter {
    private long read;
    private long run;
    private long skipped;
    private long agreed;
    private long disagreed;
    private long open;

    /** A row is there; one of the others says what became of it. */
    public void read() {
      read++;
    }

    public void skipped() {
      skipped++;
    }

    /** A row was judged; it agrees, disagrees, or says nothing to agree with. */
    public void run(Optional<Boolean> agrees) {
      run++;
      if (agrees.isEmpty()) {
        open++;
      } else if (agrees.get()) {
        agreed++;
      } else {
        disagreed++;
      }
    }

    public RowCounts counts() {
      return new RowCounts(read, run, skipped, agreed, disagreed, open);
    }
  }
}
