package io.faultwright.sheet;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.quantity.Unit;
import io.faultwright.resolve.QuantityParser;
import io.faultwright.syntax.Node.Scalar;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the headings of a sheet: which column of the table stands where, and in which unit. */
final class Headings {
  private static final Pattern HEADING = Pattern.compile("(.*?)\\s*\\[\\s*(.*?)\\s*\\]");

  /**
   * A column of the table in the sheet.
   *
   * @param column which one
   * @param index where it stands in the sheet, from 0
   * @param unit of its numbers in the sheet
   * @param heading as it was written
   */
  record Found(SheetColumn column, int index, Optional<Unit> unit, Scalar heading) {}

  private final List<SheetColumn> columns;
  private final Problems problems;
  private final Map<String, Found> found = new LinkedHashMap<>();
  private final Set<String> meant = new HashSet<>();

  private Headings(List<SheetColumn> columns, Problems problems) {
    this.columns = columns;
    this.problems = problems;
  }

  /** The columns that are there; what is wrong with the headings goes to the problems. */
  static List<Found> of(List<GridCell> row, List<SheetColumn> columns, Problems problems) {
    Headings headings = new Headings(columns, problems);
    for (int i = 0; i < row.size(); i++) {
      if (!row.get(i).isBlank()) {
        headings.read(i, row.get(i).scalar());
      }
    }
    headings.missing(row.get(0).scalar());
    return List.copyOf(headings.found.values());
  }

  private void read(int index, Scalar heading) {
    Matcher parts = HEADING.matcher(heading.text().strip());
    boolean withUnit = parts.matches();
    String id = withUnit ? parts.group(1) : heading.text().strip();
    Optional<String> symbol = withUnit ? Optional.of(parts.group(2)) : Optional.empty();
    columns.stream()
        .filter(column -> column.id().equals(id))
        .findFirst()
        .ifPresentOrElse(
            column -> add(new Found(column, index, unit(column, symbol, heading), heading)),
            () -> unknown(id, heading));
  }

  private void add(Found one) {
    Found earlier = found.putIfAbsent(one.column().id(), one);
    if (earlier != null) {
      problems.add(
          new Problem(
              List.of(one.heading().place(), earlier.heading().place()),
              "the column `" + one.column().id() + "` stands twice",
              "keep one of the two"));
    }
  }

  private Optional<Unit> unit(SheetColumn column, Optional<String> symbol, Scalar heading) {
    if (symbol.isEmpty() || column.unit().isEmpty()) {
      symbol.ifPresent(one -> noUnit(column, one, heading));
      return column.unit();
    }
    String whose = "`" + column.reading().orElse(column.id()) + "`";
    return new QuantityParser(problems)
        .unit(heading.place(), symbol.get(), column.unit().get(), whose)
        .or(column::unit);
  }

  private void noUnit(SheetColumn column, String symbol, Scalar heading) {
    problems.add(
        heading.place(),
        "`" + column.id() + "` is not measured, so it has no unit `" + symbol + "`",
        "write the heading as `" + column.heading() + "`");
  }

  private void unknown(String id, Scalar heading) {
    List<String> known = columns.stream().map(SheetColumn::id).toList();
    NearMatch.of(id, known).ifPresent(meant::add);
    problems.add(
        heading.place(),
        "the table has no column `" + id + "`",
        NearMatch.of(id, known)
            .map(name -> "did you mean `" + name + "`?")
            .orElse("its columns are `" + String.join("`, `", known) + "`; delete the others"));
  }

  private void missing(Scalar first) {
    columns.stream()
        .filter(column -> !found.containsKey(column.id()) && !meant.contains(column.id()))
        .forEach(
            column ->
                problems.add(
                    first.place(),
                    "the sheet has no column `" + column.id() + "`",
                    "add a column with the heading `"
                        + column.heading()
                        + "`; its cells may be empty"));
  }
}
