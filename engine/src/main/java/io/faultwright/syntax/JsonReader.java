package io.faultwright.syntax;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import io.faultwright.diagnostic.Problems;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the JSON (RFC 8259) of one file into a tree: strings are quoted scalars, {@code null} is an
 * empty one.
 */
public final class JsonReader {
  private static final JsonFactory FACTORY = new JsonFactory();
  private static final String HELP = "take the file as it was saved, without any change";

  /** Objects and lists within each other; none of our files has as many. */
  private static final int DEEPEST = 50;

  private final Offsets offsets;
  private final Problems problems;
  private final JsonParser parser;

  private JsonReader(SourceFile file, JsonParser parser, Problems problems) {
    this.offsets = new Offsets(file);
    this.parser = parser;
    this.problems = problems;
  }

  /** The tree of a file; what is wrong with the file goes to the problems. */
  public static Tree read(SourceFile file, Problems problems) {
    int before = problems.count();
    try (JsonParser parser = FACTORY.createParser(file.text())) {
      Optional<Node> root = new JsonReader(file, parser, problems).document();
      boolean whole = problems.count() == before;
      return new Tree(file.path(), whole ? root : Optional.empty(), whole);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private Optional<Node> document() throws IOException {
    try {
      if (parser.nextToken() == null) {
        problems.add(offsets.place(0, 0), "the file is empty", HELP);
        return Optional.empty();
      }
      Node root = node(0);
      if (parser.nextToken() != null) {
        problems.add(place(), "something stands after the end of the JSON", HELP);
      }
      return Optional.of(root);
    } catch (TooDeep deep) {
      problems.add(place(), "lists and maps are nested more than 50 levels deep here", HELP);
    } catch (JsonProcessingException wrong) {
      broken(at(wrong));
    }
    return Optional.empty();
  }

  private void broken(Place place) {
    if (offsets.isAtTheEnd(place)) {
      problems.add(place, "the file ends in the middle", "it was cut off; get it once more");
    } else {
      problems.add(place, "expected JSON, found " + offsets.found(place), HELP);
    }
  }

  private Place at(JsonProcessingException wrong) {
    JsonLocation location = wrong.getLocation();
    return offsets.place(location == null ? 0 : location.getCharOffset(), 1);
  }

  private static final class TooDeep extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }

  private Node node(int depth) throws IOException {
    if (depth > DEEPEST) {
      throw new TooDeep();
    }
    return switch (parser.currentToken()) {
      case START_OBJECT -> map(depth);
      case START_ARRAY -> list(depth);
      case VALUE_NULL -> new Scalar("", false, place());
      default -> scalar();
    };
  }

  private Scalar scalar() throws IOException {
    boolean quoted =
        parser.currentToken() == JsonToken.VALUE_STRING
            || parser.currentToken() == JsonToken.FIELD_NAME;
    String text = parser.getText();
    return new Scalar(text, quoted, place());
  }

  /** Where the token stands; it has to be read to its end. */
  private Place place() {
    long start = parser.currentTokenLocation().getCharOffset();
    return offsets.place(start, parser.currentLocation().getCharOffset() - start);
  }

  private Node list(int depth) throws IOException {
    Place place = place();
    List<Node> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(node(depth + 1));
    }
    return new ListNode(items, place);
  }

  private Node map(int depth) throws IOException {
    Place place = place();
    List<Entry> entries = new ArrayList<>();
    Set<String> names = new HashSet<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      Scalar key = scalar();
      parser.nextToken();
      if (names.add(key.text())) {
        entries.add(new Entry(key, node(depth + 1)));
      } else {
        problems.add(key.place(), "`" + key.text() + "` stands twice in the same object", HELP);
        node(depth + 1);
      }
    }
    return new MapNode(entries, place);
  }
}
