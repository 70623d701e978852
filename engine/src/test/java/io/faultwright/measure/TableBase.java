package io.faultwright.measure;

import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.measure.Table.Row;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A table as the YAML files of a knowledge base with one symptom, and no more words than needed.
 */
final class TableBase {
  static final String SYMPTOM = "complaint";

  private static final String HANDBOOK =
      """
      handbook:
        title: Generated rules
        maker: Brantmoor Cold
        revision: "1"
        date: 2026-03-02
        language: en
        disclaimer: Every rule is generated; none is about a real machine.
      equipment:
        families:
          fell: { title: Fell }
        models:
          FL-12: { title: Fell 12, family: fell, options: {}, software: ["1.0"] }
      """;

  private TableBase() {}

  /** Texts by file name. */
  static SortedMap<String, String> files(Table table) {
    SortedMap<String, String> files = new TreeMap<>();
    files.put("handbook.yaml", HANDBOOK);
    files.put("readings.yaml", readings(table.columns()));
    files.put("faults.yaml", faults(table.rows()));
    files.put("rules.yaml", rules(table));
    return files;
  }

  static KnowledgeBase knowledge(Table table) {
    return Resolver.resolve(sources(files(table)));
  }

  static SymptomSpace space(Table table) {
    KnowledgeBase knowledge = knowledge(table);
    return SymptomSpace.of(knowledge, knowledge.symptoms().get(SYMPTOM));
  }

  static Sources sources(Map<String, String> files) {
    return new Sources(
        files.entrySet().stream()
            .map(file -> SourceFile.of(file.getKey(), file.getValue()))
            .toList());
  }

  private static String readings(List<Column> columns) {
    StringBuilder text = new StringBuilder("readings:\n");
    columns.forEach(column -> text.append(reading(column)));
    return text.toString();
  }

  private static String reading(Column column) {
    String domain =
        column instanceof Column.Amount amount
            ? "unit: %s, range: %d to %d".formatted(amount.unit(), amount.low(), amount.high())
            : "values: [" + String.join(", ", ((Column.Choice) column).values()) + "]";
    return "  %s: { ask: \"What is the %s?\", %s }\n".formatted(column.id(), column.id(), domain);
  }

  private static String faults(List<Row> rows) {
    StringBuilder text = new StringBuilder("faults:\n");
    new TreeSet<>(rows.stream().map(Row::conclusion).toList())
        .forEach(
            fault ->
                text.append(
                    "  %s: { title: %s, remedy: [Mend it.], verify: [Try it.] }\n"
                        .formatted(fault, fault)));
    return text.toString();
  }

  private static String rules(Table table) {
    StringBuilder text = new StringBuilder("symptoms:\n  " + SYMPTOM + ":\n    title: Complaint\n");
    text.append("    rules:\n");
    for (Row row : table.rows()) {
      text.append("      ").append(row.id()).append(":\n        when:");
      List<String> lines = TableYaml.when(table.columns(), row);
      text.append(lines.isEmpty() ? " {}\n" : "\n");
      lines.forEach(line -> text.append("          ").append(line).append("\n"));
      text.append("        conclude: ").append(row.conclusion()).append("\n");
      text.append("        because: It is the piece that is left.\n");
    }
    return text.toString();
  }
}
