package io.faultwright.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.field.FieldBook;
import io.faultwright.field.FieldReport;
import io.faultwright.pipeline.FieldRuns;
import io.faultwright.pipeline.InputRun;
import io.faultwright.resolve.ColumnMap;
import io.faultwright.syntax.FolderReader;
import java.io.BufferedReader;
import org.junit.jupiter.api.Test;

/** Long tables of recorded jobs; a million rows are measured by hand, see docs/benchmarks.md. */
class FieldFileTest {
  private static final long MEGABYTE = 1 << 20;

  private final FieldRuns runs = new FieldRuns(FolderReader.read(Pace.HANDBOOK));

  private InputRun run(FieldBook book, long rows) {
    BufferedReader table = new BufferedReader(new LinesReader(new FieldFile(rows)));
    return runs.of("jobs.csv", table, ColumnMap.NONE, book::add);
  }

  @Test
  void everyBrokenRowIsSkippedAndNoOther() {
    FieldBook book = new FieldBook(runs.knowledge());
    InputRun run = run(book, 5_000);
    FieldReport report = book.report(run.counts());
    assertEquals(5_000, report.counts().read());
    assertEquals(50, report.counts().skipped());
    assertEquals(50, run.problems().stream().map(p -> p.places().get(0).line()).distinct().count());
    assertTrue(report.counts().agreed() > 3_500, report.counts()::toString);
    assertTrue(report.counts().disagreed() > 300, report.counts()::toString);
    assertTrue(report.counts().open() > 300, report.counts()::toString);
  }

  /** What is kept after forty thousand rows is what was kept after ten thousand. */
  @Test
  void memoryDoesNotGrowWithTheRows() {
    FieldBook book = new FieldBook(runs.knowledge());
    run(book, 10_000);
    long before = used();
    InputRun run = run(book, 40_000);
    long after = used();
    assertEquals(40_000, run.counts().read());
    assertTrue(after - before < 16 * MEGABYTE, () -> (after - before) / MEGABYTE + " MB more");
    assertTrue(book.report(run.counts()).symptoms().size() > 0);
  }

  private static long used() {
    System.gc();
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }
}
