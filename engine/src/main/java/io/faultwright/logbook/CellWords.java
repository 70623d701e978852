package io.faultwright.logbook;

import io.faultwright.diagnostic.Problems;
import io.faultwright.operation.Program;
import io.faultwright.resolve.LogMap;
import io.faultwright.resolve.LogWords;
import io.faultwright.resolve.Told;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node.Scalar;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What the cells of one column, or the values of one signal, say; and what it said last. */
final class CellWords {
  private static final int MOST_KEPT = 10_000;

  private final LogMap.Column column;
  private final Program program;
  private final Signals signals;
  private final Map<String, Said> known = new HashMap<>();
  private String lastWritten = "";
  private Optional<Said> last = Optional.empty();

  CellWords(LogMap.Column column, Program program, Signals signals) {
    this.column = column;
    this.program = program;
    this.signals = signals;
  }

  /** Whether a cell says again what it said last; nothing has to be looked up then. */
  boolean isRepeated(RowCells cells, int cell) {
    return last.isPresent() && cells.is(cell, lastWritten);
  }

  /** What it said last. */
  Optional<Said> last() {
    return last;
  }

  /** What a cell says; empty where that is a mistake, which is kept. */
  Optional<Said> read(RowCells cells, int cell, LogLines lines) {
    String written = cells.written(cell);
    Optional<Said> said =
        Optional.ofNullable(known.get(written))
            .or(() -> learn(written, cells.text(cell), place(cells, cell, lines), lines));
    if (said.isPresent() && said.get().kind() != Said.Kind.NOTHING || isRelease(said)) {
      last = said;
      lastWritten = written;
    }
    return said;
  }

  /** A push that is let go: pressed again, it is news. */
  private boolean isRelease(Optional<Said> said) {
    return said.isPresent() && last.filter(before -> !before.lasts()).isPresent();
  }

  private static Place place(RowCells cells, int cell, LogLines lines) {
    return lines.place(cells.from(cell), cells.to(cell));
  }

  private Optional<Said> learn(String written, String text, Place place, LogLines lines) {
    Problems found = new Problems();
    LogWords words = new LogWords(program.sequence(), found);
    Optional<Said> said =
        Optional.ofNullable(column.words().get(LogMap.folded(text)))
            .or(() -> words.cell(column.is(), scalar(text, place)))
            .or(() -> column.skip() ? Optional.of(new Told.Nothing()) : Optional.empty())
            .map(signals::said);
    if (said.isEmpty()) {
      found.sorted().forEach(one -> lines.wrong(place, one.message(), one.help() + inMap(text)));
    }
    said.filter(one -> known.size() < MOST_KEPT).ifPresent(one -> known.put(written, one));
    return said;
  }

  /** How the map says what a cell means; controllers write 0 and 1 where a sequence has words. */
  private String inMap(String text) {
    String heading = column.heading().text().strip();
    if (isEvent() || column.is().equals(LogWords.DISPLAY)) {
      return "";
    }
    return column.words().isEmpty()
        ? "; if it means one of these, write in the map `"
            + heading
            + ": { is: "
            + column.is()
            + ", words: { \""
            + text
            + "\": … } }`"
        : "; others go into `words` of `" + heading + "` in the map";
  }

  private static Scalar scalar(String text, Place place) {
    return new Scalar(text, true, place);
  }

  /** Whether it tells what happened, each time anew. */
  boolean isEvent() {
    return column.is().equals(LogWords.EVENT);
  }
}
