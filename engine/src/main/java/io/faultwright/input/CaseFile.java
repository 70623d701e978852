package io.faultwright.input;

import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.resolve.GivenCases;
import io.faultwright.resolve.Resolution;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.Node.Entry;
import java.io.BufferedReader;
import java.io.StringReader;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads cases from a file of any of the kinds there are. */
public final class CaseFile {
  private CaseFile() {}

  /**
   * The cases in a file.
   *
   * @throws Unreadable where the file as a whole makes no sense
   */
  public static GivenCases read(SourceFile file, Resolution resolution) {
    Problems problems = new Problems();
    List<Entry> entries =
        isTable(file) ? rows(file, resolution, problems) : CaseTree.entries(file, problems);
    if (!problems.isEmpty()) {
      throw new Unreadable(problems.sorted());
    }
    return resolution.cases(entries);
  }

  private static boolean isTable(SourceFile file) {
    return CaseTable.isTable(file.path(), file.text().lines().findFirst().orElse(""));
  }

  private static List<Entry> rows(SourceFile file, Resolution resolution, Problems problems) {
    BufferedReader text = new BufferedReader(new StringReader(file.text()));
    CaseTable table = new CaseTable(file.path(), text, resolution.knowledge(), problems);
    return Stream.iterate(table.next(), Optional::isPresent, last -> table.next())
        .map(item -> item.orElseThrow().entry())
        .toList();
  }
}
