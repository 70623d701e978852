package io.faultwright.resolve;

import io.faultwright.model.Part;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads the section {@code parts}. */
final class PartResolver {
  private static final List<String> KEYS = List.of("title", "number");

  private final Context context;

  PartResolver(Context context) {
    this.context = context;
  }

  SortedMap<String, Part> resolveAll() {
    SortedMap<String, Part> parts = new TreeMap<>();
    context.outline().of(Kind.PART).forEach((id, one) -> parts.put(id, resolve(one)));
    return parts;
  }

  private Part resolve(Definition definition) {
    Fields fields = Fields.of(definition, KEYS, context.problems());
    return new Part(
        definition.id(), definition.place(), fields.requireText("title"), fields.text("number"));
  }
}
