package io.faultwright.render.pdf;

import io.faultwright.font.NameFont;
import io.faultwright.font.NameFonts;
import io.faultwright.render.pdf.ShapedText.Cluster;
import io.faultwright.render.pdf.ShapedText.Glyph;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.Point2D;
import java.text.Bidi;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Turns text into glyphs: the direction by the Unicode bidirectional algorithm (UAX 9) of the JDK,
 * the glyphs by its HarfBuzz.
 */
final class Shaper {
  /** Fine enough that rounding in the font engine does not show. */
  private static final float SIZE = 1000;

  /** From here on, numbers of glyphs stand for "draw nothing". */
  private static final int NOTHING = 0xFFFE;

  private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

  private final NameFonts fonts;

  Shaper(NameFonts fonts) {
    this.fonts = fonts;
  }

  /** Text in one direction and one font. */
  private record Run(int start, int limit, NameFont font, boolean leftwards) {}

  /**
   * A line.
   *
   * @throws Undrawable where no font has one of its characters
   */
  ShapedText shape(String written, boolean strong) {
    String text = Normalizer.normalize(written, Normalizer.Form.NFC);
    List<Cluster> clusters = new ArrayList<>();
    double x = 0;
    for (Run run : visual(text, strong)) {
      GlyphVector vector = vector(text, run);
      clusters.addAll(clusters(text, run, vector, x));
      x += vector.getGlyphPosition(vector.getNumGlyphs()).getX() / SIZE;
    }
    return new ShapedText(text, clusters, x);
  }

  private static GlyphVector vector(String text, Run run) {
    int flags = run.leftwards() ? Font.LAYOUT_RIGHT_TO_LEFT : Font.LAYOUT_LEFT_TO_RIGHT;
    return run.font()
        .shaping()
        .deriveFont(SIZE)
        .layoutGlyphVector(CONTEXT, text.toCharArray(), run.start(), run.limit(), flags);
  }

  /** Glyphs side by side that stand for the same characters; marks go with what they mark. */
  private static List<Cluster> clusters(String text, Run run, GlyphVector vector, double x) {
    int[] starts =
        IntStream.range(0, vector.getNumGlyphs())
            .map(i -> unmarked(text, run.start(), run.start() + vector.getGlyphCharIndex(i)))
            .toArray();
    NavigableSet<Integer> ends = new TreeSet<>(Set.of(run.limit()));
    IntStream.of(starts).forEach(ends::add);
    List<Cluster> clusters = new ArrayList<>();
    List<Glyph> glyphs = new ArrayList<>();
    for (int i = 0; i < starts.length; i++) {
      drawn(run, vector, i, x).ifPresent(glyphs::add);
      if (i + 1 == starts.length || starts[i + 1] != starts[i]) {
        clusters.add(new Cluster(text.substring(starts[i], ends.higher(starts[i])), glyphs));
        glyphs.clear();
      }
    }
    return clusters;
  }

  /** Where the character begins that a mark belongs to. */
  private static int unmarked(String text, int first, int at) {
    int start = at;
    while (start > first && Character.getType(text.charAt(start)) == Character.NON_SPACING_MARK) {
      start--;
    }
    return start;
  }

  private static Optional<Glyph> drawn(Run run, GlyphVector vector, int i, double x) {
    Point2D place = vector.getGlyphPosition(i);
    int id = vector.getGlyphCode(i);
    return id < NOTHING
        ? Optional.of(new Glyph(run.font(), id, x + place.getX() / SIZE, -place.getY() / SIZE))
        : Optional.empty();
  }

  /** The runs from left to right. */
  private List<Run> visual(String text, boolean strong) {
    Bidi bidi = new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
    int count = bidi.getRunCount();
    byte[] levels = new byte[count];
    Integer[] order = new Integer[count];
    for (int i = 0; i < count; i++) {
      levels[i] = (byte) bidi.getRunLevel(i);
      order[i] = i;
    }
    Bidi.reorderVisually(levels, 0, order, 0, count);
    NameFont[] chosen = fonts(text, strong);
    List<Run> runs = new ArrayList<>();
    for (int i : order) {
      boolean leftwards = bidi.getRunLevel(i) % 2 == 1;
      List<Run> some = byFont(chosen, bidi.getRunStart(i), bidi.getRunLimit(i), leftwards);
      if (leftwards) {
        Collections.reverse(some);
      }
      runs.addAll(some);
    }
    return runs;
  }

  private static List<Run> byFont(NameFont[] fonts, int start, int limit, boolean leftwards) {
    List<Run> runs = new ArrayList<>();
    int from = start;
    for (int at = start + 1; at <= limit; at++) {
      if (at == limit || fonts[at] != fonts[from]) {
        runs.add(new Run(from, at, fonts[from], leftwards));
        from = at;
      }
    }
    return runs;
  }

  /** The font of each character. */
  private NameFont[] fonts(String text, boolean strong) {
    NameFont[] chosen = new NameFont[text.length()];
    NameFont handbook = fonts.handbook(strong);
    Optional<NameFont> rest =
        fonts.drawing(drawn(text).filter(point -> !handbook.draws(point)).boxed().toList());
    int start = 0;
    for (String word : text.split("(?<= )")) {
      boolean whole = drawn(word).allMatch(handbook::draws);
      NameFont before = whole || rest.isEmpty() ? handbook : rest.get();
      for (int at = 0; at < word.length(); at += Character.charCount(word.codePointAt(at))) {
        int point = word.codePointAt(at);
        before = isDrawn(point) && !before.draws(point) ? font(point, rest, handbook) : before;
        Arrays.fill(
            chosen, start + at, start + at + Character.charCount(word.codePointAt(at)), before);
      }
      start += word.length();
    }
    return chosen;
  }

  private NameFont font(int point, Optional<NameFont> rest, NameFont handbook) {
    return Optional.of(handbook)
        .filter(font -> font.draws(point))
        .or(() -> rest.filter(font -> font.draws(point)))
        .or(() -> fonts.drawing(List.of(point)))
        .orElseThrow(() -> new Undrawable(point));
  }

  private static IntStream drawn(String text) {
    return text.codePoints().filter(Shaper::isDrawn);
  }

  /** Joiners and marks of direction are not drawn. */
  private static boolean isDrawn(int point) {
    return Character.getType(point) != Character.FORMAT;
  }
}
