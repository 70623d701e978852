package io.faultwright.analysis.operation;

import io.faultwright.model.Sequence.Apart;
import io.faultwright.model.Sequence.Lasting;
import io.faultwright.model.Sequence.Transition;
import io.faultwright.operation.Line;
import io.faultwright.operation.Program;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What can come about on one program, each with the way that has the fewest events, of these the
 * one that takes the least time.
 */
final class Explored {
  /** Two lines that can be taken at once. */
  record Pair(Transition one, Transition other) {}

  /** Two outputs that are on at once in a phase, and must not be. */
  record Both(Apart apart, String one, String other, String phase) {}

  private final Program program;
  private final SortedMap<String, Reach> phases = new TreeMap<>();
  private final Map<Transition, Reach> taken = new LinkedHashMap<>();
  private final Map<Pair, Reach> undecided = new LinkedHashMap<>();
  private final Map<Both, Reach> together = new LinkedHashMap<>();
  private final Map<Transition, Reach> counted = new LinkedHashMap<>();
  private final Set<String> left = new HashSet<>();
  private final Set<Lasting> over = new HashSet<>();
  private Optional<Reach> restless = Optional.empty();
  private boolean whole = true;

  Explored(Program program) {
    this.program = program;
  }

  Program program() {
    return program;
  }

  private static <K> void keep(Map<K, Reach> known, K key, Reach way) {
    known.merge(key, way, (old, other) -> other.isShorterThan(old) ? other : old);
  }

  void reached(Reach way) {
    keep(phases, program.phase(way.spot().phase()).id(), way);
  }

  void taken(Transition line, Reach way) {
    keep(taken, line, way);
  }

  void undecided(List<Line> pair, Reach way) {
    keep(undecided, new Pair(pair.get(0).source(), pair.get(1).source()), way);
  }

  /** Two counters of a line lead to different phases. */
  void counted(Transition line, Reach way) {
    keep(counted, line, way);
  }

  /** A line leads, or could lead, from a phase to another. */
  void left(String phase) {
    left.add(phase);
  }

  /** What an output waits for is over. */
  void over(Lasting lasting) {
    over.add(lasting);
  }

  void together(Both both, Reach way) {
    keep(together, both, way);
  }

  void restless(Reach way) {
    restless = restless.filter(old -> !way.isShorterThan(old)).or(() -> Optional.of(way));
  }

  /** Not everything could be looked at. */
  void cutShort() {
    whole = false;
  }

  boolean isWhole() {
    return whole;
  }

  SortedMap<String, Reach> phases() {
    return phases;
  }

  Map<Transition, Reach> taken() {
    return taken;
  }

  Map<Pair, Reach> undecided() {
    return undecided;
  }

  Map<Transition, Reach> counted() {
    return counted;
  }

  Set<String> left() {
    return left;
  }

  Set<Lasting> over() {
    return over;
  }

  Map<Both, Reach> together() {
    return together;
  }

  Optional<Reach> restless() {
    return restless;
  }
}
