package io.faultwright.syntax;

import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.parser.Parser;

/** The events of the YAML library; whatever it throws arrives as a mistake with a mark. */
final class Events {
  /** Our words for what the library does not check: the digits of an escape. */
  static final String WRONG_ESCAPE = "wrong number in an escape";

  private final Parser parser;
  private final Lines lines;
  private Mark reached;

  Events(Parser parser, Lines lines) {
    this.parser = parser;
    this.lines = lines;
  }

  boolean isNext(Event.ID kind) {
    return peek().is(kind);
  }

  Event next() {
    Event event = peek();
    reached = event.getEndMark();
    return parser.getEvent();
  }

  Event peek() {
    try {
      return parser.peekEvent();
    } catch (MarkedYAMLException mistake) {
      throw mistake;
    } catch (YAMLException unmarked) {
      throw new Marked(unmarked.getMessage(), reached);
    } catch (RuntimeException escape) {
      throw new Marked(WRONG_ESCAPE, lines.firstEscape(reached));
    }
  }

  /** A mistake that the library reports without a mark. */
  private static final class Marked extends MarkedYAMLException {
    private static final long serialVersionUID = 1L;

    Marked(String problem, Mark mark) {
      super(null, null, problem, mark, null, null);
    }
  }
}
