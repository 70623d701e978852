package io.faultwright.flow;

import io.faultwright.analysis.judge.Observed;
import io.faultwright.analysis.order.Question;
import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Space;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Truth;
import io.faultwright.model.Value;
import io.faultwright.source.Place;
import java.util.BitSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What an observed machine answers to the questions of a chart. */
final class GivenAnswers {
  private final Space space;
  private final Observed observed;

  GivenAnswers(Space space, Observed observed) {
    this.space = space;
    this.observed = observed;
  }

  /** The cells in one of which the answer surely lies; none where it is not known. */
  BitSet cells(Question question) {
    if (question.axis() == 0) {
      return equipment();
    }
    Axis axis = space.axes().get(question.axis());
    if (isAbsent(question)) {
      return axis.where(Cell.Absent.class::isInstance);
    }
    if (isNotTaken(question)) {
      return axis.where(Cell.NotTaken.class::isInstance);
    }
    return axis.where(cell -> lies(question.subject(), cell));
  }

  /** The classes of builds that the machine may be of. */
  BitSet equipment() {
    return space
        .axes()
        .get(0)
        .where(
            cell -> ((Cell.Builds) cell).builds().stream().anyMatch(observed.builds()::contains));
  }

  private boolean isAbsent(Question question) {
    return subjects(question)
        .map(space.knowledge().readings()::get)
        .anyMatch(
            reading ->
                observed.builds().stream().noneMatch(build -> build.satisfies(reading.applies())));
  }

  private boolean isNotTaken(Question question) {
    return subjects(question)
        .anyMatch(id -> observed.value(id).filter(Value.NotTaken.class::isInstance).isPresent());
  }

  /** The reading, and what its limits follow where it is held against them. */
  private Stream<String> subjects(Question question) {
    Optional<LimitsTable> limits =
        Optional.ofNullable(space.knowledge().limits().get(question.subject()))
            .filter(table -> question.limits());
    return Stream.concat(
        Stream.of(question.subject()), limits.stream().flatMap(table -> table.drivers().stream()));
  }

  private boolean lies(String reading, Cell cell) {
    if (cell instanceof Cell.SideOf at) {
      return observed.met(against(reading, at)) == Truth.TRUE;
    }
    if (cell instanceof Cell.Stretch stretch) {
      return observed.amount(reading).filter(stretch.interval()::contains).isPresent();
    }
    return cell instanceof Cell.Word word
        && observed.value(reading).equals(Optional.of(new Value.Word(word.value())));
  }

  private Test against(String reading, Cell.SideOf at) {
    Place place = space.knowledge().readings().get(reading).place();
    return new Test(reading, new AgainstLimits(Set.of(at.side())), place);
  }
}
