package io.faultwright.analysis.order;

import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Access;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Everything that the rules of a symptom ask about. */
public final class Questions {
  private final KnowledgeBase knowledge;
  private final SymptomSpace symptom;
  private final List<Axis> axes;

  private Questions(SymptomSpace symptom) {
    this.knowledge = symptom.space().knowledge();
    this.symptom = symptom;
    this.axes = symptom.space().axes();
  }

  /** The questions, in a fixed order. */
  public static List<Question> of(SymptomSpace symptom) {
    Questions questions = new Questions(symptom);
    return Stream.concat(questions.onEquipment(), questions.onReadings())
        .filter(question -> question.options().size() > 1)
        .toList();
  }

  /** Every condition of a symptom. */
  private static Stream<Condition> conditions(Symptom symptom) {
    return Stream.of(
            Stream.of(symptom.recognise()),
            symptom.first().stream().map(Symptom.First::when),
            symptom.rules().values().stream().map(Rule::when))
        .flatMap(conditions -> conditions);
  }

  private Stream<Question> onEquipment() {
    return knowledge.equipment().attributes().stream()
        .map(
            attribute ->
                new Question(
                    attribute,
                    false,
                    false,
                    0,
                    classes(attribute),
                    Access.OUTSIDE,
                    BigFraction.ZERO));
  }

  /** Builds that answer every test on a fact alike belong together. */
  private List<BitSet> classes(String attribute) {
    List<Condition.Test> tests =
        conditions(symptom.symptom())
            .flatMap(Condition::tests)
            .filter(test -> test.subject().equals(attribute))
            .toList();
    Map<List<Boolean>, BitSet> classes = new LinkedHashMap<>();
    List<Cell> cells = axes.get(0).cells();
    for (int cell = 0; cell < cells.size(); cell++) {
      Cell.Builds builds = (Cell.Builds) cells.get(cell);
      List<Boolean> truths =
          tests.stream().map(test -> builds.representative().satisfies(test)).toList();
      classes.computeIfAbsent(truths, none -> new BitSet()).set(cell);
    }
    return List.copyOf(classes.values());
  }

  private Stream<Question> onReadings() {
    List<Question> questions = new ArrayList<>();
    for (int axis = 1; axis < axes.size(); axis++) {
      Axis.Subject subject = axes.get(axis).subject();
      if (subject instanceof Axis.OfReading of) {
        questions.add(onReading(of.reading(), false, axis));
      } else if (subject instanceof Axis.OfSide of) {
        questions.add(onReading(of.reading(), true, axis));
      }
    }
    return questions.stream();
  }

  private Question onReading(String id, boolean limits, int axis) {
    Reading reading = knowledge.readings().get(id);
    boolean takingOnly = !limits && isTakenForLimitsOnly(id, axis);
    return new Question(
        id, limits, takingOnly, axis, groups(axis), reading.access(), reading.minutes());
  }

  /** Whether nothing but the place of a reading against its limits depends on its value. */
  private boolean isTakenForLimitsOnly(String reading, int axis) {
    Axis values = axes.get(axis);
    long stretches =
        values.where(cell -> cell instanceof Cell.Stretch).stream()
            .mapToObj(values.groups()::get)
            .distinct()
            .count();
    return stretches == 1 && symptom.space().position(new Axis.OfSide(reading)).isPresent();
  }

  private List<BitSet> groups(int axis) {
    Map<Integer, BitSet> groups = new LinkedHashMap<>();
    List<Integer> numbers = axes.get(axis).groups();
    for (int cell = 0; cell < numbers.size(); cell++) {
      groups.computeIfAbsent(numbers.get(cell), none -> new BitSet()).set(cell);
    }
    return List.copyOf(groups.values());
  }
}
