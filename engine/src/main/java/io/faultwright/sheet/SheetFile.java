package io.faultwright.sheet;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderContents;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A file of a spreadsheet that was read.
 *
 * @param name the name of the file, for messages
 * @param text the text of a CSV file
 * @param sheets the sheets of a workbook, or the only one of a CSV file
 */
public record SheetFile(String name, Optional<SourceFile> text, List<Grid> sheets) {
  public SheetFile {
    sheets = List.copyOf(sheets);
  }

  /**
   * Reads a file.
   *
   * @throws Unreadable where it is not what its ending says
   */
  public static SheetFile read(String name, byte[] content, SheetFormat format) {
    return format == SheetFormat.XLSX
        ? new SheetFile(name, Optional.empty(), XlsxReader.read(name, content))
        : csv(name, content);
  }

  private static SheetFile csv(String name, byte[] content) {
    SortedMap<String, byte[]> only = new TreeMap<>();
    only.put(name, content);
    SourceFile text = FolderContents.decode(only).find(name).orElseThrow();
    Problems problems = new Problems();
    Grid grid = CsvReader.read(text, problems);
    if (!problems.isEmpty()) {
      throw new Unreadable(problems.sorted());
    }
    return new SheetFile(name, Optional.of(text), List.of(grid));
  }

  /** The lines that messages about this file can show. */
  public Sources sources() {
    return new Sources(text.stream().toList());
  }

  /** A problem of the file as a whole. */
  Unreadable unreadable(String message, String help) {
    return new Unreadable(List.of(new Problem(List.of(), name + ": " + message, help)));
  }
}
