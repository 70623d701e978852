package io.faultwright.syntax;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;

/**
 * Builds a tree from the events of the YAML library. Aliases, anchors, tags, merge keys and further
 * documents are refused, so that a small file can never unfold into a large one and every value has
 * exactly one place.
 */
final class TreeBuilder {
  private static final int DEEPEST = 50;
  private static final String NESTED_TOO_DEEP =
      "lists and maps are nested more than " + DEEPEST + " levels deep here";

  private final Events events;
  private final Lines lines;
  private final Problems problems;
  private boolean whole = true;

  TreeBuilder(Events events, Lines lines, Problems problems) {
    this.events = events;
    this.lines = lines;
    this.problems = problems;
  }

  /** Whether nothing was refused so far. */
  boolean whole() {
    return whole;
  }

  /** The only document of the stream; absent where the stream is empty. */
  Optional<Node> document() {
    events.next();
    if (events.isNext(Event.ID.StreamEnd)) {
      return Optional.empty();
    }
    events.next();
    Node root = node(0);
    events.next();
    if (!events.isNext(Event.ID.StreamEnd)) {
      refuse(
          lines.at(events.peek().getStartMark()),
          "a second document begins here",
          "remove the line `---`, or put what follows into a file of its own");
    }
    return Optional.of(root).filter(node -> !(node instanceof Scalar text && text.isEmpty()));
  }

  private Node node(int depth) {
    Event event = events.next();
    refuseExtras(event);
    if (event instanceof CollectionStartEvent && depth >= DEEPEST) {
      throw new TooDeep(event.getStartMark());
    }
    if (event instanceof MappingStartEvent) {
      return map(event, depth + 1);
    }
    return event instanceof CollectionStartEvent ? list(event, depth + 1) : scalar(event);
  }

  private Scalar scalar(Event event) {
    Place place = lines.between(event.getStartMark(), event.getEndMark());
    if (!(event instanceof ScalarEvent written)) {
      return new Scalar("", false, place);
    }
    if (written.isDQuoted() && Characters.anyRefused(written.getValue())) {
      refuse(
          place,
          "an escape in this text makes an invisible control character",
          "remove the escape");
    }
    return new Scalar(written.getValue(), !written.isPlain(), place);
  }

  private ListNode list(Event start, int depth) {
    List<Node> items = new ArrayList<>();
    while (!events.isNext(Event.ID.SequenceEnd)) {
      items.add(node(depth));
    }
    return new ListNode(items, lines.between(start.getStartMark(), endOf(events.next())));
  }

  private MapNode map(Event start, int depth) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    while (!events.isNext(Event.ID.MappingEnd)) {
      Node key = node(depth);
      Node value = node(depth);
      key(key).ifPresent(scalar -> add(entries, new Entry(scalar, atKeyIfEmpty(scalar, value))));
    }
    Place place = lines.between(start.getStartMark(), endOf(events.next()));
    return new MapNode(List.copyOf(entries.values()), place);
  }

  private static Mark endOf(Event end) {
    return end.getEndMark();
  }

  private static Node atKeyIfEmpty(Scalar key, Node value) {
    boolean empty = value instanceof Scalar text && text.isEmpty();
    return empty ? new Scalar("", false, key.place()) : value;
  }

  private Optional<Scalar> key(Node key) {
    if (!(key instanceof Scalar scalar) || scalar.text().isBlank()) {
      refuse(
          key.place(),
          "a key must be a word, found " + key.kind(),
          "put texts that begin with `{` or `[` in quotes");
      return Optional.empty();
    }
    if (scalar.text().equals("<<") && !scalar.quoted()) {
      refuse(key.place(), "merge keys `<<` are not read", "write the entries out");
      return Optional.empty();
    }
    return Optional.of(scalar);
  }

  private void add(Map<String, Entry> entries, Entry entry) {
    Entry earlier = entries.putIfAbsent(entry.name(), entry);
    if (earlier != null) {
      problems.add(
          new Problem(
              List.of(entry.key().place(), earlier.key().place()),
              "`" + entry.name() + "` stands twice in this map",
              "remove or rename one of the two"));
    }
  }

  private void refuseExtras(Event event) {
    Place place = lines.between(event.getStartMark(), event.getEndMark());
    if (event instanceof AliasEvent) {
      refuse(place, "aliases such as `*name` are not read", quoteIfMeantAs("*"));
    } else if (event instanceof NodeEvent node && node.getAnchor() != null) {
      refuse(place, "anchors such as `&name` are not read", quoteIfMeantAs("&"));
    }
    if (tagOf(event) != null) {
      refuse(place, "tags such as `!name` are not read", quoteIfMeantAs("!"));
    }
  }

  private static String tagOf(Event event) {
    if (event instanceof ScalarEvent scalar) {
      return scalar.getTag();
    }
    return event instanceof CollectionStartEvent collection ? collection.getTag() : null;
  }

  private static String quoteIfMeantAs(String character) {
    return "write the value out; put a text that begins with `" + character + "` in quotes";
  }

  private void refuse(Place place, String message, String help) {
    whole = false;
    problems.add(place, message, help);
  }

  /** Thrown at the first level that is too deep: whatever follows is not worth reading. */
  private static final class TooDeep extends org.yaml.snakeyaml.error.MarkedYAMLException {
    private static final long serialVersionUID = 1L;

    TooDeep(Mark mark) {
      super(null, null, NESTED_TOO_DEEP, mark, null, null);
    }
  }
}
