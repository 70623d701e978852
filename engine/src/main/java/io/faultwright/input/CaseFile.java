package io.faultwright.input;

import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.resolve.GivenCases;
import io.faultwright.resolve.Resolution;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.Node.Entry;
import java.util.List;
import java.util.Locale;

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
        isTable(file)
            ? new CaseTable(file, resolution.knowledge(), problems).entries()
            : CaseTree.entries(file, problems);
    if (!problems.isEmpty()) {
      throw new Unreadable(problems.sorted());
    }
    return resolution.cases(entries);
  }

  /** By the ending of its name; without a telling one, by its first line. */
  private static boolean isTable(SourceFile file) {
    String name = file.path().toLowerCase(Locale.ROOT);
    if (name.endsWith(".csv") || name.endsWith(".tsv")) {
      return true;
    }
    boolean yaml = name.endsWith(".yaml") || name.endsWith(".yml") || name.endsWith(".json");
    return !yaml && file.text().lines().findFirst().filter(CaseFile::isHeader).isPresent();
  }

  private static boolean isHeader(String line) {
    return line.matches(".*[,;\\t].*") && !line.contains(":") && !line.contains("{");
  }
}
