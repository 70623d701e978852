package io.faultwright.input;

import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What a cell of the column {@code expect} says, as YAML would say it. */
final class Expectation {
  private Expectation() {}

  /** {@code fault}, {@code fault; fault}, {@code refer: symptom} or {@code escalate: whom}. */
  static Node node(Scalar cell) {
    String text = cell.text();
    if (text.contains(";")) {
      List<Node> parts = new ArrayList<>();
      Arrays.stream(text.split(";")).forEach(part -> parts.add(at(cell, part)));
      return new ListNode(parts, cell.place());
    }
    String[] parts = text.split(":", 2);
    return parts.length == 1
        ? cell
        : new MapNode(List.of(new Entry(at(cell, parts[0]), at(cell, parts[1]))), cell.place());
  }

  private static Scalar at(Scalar cell, String text) {
    return new Scalar(text.strip(), false, cell.place());
  }
}
