package io.faultwright.resolve;

import io.faultwright.diagnostic.Problem;
import io.faultwright.model.Equipment;
import io.faultwright.model.Model;
import io.faultwright.model.Nameplate;
import io.faultwright.model.Option;
import io.faultwright.model.Version;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Reads one model: what the nameplate says, what is written, and whether both agree. */
final class ModelResolver {
  private static final List<String> KEYS =
      List.of("title", "family", "options", "software", "refrigerant", "data");

  private final Context context;
  private final SortedMap<String, Option> options;
  private final OptionResolver fromOptions;
  private final RefrigerantResolver refrigerants;
  private final Optional<Nameplate> nameplate;
  private final SoftwareResolver softwareResolver;

  ModelResolver(
      Context context,
      SortedMap<String, Option> options,
      OptionResolver fromOptions,
      RefrigerantResolver refrigerants,
      Optional<Nameplate> nameplate) {
    this.context = context;
    this.options = options;
    this.fromOptions = fromOptions;
    this.refrigerants = refrigerants;
    this.nameplate = nameplate;
    this.softwareResolver = new SoftwareResolver(context);
  }

  Model resolve(Definition definition) {
    Fields fields = Fields.of(definition, KEYS, context.problems());
    SortedMap<String, String> decoded = decode(definition);
    SortedMap<String, String> values = options(definition, fields, decoded);
    return new Model(
        definition.id(),
        definition.place(),
        fields.text("title").orElse(definition.id()),
        family(definition, fields, decoded),
        values,
        software(definition, fields, values),
        refrigerant(definition, fields, values),
        data(fields));
  }

  private SortedMap<String, String> decode(Definition definition) {
    return nameplate.map(plate -> decode(definition, plate)).orElseGet(TreeMap::new);
  }

  private SortedMap<String, String> decode(Definition definition, Nameplate plate) {
    ModelNumber number = new ModelNumber(plate, definition.id());
    if (number.readings().size() == 1) {
      return number.readings().get(0);
    }
    String quoted = Words.quoted(definition.id());
    if (number.readings().isEmpty()) {
      String rest = number.found().isEmpty() ? "its end" : Words.quoted(number.found());
      problem(
          definition.place(),
          "model number "
              + quoted
              + " does not fit the nameplate: at "
              + rest
              + " expected "
              + number.expected(),
          "correct the model number, or the parts of the nameplate");
    } else {
      problem(
          definition.place(),
          "model number " + quoted + " can be read in two ways by the nameplate: " + number.ways(),
          "choose codes of which none is the beginning of another");
    }
    return new TreeMap<>();
  }

  private String family(Definition definition, Fields fields, SortedMap<String, String> decoded) {
    String coded = decoded.getOrDefault(Equipment.FAMILY, "");
    if (coded.isEmpty() && nameplateSilent(Equipment.FAMILY)) {
      fields.require(Equipment.FAMILY);
    }
    Optional<Scalar> written = fields.scalar(Equipment.FAMILY);
    written.ifPresent(family -> checkAgreement(Equipment.FAMILY, coded, family));
    return written.map(family -> context.names().reference(Kind.FAMILY, family)).orElse(coded);
  }

  /** Whether the nameplate, if there is one, has no part for an attribute. */
  private boolean nameplateSilent(String attribute) {
    if (nameplate.isEmpty()) {
      return context.outline().nameplate().isEmpty();
    }
    return nameplate.get().segments().stream()
        .noneMatch(
            segment ->
                segment instanceof Nameplate.Coded coded && coded.attribute().equals(attribute));
  }

  private void checkAgreement(String attribute, String coded, Scalar written) {
    if (!coded.isEmpty() && !coded.equals(written.text().strip())) {
      problem(
          written.place(),
          "`"
              + attribute
              + "` is written as "
              + Words.quoted(written.text())
              + ", but the model number says "
              + Words.quoted(coded),
          "leave it out where the nameplate tells it, or correct one of the two");
    }
  }

