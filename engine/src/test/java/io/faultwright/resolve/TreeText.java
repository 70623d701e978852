package io.faultwright.resolve;

import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;

/** Writes a tree as YAML with the keys of every map in a random order. */
final class TreeText {
  private TreeText() {}

  static String of(Node node, Random random) {
    return node.match(
        TreeText::quoted,
        list ->
            list.items().stream()
                .map(item -> of(item, random))
                .collect(Collectors.joining(", ", "[", "]")),
        map ->
            shuffled(map, random).stream()
                .map(entry -> quoted(entry.key()) + ": " + of(entry.value(), random))
                .collect(Collectors.joining(", ", "{", "}")));
  }

  private static List<Entry> shuffled(MapNode map, Random random) {
    List<Entry> entries = new ArrayList<>(map.entries());
    Collections.shuffle(entries, random);
    return entries;
  }

  private static String quoted(Scalar scalar) {
    String text = scalar.text().strip().replace("\\", "\\\\").replace("\"", "\\\"");
    return '"' + text.replace("\n", "\\n") + '"';
  }
}
