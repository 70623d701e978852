package io.faultwright.sheet;

import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What stands in a cell of a row, as text and back; a list reads {@code [fell, tarn]}. */
final class CellText {
  private CellText() {}

  /** The text of a cell. */
  static String of(Node cell) {
    return cell.match(
        text -> clean(text.text()),
        list -> list.items().stream().map(CellText::of).collect(Collectors.joining(", ", "[", "]")),
        map -> "");
  }

  /** A cell of equipment as YAML would say it; several values may stand without brackets. */
  static Node equipment(Scalar cell) {
    String text = clean(cell.text());
    boolean bracketed = text.startsWith("[") && text.endsWith("]");
    String inner = bracketed ? text.substring(1, text.length() - 1) : text;
    if (!bracketed && !inner.contains(",")) {
      return new Scalar(text, true, cell.place());
    }
    List<Node> items = new ArrayList<>();
    for (String item : inner.split(",", -1)) {
      items.add(new Scalar(item.strip(), true, cell.place()));
    }
    return new ListNode(items, cell.place());
  }

  /** What a cell means: two cells of a column that mean the same are equal. */
  static Object meaning(SheetColumn column, Node cell) {
    return column
        .unit()
        .<Object>flatMap(unit -> Amounts.of(of(cell), unit))
        .orElseGet(() -> values(cell));
  }

  /** The values of a list in any order; one value is a list of one. */
  private static Object values(Node cell) {
    return cell.match(
        text -> new TreeSet<>(List.of(clean(text.text()))),
        list ->
            list.items().stream().map(CellText::of).collect(Collectors.toCollection(TreeSet::new)),
        map -> new TreeSet<String>());
  }

  private static String clean(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }
}
