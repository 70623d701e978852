package io.faultwright.analysis.ambiguity;

import io.faultwright.ambiguity.Taking;
import io.faultwright.analysis.outcome.Needs;
import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Space;
import io.faultwright.model.Effort;
import io.faultwright.model.Efforts;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What is known of a situation once some readings are taken: their own classes, those of what is
 * computed from them alone, and the place against limits where all that the limits follow is known.
 * The machine is known by its nameplate. A value that is assumed unless it is given need not be
 * taken for the sake of others. Readings that are asked before others come with them.
 */
final class Takings {
  private final KnowledgeBase knowledge;
  private final Space space;
  private final Efforts efforts;
  private final List<SortedSet<String>> needs = new ArrayList<>();

  Takings(Space space) {
    this.knowledge = space.knowledge();
    this.space = space;
    this.efforts = new Efforts(knowledge);
    List<SortedSet<String>> told = new Needs(space).all();
    SortedSet<String> asked = new TreeSet<>();
    told.forEach(asked::addAll);
    told.forEach(takes -> needs.add(withThoseBefore(takes, asked)));
  }

  /** Of the readings that are asked before, those that bear on the symptom. */
  private SortedSet<String> withThoseBefore(SortedSet<String> takes, SortedSet<String> asked) {
    SortedSet<String> all = new TreeSet<>(takes);
    takes.forEach(reading -> all.addAll(knowledge.before(reading)));
    all.retainAll(asked);
    return all;
  }

  /** The readings to take before one knows the cell of an axis. */
  SortedSet<String> needs(int axis) {
    return needs.get(axis);
  }

  /** Every reading that can be taken, by id. */
  SortedSet<String> all() {
    SortedSet<String> all = new TreeSet<>();
    needs.forEach(all::addAll);
    return all;
  }

  /** The axes whose cells are known once some readings are taken. */
  BitSet known(Collection<String> taken) {
    BitSet known = new BitSet();
    for (int axis = 0; axis < needs.size(); axis++) {
      known.set(axis, taken.containsAll(needs.get(axis)));
    }
    return known;
  }

  /** Everything to take for a reading, its place against limits included; not the taken ones. */
  SortedSet<String> whole(String reading) {
    SortedSet<String> whole = new TreeSet<>();
    for (Axis.Subject subject : List.of(new Axis.OfReading(reading), new Axis.OfSide(reading))) {
      Optional<Integer> axis = space.position(subject);
      axis.ifPresent(at -> whole.addAll(needs(at)));
    }
    return whole;
  }

  /** What it takes to take some readings, what has to be set up for them once included. */
  Effort effort(Collection<String> readings) {
    return efforts.of(readings);
  }

  /** Some readings with what follows from them. */
  Taking taking(SortedSet<String> readings) {
    return taking(readings, List.of());
  }

  /** As above, where others were taken before and their set-ups are done. */
  Taking taking(SortedSet<String> readings, Collection<String> taken) {
    SortedSet<String> computed = new TreeSet<>();
    known(readings).stream()
        .mapToObj(axis -> space.axes().get(axis).subject())
        .filter(Axis.OfReading.class::isInstance)
        .map(subject -> knowledge.readings().get(((Axis.OfReading) subject).reading()))
        .filter(reading -> reading.derived().isPresent())
        .map(Reading::id)
        .forEach(computed::add);
    return new Taking(readings, computed, efforts.of(readings, taken));
  }
}