  private SortedMap<String, String> options(
      Definition definition, Fields fields, SortedMap<String, String> decoded) {
    SortedMap<String, String> values = new TreeMap<>(decoded);
    values.remove(Equipment.FAMILY);
    fields.map("options").forEach(entry -> option(entry, decoded, values));
    for (Option option : options.values()) {
      if (!values.containsKey(option.id())
          && nameplateSilent(option.id())
          && !isWritten(fields, option)) {
        problem(
            definition.place(),
            definition.what() + " has no value for the option `" + option.id() + "`",
            "write `options: { "
                + option.id()
                + ": "
                + option.values().get(0).id()
                + " }`, or"
                + " another of its values");
      }
    }
    return values;
  }

  private static boolean isWritten(Fields fields, Option option) {
    return fields.map("options").stream().anyMatch(entry -> entry.name().equals(option.id()));
  }

  private void option(
      Entry entry, SortedMap<String, String> decoded, SortedMap<String, String> values) {
    context.names().reference(Kind.OPTION, entry.key());
    Option option = options.get(entry.name());
    if (option == null) {
      return;
    }
    if (entry.value() instanceof Scalar written) {
      new NamedPatterns(context.problems())
          .valueOf(option, written)
          .ifPresent(value -> values.put(option.id(), value));
      checkAgreement(option.id(), decoded.getOrDefault(option.id(), ""), written);
    } else {
      problem(
          entry.value().place(),
          "an option has one value, found " + entry.value().kind(),
          "write `" + option.id() + ": value`");
    }
  }

  private List<Version> software(
      Definition definition, Fields fields, SortedMap<String, String> values) {
    Map<String, List<Version>> lists = new TreeMap<>();
    values.forEach(
        (option, value) ->
            of(fromOptions.software(), option, value)
                .ifPresent(versions -> lists.put(option + ": " + value, versions)));
    if (fields.has("software")) {
      lists.put("software", softwareResolver.versions(fields));
    }
    if (lists.size() > 1) {
      String sources = Words.quoted(lists.keySet());
      context
          .problems()
          .add(
              new Problem(
                  Stream.of(fields.place("software"), definition.place()).distinct().toList(),
                  "the software of "
                      + definition.what()
                      + " is listed more than once, by "
                      + sources,
                  "list the versions in one place only"));
    }
    return lists.values().stream().findFirst().orElse(List.of());
  }

  private static <T> Optional<T> of(
      SortedMap<String, SortedMap<String, T>> byOption, String option, String value) {
    return Optional.ofNullable(byOption.get(option)).map(byValue -> byValue.get(value));
  }

  private Optional<String> refrigerant(
      Definition definition, Fields fields, SortedMap<String, String> values) {
    Map<String, String> named = new TreeMap<>();
    values.forEach(
        (option, value) ->
            of(fromOptions.refrigerants(), option, value)
                .ifPresent(id -> named.put(option + ": " + value, id)));
    fields
        .scalar("refrigerant")
        .flatMap(refrigerants::named)
        .ifPresent(id -> named.put("refrigerant", id));
    if (named.values().stream().distinct().count() > 1) {
      problem(
          fields.place("refrigerant"),
          definition.what() + " has two refrigerants, by " + Words.quoted(named.keySet()),
          "name the refrigerant in one place only");
    }
    return named.values().stream().findFirst();
  }

  private SortedMap<String, String> data(Fields fields) {
    SortedMap<String, String> data = new TreeMap<>();
    for (Entry entry : fields.map("data")) {
      if (entry.value() instanceof Scalar text && !text.text().isBlank()) {
        data.put(entry.name(), text.text().strip());
      } else {
        problem(
            entry.value().place(),
            "nameplate data is a text, found " + entry.value().kind(),
            "write `label: text`");
      }
    }
    return data;
  }

  private void problem(Place place, String message, String help) {
    context.problems().add(place, message, help);
  }
}
