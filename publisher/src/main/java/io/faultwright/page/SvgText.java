package io.faultwright.page;

import io.faultwright.prose.Html;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A standalone SVG file's text, made ready to stand inside a page.
 *
 * @param text from the opening {@code svg} tag on
 */
record SvgText(String text) {
  private static final Pattern ROOT = Pattern.compile("<svg\\b[^>]*>");
  private static final Pattern VIEW_BOX =
      Pattern.compile("\\bviewBox=\"[\\d.-]+[ ,]+[\\d.-]+[ ,]+([\\d.]+)[ ,]+([\\d.]+)\"");
  private static final Pattern SIZE = Pattern.compile("\\s(?:width|height)=\"[^\"]*\"");

  /** What a file brings for standing alone, its fonts, and a page brings itself. */
  private static final Pattern STYLE = Pattern.compile("<style>.*?</style>\\s*", Pattern.DOTALL);

  /** Drops what a file needs to stand alone: the XML declaration and its fonts. */
  static SvgText of(String file) {
    Matcher root = ROOT.matcher(file);
    if (!root.find()) {
      throw new IllegalArgumentException("a chart without an svg element");
    }
    return new SvgText(STYLE.matcher(file.substring(root.start()).strip()).replaceFirst(""));
  }

  double width() {
    return Double.parseDouble(viewBox().group(1));
  }

  double height() {
    return Double.parseDouble(viewBox().group(2));
  }

  private Matcher viewBox() {
    Matcher box = VIEW_BOX.matcher(rootTag());
    if (!box.find()) {
      throw new IllegalArgumentException("a chart without a viewBox");
    }
    return box;
  }

  private String rootTag() {
    return text.substring(0, text.indexOf('>') + 1);
  }

  /** The drawing set to a size in whole pixels. */
  Html sized(int width, int height) {
    String root = SIZE.matcher(rootTag()).replaceAll("");
    String sized = "<svg width=\"" + width + "\" height=\"" + height + "\"" + root.substring(4);
    return new Html(sized + text.substring(text.indexOf('>') + 1));
  }
}
