package io.faultwright.offline;

import java.util.regex.Pattern;

/** Texts set into a page so that they cannot end the element they stand in. */
final class Inert {
  private static final Pattern ENDS_SCRIPT =
      Pattern.compile("</script|<script|<!--|\r|\u0000", Pattern.CASE_INSENSITIVE);
  private static final Pattern ENDS_STYLE =
      Pattern.compile("</style|<!--|\r|\u0000", Pattern.CASE_INSENSITIVE);

  private Inert() {}

  /** A script as it is; data in it have no {@code <} of their own. */
  static String script(String text) {
    return checked(text, ENDS_SCRIPT);
  }

  static String style(String text) {
    return checked(text, ENDS_STYLE);
  }

  private static String checked(String text, Pattern end) {
    if (end.matcher(text).find()) {
      throw new IllegalArgumentException("a text holds what would end its element");
    }
    return text;
  }

  static String attribute(String text) {
    return text.replace("&", "&amp;").replace("\"", "&quot;").replace("<", "&lt;");
  }
}
