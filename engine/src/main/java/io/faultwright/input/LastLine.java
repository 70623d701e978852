package io.faultwright.input;

import io.faultwright.syntax.Node;
import java.util.stream.Stream;

/** On which line the last piece of some YAML begins. */
final class LastLine {
  private LastLine() {}

  static int of(Node node) {
    return Stream.concat(Stream.of(node.place().line()), parts(node).map(LastLine::of))
        .reduce(1, Math::max);
  }

  private static Stream<Node> parts(Node node) {
    return node.match(
        scalar -> Stream.of(),
        list -> list.items().stream(),
        map -> map.entries().stream().flatMap(entry -> Stream.of(entry.key(), entry.value())));
  }
}
