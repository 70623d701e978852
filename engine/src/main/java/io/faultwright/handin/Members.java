package io.faultwright.handin;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Reads the members of one JSON object; what is missing or of another kind goes to the problems.
 */
public final class Members {
  private final Place owner;
  private final String what;
  private final Problems problems;
  private final Map<String, Node> values = new LinkedHashMap<>();

  /**
   * @param what the owner, for messages
   */
  public Members(Node node, String what, Problems problems) {
    this.owner = node.place();
    this.what = what;
    this.problems = problems;
    if (node instanceof MapNode map) {
      map.entries().forEach(entry -> values.put(entry.name(), entry.value()));
    } else {
      problems.add(owner, what + " must be an object in braces, found " + node.kind(), "");
    }
  }

  /** Where the object begins. */
  public Place owner() {
    return owner;
  }

  /** Where a value stands; the owner where there is none. */
  public Place place(String key) {
    return Optional.ofNullable(values.get(key)).map(Node::place).orElse(owner);
  }

  private Optional<Node> find(String key) {
    return Optional.ofNullable(values.get(key)).filter(Members::isThere);
  }

  private static boolean isThere(Node node) {
    return !(node instanceof Scalar scalar && scalar.isEmpty());
  }

  private Optional<Node> require(String key) {
    Optional<Node> found = find(key);
    if (found.isEmpty()) {
      String near = NearMatch.of(key, values.keySet()).map(Members::meant).orElse("");
      problems.add(place(key), what + " has no `" + key + "`", near);
    }
    return found;
  }

  private static String meant(String written) {
    return "found `" + written + "`; did you mean this?";
  }

  /** A string that may be missing. */
  public Optional<String> optional(String key) {
    return find(key).flatMap(node -> string(key, node));
  }

  /** A string; nothing where a problem was reported. */
  public Optional<String> text(String key) {
    return require(key).flatMap(node -> string(key, node));
  }

  private Optional<String> string(String key, Node node) {
    if (node instanceof Scalar scalar && scalar.quoted()) {
      return Optional.of(scalar.text());
    }
    problems.add(node.place(), "`" + key + "` takes a text in quotes, found " + kind(node), "");
    return Optional.empty();
  }

  /** A whole number; nothing where a problem was reported. */
  public OptionalInt number(String key) {
    Optional<Node> node = require(key);
    return node.isPresent() ? whole(key, node.get()) : OptionalInt.empty();
  }

  /** A whole number that may be missing. */
  public OptionalInt optionalNumber(String key) {
    Optional<Node> node = find(key);
    return node.isPresent() ? whole(key, node.get()) : OptionalInt.empty();
  }

  private OptionalInt whole(String key, Node node) {
    if (node instanceof Scalar scalar && scalar.text().matches("-?\\d{1,9}") && !scalar.quoted()) {
      return OptionalInt.of(Integer.parseInt(scalar.text()));
    }
    problems.add(node.place(), "`" + key + "` takes a whole number, found " + kind(node), "");
    return OptionalInt.empty();
  }

  /** Whether it says {@code true}; nothing where a problem was reported. */
  public Optional<Boolean> truth(String key) {
    Optional<Node> node = require(key);
    Optional<Boolean> truth =
        node.filter(one -> one instanceof Scalar scalar && scalar.text().matches("true|false"))
            .map(one -> ((Scalar) one).text().equals("true"));
    if (node.isPresent() && truth.isEmpty()) {
      problems.add(place(key), "`" + key + "` takes true or false", "");
    }
    return truth;
  }

  /** A day that may be missing. */
  public Optional<LocalDate> day(String key) {
    Optional<String> written = optional(key);
    try {
      return written.map(LocalDate::parse);
    } catch (DateTimeException wrong) {
      problems.add(
          place(key),
          "`" + written.orElseThrow() + "` is not a date",
          "expected year, month and day as in `2026-03-02`");
      return Optional.empty();
    }
  }

  /** The elements of a list; none where a problem was reported. */
  public List<Node> list(String key) {
    return require(key)
        .map(
            node ->
                node instanceof ListNode list
                    ? list.items()
                    : this.<Node>wrong(key, node, "a list in brackets"))
        .orElse(List.of());
  }

  /** The members of an object; none where a problem was reported. */
  public List<Entry> map(String key) {
    return require(key)
        .map(
            node ->
                node instanceof MapNode map
                    ? map.entries()
                    : this.<Entry>wrong(key, node, "an object in braces"))
        .orElse(List.of());
  }

  private <T> List<T> wrong(String key, Node node, String expected) {
    problems.add(node.place(), "`" + key + "` takes " + expected + ", found " + kind(node), "");
    return List.of();
  }

  static String kind(Node node) {
    return node instanceof Scalar scalar && !scalar.isBlank()
        ? "`" + scalar.text() + "`"
        : node.kind();
  }
}
