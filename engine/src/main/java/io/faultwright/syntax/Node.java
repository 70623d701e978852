package io.faultwright.syntax;

import io.faultwright.source.Place;
import java.util.List;
import java.util.function.Function;

/** A piece of YAML as it was written, with its place. */
public sealed interface Node {
  Place place();

  /** Dispatches on the kind of node. */
  <T> T match(Function<Scalar, T> scalar, Function<ListNode, T> list, Function<MapNode, T> map);

  /** The kind in a trainer's words, for instance {@code a list}. */
  default String kind() {
    return match(
        scalar -> scalar.isEmpty() ? "nothing" : scalar.isBlank() ? "an empty text" : "a text",
        list -> "a list",
        map -> "a map");
  }

  /**
   * A text, a number or a word.
   *
   * @param text as written, without quotes
   * @param quoted whether it stood in quotes or in a block
   * @param place where it stands
   */
  record Scalar(String text, boolean quoted, Place place) implements Node {
    /** Whether nothing at all was written. */
    public boolean isEmpty() {
      return text.isEmpty() && !quoted;
    }

    /** Whether there is nothing to read in it. */
    public boolean isBlank() {
      return text.isBlank();
    }

    @Override
    public <T> T match(
        Function<Scalar, T> scalar, Function<ListNode, T> list, Function<MapNode, T> map) {
      return scalar.apply(this);
    }
  }

  /**
   * A list.
   *
   * @param items in the written order
   * @param place where it begins
   */
  record ListNode(List<Node> items, Place place) implements Node {
    public ListNode {
      items = List.copyOf(items);
    }

    @Override
    public <T> T match(
        Function<Scalar, T> scalar, Function<ListNode, T> list, Function<MapNode, T> map) {
      return list.apply(this);
    }
  }

  /**
   * A map from keys to values; no key stands twice.
   *
   * @param entries in the written order
   * @param place where it begins
   */
  record MapNode(List<Entry> entries, Place place) implements Node {
    public MapNode {
      entries = List.copyOf(entries);
    }

    @Override
    public <T> T match(
        Function<Scalar, T> scalar, Function<ListNode, T> list, Function<MapNode, T> map) {
      return map.apply(this);
    }
  }

  /**
   * A key with its value.
   *
   * @param key the key
   * @param value the value; an empty scalar at the key's place where nothing was written
   */
  record Entry(Scalar key, Node value) {
    public String name() {
      return key.text();
    }
  }
}
