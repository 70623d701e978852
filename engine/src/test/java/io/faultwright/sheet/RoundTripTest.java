package io.faultwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.resolve.Resolution;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What was exported and is imported again changes nothing. */
class RoundTripTest {
  private static final Path RULES = Path.of("..", "rules");

  @TestFactory
  Stream<DynamicTest> everyTableOfTheDemos() {
    return Stream.of("walk-in-freezers", "pass-through-dishwashers")
        .flatMap(demo -> tables(Sample.texts(RULES.resolve(demo))));
  }

  /** Read once; that the files are read anew each time is seen where all are told at once. */
  private static Stream<DynamicTest> tables(SortedMap<String, String> texts) {
    Sources sources = sources(texts);
    Resolution read = Resolver.resolution(sources);
    KnowledgeBase kb = read.knowledge();
    assertTrue(!kb.limits().isEmpty());
    List<DynamicTest> tests = new ArrayList<>();
    for (String id : kb.limits().keySet()) {
      tests.add(DynamicTest.dynamicTest(id, () -> changesNothing(read, sources, texts, id)));
    }
    tests.add(DynamicTest.dynamicTest("all at once", () -> allChangeNothing(texts)));
    return tests.stream();
  }

  @Test
  void everyShapeOfTheSample() {
    Sources sources = Sample.sources(Sample.TABLES);
    for (String id : Resolver.resolve(sources).limits().keySet()) {
      for (SheetFormat format : SheetFormat.values()) {
        byte[] content = LimitsExport.bytes(sources, List.of(id), format);
        SheetFile file = SheetFile.read("x." + format, content, format);
        assertEquals(Map.of(), Sample.read(Sample.TABLES, file, List.of(id)).files(), id);
      }
    }
  }

  private static Sources sources(SortedMap<String, String> texts) {
    return new Sources(
        texts.entrySet().stream().map(one -> SourceFile.of(one.getKey(), one.getValue())).toList());
  }

  private static void changesNothing(
      Resolution read, Sources sources, SortedMap<String, String> texts, String id) {
    for (SheetFormat format : SheetFormat.values()) {
      byte[] content = LimitsExport.bytes(read.knowledge(), sources, List.of(id), format);
      unchanged(new LimitsImport(read, sources, texts::get), content, List.of(id), format);
    }
  }

  private static void allChangeNothing(SortedMap<String, String> texts) {
    Sources sources = sources(texts);
    byte[] content = LimitsExport.bytes(sources, List.of(), SheetFormat.XLSX);
    unchanged(new LimitsImport(sources, texts::get), content, List.of(), SheetFormat.XLSX);
  }

  private static void unchanged(
      LimitsImport into, byte[] content, List<String> readings, SheetFormat format) {
    Imported imported = into.read(SheetFile.read("x." + format, content, format), readings);
    assertEquals(Map.of(), imported.files());
    assertTrue(imported.tables().stream().allMatch(TableImport::changesNothing));
  }
}
