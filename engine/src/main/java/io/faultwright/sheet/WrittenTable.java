package io.faultwright.sheet;

import io.faultwright.diagnostic.Problems;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.YamlReader;
import java.util.List;
import java.util.Optional;

/**
 * A table of limits as the trainer wrote it.
 *
 * @param reading the reading it judges
 * @param file the file it stands in
 * @param columns its columns
 * @param rows its rows, in the written order
 */
record WrittenTable(
    String reading, SourceFile file, List<SheetColumn> columns, List<TableRow> rows) {
  /** Where the rows of a table stand in its file. */
  static List<String> path(String reading) {
    return List.of("limits", reading, "rows");
  }

  /** A table of a knowledge base that can be read. */
  static WrittenTable of(String reading, KnowledgeBase kb, Sources sources) {
    LimitsTable table = kb.limits().get(reading);
    SourceFile file = sources.find(table.place().file()).orElseThrow();
    return new WrittenTable(reading, file, SheetColumn.of(table, kb), rows(file, reading));
  }

  private static List<TableRow> rows(SourceFile file, String reading) {
    Optional<Node> found = YamlReader.read(file, new Problems()).root();
    for (String key : path(reading)) {
      found = found.flatMap(node -> child(node, key));
    }
    List<Node> rows = found.map(node -> ((ListNode) node).items()).orElse(List.of());
    return rows.stream().map(row -> TableRow.of((MapNode) row)).toList();
  }

  private static Optional<Node> child(Node node, String key) {
    List<Entry> entries = node instanceof MapNode map ? map.entries() : List.of();
    return entries.stream().filter(entry -> entry.name().equals(key)).findFirst().map(Entry::value);
  }
}
