package io.faultwright.input;

import io.faultwright.diagnostic.Problems;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node.Scalar;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The rows of a table with the places of their cells, one after the other; the separator is the
 * header's. No more than a row is kept.
 */
public final class TableRows {
  /** A row of more characters is no row: a quote is not closed. */
  private static final int LONGEST = 1_000_000;

  private final String path;
  private final BufferedReader in;
  private final Problems problems;
  private char separator = ',';
  private CSVFormat format;
  private int line;
  private boolean begun;

  public TableRows(String path, BufferedReader in, Problems problems) {
    this.path = path;
    this.in = in;
    this.problems = problems;
  }

  /**
   * A row.
   *
   * @param line where it begins, from 1
   * @param lines its text
   * @param cells its cells, at least one of them not empty
   */
  public record Row(int line, List<String> lines, List<Scalar> cells) {}

  /** What stands between two cells: a comma, a semicolon or a tab; known after the first row. */
  public char separator() {
    return separator;
  }

  /** The next row that has something in it; empty at the end, and where something is no row. */
  public Optional<Row> next() {
    Optional<Row> row = read();
    while (row.isPresent() && isEmpty(row.get()) && problems.isEmpty()) {
      row = read();
    }
    return row.filter(one -> !isEmpty(one));
  }

  private static boolean isEmpty(Row row) {
    return row.cells().stream().allMatch(cell -> cell.text().isEmpty());
  }

  private Optional<Row> read() {
    try {
      List<String> lines = lines();
      return lines.isEmpty() ? Optional.empty() : parsed(lines);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** The lines of the next row: more than one where a quote runs over the end of a line. */
  private List<String> lines() throws IOException {
    List<String> lines = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    do {
      String next = in.readLine();
      if (next == null) {
        return lines;
      }
      lines.add(begin(next));
      text.append(lines.get(lines.size() - 1)).append('\n');
    } while (text.length() < LONGEST && isOpen(text));
    return lines;
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

  /** Whether a cell that begins with a quote is not ended yet. */
  private boolean isOpen(CharSequence text) {
    boolean quoted = false;
    boolean starts = true;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' && (quoted || starts)) {
        boolean twice = quoted && i + 1 < text.length() && text.charAt(i + 1) == '"';
        i += twice ? 1 : 0;
        quoted = twice || !quoted;
      }
      starts = !quoted && (c == separator || c == '\n');
    }
    return quoted;
  }

  private Optional<Row> parsed(List<String> lines) {
    int start = line + 1;
    line += lines.size();
    try (CSVParser parser = CSVParser.parse(new StringReader(String.join("\n", lines)), format)) {
      for (CSVRecord record : parser) {
        return Optional.of(new Row(start, lines, cells(record, start, lines)));
      }
      return Optional.of(new Row(start, lines, List.of()));
    } catch (IOException | UncheckedIOException | IllegalStateException broken) {
      problems.add(
          new Place(path, start, 1, 1),
          "the row that begins here is not a row of a table",
          "close every quote, and write a quote inside quotes twice");
      return Optional.empty();
    }
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
