package io.faultwright.font;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The font files are there, are what they say, and hold the signs the trade writes. */
class FontsTest {
  /** First four bytes of a woff2 file, W3C "WOFF File Format 2.0", section 4.1. */
  private static final String WOFF2 = "wOF2";

  @Test
  void filesAreThere() throws IOException {
    for (Fonts.WebFont font : Fonts.web()) {
      assertEquals(WOFF2, new String(font.bytes(), 0, 4, StandardCharsets.US_ASCII), font.name());
    }
    for (InputStream file : new InputStream[] {Fonts.regular(), Fonts.bold()}) {
      try (file) {
        assertEquals(0x00010000, new java.io.DataInputStream(file).readInt());
      }
    }
    assertTrue(
        new String(Fonts.licence(), StandardCharsets.UTF_8).contains("SIL OPEN FONT LICENSE"));
  }

  @Test
  void theSignsOfTheTradeAreDrawn() {
    "°ΩΔµ²³½±×−–—≤≥≈₂‘’“”…äßéøñçłőşž"
        .codePoints()
        .forEach(
            sign ->
                assertTrue(
                    Typeface.regular().draws(sign) && Typeface.bold().draws(sign),
                    Character.getName(sign)));
  }

  @Test
  void widthsAddUp() {
    Typeface face = Typeface.regular();
    assertEquals(face.width("ab", 10), face.width("a", 10) + face.width("b", 10), 1e-9);
    assertEquals(2 * face.width("Ice", 9), face.width("Ice", 18), 1e-9);
    assertEquals(0, face.width("\u0301\u200E", 10));
    assertTrue(Typeface.bold().width("Hot gas", 10) > face.width("Hot gas", 10));
    assertTrue(face.width("冰", 10) >= 10, "an unknown sign needs room for another font");
  }
}
