package io.faultwright.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.source.SourceFile;
import java.util.List;
import org.junit.jupiter.api.Test;

class WrittenTest {
  private static String cut(String text, String... keys) {
    Written at = Written.of(SourceFile.of("a.yaml", text)).orElseThrow();
    for (String key : keys) {
      at = at.find(key).orElseThrow();
    }
    return text.substring(at.start(), at.end());
  }

  @Test
  void aBlockEndsWithItsLastText() {
    String text = "a:\n  - x # why\n  - { y: z } # more\n\n  # behind\nb: 1\n";
    assertEquals("- x # why\n  - { y: z }", cut(text, "a"));
    assertEquals("1", cut(text, "b"));
  }

  @Test
  void bracketsAndQuotesBelongToWhatTheyHold() {
    assertEquals("[ 'x, y', \"z\" ]", cut("a: [ 'x, y', \"z\" ] # why\n", "a"));
    assertEquals("'it''s'", cut("{ a: 'it''s' }", "a"));
  }

  @Test
  void aBlockOfTextEndsWithItsLastLine() {
    assertEquals(">-\n  one\n  two", cut("a: >-\n  one\n  two\n\nb: 1\n", "a"));
  }

  @Test
  void charactersBeyondTheFirstPlaneCountAsInTheText() {
    assertEquals(
        "°", cut("\"\uD83D\uDD25\": { \uD83D\uDD25: ° }\n", "\uD83D\uDD25", "\uD83D\uDD25"));
  }

  @Test
  void everyTextInTheWrittenOrder() {
    Written all = Written.of(SourceFile.of("a.yaml", "a: [b, { c: d }]\n")).orElseThrow();
    assertEquals(List.of("a", "b", "c", "d"), all.texts().map(Written::text).toList());
    assertTrue(all.find("a").orElseThrow().flow());
    assertTrue(all.find("b").isEmpty());
  }

  @Test
  void anEmptyFileHoldsNothing() {
    assertTrue(Written.of(SourceFile.of("a.yaml", "# only this\n")).isEmpty());
  }
}
