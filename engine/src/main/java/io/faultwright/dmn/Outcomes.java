package io.faultwright.dmn;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.model.Answer;
import io.faultwright.model.Condition;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Divides what can be known of a machine by what a symptom says of it. */
final class Outcomes {
  private final Grid grid;
  private final Diagrams diagrams;

  Outcomes(Grid grid) {
    this.grid = grid;
    this.diagrams = grid.diagrams();
  }

  /**
   * A part of what can be known.
   *
   * @param stage how far the symptom gets there
   * @param answers what is told
   * @param where diagram, not empty
   */
  record Part(Stage stage, SortedSet<Answer> answers, int where) {}

  /** What is decided before the rules; what is left is theirs. */
  List<Part> beforeRules(Symptom symptom, List<Condition> nevers) {
    List<Part> parts = new ArrayList<>();
    int open = take(parts, Stage.NO_SUCH_MACHINE, Diagrams.ALL, grid.elsewhere());
    int excluded = Diagrams.NONE;
    for (Condition never : nevers) {
      excluded = diagrams.or(excluded, Known.of(grid, never).holds());
    }
    open = take(parts, Stage.TAKE_AGAIN, open, excluded);
    open = take(parts, Stage.NOT_THIS_SYMPTOM, open, Known.of(grid, symptom.recognise()).fails());
    SortedMap<Answer, Integer> referrals = new TreeMap<>();
    int unasked = Diagrams.NONE;
    for (Symptom.First first : symptom.first()) {
      Known known = Known.of(grid, first.when());
      Answer answer = new Answer.OfReferral(first.otherwise());
      referrals.merge(answer, diagrams.and(open, known.fails()), diagrams::or);
      int unknown = diagrams.minus(diagrams.minus(open, known.fails()), known.holds());
      unasked = diagrams.or(unasked, unknown);
      open = diagrams.and(open, known.holds());
    }
    take(parts, Stage.ASK_FIRST, unasked, unasked);
    referrals.forEach((answer, where) -> add(parts, Stage.SENT_ELSEWHERE, List.of(answer), where));
    return parts;
  }

  private int take(List<Part> parts, Stage stage, int open, int wanted) {
    add(parts, stage, List.of(), diagrams.and(open, wanted));
    return diagrams.minus(open, wanted);
  }

  private static void add(List<Part> parts, Stage stage, List<Answer> answers, int where) {
    if (where != Diagrams.NONE) {
      parts.add(new Part(stage, new TreeSet<>(answers), where));
    }
  }

  /** What the rules answer, wherever they do. */
  List<Part> ofRules(Symptom symptom) {
    Map<String, Known> known = new HashMap<>();
    symptom.rules().forEach((id, rule) -> known.put(id, Known.of(grid, rule.when())));
    SortedMap<Answer, Integer> byAnswer = new TreeMap<>();
    for (Rule rule : symptom.rules().values()) {
      int firing = known.get(rule.id()).holds();
      for (Rule other : symptom.rules().values()) {
        if (other.insteadOf().contains(rule.id())) {
          firing = diagrams.and(firing, known.get(other.id()).fails());
        }
      }
      for (Answer answer : rule.conclusion().answers()) {
        byAnswer.merge(answer, firing, diagrams::or);
      }
    }
    Map<SortedSet<Answer>, Integer> parts = new HashMap<>(Map.of(new TreeSet<>(), Diagrams.ALL));
    byAnswer.forEach((answer, where) -> divide(parts, answer, where));
    return parts.entrySet().stream()
        .filter(part -> !part.getKey().isEmpty())
        .map(part -> new Part(Stage.ANSWERED, part.getKey(), part.getValue()))
        .sorted(Comparator.comparing(part -> part.answers().toString()))
        .toList();
  }

  private void divide(Map<SortedSet<Answer>, Integer> parts, Answer answer, int where) {
    for (Map.Entry<SortedSet<Answer>, Integer> part : List.copyOf(parts.entrySet())) {
      int inside = diagrams.and(part.getValue(), where);
      if (inside != Diagrams.NONE) {
        SortedSet<Answer> more = new TreeSet<>(part.getKey());
        more.add(answer);
        parts.put(more, inside);
      }
      parts.put(part.getKey(), diagrams.minus(part.getValue(), where));
    }
    parts.values().removeIf(situations -> situations == Diagrams.NONE);
  }
}
