package io.faultwright.resolve;

import io.faultwright.model.Guide;
import io.faultwright.syntax.Node.Scalar;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads the pages below {@code guides/}. */
final class GuideResolver {
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
    return Guide.of(definition.id(), definition.place(), markdown);
  }
}
