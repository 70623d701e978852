package io.faultwright.flow;

import io.faultwright.analysis.chart.ChartCourse;
import io.faultwright.analysis.order.Question;
import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.model.Access;
import io.faultwright.model.Chart.Branch;
import io.faultwright.model.Chart.Step;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.CannotBeTaken;
import io.faultwright.model.Condition.Pattern;
import io.faultwright.wording.Wording;
import io.faultwright.words.Words;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Says the answers of an authored chart, wherever possible in the words of the derived ones. */
final class AuthoredAnswers {
  private final ChartCourse course;
  private final Space space;
  private final Diagrams diagrams;
  private final Wording wording;
  private final AnswerWords words;

  AuthoredAnswers(ChartCourse course, Wording wording) {
    this.course = course;
    this.space = course.symptom().space();
    this.diagrams = space.diagrams();
    this.wording = wording;
    this.words = new AnswerWords(space, wording);
  }

  /**
   * Answers in words.
   *
   * @param next id of the node they lead to
   * @param axis of what they tell
   * @param cell the first of what they tell
   */
  record Said(String next, String words, int axis, int cell) {
    /**
     * As on derived charts: in the order of the values, so that one side is the same throughout.
     */
    static final Comparator<Said> ORDER =
        Comparator.comparingInt(Said::axis).thenComparingInt(Said::cell).thenComparing(Said::next);
  }

  /** What a step asks. */
  Question question(Step step) {
    boolean limits = has(step, AgainstLimits.class::isInstance);
    boolean value = has(step, pattern -> !(pattern instanceof CannotBeTaken));
    boolean fact = !space.knowledge().readings().containsKey(step.check());
    return question(step.check(), limits, !fact && !value, 0);
  }

  private static boolean has(Step step, Predicate<Pattern> kind) {
    return step.branches().stream()
        .flatMap(branch -> branch.when().tests())
        .map(Condition.Test::pattern)
        .anyMatch(kind);
  }

  /** A question that tells all cells of an axis apart. */
  private Question question(String subject, boolean limits, boolean takingOnly, int axis) {
    List<BitSet> cells =
        IntStream.range(0, space.axes().get(axis).cells().size())
            .mapToObj(AuthoredAnswers::single)
            .toList();
    return new Question(subject, limits, takingOnly, axis, cells, Access.OUTSIDE, BigFraction.ZERO);
  }

  private static BitSet single(int cell) {
    BitSet one = new BitSet();
    one.set(cell);
    return one;
  }

  /** Some answers of a step that lead to the same node. */
  Said said(Step step, List<Branch> branches, String next) {
    int where = branches.stream().map(course::where).reduce(Diagrams.NONE, diagrams::or);
    return axes(step)
        .flatMap(
            axis -> onAxis(step, where, axis).map(cells -> said(step, axis, cells, next)).stream())
        .findFirst()
        .orElseGet(() -> new Said(next, written(branches), space.axes().size(), 0));
  }

  private Said said(Step step, int axis, BitSet cells, String next) {
    boolean limits = space.axes().get(axis).subject() instanceof Axis.OfSide;
    Question question = question(step.check(), limits, false, axis);
    return new Said(next, words.words(question, cells), axis, cells.nextSetBit(0));
  }

  /** What may tell an answer: its place against the limits, the value, or the machine. */
  private Stream<Integer> axes(Step step) {
    return space.knowledge().readings().containsKey(step.check())
        ? Stream.of(new Axis.OfSide(step.check()), new Axis.OfReading(step.check()))
            .flatMap(subject -> space.position(subject).stream())
        : Stream.of(0);
  }

  /** The cells that mean some answers, if those of one axis do. */
  private Optional<BitSet> onAxis(Step step, int where, int axis) {
    int here = course.at(step);
    BitSet met = diagrams.occurring(diagrams.and(here, where))[axis];
    BitSet cells = axis == 0 ? met : whole(where, axis, met);
    int told = diagrams.and(here, diagrams.literal(axis, cells));
    return Optional.of(cells).filter(all -> told == diagrams.and(here, where));
  }

  /** As it was written, even where some values cannot come here; what is special only if it can. */
  private BitSet whole(int where, int axis, BitSet met) {
    BitSet cells = diagrams.occurring(diagrams.and(space.consistent(), where))[axis];
    BitSet special =
        space
            .axes()
            .get(axis)
            .where(
                cell ->
                    cell instanceof Cell.NotTaken
                        || cell instanceof Cell.Absent
                        || cell instanceof Cell.NoFigure);
    special.andNot(met);
    cells.andNot(special);
    return cells;
  }

  private String written(List<Branch> branches) {
    return Words.upperFirst(
        wording.say().orEach(branches.stream().map(Branch::when).map(this::written).toList()));
  }

  private String written(Condition when) {
    return when instanceof Condition.Test test
        ? wording.pattern(test.subject(), test.pattern())
        : wording.condition(when);
  }
}
