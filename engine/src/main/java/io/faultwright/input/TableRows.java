package io.faultwright.input;

import io.faultwright.diagnostic.Problem;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node.Scalar;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The rows of a table with the places of their cells, one after the other; the separator is the
 * header's. No more than a row is kept. Where a line is no row, the next line is looked at anew: a
 * quote that is not closed spoils no other row.
 */
public final class TableRows {
  /** A row over several lines of more characters is no row: a quote is not closed. */
  private static final int LONGEST = 100_000;

  private final String path;
  private final BufferedReader in;
  private final Deque<String> again = new ArrayDeque<>();
  private char separator = ',';
  private CSVFormat format;
  private int line;
  private boolean begun;
  private int widest = Integer.MAX_VALUE;

  public TableRows(String path, BufferedReader in) {
    this.path = path;
    this.in = in;
  }

  /**
   * A row, or a line that is none.
   *
   * @param line where it begins, from 1
   * @param lines its text
   * @param cells its cells, at least one of them not empty; none where it is no row
   * @param problem why it is no row
   */
  public record Row(int line, List<String> lines, List<Scalar> cells, Optional<Problem> problem) {}

  /** From now on, more cells in a row over several lines show that a quote is not closed. */
  void atMost(int cells) {
    widest = cells;
  }

  /** What stands between two cells: a comma, a semicolon or a tab; known after the first row. */
  public char separator() {
    return separator;
  }

  /** The next row that has something in it, or line that is no row; empty at the end. */
  public Optional<Row> next() {
    Optional<Row> row = read();
    while (row.isPresent() && isEmpty(row.get())) {
      row = read();
    }
    return row;
  }

  private static boolean isEmpty(Row row) {
    return row.problem().isEmpty() && row.cells().stream().allMatch(cell -> cell.text().isEmpty());
  }

  private Optional<Row> read() {
    try {
      List<String> lines = new ArrayList<>();
      boolean whole = lines(lines);
      return lines.isEmpty() ? Optional.empty() : Optional.of(row(lines, whole));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** The lines of the next row, several where a quote runs over them; false where it is open. */
  private boolean lines(List<String> lines) throws IOException {
    int length = 0;
    boolean open = false;
    do {
      String next = again.isEmpty() ? in.readLine() : again.pop();
      if (next == null) {
        return !open;
      }
      lines.add(begin(next));
      length += next.length();
      open = isOpen(lines.get(lines.size() - 1), open);
    } while (open && length < LONGEST);
    return !open;
  }

  /** The first line says what separates cells; a byte order mark before it is dropped. */
  private String begin(String next) {
    if (begun) {
      return next;
    }
    String header = next.startsWith("\uFEFF") ? next.substring(1) : next;
    begun = true;
    separator = separator(header);
    format = CSVFormat.RFC4180.builder().setDelimiter(separator).get();
    return header;
  }

  /** Spreadsheets of some languages write semicolons. */
  private static char separator(String header) {
    return Stream.of(',', ';', '\t')
        .max((a, b) -> Long.compare(count(header, a), count(header, b)))
        .filter(most -> count(header, most) > count(header, ','))
        .orElse(',');
  }

  private static long count(String text, char wanted) {
    return text.chars().filter(c -> c == wanted).count();
  }

  /** Whether a cell that begins with a quote is not ended at the end of a line. */
  private boolean isOpen(String text, boolean before) {
    boolean quoted = before;
    boolean starts = !before;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' && (quoted || starts)) {
        boolean twice = quoted && i + 1 < text.length() && text.charAt(i + 1) == '"';
        i += twice ? 1 : 0;
        quoted = twice || !quoted;
      }
      starts = !quoted && c == separator;
    }
    return quoted;
  }

  private Row row(List<String> lines, boolean whole) throws IOException {
    List<Scalar> cells = whole ? cells(lines) : List.of();
    boolean ran = lines.size() > 1 && cells.size() > widest;
    if (!whole || ran || cells.isEmpty() && !isBlank(lines)) {
      return noRow(lines);
    }
    int start = line + 1;
    line += lines.size();
    return new Row(start, lines, cells, Optional.empty());
  }

  private static boolean isBlank(List<String> lines) {
    return lines.stream().allMatch(String::isEmpty);
  }

  /** The first line alone is lost. */
  private Row noRow(List<String> lines) {
    for (int i = lines.size() - 1; i > 0; i--) {
      again.push(lines.get(i));
    }
    line++;
    Problem problem =
        Problem.at(
            new Place(path, line, 1, 1),
            "the row that begins here is not a row of a table",
            "close every quote, and write a quote inside quotes twice");
    return new Row(line, lines.subList(0, 1), List.of(), Optional.of(problem));
  }

  /** The cells of a row; none where it cannot be told apart into cells. */
  private List<Scalar> cells(List<String> lines) throws IOException {
    try (CSVParser parser = CSVParser.parse(new StringReader(String.join("\n", lines)), format)) {
      for (CSVRecord record : parser) {
        return cells(record, line + 1, lines);
      }
    } catch (UncheckedIOException | IllegalStateException broken) {
      return List.of();
    }
    return List.of();
  }

  private List<Scalar> cells(CSVRecord row, int start, List<String> lines) {
    List<Scalar> cells = new ArrayList<>();
    CellPlaces places = new CellPlaces(start, lines, separator);
    for (String cell : row) {
      cells.add(new Scalar(cell.strip(), true, places.next(path)));
    }
    return cells;
  }
}
