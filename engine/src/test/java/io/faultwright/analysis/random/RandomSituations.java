package io.faultwright.analysis.random;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;

/** Situations of a random knowledge base, half of them with readings or facts left out. */
public final class RandomSituations {
  private RandomSituations() {}

  /** So many situations of a symptom, always the same for a seed. */
  public static List<Situation> of(KnowledgeBase kb, Symptom symptom, long seed, int count) {
    Random random = new Random(seed);
    List<Point> points = new ArrayList<>();
    int[] met = new int[1];
    new Points(kb, symptom)
        .forEach(
            point -> {
              int at = met[0]++;
              if (at < count) {
                points.add(point);
              } else if (random.nextInt(at + 1) < count) {
                points.set(random.nextInt(count), point);
              }
            });
    return points.stream()
        .map(point -> point.situation(true))
        .map(one -> random.nextBoolean() ? one : partly(one, random))
        .toList();
  }

  private static Situation partly(Situation whole, Random random) {
    SortedMap<String, Value> readings = new TreeMap<>(whole.readings());
    readings.keySet().removeIf(reading -> random.nextInt(3) == 0);
    SortedMap<String, String> facts = new TreeMap<>(whole.equipment());
    facts.keySet().removeIf(fact -> random.nextInt(3) == 0);
    return new Situation(facts, readings);
  }
}
