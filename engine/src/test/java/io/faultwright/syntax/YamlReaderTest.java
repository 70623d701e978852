package io.faultwright.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.diagnostic.Problems;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class YamlReaderTest {
  private final Problems problems = new Problems();

  private Tree read(String text) {
    return YamlReader.read(SourceFile.of("a.yaml", text), problems);
  }

  private MapNode map(String text) {
    MapNode map = (MapNode) read(text).root().orElseThrow();
    assertTrue(problems.isEmpty(), () -> problems.sorted().toString());
    return map;
  }

  private Entry only(String text) {
    return map(text).entries().get(0);
  }

  private static Place place(int line, int column, int length) {
    return new Place("a.yaml", line, column, length);
  }

  @Test
  void scalarsStayAsWritten() {
    MapNode map = map("{ a: 2.10, b: no, c: 1e3, d: 0x10, e: ~, f: 2026-03-02, g: 010, h: null }");
    assertEquals(
        "2.10 no 1e3 0x10 ~ 2026-03-02 010 null",
        String.join(
            " ", map.entries().stream().map(entry -> ((Scalar) entry.value()).text()).toList()));
  }

  @Test
  void placesOfKeysAndValues() {
    Entry entry = only("key: some text # why\n");
    assertEquals(place(1, 1, 3), entry.key().place());
    assertEquals(place(1, 6, 9), entry.value().place());
  }

  @Test
  void columnsCountCharactersNotHalves() {
    Entry entry = only("\"\uD83D\uDD25°\": \uD83D\uDD25 x\n");
    assertEquals(place(1, 1, 4), entry.key().place());
    assertEquals(place(1, 7, 3), entry.value().place());
  }

  @Test
  void placesOfTextsOverSeveralLinesEndWithTheFirst() {
    Entry block = only("key: >-\n  one\n  two\nnext: a\n");
    assertEquals("one two", ((Scalar) block.value()).text());
    assertEquals(place(1, 6, 2), block.value().place());
    Entry plain = only("key: one\n  two\n");
    assertEquals(place(1, 6, 3), plain.value().place());
  }

  @Test
  void placesOfListsAndMaps() {
    Entry flow = only("key: [a, b]\n");
    assertEquals(place(1, 6, 6), flow.value().place());
    Entry block = only("key:\n  - a\n  - b\n");
    assertEquals(place(2, 3, 3), block.value().place());
    assertEquals(2, ((ListNode) block.value()).items().size());
  }

  @Test
  void nothingWrittenStandsAtItsKey() {
    Entry entry = only("key:\nother: a\n");
    assertTrue(((Scalar) entry.value()).isEmpty());
    assertEquals(entry.key().place(), entry.value().place());
    assertFalse(((Scalar) only("key: ''\n").value()).isEmpty());
  }

  @Test
  void emptyFilesAreWhole() {
    for (String text : new String[] {"", "\n\n", "# only a comment\n", "---\n", "---\n...\n"}) {
      Tree tree = read(text);
      assertTrue(tree.whole() && tree.root().isEmpty(), text);
    }
    assertTrue(problems.isEmpty());
  }

  @Test
  void oneDocumentMayBeginAndEndWithMarkers() {
    assertEquals("a", only("--- # begins\na: b\n...\n").name());
  }

  @Test
  void smallFilesNeverUnfoldIntoLargeOnes() {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < 40; i++) {
      String nine = "*a" + (i - 1) + (", *a" + (i - 1)).repeat(8);
      bomb.append("a" + i + ": &a" + i + " [" + nine + "]\n");
    }
    assertTimeoutPreemptively(Duration.ofSeconds(10), () -> read(bomb.toString()));
    assertFalse(problems.isEmpty());
  }

  @Test
  void deepNestingEndsAtOnce() {
    for (String open : new String[] {"[", "{a: ", "- ", "? "}) {
      Tree tree =
          assertTimeoutPreemptively(
              Duration.ofSeconds(20), () -> read("a: b\nc:\n  " + open.repeat(300_000)));
      assertFalse(tree.whole());
    }
    assertFalse(problems.isEmpty());
  }

  @Test
  void fiftyLevelsAreRead() {
    String nested = "[".repeat(49) + "x" + "]".repeat(49);
    assertEquals("a", only("a: " + nested + "\n").name());
    assertFalse(read("a: [" + nested + "]\n").whole());
  }

  @Test
  void tenThousandRulesInReasonableTime() {
    StringBuilder large = new StringBuilder("rules:\n");
    for (int i = 0; i < 10_000; i++) {
      large
          .append("  r")
          .append(i)
          .append(":\n    when: { a: b, c: above 65 °C }\n    conclude: x\n");
      large.append("    because: ").append("some words ".repeat(35)).append("\n");
    }
    assertTimeoutPreemptively(Duration.ofSeconds(20), () -> map(large.toString()));
  }
}
