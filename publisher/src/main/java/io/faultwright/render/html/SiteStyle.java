package io.faultwright.render.html;

import io.faultwright.font.Fonts;
import io.faultwright.font.Fonts.WebFont;
import java.util.stream.Collectors;

/** The one style sheet of the site, with its fonts. */
public final class SiteStyle {
  private SiteStyle() {}

  /**
   * The style sheet.
   *
   * @param fonts address of the folder of the font files, seen from the style sheet
   */
  public static String css(String fonts) {
    return faces(fonts) + Resources.text("site/style.css") + Resources.text("site/diagnosis.css");
  }

  /** Where a style sheet finds the fonts. */
  static String faces(String fonts) {
    return Fonts.web().stream().map(font -> face(font, fonts)).collect(Collectors.joining());
  }

  private static String face(WebFont font, String folder) {
    return "@font-face {\n"
        + ("  font-family: \"" + Fonts.FAMILY + "\";\n")
        + ("  font-weight: " + font.weight() + ";\n")
        + ("  font-display: swap;\n")
        + ("  src: url(\"" + folder + font.name() + "\") format(\"woff2\");\n")
        + ("  unicode-range: " + font.unicodeRange() + ";\n")
        + "}\n";
  }
}
