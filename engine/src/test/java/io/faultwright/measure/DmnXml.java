package io.faultwright.measure;

import io.faultwright.measure.Table.Row;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A table as a decision in the Decision Model and Notation (OMG, "Decision Model and Notation",
 * version 1.3), whose every rule answers by its own number.
 */
final class DmnXml {
  private final boolean words;

  /**
   * @param words whether values of choices are texts; otherwise the value at position {@code i} is
   *     every number from {@code i} to below {@code i + 1}
   */
  DmnXml(boolean words) {
    this.words = words;
  }

  String of(Table table) {
    StringBuilder text =
        new StringBuilder(
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <definitions xmlns="https://www.omg.org/spec/DMN/20191111/MODEL/"
                namespace="https://example.org/generated" id="generated" name="generated">
            """);
    table.columns().forEach(column -> text.append(input(column)));
    text.append("<decision id=\"d\" name=\"d\"><variable name=\"d\" typeRef=\"number\"/>\n");
    for (Column column : table.columns()) {
      text.append(
          "<informationRequirement><requiredInput href=\"#in-%s\"/>".formatted(column.id()));
      text.append("</informationRequirement>\n");
    }
    text.append("<decisionTable id=\"t\" hitPolicy=\"UNIQUE\">\n");
    table.columns().forEach(column -> text.append(clause(column)));
    text.append("<output name=\"d\" typeRef=\"number\"/>\n");
    for (int row = 0; row < table.rows().size(); row++) {
      text.append(rule(table.columns(), table.rows().get(row), row));
    }
    return text.append("</decisionTable></decision></definitions>\n").toString();
  }

  private String input(Column column) {
    return "<inputData id=\"in-%1$s\" name=\"%2$s\"><variable name=\"%2$s\" typeRef=\"%3$s\"/></inputData>\n"
        .formatted(column.id(), name(column), type(column));
  }

  private String clause(Column column) {
    return """
        <input><inputExpression typeRef="%s"><text>%s</text></inputExpression>
        <inputValues><text>%s</text></inputValues></input>
        """
        .formatted(type(column), name(column), domain(column));
  }

  private String name(Column column) {
    return column.id().replace('-', '_');
  }

  private String type(Column column) {
    return words && column instanceof Column.Choice ? "string" : "number";
  }

  private String domain(Column column) {
    return !words && column instanceof Column.Choice choice
        ? "[0.." + choice.values().size() + "]"
        : column instanceof Column.Amount
            ? span((Span) column.whole())
            : words(column, column.whole());
  }

  private String rule(List<Column> columns, Row row, int number) {
    StringBuilder text = new StringBuilder("<rule>");
    for (int i = 0; i < columns.size(); i++) {
      text.append("<inputEntry><text>");
      text.append(test(columns.get(i), row.parts().get(i))).append("</text></inputEntry>");
    }
    text.append("<outputEntry><text>").append(number).append("</text></outputEntry>");
    return text.append("</rule>\n").toString();
  }

  private String test(Column column, Part part) {
    if (part.equals(column.whole())) {
      return "-";
    }
    return part instanceof Span span ? span(span) : words(column, part);
  }

  private String span(Span span) {
    return (span.lowIncluded() ? "[" : "(")
        + span.low()
        + ".."
        + span.high()
        + (span.highIncluded() ? "]" : ")");
  }

  private String words(Column column, Part part) {
    List<String> values = ((Column.Choice) column).values();
    return ((Values) part)
        .chosen().stream()
            .map(chosen -> words ? "\"" + values.get(chosen) + "\"" : number(chosen, values.size()))
            .collect(Collectors.joining(","));
  }

  private static String number(int chosen, int values) {
    return "[%d..%d%s".formatted(chosen, chosen + 1, chosen + 1 == values ? "]" : ")");
  }
}
