package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** Reads the keys of one map, and reports those that are unknown, missing or of the wrong kind. */
final class Fields {
  /** Help where a text seems to have been cut in two by its comma. */
  static final String COMMA_HELP =
      "a comma inside `{ }` ends a text: put texts with commas in quotes, and write decimals with a"
          + " full stop";

  private final String what;
  private final Place owner;
  private final Problems problems;
  private final Map<String, Entry> entries = new LinkedHashMap<>();
  private final Set<String> misspelt = new TreeSet<>();
  private final boolean readable;

  /**
   * Takes the entries of a node that should be a map with some of these keys.
   *
   * @param what the owner of the map, for messages
   * @param owner where the owner stands
   */
  Fields(Node node, String what, Place owner, List<String> keys, Problems problems) {
    this.what = what;
    this.owner = owner;
    this.problems = problems;
    this.readable = node instanceof MapNode;
    if (node instanceof MapNode map) {
      map.entries().forEach(entry -> take(entry, keys));
    } else {
      String wanted = "write " + Words.quoted(keys.get(0)) + " and the other keys below it";
      problems.add(node.place(), what + " must be a map, found " + node.kind(), wanted);
    }
  }

  static Fields of(Definition definition, List<String> keys, Problems problems) {
    return new Fields(definition.body(), definition.what(), definition.place(), keys, problems);
  }

  private void take(Entry entry, List<String> keys) {
    if (keys.contains(entry.name())) {
      entries.put(entry.name(), entry);
    } else {
      NearMatch.of(entry.name(), keys).ifPresent(misspelt::add);
      problems.add(
          entry.key().place(),
          "unknown key " + Words.quoted(entry.name()) + " in " + what,
          helpForUnknown(entry, keys));
    }
  }

  private static String helpForUnknown(Entry entry, List<String> keys) {
    return isEmpty(entry.value()) && NearMatch.of(entry.name(), keys).isEmpty()
        ? COMMA_HELP
        : NearMatch.help(entry.name(), keys);
  }

  static boolean isEmpty(Node node) {
    return node instanceof Scalar scalar && scalar.text().isBlank();
  }

  /** Whether the node was a map at all. */
  boolean readable() {
    return readable;
  }

  boolean has(String key) {
    return entries.containsKey(key);
  }

  /** Reports every key that is there and not among some. */
  void without(List<String> fitting, UnaryOperator<String> message, String help) {
    entries.values().stream()
        .filter(entry -> !fitting.contains(entry.name()))
        .forEach(entry -> problems.add(entry.key().place(), message.apply(entry.name()), help));
  }

  /** Whether a key is there, or a misspelling of it that is reported already. */
  boolean mentions(String key) {
    return has(key) || misspelt.contains(key);
  }

  /** The place of a key, or the owner's where the key is missing. */
  Place place(String key) {
    return has(key) ? entries.get(key).key().place() : owner;
  }

  Optional<Node> find(String key) {
    Optional<Node> found = Optional.ofNullable(entries.get(key)).map(Entry::value);
    if (found.isPresent() && isEmpty(found.get())) {
      problems.add(place(key), "nothing is written after `" + key + ":`", "write it, or remove it");
      return Optional.empty();
    }
    return found;
  }

  Optional<Node> require(String key) {
    if (readable && !mentions(key)) {
      problems.add(owner, what + " has no `" + key + "`", "add `" + key + ":`");
    }
    return find(key);
  }

  Optional<Scalar> scalar(String key) {
    return find(key).flatMap(node -> asScalar(node, key));
  }

  Optional<Scalar> requireScalar(String key) {
    return require(key).flatMap(node -> asScalar(node, key));
  }

  Optional<String> text(String key) {
    return scalar(key).map(scalar -> scalar.text().strip());
  }

  /** The text of a key that must be there; the empty text stands in where it is not. */
  String requireText(String key) {
    return requireScalar(key).map(scalar -> scalar.text().strip()).orElse("");
  }

  /** The nodes of a list; none where the key is missing. */
  List<Node> list(String key) {
    return find(key).map(node -> asList(node, key)).orElse(List.of());
  }

  /** The texts of a list; none where the key is missing. */
  List<Scalar> scalars(String key) {
    return list(key).stream().flatMap(node -> asScalar(node, key).stream()).toList();
  }

  List<String> texts(String key) {
    return scalars(key).stream().map(scalar -> scalar.text().strip()).toList();
  }

  /** One text or a list of texts; none where the key is missing. */
  List<Scalar> oneOrMore(String key) {
    return find(key)
        .map(node -> node instanceof Scalar scalar ? List.of(scalar) : someScalars(node, key))
        .orElse(List.of());
  }

  private List<Scalar> someScalars(Node node, String key) {
    return node instanceof ListNode ? scalars(key) : wrong(node, key, "a text or a list");
  }

  /** The entries of a map; none where the key is missing. */
  List<Entry> map(String key) {
    return find(key).map(node -> asMap(node, key)).orElse(List.of());
  }

  /** The result of the function for a key, or the stand-in where the key is missing. */
  <T> T read(String key, Function<Node, T> function, T standIn) {
    return find(key).map(function).orElse(standIn);
  }

  private Optional<Scalar> asScalar(Node node, String key) {
    if (node instanceof Scalar scalar && !scalar.text().isBlank()) {
      return Optional.of(scalar);
    }
    wrong(node, key, "a text");
    return Optional.empty();
  }

  private List<Node> asList(Node node, String key) {
    return node instanceof ListNode list ? list.items() : wrong(node, key, "a list");
  }

  private List<Entry> asMap(Node node, String key) {
    return node instanceof MapNode map ? map.entries() : wrong(node, key, "a map");
  }

  private <T> List<T> wrong(Node node, String key, String expected) {
    problems.add(
        node.place(),
        "`" + key + "` takes " + expected + ", found " + node.kind(),
        switch (expected) {
          case "a list", "a text or a list" ->
              "write `[one, two]`, or a line `- one` for each entry";
          case "a map" -> "write `id: value` on lines of their own, indented";
          default -> "write one text; put it in quotes if it has a colon, a comma or brackets";
        });
    return List.of();
  }
}
