package io.faultwright.analysis.random;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Never;
import io.faultwright.model.Reading;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * All points that can matter to a symptom: every word; for a driver every multiple of 1/12 (limits
 * between whole numbers at most three apart pass whole numbers at multiples of 1/6 only, and every
 * stretch between has a middle); for two readings with a difference every quarter (a triangle
 * between whole numbers has such points inside); for other quantities every whole number, every
 * limit at hand and the middles between.
 */
final class Points {
  private static final List<String> OPERANDS = List.of("left", "right");

  private final KnowledgeBase knowledge;
  private final Symptom symptom;
  private final Oracle oracle;
  private final List<String> readings;
  private final Set<String> refusable = new TreeSet<>();

  Points(KnowledgeBase knowledge, Symptom symptom) {
    this.knowledge = knowledge;
    this.symptom = symptom;
    this.oracle = new Oracle(knowledge, symptom);
    Set<String> used = new TreeSet<>();
    conditions()
        .flatMap(Condition::tests)
        .filter(test -> knowledge.readings().containsKey(test.subject()))
        .forEach(
            test -> {
              used.add(test.subject());
              if (test.pattern() instanceof Condition.CannotBeTaken) {
                refusable.add(test.subject());
              }
              if (test.pattern() instanceof Condition.AgainstLimits) {
                used.addAll(knowledge.limits().get(test.subject()).drivers());
              }
            });
    if (used.remove(RandomKnowledge.DIFFERENCE)) {
      used.addAll(OPERANDS);
    }
    List<String> order = new ArrayList<>(used);
    if (order.remove("driver")) {
      order.add(0, "driver");
    }
    this.readings = order;
  }

  private Stream<Condition> conditions() {
    return Stream.of(
            Stream.of(symptom.recognise()),
            symptom.first().stream().map(Symptom.First::when),
            symptom.rules().values().stream().map(Rule::when),
            symptom.nevers().values().stream().map(Never::when),
            knowledge.nevers().values().stream().map(Never::when))
        .flatMap(conditions -> conditions);
  }

  void forEach(Consumer<Point> visit) {
    for (Build build : knowledge.equipment().builds()) {
      if (build.satisfies(symptom.applies())) {
        visit(build, 0, new HashMap<>(), visit);
      }
    }
  }

  private void visit(Build build, int at, Map<String, Object> values, Consumer<Point> visit) {
    if (at == readings.size()) {
      computed(values).ifPresent(value -> values.put(RandomKnowledge.DIFFERENCE, value));
      visit.accept(new Point(build, values));
      values.remove(RandomKnowledge.DIFFERENCE);
      return;
    }
    Reading reading = knowledge.readings().get(readings.get(at));
    if (!build.satisfies(reading.applies())) {
      visit(build, at + 1, values, visit);
      return;
    }
    for (Object value : values(reading, build, values)) {
      values.put(reading.id(), value);
      visit(build, at + 1, values, visit);
    }
    values.remove(reading.id());
  }

  private static Optional<Object> computed(Map<String, Object> values) {
    if (!values.keySet().containsAll(OPERANDS)) {
      return Optional.empty();
    }
    boolean taken = values.get("left") != Point.REFUSED && values.get("right") != Point.REFUSED;
    return Optional.of(
        taken ? (Long) values.get("left") - (Long) values.get("right") : Point.REFUSED);
  }

  private List<Object> values(Reading reading, Build build, Map<String, Object> known) {
    List<Object> values = new ArrayList<>();
    if (reading.domain() instanceof Domain.Choice choice) {
      values.addAll(choice.ids());
    } else if (reading.id().equals("driver")) {
      values.addAll(multiples(12));
    } else if (OPERANDS.contains(reading.id())) {
      values.addAll(multiples(4));
    } else {
      values.addAll(amounts(reading, build, known));
    }
    if (refusable.contains(reading.id())) {
      values.add(Point.REFUSED);
    }
    return values;
  }

  /** Every multiple of one part of a whole. */
  private static List<Long> multiples(int parts) {
    return LongStream.rangeClosed(RandomKnowledge.BOTTOM * parts, RandomKnowledge.TOP * parts)
        .mapToObj(step -> step * (Oracle.SCALE / parts))
        .toList();
  }

  private Set<Long> amounts(Reading reading, Build build, Map<String, Object> known) {
    TreeSet<Long> marks = new TreeSet<>();
    for (int whole = RandomKnowledge.BOTTOM; whole <= RandomKnowledge.TOP; whole++) {
      marks.add(whole * Oracle.SCALE);
    }
    if (knowledge.limits().containsKey(reading.id())) {
      oracle
          .band(reading.id(), build, known.get("driver"))
          .ifPresent(
              band -> {
                marks.add(band[0]);
                marks.add(band[1]);
              });
    }
    marks.removeIf(
        mark ->
            mark < RandomKnowledge.BOTTOM * Oracle.SCALE
                || mark > RandomKnowledge.TOP * Oracle.SCALE);
    TreeSet<Long> all = new TreeSet<>(marks);
    for (Long mark : marks) {
      Long next = marks.higher(mark);
      if (next != null) {
        all.add((mark + next) / 2);
      }
    }
    return all;
  }
}
