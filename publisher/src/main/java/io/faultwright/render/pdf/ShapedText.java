package io.faultwright.render.pdf;

import io.faultwright.font.NameFont;
import java.util.List;

/**
 * A line of text as glyphs in their places, at a size of one point.
 *
 * @param text what it says, in the order of reading
 * @param clusters from left to right
 * @param width of the line
 */
record ShapedText(String text, List<Cluster> clusters, double width) {
  ShapedText {
    clusters = List.copyOf(clusters);
  }

  /**
   * Characters that are drawn together.
   *
   * @param text what they are, in the order of reading
   * @param glyphs that draw them
   */
  record Cluster(String text, List<Glyph> glyphs) {
    Cluster {
      glyphs = List.copyOf(glyphs);
    }
  }

  /**
   * A glyph.
   *
   * @param font that has it
   * @param id its number in the font
   * @param x from the beginning of the line
   * @param y upwards from the baseline
   */
  record Glyph(NameFont font, int id, double x, double y) {}
}
