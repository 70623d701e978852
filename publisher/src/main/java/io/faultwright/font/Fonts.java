package io.faultwright.font;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** The vendored font files: TTF for PDF and metrics, woff2 for browsers, and their licence. */
public final class Fonts {
  /** Family name, as it stands in the font files. */
  public static final String FAMILY = "Fira Sans Condensed";

  private static final String STEM = "fira-sans-condensed-";
  private static final String LATIN =
      "U+0000-00FF, U+0131, U+0152-0153, U+02BB-02BC, U+02C6, U+02DA, U+02DC, U+0304, U+0308,"
          + " U+0329, U+2000-206F, U+20AC, U+2122, U+2191, U+2193, U+2212, U+2215, U+FEFF, U+FFFD";
  private static final String LATIN_EXT =
      "U+0100-02BA, U+02BD-02C5, U+02C7-02CC, U+02CE-02D7, U+02DD-02FF, U+0304, U+0308, U+0329,"
          + " U+1D00-1DBF, U+1E00-1E9F, U+1EF2-1EFF, U+2020, U+20A0-20AB, U+20AD-20C0, U+2113,"
          + " U+2C60-2C7F, U+A720-A7FF";
  private static final String GREEK =
      "U+0370-0377, U+037A-037F, U+0384-038A, U+038C, U+038E-03A1, U+03A3-03FF";

  private Fonts() {}

  /**
   * A font file for browsers.
   *
   * @param name file name, safe in an address
   * @param weight CSS font weight, 400 or 700
   * @param unicodeRange CSS {@code unicode-range} the file covers
   */
  public record WebFont(String name, int weight, String unicodeRange) {
    /** The woff2 file. */
    public byte[] bytes() {
      return read(name);
    }
  }

  /** The regular weight (400) as TTF. */
  public static InputStream regular() {
    return open(STEM + "regular.ttf");
  }

  /** The bold weight (700) as TTF. */
  public static InputStream bold() {
    return open(STEM + "bold.ttf");
  }

  /** The files for browsers, in a fixed order. */
  public static List<WebFont> web() {
    return List.of(
        web("latin-regular", 400, LATIN),
        web("latin-bold", 700, LATIN),
        web("latin-ext-regular", 400, LATIN_EXT),
        web("latin-ext-bold", 700, LATIN_EXT),
        web("greek-regular", 400, GREEK),
        web("greek-bold", 700, GREEK));
  }

  /** The licence (SIL Open Font License 1.1), to be shipped beside the files. */
  public static byte[] licence() {
    return read("OFL.txt");
  }

  private static WebFont web(String part, int weight, String range) {
    return new WebFont(STEM + part + ".woff2", weight, range);
  }

  private static byte[] read(String name) {
    try (InputStream stream = open(name)) {
      return stream.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static InputStream open(String name) {
    InputStream stream = Fonts.class.getResourceAsStream(name);
    if (stream == null) {
      throw new IllegalStateException("font file missing from the jar: " + name);
    }
    return stream;
  }
}
