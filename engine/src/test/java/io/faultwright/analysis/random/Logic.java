package io.faultwright.analysis.random;

import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.model.Condition;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.logicng.formulas.Formula;
import org.logicng.formulas.FormulaFactory;
import org.logicng.formulas.Variable;
import org.logicng.knowledgecompilation.bdds.BDD;
import org.logicng.knowledgecompilation.bdds.BDDFactory;
import org.logicng.knowledgecompilation.bdds.jbuddy.BDDKernel;
import org.logicng.predicates.satisfiability.SATPredicate;

/**
 * Conditions as propositional formulas: a variable for every cell of every axis, exactly one of an
 * axis true. LogicNG 2.6.0 says whether a formula has a model, and how many.
 */
final class Logic {
  /** How a test stands in a cell. */
  private enum Standing {
    TRUE,
    FALSE,
    UNKNOWN,
    ABSENT
  }

  private final FormulaFactory f = new FormulaFactory();
  private final Space space;
  private final List<List<Variable>> cells = new ArrayList<>();
  private final List<List<Variable>> groups = new ArrayList<>();
  private final Formula oneEach;

  Logic(Space space) {
    this.space = space;
    List<Formula> ones = new ArrayList<>();
    for (int axis = 0; axis < space.axes().size(); axis++) {
      cells.add(new ArrayList<>());
      groups.add(new ArrayList<>());
      for (int cell = 0; cell < space.axes().get(axis).cells().size(); cell++) {
        cells.get(axis).add(f.variable("c_" + axis + "_" + cell));
      }
      for (int group : new TreeSet<>(space.axes().get(axis).groups())) {
        groups.get(axis).add(f.variable("g_" + axis + "_" + group));
      }
      ones.add(exactlyOne(cells.get(axis)));
    }
    oneEach = f.and(ones);
  }

  /** Pair by pair, without variables of its own. */
  private Formula exactlyOne(List<Variable> variables) {
    List<Formula> parts = new ArrayList<>(List.of(f.or(variables)));
    for (int i = 0; i < variables.size(); i++) {
      for (int j = 0; j < i; j++) {
        parts.add(f.not(f.and(variables.get(i), variables.get(j))));
      }
    }
    return f.and(parts);
  }

  Formula and(List<Formula> parts) {
    return f.and(parts);
  }

  Formula or(List<Formula> parts) {
    return f.or(parts);
  }

  Formula minus(Formula formula, Formula removed) {
    return f.and(formula, f.not(removed));
  }

  /** Whether some situation is in both. */
  boolean meet(Formula one, Formula other) {
    return f.and(oneEach, one, other).holds(new SATPredicate(f));
  }

  /** Models over the groups of cells: situations that can be told apart. */
  BigInteger count(Formula formula) {
    List<Formula> parts = new ArrayList<>(List.of(oneEach, formula));
    List<Variable> order = new ArrayList<>();
    List<Variable> hidden = new ArrayList<>();
    for (int axis = 0; axis < cells.size(); axis++) {
      parts.add(gathered(axis));
      order.addAll(cells.get(axis));
      order.addAll(groups.get(axis));
      hidden.addAll(cells.get(axis));
    }
    BDD whole = BDDFactory.build(f.and(parts), new BDDKernel(f, order, 20_000, 20_000));
    return whole.exists(hidden).modelCount().shiftRight(hidden.size());
  }

  private Formula gathered(int axis) {
    List<Integer> numbers = space.axes().get(axis).groups();
    List<Integer> distinct = List.copyOf(new TreeSet<>(numbers));
    List<Formula> parts = new ArrayList<>();
    for (int group = 0; group < distinct.size(); group++) {
      List<Variable> members = new ArrayList<>();
      for (int cell = 0; cell < numbers.size(); cell++) {
        if (numbers.get(cell).equals(distinct.get(group))) {
          members.add(cells.get(axis).get(cell));
        }
      }
      parts.add(f.equivalence(groups.get(axis).get(group), f.or(members)));
    }
    return f.and(parts);
  }

