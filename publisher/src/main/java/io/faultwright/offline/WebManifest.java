package io.faultwright.offline;

import io.faultwright.json.Json;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What a device needs to know to install the site (W3C Web Application Manifest). */
final class WebManifest {
  /** The icon in the sizes that devices ask for. */
  static final List<String> PICTURES = List.of("icon-192.png", "icon-512.png");

  /** The site's paper by day; the style sheet says it too. */
  private static final String PAPER = "#fbfaf6";

  private WebManifest() {}

  static String of(Release release) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("name", release.title());
    fields.put("short_name", brief(release.title()));
    fields.put("lang", release.language());
    fields.put("dir", release.direction());
    fields.put("start_url", "index.html");
    fields.put("scope", ".");
    fields.put("display", "standalone");
    fields.put("background_color", PAPER);
    fields.put("theme_color", PAPER);
    fields.put("icons", icons());
    return Json.text(fields) + "\n";
  }

  /** The title up to where it goes into detail. */
  private static String brief(String title) {
    return title.split("[,:;(]| [–—-] ", 2)[0].strip();
  }

  private static List<Map<String, Object>> icons() {
    return Stream.of(
            icon(OfflineFiles.ICON, "any", "image/svg+xml"),
            icon(PICTURES.get(0), "192x192", "image/png"),
            icon(PICTURES.get(1), "512x512", "image/png"))
        .toList();
  }

  /** The drawing keeps to the middle, so that a device may cut a circle out of it. */
  private static Map<String, Object> icon(String file, String sizes, String type) {
    Map<String, Object> icon = new LinkedHashMap<>();
    icon.put("src", file);
    icon.put("sizes", sizes);
    icon.put("type", type);
    icon.put("purpose", "any maskable");
    return icon;
  }
}
