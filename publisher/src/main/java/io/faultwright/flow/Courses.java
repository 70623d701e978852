package io.faultwright.flow;

import io.faultwright.analysis.order.Decisions;
import io.faultwright.analysis.order.Decisions.Asked;
import io.faultwright.analysis.order.Decisions.Told;
import io.faultwright.analysis.order.Question;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Space;
import io.faultwright.flow.Course.Arm;
import io.faultwright.flow.Course.Pick;
import io.faultwright.flow.Course.Step;
import io.faultwright.model.Build;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.CannotBeTaken;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Condition.Pattern;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.LimitsTable;
import io.faultwright.quantity.Interval;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Makes the course of a derived chart from its decisions. */
final class Courses {
  private final Space space;
  private final Place place;
  private final Decisions decisions;
  private final Map<Integer, String> nodes;
  private final List<Step> steps = new ArrayList<>();
  private final Map<Integer, Integer> positions = new HashMap<>();

  private Courses(Space space, Place place, Decisions decisions, Map<Integer, String> nodes) {
    this.space = space;
    this.place = place;
    this.decisions = decisions;
    this.nodes = nodes;
  }

  /**
   * The course.
   *
   * @param place of the symptom, in which its conditions count as written
   * @param root number of the first decision
   * @param nodes id of the node of each decision
   */
  static Course of(
      Space space, Place place, Decisions decisions, int root, Map<Integer, String> nodes) {
    Courses courses = new Courses(space, place, decisions, nodes);
    int start = courses.position(root);
    return new Course(courses.steps, start);
  }

  /** Where a decision stands; what it leads to stands before it. */
  private int position(int number) {
    Integer known = positions.get(number);
    if (known == null) {
      Step step = step(number);
      known = steps.size();
      steps.add(step);
      positions.put(number, known);
    }
    return known;
  }

  private Step step(int number) {
    if (decisions.get(number) instanceof Told told) {
      return new Course.End(nodes.get(number), told.result().answers());
    }
    Asked asked = (Asked) decisions.get(number);
    Question question = asked.question();
    return new Course.Ask(
        nodes.get(number),
        question.subject(),
        question.limits(),
        asked.arms().stream()
            .map(arm -> new Arm(picks(question, arm.options()), position(arm.next())))
            .toList());
  }

  private List<Pick> picks(Question question, BitSet options) {
    BitSet cells = question.cells(options);
    List<Cell> chosen =
        cells.stream().mapToObj(space.axes().get(question.axis()).cells()::get).toList();
    List<Pick> picks = new ArrayList<>();
    addBuilds(chosen, picks);
    addWords(question.subject(), chosen, picks);
    addStretches(question.subject(), chosen, picks);
    addSides(question.subject(), chosen, picks);
    addSpecial(question, chosen, picks);
    return picks;
  }

  private static void addBuilds(List<Cell> chosen, List<Pick> picks) {
    List<Build> builds = new ArrayList<>();
    for (Cell cell : chosen) {
      if (cell instanceof Cell.Builds some) {
        builds.addAll(some.builds());
      }
    }
    if (!builds.isEmpty()) {
      picks.add(new Course.IsOneOf(builds.stream().sorted().toList()));
    }
  }

  private void addWords(String subject, List<Cell> chosen, List<Pick> picks) {
    TreeSet<String> words = new TreeSet<>();
    for (Cell cell : chosen) {
      if (cell instanceof Cell.Word word) {
        words.add(word.value());
      }
    }
    if (!words.isEmpty()) {
      picks.add(meets(subject, new OneOf(words)));
    }
  }

  /** Stretches that touch become one. */
  private void addStretches(String subject, List<Cell> chosen, List<Pick> picks) {
    List<Interval> joined = new ArrayList<>();
    for (Cell cell : chosen) {
      if (cell instanceof Cell.Stretch stretch) {
        int last = joined.size() - 1;
        if (last >= 0 && touch(joined.get(last), stretch.interval())) {
          joined.set(last, new Interval(joined.get(last).low(), stretch.interval().high()));
        } else {
          joined.add(stretch.interval());
        }
      }
    }
    joined.forEach(interval -> picks.add(meets(subject, new InInterval(interval))));
  }

  private static boolean touch(Interval one, Interval next) {
    return one.high().isPresent()
        && next.low().isPresent()
        && one.high().get().value().equals(next.low().get().value())
        && one.high().get().included() != next.low().get().included();
  }

  private void addSides(String subject, List<Cell> chosen, List<Pick> picks) {
    Set<Side> sides = EnumSet.noneOf(Side.class);
    for (Cell cell : chosen) {
      if (cell instanceof Cell.SideOf side) {
        sides.add(side.side());
      }
    }
    if (!sides.isEmpty()) {
      picks.add(meets(subject, new AgainstLimits(sides)));
    }
  }

  private void addSpecial(Question question, List<Cell> chosen, List<Pick> picks) {
    String subject = question.subject();
    if (chosen.stream().anyMatch(Cell.NotTaken.class::isInstance)) {
      picks.add(meets(subject, new CannotBeTaken()));
      drivers(question).forEach(driver -> picks.add(meets(driver, new CannotBeTaken())));
    }
    if (chosen.stream().anyMatch(Cell.Absent.class::isInstance)) {
      picks.add(new Course.IsAbsent(subject, question.limits()));
    }
    if (chosen.stream().anyMatch(Cell.NoFigure.class::isInstance)) {
      picks.add(new Course.HasNoFigure(subject));
    }
  }

  private List<String> drivers(Question question) {
    LimitsTable table = space.knowledge().limits().get(question.subject());
    return question.limits() && table != null ? table.drivers() : List.of();
  }

  private Pick meets(String subject, Pattern pattern) {
    return new Course.Meets(new Test(subject, pattern, place));
  }
}
