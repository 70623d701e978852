package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.model.Equipment;
import io.faultwright.model.Nameplate;
import io.faultwright.model.Nameplate.Coded;
import io.faultwright.model.Nameplate.Digits;
import io.faultwright.model.Nameplate.Literal;
import io.faultwright.model.Nameplate.Segment;
import io.faultwright.model.Option;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads how a model number is built. */
final class NameplateResolver {
  private static final String PART_HELP =
      "write `text: \"-\"`, `digits: 2`, or `family:` or an option with its codes";

  private final Context context;
  private final SortedMap<String, Option> options;

  NameplateResolver(Context context, SortedMap<String, Option> options) {
    this.context = context;
    this.options = options;
  }

  /** The nameplate; absent where none is written, or where it cannot decode anything. */
  Optional<Nameplate> resolve() {
    return context.outline().nameplate().flatMap(this::read);
  }

  private Optional<Nameplate> read(Definition definition) {
    Fields fields =
        Fields.of(definition, List.of("where", "software", "parts"), context.problems());
    String where = fields.requireText("where");
    Optional<String> software = fields.text("software");
    fields.require("parts");
    List<Node> parts = fields.list("parts");
    List<Segment> segments = new ArrayList<>();
    parts.forEach(part -> segment(part).ifPresent(segments::add));
    boolean sound = !segments.isEmpty() && segments.size() == parts.size();
    return sound ? Optional.of(new Nameplate(where, software, segments)) : Optional.empty();
  }

  private Optional<Segment> segment(Node part) {
    if (part instanceof MapNode map && map.entries().size() == 1) {
      return segment(map.entries().get(0));
    }
    String found = part instanceof MapNode map ? map.entries().size() + " keys" : part.kind();
    problem(part, "a part of the nameplate is a map with one key, found " + found, PART_HELP);
    return Optional.empty();
  }

  private Optional<Segment> segment(Entry entry) {
    return switch (entry.name()) {
      case "text" -> literal(entry.value());
      case "digits" -> digits(entry.value());
      default -> coded(entry);
    };
  }

  private Optional<Segment> literal(Node node) {
    if (node instanceof Scalar scalar && !scalar.text().isEmpty()) {
      return Optional.of(new Literal(scalar.text()));
    }
    problem(node, "`text` takes the characters, found " + node.kind(), PART_HELP);
    return Optional.empty();
  }

  private Optional<Segment> digits(Node node) {
    if (node instanceof Scalar scalar && scalar.text().matches("[1-9]")) {
      return Optional.of(new Digits(Integer.parseInt(scalar.text())));
    }
    problem(node, "`digits` takes how many digits there are, from 1 to 9", PART_HELP);
    return Optional.empty();
  }

  private Optional<Segment> coded(Entry entry) {
    if (!isAttribute(entry.key()) || !(entry.value() instanceof MapNode map)) {
      if (isAttribute(entry.key())) {
        problem(entry.value(), "expected codes, found " + entry.value().kind(), PART_HELP);
      }
      return Optional.empty();
    }
    SortedMap<String, String> codes = new TreeMap<>();
    map.entries()
        .forEach(code -> value(entry.name(), code).ifPresent(id -> codes.put(code.name(), id)));
    return codes.size() == map.entries().size() && !codes.isEmpty()
        ? Optional.of(new Coded(entry.name(), codes))
        : Optional.empty();
  }

  private boolean isAttribute(Scalar key) {
    boolean known =
        key.text().equals(Equipment.FAMILY) || context.names().known(Kind.OPTION, key.text());
    if (!known && context.names().complete(Kind.OPTION)) {
      TreeSet<String> words = new TreeSet<>(context.names().all(Kind.OPTION));
      words.addAll(List.of("text", "digits", Equipment.FAMILY));
      problem(
          key,
          "unknown part " + Words.quoted(key.text()) + " of the nameplate",
          NearMatch.help(key.text(), words));
    }
    return known;
  }

  private Optional<String> value(String attribute, Entry code) {
    if (!(code.value() instanceof Scalar written) || written.text().isBlank()) {
      problem(
          code.value(),
          "a code stands for one id, found " + code.value().kind(),
          "write `code: id`");
      return Optional.empty();
    }
    if (attribute.equals(Equipment.FAMILY)) {
      String id = context.names().reference(Kind.FAMILY, written);
      return Optional.of(id).filter(context.names().all(Kind.FAMILY)::contains);
    }
    return Optional.ofNullable(options.get(attribute))
        .flatMap(option -> new NamedPatterns(context.problems()).valueOf(option, written));
  }

  private void problem(Node node, String message, String help) {
    context.problems().add(node.place(), message, help);
  }
}
