package io.faultwright.flow;

import io.faultwright.analysis.order.Question;
import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Space;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Version;
import io.faultwright.quantity.Interval;
import io.faultwright.wording.Wording;
import io.faultwright.words.Words;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says answers to a question as they stand beside a line. */
final class AnswerWords {
  /** More values than this are told by what they are not. */
  private static final int MOST_NAMED = 3;

  private final KnowledgeBase knowledge;
  private final Space space;
  private final Wording wording;
  private final Words say;

  AnswerWords(Space space, Wording wording) {
    this.knowledge = space.knowledge();
    this.space = space;
    this.wording = wording;
    this.say = wording.say();
  }

  /** The words for some of a question's options. */
  String words(Question question, BitSet options) {
    BitSet cells = question.cells(options);
    List<String> words = new ArrayList<>();
    if (question.axis() == 0) {
      words.add(equipment(question.subject(), cells));
    } else if (question.limits()) {
      words.addAll(sides(cells));
    } else {
      words.addAll(values(question, cells));
    }
    words.addAll(special(question, cells));
    return Words.upperFirst(say.orEach(words));
  }

  private List<Cell> cells(Question question, BitSet chosen) {
    return chosen.stream().mapToObj(space.axes().get(question.axis()).cells()::get).toList();
  }

  private String equipment(String attribute, BitSet chosen) {
    Axis axis = space.axes().get(0);
    Stream<String> values =
        chosen.stream()
            .mapToObj(axis.cells()::get)
            .flatMap(cell -> ((Cell.Builds) cell).builds().stream())
            .flatMap(build -> build.attribute(attribute).stream())
            .distinct();
    List<String> ordered =
        attribute.equals(Equipment.SOFTWARE)
            ? values.sorted(Comparator.comparing(Version::new)).toList()
            : values.sorted().toList();
    return ordered.isEmpty() ? say.say("none") : named(attribute, ordered);
  }

  /** A few values one by one; many as a stretch, or by what they are not. */
  private String named(String subject, List<String> values) {
    return values.size() > MOST_NAMED
        ? wording.oneOf(subject, values)
        : say.or(titles(subject, values));
  }

  /** Names of families and models keep their capitals; values of a choice are plain words. */
  private List<String> titles(String subject, List<String> values) {
    List<String> titles = values.stream().map(value -> wording.value(subject, value)).toList();
    return knowledge.readings().containsKey(subject) ? inLine(titles) : titles;
  }

  /** The first word as it is, the others to stand within a line. */
  private List<String> inLine(List<String> titles) {
    return Stream.concat(titles.stream().limit(1), titles.stream().skip(1).map(say::inLine))
        .toList();
  }

  private List<String> sides(BitSet chosen) {
    List<Side> sides = Stream.of(Side.values()).filter(side -> chosen.get(side.ordinal())).toList();
    return sides.isEmpty() ? List.of() : List.of(sides(sides));
  }

  private String sides(List<Side> sides) {
    return switch (sides.stream().map(Side::name).collect(Collectors.joining(" "))) {
      case "BELOW" -> say.say("below limits");
      case "WITHIN" -> say.say("within limits");
      case "ABOVE" -> say.say("above limits");
      case "BELOW WITHIN" -> say.say("below or within limits");
      case "WITHIN ABOVE" -> say.say("within or above limits");
      case "BELOW ABOVE" -> say.say("outside limits");
      default -> say.say("below, within or above limits");
    };
  }

  private List<String> values(Question question, BitSet chosen) {
    Domain domain = knowledge.readings().get(question.subject()).domain();
    return domain.match(
        measured -> stretches(question, measured, chosen), choice -> choices(question, chosen));
  }

  private List<String> choices(Question question, BitSet chosen) {
    List<String> ids =
        cells(question, chosen).stream()
            .filter(Cell.Word.class::isInstance)
            .map(cell -> ((Cell.Word) cell).value())
            .toList();
    return ids.isEmpty() ? List.of() : List.of(named(question.subject(), ids));
  }

  private List<String> stretches(Question question, Domain.Measured domain, BitSet chosen) {
    List<Cell> cells = space.axes().get(question.axis()).cells();
    List<String> words = new ArrayList<>();
    Optional<Interval> open = Optional.empty();
    for (int cell = 0; cell <= cells.size(); cell++) {
      if (chosen.get(cell) && cells.get(cell) instanceof Cell.Stretch stretch) {
        Interval first = open.orElse(stretch.interval());
        open = Optional.of(new Interval(first.low(), stretch.interval().high()));
      } else {
        open.ifPresent(interval -> words.add(stretch(question, domain, interval)));
        open = Optional.empty();
      }
    }
    return words;
  }

  /** A stretch without the ends of the reading's range, which go without saying. */
  private String stretch(Question question, Domain.Measured domain, Interval interval) {
    Interval told =
        new Interval(
            interval.low().filter(end -> !Optional.of(end).equals(domain.range().low())),
            interval.high().filter(end -> !Optional.of(end).equals(domain.range().high())));
    return told.low().isEmpty() && told.high().isEmpty()
        ? say.say("can be taken")
        : wording.interval(question.subject(), told);
  }

  private List<String> special(Question question, BitSet chosen) {
    List<String> words = new ArrayList<>();
    for (Cell cell : cells(question, chosen)) {
      if (cell instanceof Cell.NotTaken) {
        words.add(say.say("cannot be taken"));
      } else if (cell instanceof Cell.Absent) {
        words.add(say.say("not on this machine"));
      } else if (cell instanceof Cell.NoFigure) {
        words.add(say.say("no limits given"));
      }
    }
    return words;
  }
}
