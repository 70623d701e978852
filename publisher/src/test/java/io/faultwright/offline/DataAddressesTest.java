package io.faultwright.offline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Files of the site inside the pages and style sheets that name them. */
class DataAddressesTest {
  private final TreeMap<String, byte[]> files = new TreeMap<>();
  private final DataAddresses data = new DataAddresses(files);

  @Test
  void picturesOfAPageStandInIt() {
    files.put("guide/a & b.png", "dot".getBytes(StandardCharsets.UTF_8));
    assertEquals(
        "<p><img alt=\"x\" src=\"data:image/png;base64,ZG90\" width=\"1\"></p>",
        data.inPage(
            "symptom/ice.html",
            "<p><img alt=\"x\" src=\"../guide/a%20&amp;%20b.png\" width=\"1\"></p>"));
  }

  @Test
  void whatIsNotOfTheSiteStays() {
    String html = "<img src=\"../guide/lost.png\"><img src=\"https://example.org/x.png\">";
    assertEquals(html, data.inPage("symptom/ice.html", html));
  }

  @Test
  void fontsOfAStyleSheetStandInIt() {
    files.put("fonts/x.woff2", "dot".getBytes(StandardCharsets.UTF_8));
    assertEquals(
        "src: url(\"data:font/woff2;base64,ZG90\") format(\"woff2\");",
        data.inStyle("style.css", "src: url(\"fonts/x.woff2\") format(\"woff2\");"));
  }

  @Test
  void aScriptThatCouldEndItsElementIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Inert.script("x = '</SCRIPT>'"));
    assertThrows(IllegalArgumentException.class, () -> Inert.script("x = '<!--'"));
    assertThrows(IllegalArgumentException.class, () -> Inert.style("a {} </style>"));
    assertEquals("if (1 < 2) x()", Inert.script("if (1 < 2) x()"));
  }
}
