package io.faultwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.List;
import org.junit.jupiter.api.Test;

class SnippetTest {
  @Test
  void caretsStandUnderTheCharactersMeant() {
    assertSnippet("room: warm", 7, 4, "room: warm", "      ^^^^");
  }

  @Test
  void tabsAreShownAsFourBlanksOnBothLines() {
    assertSnippet("\troom:\twarm", 8, 4, "    room:    warm", "             ^^^^");
  }

  @Test
  void wideCharactersTakeTwoColumns() {
    assertSnippet("霜: 氷が残る x", 4, 4, "霜: 氷が残る x", "    ^^^^^^^^");
    assertSnippet("霜: 氷が残る x", 9, 1, "霜: 氷が残る x", "             ^");
    assertSnippet("한글 ﾊﾝｶｸ x", 9, 1, "한글 ﾊﾝｶｸ x", "          ^");
  }

  @Test
  void charactersOutsideTheBasicPlaneCountOnce() {
    assertSnippet("a: 🧊 b", 6, 1, "a: 🧊 b", "      ^");
  }

  @Test
  void combiningMarksTakeNoColumn() {
    assertSnippet("e\u0301te\u0301: x", 8, 1, "e\u0301te\u0301: x", "     ^");
  }

  @Test
  void placeBehindTheLineIsShownAtItsEnd() {
    assertSnippet("room:", 40, 9, "room:", "     ^");
  }

  @Test
  void longLineIsCutAroundThePlace() {
    String line = "x".repeat(300) + "HERE" + "y".repeat(300);
    String[] lines = snippet(line, 301, 4).split("\n");
    assertTrue(lines[1].length() < 120, lines[1]);
    int caret = lines[2].indexOf('^');
    assertEquals("HERE", lines[1].substring(caret, caret + 4));
    assertEquals("^^^^", lines[2].strip().replace("| ", "").strip());
  }

  @Test
  void unknownFileHasNoLine() {
    Place place = new Place("other.yaml", 3, 1, 1);
    assertEquals("  other.yaml:3:1\n", new Snippet(new Sources(List.of()), Ink.PLAIN).of(place));
  }

  private static void assertSnippet(
      String line, int column, int length, String shown, String carets) {
    assertEquals(
        "  a.yaml:1:" + column + "\n    1 | " + shown + "\n      | " + carets + "\n",
        snippet(line, column, length));
  }

  private static String snippet(String line, int column, int length) {
    Sources sources = new Sources(List.of(new SourceFile("a.yaml", line + "\n")));
    return new Snippet(sources, Ink.PLAIN).of(new Place("a.yaml", 1, column, length));
  }
}
