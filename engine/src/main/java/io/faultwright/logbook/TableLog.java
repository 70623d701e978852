package io.faultwright.logbook;

import io.faultwright.diagnostic.Problem;
import io.faultwright.operation.Program;
import io.faultwright.resolve.LogMap;
import io.faultwright.resolve.Told;
import java.io.BufferedReader;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A controller's log as a table: a header row, then rows with a time, and either a column for each
 * signal or a column that names the signal and one that holds its value. A row that says again what
 * an input was in before tells no event.
 */
public final class TableLog implements LogInput {
  private static final Said NOTHING = new Said(new Told.Nothing(), Said.Kind.NOTHING, 0, 0);

  private final LogLines lines;
  private final StepClock clock;
  private final LogMap map;
  private final RowCells cells;
  private final RowClock times;
  private final LogColumns columns;
  private final Deque<Entry> ready = new ArrayDeque<>();
  private boolean before = true;

  /**
   * Begins to read a log.
   *
   * @param path what to call it in messages
   * @throws io.faultwright.diagnostic.Unreadable where its header row does not fit the map
   */
  public TableLog(String path, BufferedReader in, LogMap map, Program program) {
    this.lines = new LogLines(path, in);
    this.clock = new StepClock(program.sequence());
    this.map = map;
    String header = header();
    this.cells = new RowCells(RowCells.separator(header));
    this.times = new RowClock(map.time(), lines, clock);
    this.columns = LogColumns.of(map, program, cells, header, lines);
    lines.refuse();
  }

  private String header() {
    Optional<String> line = lines.next();
    while (line.isPresent() && !isHeader(line.get())) {
      line = lines.next();
    }
    return line.orElse("");
  }

  private boolean isHeader(String line) {
    return map.header().isPresent() ? lines.number() == map.header().getAsInt() : !line.isBlank();
  }

  @Override
  public List<Problem> notes() {
    return columns.notes();
  }

  @Override
  public boolean holds() {
    return true;
  }

  @Override
  public Optional<Entry> next() {
    while (ready.isEmpty()) {
      Optional<String> line = lines.next();
      if (line.isEmpty()) {
        return Optional.empty();
      }
      if (!line.get().isBlank()) {
        row(line.get());
      }
    }
    return Optional.of(ready.poll());
  }

  private void row(String line) {
    if (!cells.next(line)) {
      lines.wrong(0, line.length(), "a quote is not closed", "close it on the line it begins on");
      return;
    }
    if (IntStream.range(0, cells.count()).allMatch(cells::isEmpty)) {
      return;
    }
    long nanos = times.read(cells, columns, line);
    if (nanos == TimeText.NONE) {
      return;
    }
    boolean early = clock.isBeforeZero(nanos);
    if (before && !early) {
      before = false;
      columns.states().forEach(said -> add(0, said, 0, 1));
    }
    long step = early ? 0 : clock.step(nanos);
    int states = ready.size();
    cells(step, early);
    beyond();
    if (ready.size() == states && !early) {
      add(step, NOTHING, 0, 1);
    }
  }

  private void cells(long step, boolean early) {
    if (map.signal().isPresent()) {
      signal(step, early);
      return;
    }
    for (int cell = 0; cell < columns.count(); cell++) {
      cell(step, cell, columns.column(cell), early);
    }
  }

  /** A row with more cells than the header has them in the wrong columns. */
  private void beyond() {
    for (int cell = columns.count(); cell < cells.count(); cell++) {
      if (!cells.isEmpty(cell)) {
        String found = "the row has " + cells.count() + " cells, the header has " + columns.count();
        String help = "put a cell that has a separator in it in quotes";
        lines.wrong(cells.from(cell), cells.to(cell), found, help);
        return;
      }
    }
  }

  private void signal(long step, boolean early) {
    if (!cells.isEmpty(columns.signal())) {
      cell(step, columns.value(), columns.named(cells), early);
    }
  }

  private void cell(long step, int cell, Optional<CellWords> column, boolean early) {
    if (column.isEmpty() || cells.isEmpty(cell)) {
      return;
    }
    CellWords words = column.get();
    boolean repeated = words.isRepeated(cells, cell) && !words.isEvent();
    Optional<Said> said = repeated ? words.last() : words.read(cells, cell, lines);
    boolean news = said.isPresent() && isNews(said.get(), repeated);
    if (news && !early) {
      add(step, said.get(), cells.from(cell), cells.to(cell));
    }
  }

  /** What was seen is said in each row: it holds there. */
  private static boolean isNews(Said said, boolean repeated) {
    return said.kind() == Said.Kind.SEEN || said.kind() == Said.Kind.EVENT && !repeated;
  }

  private void add(long step, Said said, int from, int to) {
    ready.add(
        new Entry(
            lines.path(), step, said, lines.number(), lines.place(from, to).column(), to - from));
  }
}
