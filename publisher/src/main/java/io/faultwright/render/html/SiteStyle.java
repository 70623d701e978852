package io.faultwright.render.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The one style sheet of the site. */
public final class SiteStyle {
  private SiteStyle() {}

  public static byte[] css() {
    try (InputStream in = SiteStyle.class.getResourceAsStream("site/style.css")) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
