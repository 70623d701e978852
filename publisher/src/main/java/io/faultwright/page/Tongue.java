package io.faultwright.page;

import io.faultwright.words.Words;
import java.util.List;
import java.util.Locale;

/**
 * A language in which the handbook is published.
 *
 * @param tag BCP 47
 * @param folder of the site in it, seen from the root: empty for the handbook's own, else with a
 *     slash at the end
 */
public record Tongue(String tag, String folder) {
  /** The handbook's own language. */
  public static Tongue own(String tag) {
    return new Tongue(tag, "");
  }

  /** A language into which it is translated. */
  public static Tongue other(String tag) {
    return new Tongue(tag, tag + "/");
  }

  /** What the language calls itself, for instance {@code Deutsch}. */
  String name() {
    Locale locale = Locale.forLanguageTag(tag);
    return Words.upperFirst(
        locale.getCountry().isEmpty()
            ? locale.getDisplayLanguage(locale)
            : locale.getDisplayName(locale));
  }

  /** The address of one of its pages, seen from the same page in a language. */
  private String from(Tongue other, String path) {
    String here = other.folder + path;
    return "../".repeat((int) here.chars().filter(c -> c == '/').count()) + folder + path;
  }

  /** Links from a page to the same page in the other languages, in their order. */
  static List<Switch> switches(Tongue here, List<Tongue> all, String path) {
    return all.stream()
        .filter(one -> !one.equals(here))
        .map(one -> new Switch(one.tag(), one.name(), one.from(here, path)))
        .toList();
  }

  /**
   * A link to the same page in another language.
   *
   * @param tag BCP 47
   * @param name what the language calls itself
   * @param href address of the page
   */
  public record Switch(String tag, String name, String href) {}
}
