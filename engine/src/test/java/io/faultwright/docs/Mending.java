package io.faultwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A change to a text, as a block {@code diff} shows it: pieces separated by {@code @@}, whose lines
 * begin with a blank (stays), a minus (goes) or a plus (comes).
 */
final class Mending {
  private final List<List<String>> pieces = new ArrayList<>(List.of(new ArrayList<>()));

  Mending(String diff) {
    diff.lines().forEach(this::add);
  }

  private void add(String line) {
    if (line.equals("@@")) {
      pieces.add(new ArrayList<>());
    } else {
      pieces.get(pieces.size() - 1).add(line);
    }
  }

  /** The text after the change; fails where a piece does not fit exactly one place. */
  String apply(String text) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    pieces.forEach(piece -> apply(piece, lines));
    return String.join("\n", lines) + "\n";
  }

  private static void apply(List<String> piece, List<String> lines) {
    List<String> before = without(piece, '+');
    int at = Collections.indexOfSubList(lines, before);
    assertEquals(at, Collections.lastIndexOfSubList(lines, before), () -> "twice: " + before);
    List<String> here = lines.subList(at, at + before.size());
    here.clear();
    here.addAll(without(piece, '-'));
  }

  private static List<String> without(List<String> piece, char mark) {
    return piece.stream()
        .filter(line -> line.charAt(0) != mark)
        .map(line -> line.substring(1))
        .toList();
  }
}
