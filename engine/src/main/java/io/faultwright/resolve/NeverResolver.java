package io.faultwright.resolve;

import io.faultwright.model.Condition;
import io.faultwright.model.Never;
import io.faultwright.syntax.Node.Entry;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads what cannot happen, on top level and in a symptom. */
final class NeverResolver {
  private static final List<String> KEYS = List.of("when", "because");

  private final Context context;
  private final ConditionResolver situation;

  NeverResolver(Context context, ConditionResolver situation) {
    this.context = context;
    this.situation = situation;
  }

  /** The statements of the top level. */
  SortedMap<String, Never> resolveAll() {
    SortedMap<String, Never> nevers = new TreeMap<>();
    context.outline().of(Kind.NEVER).forEach((id, one) -> nevers.put(id, resolve(one)));
    return nevers;
  }

  /** The statements of a symptom. */
  SortedMap<String, Never> resolve(List<Entry> entries) {
    SortedMap<String, Never> nevers = new TreeMap<>();
    for (Entry entry : entries) {
      Ids.check(Kind.NEVER, entry.key(), context.problems());
      nevers.put(entry.name(), resolve(Definition.of(Kind.NEVER, entry)));
    }
    return nevers;
  }

  private Never resolve(Definition definition) {
    Fields fields = Fields.of(definition, KEYS, context.problems());
    return new Never(
        definition.id(),
        definition.place(),
        fields.require("when").map(situation::all).orElse(Condition.ALWAYS),
        fields.requireText("because"));
  }
}
