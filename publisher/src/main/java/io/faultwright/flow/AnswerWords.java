package io.faultwright.flow;

import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Space;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.quantity.Interval;
import io.faultwright.wording.Wording;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Says answers to a question as they stand beside a line. */
final class AnswerWords {
  private final KnowledgeBase knowledge;
  private final Space space;
  private final Wording wording;

  AnswerWords(Space space, Wording wording) {
    this.knowledge = space.knowledge();
    this.space = space;
    this.wording = wording;
  }

  /** The words for some of a question's options. */
  String words(Question question, BitSet options) {
    BitSet cells = new BitSet();
    options.stream().forEach(option -> cells.or(question.options().get(option)));
    List<String> words = new ArrayList<>();
    if (question.axis() == 0) {
      words.add(equipment(question.subject(), cells));
    } else if (question.limits()) {
      sides(cells).ifPresent(words::add);
    } else {
      words.addAll(values(question, cells));
    }
    special(question, cells, words);
    return capitalised(String.join(" or ", words));
  }

  private List<Cell> cells(Question question, BitSet chosen) {
    return chosen.stream().mapToObj(space.axes().get(question.axis()).cells()::get).toList();
  }

  private String equipment(String attribute, BitSet chosen) {
    Axis axis = space.axes().get(0);
    Set<String> values = new TreeSet<>();
    chosen.stream()
        .mapToObj(axis.cells()::get)
        .flatMap(cell -> ((Cell.Builds) cell).builds().stream())
        .forEach(build -> build.attribute(attribute).ifPresent(values::add));
    return values.isEmpty() ? "none" : wording.oneOf(attribute, values);
  }

  private Optional<String> sides(BitSet chosen) {
    Set<Side> sides = EnumSet.noneOf(Side.class);
    for (Side side : Side.values()) {
      if (chosen.get(side.ordinal())) {
        sides.add(side);
      }
    }
    return sides.isEmpty()
        ? Optional.empty()
        : Optional.of(wording.pattern("", new AgainstLimits(sides)));
  }

  private List<String> values(Question question, BitSet chosen) {
    Domain domain = knowledge.readings().get(question.subject()).domain();
    return domain.match(
        measured -> stretches(question, measured, chosen), choice -> named(question, chosen));
  }

  private List<String> named(Question question, BitSet chosen) {
    List<String> ids =
        cells(question, chosen).stream()
            .filter(Cell.Word.class::isInstance)
            .map(cell -> ((Cell.Word) cell).value())
            .toList();
    return ids.isEmpty() ? List.of() : List.of(wording.oneOf(question.subject(), ids));
  }

  private List<String> stretches(Question question, Domain.Measured domain, BitSet chosen) {
    List<Cell> cells = space.axes().get(question.axis()).cells();
    List<String> words = new ArrayList<>();
    Optional<Interval> open = Optional.empty();
    for (int cell = 0; cell < cells.size(); cell++) {
      boolean on = chosen.get(cell) && cells.get(cell) instanceof Cell.Stretch;
      if (on) {
        Interval next = ((Cell.Stretch) cells.get(cell)).interval();
        open = Optional.of(new Interval(open.orElse(next).low(), next.high()));
      } else {
        open.ifPresent(interval -> words.add(stretch(question, domain, interval)));
        open = Optional.empty();
      }
    }
    open.ifPresent(interval -> words.add(stretch(question, domain, interval)));
    return words;
  }

  /** A stretch without the ends of the reading's range, which go without saying. */
  private String stretch(Question question, Domain.Measured domain, Interval interval) {
    Interval told =
        new Interval(
            interval.low().filter(end -> !Optional.of(end).equals(domain.range().low())),
            interval.high().filter(end -> !Optional.of(end).equals(domain.range().high())));
    return told.low().isEmpty() && told.high().isEmpty()
        ? "any figure"
        : wording.interval(question.subject(), told);
  }

  private void special(Question question, BitSet chosen, List<String> words) {
    for (Cell cell : cells(question, chosen)) {
      if (cell instanceof Cell.NotTaken) {
        words.add("cannot be taken");
      } else if (cell instanceof Cell.Absent) {
        words.add("not on this machine");
      } else if (cell instanceof Cell.NoFigure) {
        words.add("no limits given");
      }
    }
  }

  private static String capitalised(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
