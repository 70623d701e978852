package io.faultwright.sheet;

import io.faultwright.diagnostic.Problem;
import io.faultwright.source.Sources;
import java.util.List;
import java.util.SortedMap;

/**
 * What an import makes of a knowledge base; nothing is written yet.
 *
 * @param tables what becomes of each table
 * @param files the new text of every file that changes, by path, with its line ends
 * @param after the knowledge base as it will be
 */
public record Imported(List<TableImport> tables, SortedMap<String, String> files, Sources after) {
  public Imported {
    tables = List.copyOf(tables);
  }

  /** A problem for each comment that is gone after the import. */
  public List<Problem> lostComments() {
    return tables.stream()
        .flatMap(table -> table.remarks().stream())
        .filter(Remark::lost)
        .map(Imported::lost)
        .toList();
  }

  private static Problem lost(Remark remark) {
    return Problem.at(
        remark.place(),
        "this comment would be lost",
        "move it away from rows that go, or import with `--drop-comments`");
  }
}
