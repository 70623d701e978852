package io.faultwright.resolve;

import io.faultwright.model.NamedValue;
import io.faultwright.model.Option;
import io.faultwright.model.Version;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads the options of the equipment, and the software that their values bring along. */
final class OptionResolver {
  private final Context context;
  private final SoftwareResolver softwareResolver;
  private final RefrigerantResolver refrigerantResolver;
  private final SortedMap<String, SortedMap<String, List<Version>>> software = new TreeMap<>();
  private final SortedMap<String, SortedMap<String, String>> refrigerants = new TreeMap<>();

  OptionResolver(Context context, RefrigerantResolver refrigerantResolver) {
    this.context = context;
    this.refrigerantResolver = refrigerantResolver;
    this.softwareResolver = new SoftwareResolver(context);
  }

  /** The options whose values could be read, by id. */
  SortedMap<String, Option> resolveAll() {
    SortedMap<String, Option> options = new TreeMap<>();
    for (Definition definition : context.outline().of(Kind.OPTION).values()) {
      Option option = option(definition);
      if (!option.values().isEmpty()) {
        options.put(option.id(), option);
      }
    }
    return options;
  }

  /** Published versions by option and value, for the values that list some. */
  SortedMap<String, SortedMap<String, List<Version>>> software() {
    return software;
  }

  /** Refrigerants by option and value, for the values that name one. */
  SortedMap<String, SortedMap<String, String>> refrigerants() {
    return refrigerants;
  }

  private Option option(Definition definition) {
    Fields fields = Fields.of(definition, List.of("title", "values"), context.problems());
    fields.require("values");
    List<NamedValue> values = new ArrayList<>();
    fields.map("values").forEach(entry -> values.add(value(definition.id(), entry)));
    return new Option(
        definition.id(),
        definition.place(),
        fields.text("title").orElse(Words.title(definition.id())),
        values);
  }

  private NamedValue value(String option, Entry entry) {
    Ids.checkValue(entry.key(), context.problems());
    if (entry.value() instanceof Scalar title) {
      String text = title.text().strip();
      return new NamedValue(entry.name(), text.isEmpty() ? Words.title(entry.name()) : text);
    }
    Fields fields =
        new Fields(
            entry.value(),
            "value " + Words.quoted(entry.name()),
            entry.key().place(),
            List.of("title", "software", "refrigerant"),
            context.problems());
    if (fields.has("software")) {
      software
          .computeIfAbsent(option, id -> new TreeMap<>())
          .put(entry.name(), softwareResolver.versions(fields));
    }
    fields
        .scalar("refrigerant")
        .flatMap(refrigerantResolver::named)
        .ifPresent(
            refrigerant ->
                refrigerants
                    .computeIfAbsent(option, id -> new TreeMap<>())
                    .put(entry.name(), refrigerant));
    return new NamedValue(entry.name(), fields.text("title").orElse(Words.title(entry.name())));
  }
}
