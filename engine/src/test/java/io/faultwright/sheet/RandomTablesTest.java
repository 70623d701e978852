package io.faultwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Laws of export and import over seeded tables in every style that YAML has for them. */
class RandomTablesTest {
  private static final int TABLES = Integer.getInteger("random.sheets", 40);
  private static final String ID = "discharge-pressure";

  @TestFactory
  List<DynamicTest> laws() {
    return IntStream.range(0, TABLES)
        .mapToObj(seed -> DynamicTest.dynamicTest("seed " + seed, () -> holds(seed)))
        .toList();
  }

  private static void holds(int seed) {
    RandomTable table = new RandomTable(new Random(seed));
    String before = table.file(table.rows());
    for (SheetFormat format : SheetFormat.values()) {
      SheetFile same = exported(before, format);
      assertEquals(Map.of(), Sample.read(before, same, List.of(ID)).files(), before);
    }
    List<RandomTable.Row> edited = table.edited();
    String wanted = table.file(edited);
    for (SheetFormat format : SheetFormat.values()) {
      String after = imported(before, exported(wanted, format));
      assertEquals(meanings(wanted), meanings(after), before + "\n->\n" + after);
      assertOutsideIsSame(before, after);
      assertEquals(after, imported(after, exported(wanted, format)), "a second import");
    }
  }

  private static SheetFile exported(String limits, SheetFormat format) {
    byte[] content = LimitsExport.bytes(Sample.sources(limits), List.of(ID), format);
    return SheetFile.read("x." + format, content, format);
  }

  private static String imported(String before, SheetFile file) {
    Imported imported = Sample.read(before, file, List.of(ID));
    Resolver.resolve(imported.after());
    return imported.files().getOrDefault(Sample.LIMITS, before);
  }

  /** What each row means, in any order. */
  private static Map<Object, Long> meanings(String limits) {
    Sources sources = Sample.sources(limits);
    KnowledgeBase kb = Resolver.resolve(sources);
    WrittenTable table = WrittenTable.of(ID, kb, sources);
    return table.rows().stream()
        .map(row -> (Object) table.columns().stream().map(row::meaning).toList())
        .collect(Collectors.groupingBy(row -> row, Collectors.counting()));
  }

  /** The lines in front of the rows and behind them, and their ends. */
  private static void assertOutsideIsSame(String before, String after) {
    String front = before.substring(0, before.indexOf("rows:"));
    assertTrue(after.startsWith(front), after);
    String end = before.substring(before.indexOf(RandomTable.BEHIND));
    assertTrue(after.endsWith(end), after);
    String plain = SourceFile.of("any", after).text();
    String marked = (before.startsWith("\uFEFF") ? "\uFEFF" : "") + plain;
    boolean windows = before.contains("\r\n");
    assertEquals(windows ? marked.replace("\n", "\r\n") : marked, after);
  }
}
