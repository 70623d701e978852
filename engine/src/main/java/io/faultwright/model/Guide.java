package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A Markdown page.
 *
 * @param id file name without its ending
 * @param place first line of the file
 * @param title its first heading, else the id
 * @param markdown the whole text
 */
public record Guide(String id, Place place, String title, String markdown) {
  private static final Pattern HEADING = Pattern.compile(" {0,3}#[ \\t]+(.*?)[ \\t]*(#+[ \\t]*)?");
  private static final Pattern FENCE = Pattern.compile(" {0,3}(```|~~~).*");

  /** A guide with the title that its text gives it. */
  public static Guide of(String id, Place place, String markdown) {
    return new Guide(id, place, title(markdown.lines().toList(), id), markdown);
  }

  /** No more of it than others need to refer to it. */
  Guide titled() {
    return new Guide(id, place, title, "");
  }

  /** The first heading of the first level that stands outside a block of code. */
  private static String title(List<String> lines, String id) {
    boolean code = false;
    for (String line : lines) {
      code ^= FENCE.matcher(line).matches();
      Matcher heading = HEADING.matcher(line);
      if (!code && heading.matches() && !heading.group(1).isBlank()) {
        return heading.group(1).strip();
      }
    }
    return id;
  }
}
