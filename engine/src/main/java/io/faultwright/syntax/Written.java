package io.faultwright.syntax;

import io.faultwright.source.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.events.CollectionEndEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * A piece of YAML with its first and last character, for whoever rewrites it and nothing else.
 *
 * @param start where it begins in the text of its file
 * @param end where it ends, exclusive; comments and blank lines behind it are not part of it
 * @param kind what it is
 * @param flow whether it is in brackets or braces
 * @param text a text as it reads; empty for a list and a map
 * @param parts the items of a list; keys and values of a map by turns
 */
public record Written(
    int start, int end, Kind kind, boolean flow, String text, List<Written> parts) {
  public Written {
    parts = List.copyOf(parts);
  }

  /** What a piece of YAML is. */
  public enum Kind {
    TEXT,
    LIST,
    MAP
  }

  /** What a file holds; the file must be one that {@link YamlReader} reads without problems. */
  public static Optional<Written> of(SourceFile file) {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(YamlReader.LARGEST);
    ParserImpl parser = new ParserImpl(new StreamReader(file.text()), options);
    parser.getEvent();
    if (parser.checkEvent(Event.ID.StreamEnd)) {
      return Optional.empty();
    }
    parser.getEvent();
    return Optional.of(new Reading(parser, file.text()).node());
  }

  /** The value of a key, where this is a map that has it. */
  public Optional<Written> find(String key) {
    for (int i = 0; kind == Kind.MAP && i < parts.size(); i += 2) {
      if (parts.get(i).text.equals(key)) {
        return Optional.of(parts.get(i + 1));
      }
    }
    return Optional.empty();
  }

  /** Every text in it, in the written order. */
  public Stream<Written> texts() {
    return kind == Kind.TEXT ? Stream.of(this) : parts.stream().flatMap(Written::texts);
  }

  /** Reads the events of one document. */
  private record Reading(ParserImpl parser, String file) {
    Written node() {
      Event event = parser.getEvent();
      if (event instanceof CollectionStartEvent start) {
        return collection(start);
      }
      String text = event instanceof ScalarEvent scalar ? scalar.getValue() : "";
      return new Written(start(event), end(event), Kind.TEXT, false, text, List.of());
    }

    private Written collection(CollectionStartEvent start) {
      List<Written> parts = new ArrayList<>();
      while (!(parser.peekEvent() instanceof CollectionEndEvent)) {
        parts.add(node());
      }
      Event last = parser.getEvent();
      Kind kind = last.is(Event.ID.SequenceEnd) ? Kind.LIST : Kind.MAP;
      int end = start.isFlow() ? end(last) : endOf(parts, start(start));
      return new Written(start(start), end, kind, start.isFlow(), "", parts);
    }

    private static int endOf(List<Written> parts, int otherwise) {
      return parts.isEmpty() ? otherwise : parts.get(parts.size() - 1).end;
    }

    private int start(Event event) {
      return file.offsetByCodePoints(0, event.getStartMark().getIndex());
    }

    /** A block of text ends with its last line that has something in it. */
    private int end(Event event) {
      int end = file.offsetByCodePoints(0, event.getEndMark().getIndex());
      int begin = start(event);
      while (end > begin && Character.isWhitespace(file.charAt(end - 1))) {
        end--;
      }
      return end;
    }
  }
}
