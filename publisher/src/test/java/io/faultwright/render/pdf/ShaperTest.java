package io.faultwright.render.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.text.ArabicShaping;
import com.ibm.icu.text.ArabicShapingException;
import com.ibm.icu.text.Bidi;
import io.faultwright.font.NameFont;
import io.faultwright.font.NameFonts;
import io.faultwright.render.pdf.ShapedText.Cluster;
import io.faultwright.render.pdf.ShapedText.Glyph;
import java.io.IOException;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.junit.jupiter.api.Test;

class ShaperTest {
  private static final Shaper SHAPER = new Shaper(new NameFonts(List.of()));

  private static List<Glyph> glyphs(String text) {
    return SHAPER.shape(text, false).clusters().stream()
        .flatMap(cluster -> cluster.glyphs().stream())
        .toList();
  }

  private static CmapLookup characters(Glyph glyph) throws IOException {
    return glyph.font().file().getUnicodeCmapLookup();
  }

  /**
   * The forms that letters take and their order are those of ICU, which knows no fonts: it names
   * each form by its character of Unicode, and the font says which glyph that character has.
   */
  @Test
  void arabicIsJoinedAndRunsToTheLeft() throws IOException, ArabicShapingException {
    String name = "محمد يوسف";
    String forms =
        new ArabicShaping(ArabicShaping.LETTERS_SHAPE | ArabicShaping.TEXT_DIRECTION_LOGICAL)
            .shape(name);
    Bidi bidi = new Bidi(forms, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
    String visual = bidi.writeReordered(Bidi.DO_MIRRORING);
    List<Glyph> drawn = glyphs(name);
    CmapLookup characters = characters(drawn.get(0));
    assertEquals(
        visual.chars().filter(c -> c != ' ').mapToObj(characters::getGlyphId).toList(),
        drawn.stream().map(Glyph::id).filter(id -> id != characters.getGlyphId(' ')).toList());
    assertNotEquals(
        characters.getGlyphId('م'), drawn.get(drawn.size() - 1).id(), "begins a word, so joined");
  }

  /** A vowel sign that is written before its consonant, and letters that become one form. */
  @Test
  void devanagariIsReorderedAndStaysReadable() {
    ShapedText text = SHAPER.shape("प्रिया", false);
    assertTrue(text.clusters().get(0).glyphs().size() > 1);
    assertEquals("प्रि", text.clusters().get(0).text());
    assertTrue(
        text.clusters().get(0).glyphs().get(0).x() <= text.clusters().get(0).glyphs().get(1).x());
  }

  @Test
  void everyCharacterOfJapaneseHasItsGlyph() throws IOException {
    List<Glyph> drawn = glyphs("山田 太郎 さくら");
    assertEquals(9, drawn.size());
    for (Glyph glyph : drawn) {
      assertNotEquals(0, glyph.id());
    }
    assertEquals(characters(drawn.get(0)).getGlyphId('山'), drawn.get(0).id());
  }

  /** A word is not drawn with letters of two fonts where one font has all. */
  @Test
  void aNameKeepsToOneFont() {
    List<NameFont> fonts = glyphs("Łukasz Żółć").stream().map(Glyph::font).distinct().toList();
    assertEquals(1, fonts.size());
    assertEquals(2, glyphs("Ada 山田").stream().map(Glyph::font).distinct().count());
  }

  @Test
  void whatIsReadIsWhatWasWritten() {
    for (String name :
        List.of(
            "Zoe\u0308 Nør",
            "שרה כהן",
            "สมชาย ใจดี",
            "Дмитрий Щербаков",
            "ქეთევან",
            "اَلسَّيِّدَةُ فَاطِمَة")) {
      ShapedText text = SHAPER.shape(name, false);
      String all = String.join("", text.clusters().stream().map(Cluster::text).toList());
      assertEquals(sorted(text.text()), sorted(all), name);
      assertTrue(text.width() > 1, name);
    }
  }

  private static List<Integer> sorted(String text) {
    return text.chars().sorted().boxed().toList();
  }

  @Test
  void saysWhichCharacterNoFontHas() {
    Undrawable missing = assertThrows(Undrawable.class, () -> glyphs("Kim 김"));
    assertEquals("김 (U+AE40)", missing.character());
  }
}
