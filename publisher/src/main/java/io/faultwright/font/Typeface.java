package io.faultwright.font;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * One weight of the typeface, measured glyph by glyph without kerning, and without the desktop
 * libraries of the JDK.
 */
public final class Typeface {
  /** Width of a character the font lacks, in em: generous, as another font will draw it. */
  private static final double UNKNOWN_EM = 1.05;

  private final TrueTypeFont font;
  private final CmapLookup glyphs;
  private final double unitsPerEm;

  /** Widths in em of characters measured so far; NaN for others. */
  private final double[] known = new double[0x3000];

  private Typeface(InputStream file) {
    Arrays.fill(known, Double.NaN);
    try (InputStream stream = file) {
      font = new TTFParser().parse(new RandomAccessReadBuffer(stream));
      glyphs = font.getUnicodeCmapLookup();
      unitsPerEm = font.getUnitsPerEm();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The weight 400. */
  public static Typeface regular() {
    return Regular.INSTANCE;
  }

  /** The weight 700. */
  public static Typeface bold() {
    return Bold.INSTANCE;
  }

  /** Width of a line of text, in the unit of the size. */
  public double width(String text, double size) {
    double sum = 0;
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      sum += em(text.codePointAt(i));
    }
    return sum * size;
  }

  /** Whether the font has a glyph of its own for a character. */
  public boolean draws(int codePoint) {
    return glyphs.getGlyphId(codePoint) != 0;
  }

  private double em(int codePoint) {
    if (codePoint >= known.length) {
      return measured(codePoint);
    }
    // Two threads may both measure a character; they write the same.
    if (Double.isNaN(known[codePoint])) {
      known[codePoint] = measured(codePoint);
    }
    return known[codePoint];
  }

  private double measured(int codePoint) {
    int type = Character.getType(codePoint);
    if (type == Character.FORMAT || type == Character.NON_SPACING_MARK) {
      return 0;
    }
    return draws(codePoint) ? advance(codePoint) : UNKNOWN_EM;
  }

  private double advance(int codePoint) {
    try {
      return font.getAdvanceWidth(glyphs.getGlyphId(codePoint)) / unitsPerEm;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static final class Regular {
    static final Typeface INSTANCE = new Typeface(Fonts.regular());
  }

  private static final class Bold {
    static final Typeface INSTANCE = new Typeface(Fonts.bold());
  }
}
