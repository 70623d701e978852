package io.faultwright.analysis.published;

import io.faultwright.analysis.judge.Judge;
import io.faultwright.model.Answer;
import io.faultwright.model.Case;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import io.faultwright.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** The 24 rows of the data set, in the published order: the last column changes fastest. */
public final class LensRows {
  private static final List<String> CLASSES =
      List.of(
          ("none soft none hard none soft none hard none soft none hard none soft none none"
                  + " none none none hard none soft none none")
              .split(" "));
  private static final List<String> AGES = List.of("young", "pre-presbyopic", "presbyopic");

  private LensRows() {}

  /** The published rules. */
  public static KnowledgeBase knowledge() {
    return Published.read("contact-lenses");
  }

  /** The class of every row. */
  static List<String> classes() {
    return CLASSES;
  }

  /** What is known in a row, counted from 0. */
  public static Situation situation(int row) {
    TreeMap<String, Value> readings = new TreeMap<>();
    readings.put("age", new Value.Word(AGES.get(row / 8)));
    readings.put("prescription", new Value.Word(row / 4 % 2 == 0 ? "myope" : "hypermetrope"));
    readings.put("astigmatism", new Value.Word(row / 2 % 2 == 0 ? "no" : "yes"));
    readings.put("tear", new Value.Word(row % 2 == 0 ? "reduced" : "normal"));
    return new Situation(new TreeMap<>(), readings);
  }

  /** A row as a case of the only symptom. */
  public static Case recorded(KnowledgeBase kb, int row) {
    return new Case(
        "row-" + (row + 1),
        new Place("rows.yaml", row + 1, 1, 1),
        kb.symptoms().firstKey(),
        situation(row),
        new TreeSet<>(List.of(new Answer.OfFault(CLASSES.get(row)))),
        true,
        "",
        Optional.empty(),
        List.of());
  }

  /** The only row that nothing answers once a rule is left out. */
  public static int uncoveredBy(String rule) {
    KnowledgeBase kb = knowledge();
    Symptom whole = kb.symptoms().values().iterator().next();
    SortedMap<String, Rule> rules = new TreeMap<>(whole.rules());
    rules.remove(rule);
    Judge judge = new Judge(kb);
    Symptom fewer = whole.withRules(rules);
    List<Integer> uncovered =
        IntStream.range(0, 24)
            .filter(
                row ->
                    judge.decide(fewer, judge.observe(fewer, situation(row))).answers().isEmpty())
            .boxed()
            .toList();
    if (uncovered.size() != 1) {
      throw new IllegalStateException(rule + " uncovers " + uncovered);
    }
    return uncovered.get(0);
  }
}
