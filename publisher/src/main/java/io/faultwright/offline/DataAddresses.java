package io.faultwright.offline;

import java.util.Base64;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Files as addresses that hold their content (RFC 2397). */
final class DataAddresses {
  private static final Pattern IN_STYLE = Pattern.compile("url\\(\"([^\")]+)\"\\)");
  private static final Pattern PICTURE = Pattern.compile("(<img\\b[^>]*?\\bsrc=\")([^\"]*)(?=\")");
  private static final Map<String, String> TYPES =
      Map.of(
          "svg", "image/svg+xml",
          "png", "image/png",
          "jpg", "image/jpeg",
          "jpeg", "image/jpeg",
          "gif", "image/gif",
          "webp", "image/webp",
          "avif", "image/avif",
          "woff2", "font/woff2");

  private final SortedMap<String, byte[]> files;

  DataAddresses(SortedMap<String, byte[]> files) {
    this.files = files;
  }

  String of(String path) {
    String ending = path.substring(path.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    return "data:"
        + TYPES.getOrDefault(ending, "application/octet-stream")
        + ";base64,"
        + Base64.getEncoder().encodeToString(files.get(path));
  }

  /** A style sheet with the files it names in it. */
  String inStyle(String path, String css) {
    return IN_STYLE
        .matcher(css)
        .replaceAll(found -> quoted("url(\"" + of(path, found.group(1)) + "\")"));
  }

  /** A page with its pictures in it. */
  String inPage(String path, String html) {
    return PICTURE.matcher(html).replaceAll(found -> quoted(picture(path, found)));
  }

  private String picture(String page, MatchResult found) {
    return found.group(1) + of(page, plain(found.group(2)));
  }

  /** What an attribute says. */
  private static String plain(String attribute) {
    return attribute.replace("&#39;", "'").replace("&quot;", "\"").replace("&amp;", "&");
  }

  /** A file as another names it; an address of nothing that was published stays. */
  private String of(String from, String address) {
    String path = SiteAddress.path(from, address);
    return files.containsKey(path) ? of(path) : address;
  }

  private static String quoted(String text) {
    return Matcher.quoteReplacement(text);
  }
}
