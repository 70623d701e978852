package io.faultwright.font;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Optional;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * A typeface for names, for two libraries at once: FontBox embeds it, and the JDK's own HarfBuzz
 * chooses and places its glyphs, as scripts such as Arabic and Devanagari need.
 */
public final class NameFont {
  private final TrueTypeFont file;
  private final CmapLookup glyphs;
  private final Font shaping;

  private NameFont(TrueTypeFont file, CmapLookup glyphs, Font shaping) {
    this.file = file;
    this.glyphs = glyphs;
    this.shaping = shaping;
  }

  /** The font in the bytes of a file; nothing where they are no TrueType font with outlines. */
  public static Optional<NameFont> of(byte[] bytes) {
    try {
      TrueTypeFont file = new TTFParser().parse(new RandomAccessReadBuffer(bytes));
      file.setEnableGsub(false);
      if (file.getGlyph() == null) {
        return Optional.empty();
      }
      Font shaping = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(bytes));
      return Optional.of(new NameFont(file, file.getUnicodeCmapLookup(), shaping));
    } catch (IOException | FontFormatException other) {
      return Optional.empty();
    }
  }

  /** The file, to be embedded. */
  public TrueTypeFont file() {
    return file;
  }

  /** The same for the JDK, at a size of one point. */
  public Font shaping() {
    return shaping;
  }

  /** Whether it has a glyph of its own for a character. */
  public boolean draws(int codePoint) {
    return glyphs.getGlyphId(codePoint) != 0;
  }
}
