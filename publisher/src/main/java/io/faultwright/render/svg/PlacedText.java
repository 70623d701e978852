package io.faultwright.render.svg;

import io.faultwright.layout.Text;
import io.faultwright.xml.Xml;
import java.util.Locale;

/** Writes a placed text. */
final class PlacedText {
  private PlacedText() {}

  static void write(Xml xml, Text text) {
    xml.text(
        "text",
        text.content(),
        "x",
        text.x(),
        "y",
        text.baseline(),
        "font-size",
        text.size(),
        "font-weight",
        text.bold() ? "700" : "400",
        "text-anchor",
        text.anchor().name().toLowerCase(Locale.ROOT));
  }
}
