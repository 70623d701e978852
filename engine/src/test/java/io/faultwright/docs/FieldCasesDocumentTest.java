package io.faultwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.diagnostic.Unreadable;
import io.faultwright.field.FieldBook;
import io.faultwright.field.FieldReport;
import io.faultwright.field.RowCounts;
import io.faultwright.pipeline.FieldRuns;
import io.faultwright.pipeline.InputRun;
import io.faultwright.report.FieldText;
import io.faultwright.report.FrequencyText;
import io.faultwright.report.Ink;
import io.faultwright.report.ProblemText;
import io.faultwright.resolve.ColumnMap;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.io.BufferedReader;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The page on field cases shows what the tool really does with the demo. A block with {@code
 * is=FILE} is a file of {@code docs/field}, one with {@code begins=FILE} its beginning; a block
 * with {@code map} is a column map that cannot be read. A block {@code text} holds what is printed:
 * {@code report}, {@code skipped}, {@code frequencies}, {@code phone}, or {@code problems} of the
 * map before it.
 */
class FieldCasesDocumentTest {
  private static final Path FILES = Stored.DOCS.resolve("field");

  private final FieldRuns runs =
      new FieldRuns(FolderReader.read(Path.of("..", "rules", "walk-in-freezers")));
  private String map = "";

  @TestFactory
  Stream<DynamicTest> examples() {
    if (Stored.BLESS) {
      Map<Fence, String> bodies = new LinkedHashMap<>();
      page().fences().forEach(fence -> bodies.put(fence, shown(fence)));
      page().rewrite(bodies);
    }
    return page().fences().stream()
        .map(
            fence -> {
              String shown = shown(fence);
              return DynamicTest.dynamicTest(
                  "line " + fence.line() + ": " + fence.info(),
                  () -> assertEquals(shown, fence.body()));
            });
  }

  /** The lists of keys are private to the package that reads them. */
  @Test
  void namesEveryKey() throws ReflectiveOperationException {
    List<String> keys = new ArrayList<>(ColumnMap.CASE_KEYS);
    for (String list : List.of("KEYS", "COLUMN_KEYS", "MARKS")) {
      var field = Class.forName("io.faultwright.resolve.ColumnMapResolver").getDeclaredField(list);
      field.setAccessible(true);
      ((List<?>) field.get(null)).forEach(key -> keys.add((String) key));
    }
    String prose = String.join("\n", page().prose());
    assertEquals(List.of(), keys.stream().filter(key -> !prose.contains("`" + key + "`")).toList());
  }

  private static MarkdownPage page() {
    return MarkdownPage.read(Stored.DOCS.resolve("field-cases.md"));
  }

  private String shown(Fence fence) {
    if (fence.value("is").isPresent()) {
      return stored(fence.value("is").get());
    }
    if (fence.value("begins").isPresent()) {
      List<String> lines = stored(fence.value("begins").get()).lines().toList();
      int count = (int) fence.body().lines().count();
      assertTrue(count > 1, () -> "line " + fence.line() + ": too short to show anything");
      return String.join("\n", lines.subList(0, count)) + "\n";
    }
    if (fence.says("map")) {
      map = fence.body();
    }
    return fence.language().equals("text") ? output(fence) : fence.body();
  }

  private static String stored(String name) {
    return Stored.read(FILES.resolve(name));
  }

  private String output(Fence fence) {
    return switch (fence.info().strip()) {
      case "text report" -> text(report());
      case "text skipped" -> skipped();
      case "text frequencies" -> FrequencyText.write(report().frequencies());
      case "text phone" -> text(phone());
      case "text problems" -> problems();
      default -> throw new AssertionError("line " + fence.line() + ": which output?");
    };
  }

  private String text(FieldReport report) {
    return new FieldText(runs.knowledge(), Ink.PLAIN).write(report);
  }

  private FieldReport report() {
    FieldBook book = new FieldBook(runs.knowledge());
    RowCounts counts = workshop(book).counts();
    return book.report(counts);
  }

  private FieldReport phone() {
    FieldBook book = new FieldBook(runs.knowledge());
    return book.report(run("phone-jobs.yaml", ColumnMap.NONE, book).counts());
  }

  private InputRun workshop(FieldBook book) {
    SourceFile columns = SourceFile.of("workshop-columns.yaml", stored("workshop-columns.yaml"));
    return run("workshop-jobs.csv", runs.columns(columns), book);
  }

  private InputRun run(String name, ColumnMap columns, FieldBook book) {
    BufferedReader text = new BufferedReader(new StringReader(stored(name)));
    return runs.of("docs/field/" + name, text, columns, book::add);
  }

  private String skipped() {
    InputRun run = workshop(new FieldBook(runs.knowledge()));
    ProblemText text = new ProblemText(run.excerpt(), Ink.PLAIN);
    return text.notes(run.notes()) + text.skipped(run.problems());
  }

  private String problems() {
    SourceFile file = SourceFile.of("columns.yaml", map);
    try {
      runs.columns(file);
    } catch (Unreadable unreadable) {
      return new ProblemText(new Sources(List.of(file)), Ink.PLAIN).write(unreadable.problems());
    }
    throw new AssertionError("the map can be read");
  }
}
