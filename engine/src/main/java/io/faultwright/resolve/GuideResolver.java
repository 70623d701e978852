package io.faultwright.resolve;

import io.faultwright.model.Guide;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the pages below {@code guides/}. */
final class GuideResolver {
  private static final Pattern HEADING = Pattern.compile(" {0,3}#[ \\t]+(.*?)[ \\t]*(#+[ \\t]*)?");
  private static final Pattern FENCE = Pattern.compile(" {0,3}(```|~~~).*");

  private final Context context;

  GuideResolver(Context context) {
    this.context = context;
  }

  SortedMap<String, Guide> resolveAll() {
    SortedMap<String, Guide> guides = new TreeMap<>();
    context.outline().of(Kind.GUIDE).forEach((id, one) -> guides.put(id, resolve(one)));
    return guides;
  }

  private static Guide resolve(Definition definition) {
    String markdown = definition.body() instanceof Scalar text ? text.text() : "";
    String title = title(markdown.lines().toList(), definition.id());
    return new Guide(definition.id(), definition.place(), title, markdown);
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
