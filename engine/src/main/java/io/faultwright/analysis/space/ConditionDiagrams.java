package io.faultwright.analysis.space;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.OneOf;
import java.util.Arrays;
import java.util.BitSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** Conditions as diagrams, by strong three-valued logic (Kleene, 1938). */
final class ConditionDiagrams {
  private final Space space;
  private final Diagrams diagrams;
  private final Map<Condition.Test, int[]> known = new IdentityHashMap<>();

  ConditionDiagrams(Space space, Diagrams diagrams) {
    this.space = space;
    this.diagrams = diagrams;
  }

  /** What is asked of a condition. */
  enum Aspect {
    TRUE,
    FALSE,
    MAYBE_TRUE,
    MAYBE_FALSE;

    private Aspect ofNegation() {
      return switch (this) {
        case TRUE -> FALSE;
        case FALSE -> TRUE;
        case MAYBE_TRUE -> MAYBE_FALSE;
        case MAYBE_FALSE -> MAYBE_TRUE;
      };
    }

    private boolean asksForTruth() {
      return this == TRUE || this == MAYBE_TRUE;
    }

    private boolean takesUnknown() {
      return this == MAYBE_TRUE || this == MAYBE_FALSE;
    }
  }

  int where(Condition condition, Aspect aspect) {
    return condition.match(
        all -> joined(all.parts(), aspect, aspect.asksForTruth()),
        any -> joined(any.parts(), aspect, !aspect.asksForTruth()),
        not -> where(not.part(), aspect.ofNegation()),
        test -> known(test, aspect));
  }

  /** Worked out once for each test as it stands in a file; many questions ask for it again. */
  private int known(Condition.Test test, Aspect aspect) {
    int[] diagram = known.computeIfAbsent(test, key -> filled());
    if (diagram[aspect.ordinal()] < 0) {
      diagram[aspect.ordinal()] = test(test, aspect);
    }
    return diagram[aspect.ordinal()];
  }

  private static int[] filled() {
    int[] none = new int[Aspect.values().length];
    Arrays.fill(none, -1);
    return none;
  }

  /** Parts that must all be so, or of which one must; the deepest first, which is cheapest. */
  private int joined(List<Condition> parts, Aspect aspect, boolean every) {
    int[] sets = new int[parts.size()];
    for (int i = 0; i < sets.length; i++) {
      insert(sets, i, where(parts.get(i), aspect));
    }
    int joined = every ? Diagrams.ALL : Diagrams.NONE;
    for (int set : sets) {
      joined = every ? diagrams.and(joined, set) : diagrams.or(joined, set);
    }
    return joined;
  }

  /** Puts a set among the first ones, behind those that are as deep. */
  private void insert(int[] sets, int count, int set) {
    int at = count;
    while (at > 0 && diagrams.axisOf(sets[at - 1]) < diagrams.axisOf(set)) {
      sets[at] = sets[at - 1];
      at--;
    }
    sets[at] = set;
  }

  private int test(Condition.Test test, Aspect aspect) {
    if (!space.knowledge().readings().containsKey(test.subject())) {
      return onEquipment(test, aspect);
    }
    return test.pattern()
        .match(
            oneOf -> onWord(test.subject(), oneOf, aspect),
            inInterval -> onAmount(test.subject(), inInterval, aspect),
            againstLimits -> onSide(test.subject(), againstLimits, aspect),
            cannotBeTaken -> onTaking(test.subject(), aspect));
  }

  private int onEquipment(Condition.Test test, Aspect aspect) {
    Axis axis = space.axis(new Axis.OfEquipment());
    BitSet satisfied =
        axis.where(
            cell -> cell instanceof Cell.Builds builds && builds.representative().satisfies(test));
    return literal(axis, axis.all(), satisfied, aspect);
  }

  private int onWord(String reading, OneOf oneOf, Aspect aspect) {
    Axis axis = space.axis(new Axis.OfReading(reading));
    BitSet satisfied =
        axis.where(cell -> cell instanceof Cell.Word word && oneOf.values().contains(word.value()));
    return literal(axis, axis.where(Cell.Word.class::isInstance), satisfied, aspect);
  }

  private int onAmount(String reading, InInterval inInterval, Aspect aspect) {
    Axis axis = space.axis(new Axis.OfReading(reading));
    int known = axis.stretches();
    BitSet stretches = new BitSet();
    stretches.set(0, known);
    return literal(axis, stretches, axis.within(inInterval.interval()), aspect);
  }

  private int onSide(String reading, AgainstLimits againstLimits, Aspect aspect) {
    Axis axis = space.axis(new Axis.OfSide(reading));
    BitSet satisfied =
        axis.where(
            cell -> cell instanceof Cell.SideOf at && againstLimits.sides().contains(at.side()));
    return literal(axis, axis.sides(), satisfied, aspect);
  }

  private int onTaking(String reading, Aspect aspect) {
    Axis axis = space.axis(new Axis.OfReading(reading));
    BitSet known = axis.where(cell -> !(cell instanceof Cell.Absent));
    return literal(axis, known, axis.where(Cell.NotTaken.class::isInstance), aspect);
  }

  /** True on the satisfied cells, false on the other known ones, never met where absent. */
  private int literal(Axis axis, BitSet known, BitSet satisfied, Aspect aspect) {
    BitSet cells = (BitSet) known.clone();
    if (aspect.asksForTruth()) {
      cells.and(satisfied);
    } else {
      cells.andNot(satisfied);
    }
    if (aspect.takesUnknown()) {
      BitSet open = axis.where(cell -> !(cell instanceof Cell.Absent));
      open.andNot(known);
      cells.or(open);
    }
    return space.literal(axis.subject(), cells);
  }
}
