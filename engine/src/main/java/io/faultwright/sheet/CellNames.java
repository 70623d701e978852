package io.faultwright.sheet;

import io.faultwright.diagnostic.Problem;
import io.faultwright.source.Place;
import java.util.List;

/** Says where a cell of a workbook is as spreadsheets say it: {@code sheet "…", cell C7}. */
final class CellNames {
  private static final String MARK = ", sheet \"";
  private static final int LETTERS = 26;

  private CellNames() {}

  /** What a place in a sheet names as its file. */
  static String file(String workbook, String sheet) {
    return workbook + MARK + sheet + "\"";
  }

  /** Problems in the cells of workbooks, each with the name of its cell in front. */
  static List<Problem> name(List<Problem> problems) {
    return problems.stream().map(CellNames::named).toList();
  }

  private static Problem named(Problem problem) {
    boolean cell = problem.places().stream().anyMatch(CellNames::isCell);
    if (!cell) {
      return problem;
    }
    List<Place> others = problem.places().stream().filter(place -> !isCell(place)).toList();
    Place first = problem.places().stream().filter(CellNames::isCell).findFirst().orElseThrow();
    return new Problem(others, name(first) + ": " + problem.message(), problem.help());
  }

  private static boolean isCell(Place place) {
    return place.file().contains(MARK);
  }

  private static String name(Place cell) {
    return cell.file() + ", cell " + address(cell);
  }

  /** The address of a cell in its sheet, for instance {@code C7}. */
  static String address(Place cell) {
    StringBuilder letters = new StringBuilder();
    for (int c = cell.column(); c > 0; c = (c - 1) / LETTERS) {
      letters.insert(0, (char) ('A' + (c - 1) % LETTERS));
    }
    return letters.toString() + cell.line();
  }
}
