package io.faultwright.sheet;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.Sources;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeSet;

/** Writes tables of limits to the file of a spreadsheet. */
public final class LimitsExport {
  private LimitsExport() {}

  /**
   * The bytes of a file that holds tables of limits.
   *
   * @param readings whose tables; all tables where none is named
   * @param format of the file; CSV holds one table
   * @throws Unreadable where the knowledge base cannot be read, or there is no such table
   */
  public static byte[] bytes(Sources sources, Collection<String> readings, SheetFormat format) {
    return bytes(Resolver.resolve(sources), sources, readings, format);
  }

  /** The same of a knowledge base that was read from its files before. */
  static byte[] bytes(
      KnowledgeBase kb, Sources sources, Collection<String> readings, SheetFormat format) {
    Tables.require(kb, readings);
    Collection<String> wanted = readings.isEmpty() ? kb.limits().keySet() : new TreeSet<>(readings);
    SortedMap<String, String> names = SheetNames.of(kb.limits().keySet());
    List<Sheet> sheets = new ArrayList<>();
    wanted.forEach(id -> sheets.add(Sheet.of(names.get(id), WrittenTable.of(id, kb, sources))));
    return format == SheetFormat.XLSX
        ? XlsxWriter.bytes(some(sheets))
        : CsvSheet.bytes(one(sheets));
  }

  private static List<Sheet> some(List<Sheet> sheets) {
    if (sheets.isEmpty()) {
      throw unreadable("the knowledge base has no table of limits", "add one below `limits:`");
    }
    return sheets;
  }

  private static Sheet one(List<Sheet> sheets) {
    if (some(sheets).size() > 1) {
      throw unreadable(
          "a CSV file holds one table, and there are " + sheets.size(),
          "choose one with `--limits`, or write a workbook: `.xlsx`");
    }
    return sheets.get(0);
  }

  private static Unreadable unreadable(String message, String help) {
    return new Unreadable(List.of(new Problem(List.of(), message, help)));
  }
}
