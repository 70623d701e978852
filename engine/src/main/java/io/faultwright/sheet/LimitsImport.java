package io.faultwright.sheet;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.resolve.Resolution;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.Node;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** Takes the rows of tables of limits from the file of a spreadsheet. */
public final class LimitsImport {
  private final Resolution resolution;
  private final KnowledgeBase kb;
  private final Sources before;
  private final UnaryOperator<String> disk;
  private final SortedMap<String, String> raw = new TreeMap<>();
  private Sources current;

  /**
   * Into a knowledge base.
   *
   * @param sources its files
   * @param disk the text of a file, by its path, with the line ends it has
   * @throws Unreadable where it cannot be read as it is
   */
  public LimitsImport(Sources sources, UnaryOperator<String> disk) {
    this(Resolver.resolution(sources), sources, disk);
  }

  /** The same into a knowledge base that was read from its files before. */
  LimitsImport(Resolution resolution, Sources sources, UnaryOperator<String> disk) {
    this.resolution = resolution;
    this.kb = resolution.knowledge();
    this.before = sources;
    this.disk = disk;
    this.current = sources;
  }

  /**
   * What the import makes of the tables and their files; nothing is written.
   *
   * @param readings whose tables; without any, the names of the sheets say it
   * @throws Unreadable with everything that is wrong with the sheets
   */
  public Imported read(SheetFile file, Collection<String> readings) {
    SortedMap<String, List<TableRow>> rows = rows(SheetChoice.of(file, readings, kb));
    List<TableImport> tables = new ArrayList<>();
    rows.forEach((id, fresh) -> tables.add(edit(id, fresh)));
    rows.forEach(this::requireWritten);
    return new Imported(tables, changed(), current);
  }

  private SortedMap<String, List<TableRow>> rows(SortedMap<String, Grid> sheets) {
    Problems problems = new Problems();
    SortedMap<String, List<TableRow>> rows = new TreeMap<>();
    sheets.forEach((id, sheet) -> rows.put(id, rows(id, sheet, problems)));
    if (!problems.isEmpty()) {
      List<Problem> named = CellNames.name(problems.sorted());
      throw new Unreadable(named);
    }
    return rows;
  }

  private List<TableRow> rows(String id, Grid sheet, Problems problems) {
    List<SheetColumn> columns = SheetColumn.of(kb.limits().get(id), kb);
    List<TableRow> rows = GridRows.of(sheet, columns, problems);
    List<Node> nodes = rows.stream().map(row -> row.node(columns)).toList();
    Set<Place> told = new HashSet<>(Set.of(TableRow.NOWHERE));
    problems.sorted().forEach(problem -> told.addAll(problem.places()));
    resolution.rowProblems(id, nodes).stream()
        .filter(problem -> !told.contains(problem.places().get(0)))
        .forEach(problems::add);
    return rows;
  }

  private TableImport edit(String id, List<TableRow> fresh) {
    WrittenTable table = WrittenTable.of(id, kb, current);
    List<RowStep> steps = RowPlan.of(table, fresh);
    String path = table.file().path();
    RowsEdit.Result result = RowsEdit.of(table, steps, raw.computeIfAbsent(path, disk));
    raw.put(path, result.raw());
    current = with(SourceFile.of(path, result.raw()));
    return new TableImport(table, steps, result.remarks());
  }

  private Sources with(SourceFile fresh) {
    Map<String, SourceFile> files = new LinkedHashMap<>();
    current.files().forEach(file -> files.put(file.path(), file));
    files.put(fresh.path(), fresh);
    return new Sources(files.values());
  }

  /** What was written must say what the sheet says. */
  private void requireWritten(String id, List<TableRow> fresh) {
    WrittenTable written = WrittenTable.of(id, kb, current);
    TableImport again = new TableImport(written, RowPlan.of(written, fresh), List.of());
    if (!again.changesNothing()) {
      throw new IllegalStateException("the rows of " + id + " were not written as they were read");
    }
  }

  private SortedMap<String, String> changed() {
    SortedMap<String, String> changed = new TreeMap<>();
    raw.forEach(
        (path, text) -> {
          if (!SourceFile.of(path, text).equals(before.find(path).orElseThrow())) {
            changed.put(path, text);
          }
        });
    return changed;
  }
}
