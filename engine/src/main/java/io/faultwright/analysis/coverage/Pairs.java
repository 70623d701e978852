package io.faultwright.analysis.coverage;

import io.faultwright.adequacy.Criterion;
import io.faultwright.adequacy.Goal;
import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.quantity.Interval;
import io.faultwright.wording.RuleText;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The pairs of levels of two readings of a symptom that some situation worked with its rules has
 * (2-way combinations).
 */
public final class Pairs {
  private final Symptom symptom;
  private final SymptomSpace rules;
  private final List<Factor> factors = new ArrayList<>();
  private final int[] offsets;
  private final BitSet possible = new BitSet();
  private final RuleText text;

  /**
   * @param rules all situations of the symptom
   */
  Pairs(KnowledgeBase kb, SymptomSpace rules) {
    this.symptom = rules.symptom();
    this.rules = rules;
    this.text = new RuleText(kb);
    List<Axis> axes = rules.space().axes();
    for (int axis = 1; axis < axes.size(); axis++) {
      Factor factor = Factor.of(axis, axes.get(axis));
      if (factor.levels() > 1) {
        factors.add(factor);
      }
    }
    this.offsets = new int[factors.size() + 1];
    for (int i = 0; i < factors.size(); i++) {
      offsets[i + 1] = offsets[i] + factors.get(i).levels();
    }
    findPossible();
  }

  public List<Factor> factors() {
    return factors;
  }

  public Space space() {
    return rules.space();
  }

  public int workable() {
    return rules.workable();
  }

  private void findPossible() {
    Diagrams diagrams = space().diagrams();
    for (int one = 0; one < factors.size(); one++) {
      for (int level = 0; level < factors.get(one).levels(); level++) {
        if (factors.get(one).isObservable(level)) {
          int with = diagrams.and(workable(), literal(one, level));
          findPossible(one, level, diagrams.occurring(with));
        }
      }
    }
  }

  /** Between this level of a factor and the later ones, given the cells that occur with it. */
  private void findPossible(int one, int level, BitSet[] reached) {
    for (int other = one + 1; other < factors.size(); other++) {
      Factor factor = factors.get(other);
      for (int there = 0; there < factor.levels(); there++) {
        boolean met =
            factor.isObservable(there)
                && factor.cells().get(there).intersects(reached[factor.axis()]);
        possible.set(number(one, level, other, there), met);
      }
    }
  }

  /** All situations of the symptom. */
  public SymptomSpace rules() {
    return rules;
  }

  /** The workable situations with some levels; -1 where any will do. */
  public int where(int[] levels) {
    int where = workable();
    for (int factor = 0; factor < levels.length && where != Diagrams.NONE; factor++) {
      if (levels[factor] >= 0) {
        where = space().diagrams().and(where, literal(factor, levels[factor]));
      }
    }
    return where;
  }

  public int literal(int factor, int level) {
    return space()
        .diagrams()
        .literal(factors.get(factor).axis(), factors.get(factor).cells().get(level));
  }

  /** The number of a pair of levels of two factors, the first one first. */
  public int number(int one, int level, int other, int there) {
    return (offsets[one] + level) * offsets[factors.size()] + offsets[other] + there;
  }

  /** The numbers of the pairs that can be. */
  public BitSet possible() {
    return possible;
  }

  /** The numbers of the pairs in some cases. */
  public BitSet shownBy(Collection<Sighting> cases) {
    BitSet shown = new BitSet();
    cases.stream()
        .filter(one -> one.symptom().equals(symptom.id()) && one.worked())
        .forEach(one -> mark(levels(one), shown));
    return shown;
  }

  /** For every factor the level of a case, or -1. */
  public int[] levels(Sighting one) {
    return factors.stream()
        .map(factor -> factor.level(one.observed()))
        .mapToInt(level -> level.orElse(-1))
        .toArray();
  }

  /** Marks the pairs of some levels. */
  void mark(int[] levels, BitSet shown) {
    for (int one = 0; one < levels.length; one++) {
      for (int other = one + 1; levels[one] >= 0 && other < levels.length; other++) {
        if (levels[other] >= 0) {
          shown.set(number(one, levels[one], other, levels[other]));
        }
      }
    }
  }

  /** What a pair asks for. */
  public Goal goal(int number) {
    int width = offsets[factors.size()];
    return new Goal(
        Criterion.PAIRS,
        symptom.id(),
        Optional.empty(),
        words(number / width) + " with " + words(number % width),
        symptom.place());
  }

  private String words(int at) {
    int factor = factors.size() - 1;
    while (offsets[factor] > at) {
      factor--;
    }
    return words(factors.get(factor), at - offsets[factor]);
  }

  private String words(Factor factor, int level) {
    List<Cell> cells =
        factor.cells().get(level).stream().mapToObj(factor.axisCells()::get).toList();
    Cell first = cells.get(0);
    String subject =
        factor.subject() instanceof Axis.OfSide of
            ? of.reading()
            : ((Axis.OfReading) factor.subject()).reading();
    return "`" + subject + ": " + words(subject, first, cells.get(cells.size() - 1)) + "`";
  }

  private String words(String subject, Cell first, Cell last) {
    if (first instanceof Cell.Stretch from && last instanceof Cell.Stretch to) {
      return text.interval(subject, new Interval(from.interval().low(), to.interval().high()));
    }
    if (first instanceof Cell.Word word) {
      return word.value();
    }
    return first instanceof Cell.SideOf side
        ? side.side().name().toLowerCase(Locale.ROOT) + " limits"
        : RuleText.CANNOT_BE_TAKEN;
  }
}
