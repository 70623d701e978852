package io.faultwright.logbook;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.operation.Program;
import io.faultwright.resolve.LogMap;
import io.faultwright.syntax.Node.Scalar;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The columns of a log, by its header row. */
final class LogColumns {
  private static final int MISSING = -1;

  private final LogMap map;
  private final LogLines lines;
  private final List<String> headings = new ArrayList<>();
  private final SortedMap<String, CellWords> words = new TreeMap<>();
  private final List<Optional<CellWords>> columns = new ArrayList<>();
  private final List<Problem> notes = new ArrayList<>();
  private int time;
  private int date = MISSING;
  private int signal = MISSING;
  private int value = MISSING;

  private LogColumns(LogMap map, Program program, LogLines lines) {
    this.map = map;
    this.lines = lines;
    Signals signals = new Signals(program);
    map.columns()
        .forEach((name, column) -> words.put(name, new CellWords(column, program, signals)));
  }

  /** Reads a header row; what is wrong with it is kept with the lines. */
  static LogColumns of(LogMap map, Program program, RowCells cells, String header, LogLines lines) {
    LogColumns read = new LogColumns(map, program, lines);
    if (header.isBlank()) {
      lines.wrong(0, 0, missing(map), "it needs a header row, then a row for each time");
    } else if (!cells.next(header)) {
      lines.wrong(0, header.length(), "a quote is not closed", "close it on the line it begins on");
    } else {
      read.header(cells);
    }
    return read;
  }

  private static String missing(LogMap map) {
    return map.header().isPresent()
        ? "the log has no headings on line " + map.header().getAsInt()
        : "the log is empty";
  }

  private void header(RowCells cells) {
    for (int cell = 0; cell < cells.count(); cell++) {
      String heading = cells.text(cell);
      if (!heading.isEmpty() && headings.contains(heading)) {
        wrong(cells, cell, "column `" + heading + "` stands twice", "rename one of the two");
      }
      headings.add(heading);
    }
    if (isForeign()) {
      lines.wrong(
          cells.from(0),
          cells.to(0),
          (map.header().isPresent() ? "line " + lines.number() : "the first line")
              + " has none of the columns that the map names",
          headings());
      return;
    }
    time = required(map.time().heading());
    date = map.time().date().map(this::required).orElse(MISSING);
    signal = map.signal().map(this::required).orElse(MISSING);
    value = map.value().map(this::required).orElse(MISSING);
    for (int cell = 0; cell < cells.count(); cell++) {
      columns.add(column(cells, cell));
    }
    if (map.signal().isEmpty()) {
      map.columns().values().forEach(column -> required(column.heading()));
    }
  }

  /** Whether it is no header of such a table at all. */
  private boolean isForeign() {
    Stream<String> named =
        Stream.concat(
                Stream.of(map.time().heading()),
                map.columns().values().stream().map(LogMap.Column::heading))
            .map(heading -> heading.text().strip());
    return named
        .flatMap(name -> Stream.concat(Stream.of(name), NearMatch.of(name, headings).stream()))
        .noneMatch(headings::contains);
  }

  /** Where the headings may stand instead. */
  private String headings() {
    OptionalInt line = lines.ahead(this::isHeader);
    return line.isEmpty()
        ? "a table begins with a row of headings; a typed log is read without `--columns`"
        : "the headings stand on line "
            + line.getAsInt()
            + ": write `header: "
            + line.getAsInt()
            + "` in the map";
  }

  private boolean isHeader(String line) {
    RowCells cells = new RowCells(RowCells.separator(line));
    return cells.next(line)
        && IntStream.range(0, cells.count())
            .mapToObj(cells::text)
            .anyMatch(map.time().heading().text().strip()::equals);
  }

  private void wrong(RowCells cells, int cell, String message, String help) {
    lines.wrong(cells.from(cell), cells.to(cell), message, help);
  }

  /** The number of a column that has to be there. */
  private int required(Scalar heading) {
    String name = heading.text().strip();
    int found = headings.indexOf(name);
    if (found == MISSING) {
      lines.wrong(0, 1, "the log has no column `" + name + "`", instead(name));
    }
    return Math.max(0, found);
  }

  /** What may be meant; where UTF-8 was read as something else, no heading is misspelt. */
  private String instead(String name) {
    String misread = new String(name.getBytes(StandardCharsets.UTF_8), map.encoding());
    return !misread.equals(name) && headings.contains(misread)
        ? "the log is UTF-8: take `encoding` out of the map"
        : NearMatch.help(name, headings);
  }

  private Optional<CellWords> column(RowCells cells, int cell) {
    String heading = headings.get(cell);
    boolean other = cell == time || cell == date || cell == signal || cell == value;
    if (other || heading.isEmpty() || map.ignored().contains(heading)) {
      return Optional.empty();
    }
    Optional<CellWords> known =
        map.signal().isEmpty() ? Optional.ofNullable(words.get(heading)) : Optional.empty();
    if (known.isEmpty()) {
      notes.add(
          Problem.at(
              lines.place(cells.from(cell), cells.to(cell)),
              "column `" + heading + "` is left out",
              near(heading).orElse("say in the map what it is, or put it under `ignore` there")));
    }
    return known;
  }

  private Optional<String> near(String heading) {
    return NearMatch.of(heading, words.keySet()).map(match -> "did you mean `" + match + "`?");
  }

  List<Problem> notes() {
    return List.copyOf(notes);
  }

  int time() {
    return time;
  }

  /** The number of the column of the date; below zero where it has none of its own. */
  int date() {
    return date;
  }

  int signal() {
    return signal;
  }

  int value() {
    return value;
  }

  int count() {
    return columns.size();
  }

  /** What a column says; empty where it is left out. */
  Optional<CellWords> column(int number) {
    return columns.get(number);
  }

  /** What the signal says that a row names; empty where it is of no concern or not known. */
  Optional<CellWords> named(RowCells cells) {
    String name = cells.text(signal);
    Optional<CellWords> known = Optional.ofNullable(words.get(name));
    if (known.isEmpty() && !map.ignored().contains(name)) {
      lines.wrong(
          cells.from(signal),
          cells.to(signal),
          "unknown signal `" + TypedLog.shown(name) + "`",
          near(name).orElse("say in the map what it is, or put it under `ignore` there"));
    }
    return known;
  }

  /** What every column said last, where that lasts. */
  List<Said> states() {
    return words.values().stream()
        .filter(column -> !column.isEvent())
        .flatMap(column -> column.last().stream())
        .filter(Said::lasts)
        .toList();
  }
}
