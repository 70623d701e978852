package io.faultwright.input;

import io.faultwright.diagnostic.Problems;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.Node.Scalar;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The cells of a table with their places; the separator is the header's. */
public final class Cells {
  private final SourceFile file;
  private final Problems problems;
  private final char separator;
  private final List<String> lines;

  public Cells(SourceFile file, Problems problems) {
    this.file = file;
    this.problems = problems;
    this.lines = file.text().lines().toList();
    this.separator = separator(lines.isEmpty() ? "" : lines.get(0));
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

  /** What stands between two cells: a comma, a semicolon or a tab. */
  public char separator() {
    return separator;
  }

  /** Every row that has something in it. */
  public List<List<Scalar>> rows() {
    CSVFormat format =
        CSVFormat.RFC4180.builder().setDelimiter(separator).setIgnoreEmptyLines(true).get();
    List<List<Scalar>> rows = new ArrayList<>();
    long line = 1;
    try (CSVParser parser = CSVParser.parse(new StringReader(file.text()), format)) {
      for (CSVRecord row : parser) {
        rows.add(cells(row, (int) line));
        line = parser.getCurrentLineNumber() + 1;
      }
    } catch (IOException | UncheckedIOException | IllegalStateException broken) {
      notATable((int) line);
    }
    rows.removeIf(row -> row.stream().allMatch(cell -> cell.text().isEmpty()));
    return rows;
  }

  private void notATable(int line) {
    problems.add(
        new Place(file.path(), line, 1, 1),
        "the row that begins here is not a row of a table",
        "close every quote, and write a quote inside quotes twice");
  }

  private List<Scalar> cells(CSVRecord row, int line) {
    List<Scalar> cells = new ArrayList<>();
    CellPlaces places = new CellPlaces(line, lines, separator);
    for (String cell : row) {
      Place place = places.next(file.path());
      cells.add(new Scalar(cell.strip(), true, place));
    }
    return cells;
  }
}