  /** A diagram, for what this does not work out by itself. */
  Formula of(int diagram) {
    return of(diagram, new HashMap<>());
  }

  private Formula of(int diagram, Map<Integer, Formula> done) {
    if (diagram <= Diagrams.ALL) {
      return f.constant(diagram == Diagrams.ALL);
    }
    Formula known = done.get(diagram);
    if (known == null) {
      int axis = space.diagrams().axisOf(diagram);
      List<Formula> branches = new ArrayList<>();
      for (int cell = 0; cell < cells.get(axis).size(); cell++) {
        Formula below = of(space.diagrams().child(diagram, axis, cell), done);
        branches.add(f.and(cells.get(axis).get(cell), below));
      }
      known = f.or(branches);
      done.put(diagram, known);
    }
    return known;
  }

  /** Where a condition is surely true, or surely false. */
  Formula surely(Condition condition, boolean wanted) {
    return formula(condition, wanted, false);
  }

  /** Where a condition is, or may be, true. */
  Formula maybe(Condition condition) {
    return formula(condition, true, true);
  }

  private Formula formula(Condition condition, boolean wanted, boolean orUnknown) {
    return condition.match(
        all -> joined(all.parts(), wanted, wanted, orUnknown),
        any -> joined(any.parts(), !wanted, wanted, orUnknown),
        not -> formula(not.part(), !wanted, orUnknown),
        test -> test(test, wanted ? Standing.TRUE : Standing.FALSE, orUnknown));
  }

  private Formula joined(
      List<Condition> parts, boolean everyone, boolean wanted, boolean orUnknown) {
    List<Formula> formulas = parts.stream().map(part -> formula(part, wanted, orUnknown)).toList();
    return everyone ? f.and(formulas) : f.or(formulas);
  }

  private Formula test(Condition.Test test, Standing wanted, boolean orUnknown) {
    int axis = space.position(subject(test)).orElseThrow();
    Predicate<Cell> right =
        cell -> {
          Standing standing = standing(test, cell);
          return standing == wanted || orUnknown && standing == Standing.UNKNOWN;
        };
    List<Formula> chosen = new ArrayList<>();
    space.axes().get(axis).where(right).stream().forEach(c -> chosen.add(cells.get(axis).get(c)));
    return f.or(chosen);
  }

  private Axis.Subject subject(Condition.Test test) {
    if (!space.knowledge().readings().containsKey(test.subject())) {
      return new Axis.OfEquipment();
    }
    return test.pattern() instanceof Condition.AgainstLimits
        ? new Axis.OfSide(test.subject())
        : new Axis.OfReading(test.subject());
  }

  private static Standing standing(Condition.Test test, Cell cell) {
    if (cell instanceof Cell.Absent) {
      return Standing.ABSENT;
    }
    if (test.pattern() instanceof Condition.CannotBeTaken) {
      return standing(cell instanceof Cell.NotTaken);
    }
    if (cell instanceof Cell.NotTaken || cell instanceof Cell.NoFigure) {
      return Standing.UNKNOWN;
    }
    return standing(
        test.pattern()
            .<Boolean>match(
                oneOf -> named(test.subject(), cell).filter(oneOf.values()::contains).isPresent(),
                in -> inside((Cell.Stretch) cell, in),
                limits -> limits.sides().contains(((Cell.SideOf) cell).side()),
                notTaken -> false));
  }

  private static Optional<String> named(String subject, Cell cell) {
    return cell instanceof Cell.Word word
        ? Optional.of(word.value())
        : ((Cell.Builds) cell).builds().get(0).attribute(subject);
  }

  /** A cell lies in an interval or beside it, so one of its points tells. */
  private static boolean inside(Cell.Stretch cell, Condition.InInterval in) {
    return in.interval()
        .contains(
            cell.interval()
                .low()
                .orElseThrow()
                .value()
                .add(cell.interval().high().orElseThrow().value())
                .divide(2));
  }

  private static Standing standing(boolean truth) {
    return truth ? Standing.TRUE : Standing.FALSE;
  }
}
