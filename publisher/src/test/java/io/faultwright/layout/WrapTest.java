package io.faultwright.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Lines fit, keep every word in order, and end in an ellipsis where something is left out. */
class WrapTest {
  private static final String TEXT = "Measure at the terminals of the hot-gas valve coil.";

  private final Wrap wrap = new Wrap(9, false);

  @Test
  void everyWidthKeepsTheText() {
    for (int width = 60; width < 300; width += 7) {
      List<String> lines = wrap.lines(TEXT, width, 20);
      assertEquals(TEXT, String.join(" ", lines));
      int most = width;
      lines.forEach(line -> assertTrue(wrap.width(line) <= most, line));
    }
  }

  @Test
  void cutsWhatIsTooLong() {
    List<String> lines = wrap.lines(TEXT, 60, 2);
    assertEquals(2, lines.size());
    assertTrue(lines.get(1).endsWith("…"), lines::toString);
    assertTrue(wrap.widest(lines) <= 60);
  }

  @Test
  void breaksLongWordsAtAHyphenOrAnywhere() {
    assertEquals(List.of("defrost-", "valve-", "stuck"), wrap.lines("defrost-valve-stuck", 38, 5));
    List<String> lines = wrap.lines("W".repeat(40), 50, 20);
    assertEquals("W".repeat(40), String.join("", lines));
    assertTrue(wrap.widest(lines) <= 50);
  }

  @Test
  void balancedLinesAreNarrower() {
    List<String> balanced = wrap.balanced(TEXT, 150, 9);
    assertEquals(wrap.lines(TEXT, 150, 9).size(), balanced.size());
    assertTrue(wrap.widest(balanced) <= wrap.widest(wrap.lines(TEXT, 150, 9)));
  }

  @Test
  void cleansControlsAndOverrides() {
    assertEquals("a b c d", Wrap.clean(" a\tb\r\n c \u0000\u0007\u202E\u2066d\uFEFF "));
    assertEquals("\uFFFD", Wrap.clean("\uD800"));
    assertEquals(List.of(), wrap.lines(" \n ", 50, 3));
  }

  @Test
  void evenLinesUseTheRoomOfEachLine() {
    EvenLines even = new EvenLines("a bb ccc dddd", 10, false);
    List<String> lines = even.lines(2, line -> line == 0 ? 12 : 60).orElseThrow();
    assertEquals(List.of("a", "bb ccc dddd"), lines);
    assertTrue(even.lines(1, line -> 12).isEmpty());
    assertTrue(even.lines(9, line -> 100).isEmpty());
  }
}
