package io.faultwright.layout;

import io.faultwright.flow.Edge;
import io.faultwright.flow.Flowchart;
import io.faultwright.flow.Node;
import io.faultwright.flow.Node.Check;
import io.faultwright.flow.Node.Ending;
import io.faultwright.flow.Node.Outcome;
import io.faultwright.flow.Warning;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;

/**
 * Generated flowcharts of an exact number of nodes: yes/no and more ways, shared checks and
 * outcomes, short and long texts, cautions; every second chart has its answers in any order.
 */
public final class VariedCharts {
  private static final List<String> WORDS =
      List.of(
          "valve",
          "pressure",
          "after",
          "the",
          "two",
          "minutes",
          "voltage",
          "coil",
          "ice",
          "defrost-termination",
          "room",
          "temperature",
          "fan",
          "of",
          "at",
          "controller");
  private static final List<List<String>> SCALES =
      List.of(
          List.of("Yes", "No"),
          List.of("Below limits", "Within limits", "Above limits"),
          List.of("Present", "Absent", "Cannot be taken"),
          List.of("Untouched", "Loose", "Hanging", "Only at the lower end", "None"),
          List.of("A1", "A2", "A3", "A4", "A5", "A6", "A7", "A8", "A9"));
  private static final List<Warning> WARNINGS =
      List.of(
          new Warning("DANGER", true, "Live parts. Licensed persons only; test your meter first."),
          new Warning("WARNING", true, "Refrigerant under pressure. Wear gloves and goggles."),
          new Warning("CAUTION", true, "The discharge line burns. Let it cool."),
          new Warning("NOTICE", false, "Keep the caps clean. Dirt blocks the valve."));

  private final Random random;
  private final boolean shuffled;
  private final TreeMap<String, Node> nodes = new TreeMap<>();
  private final List<List<String>> targets = new ArrayList<>();

  private VariedCharts(long seed) {
    this.random = new Random(seed);
    this.shuffled = seed % 2 == 1;
  }

  /** The chart of a seed with a number of nodes, the start included; at least 3. */
  public static Flowchart of(long seed, int size) {
    return new VariedCharts(seed).build(size);
  }

  private Flowchart build(int size) {
    Node.Start start = new Node.Start("start", words(4), words(random.nextInt(12)));
    nodes.put(start.id(), start);
    int checks = Math.max(1, (size - 1) * (30 + random.nextInt(20)) / 100);
    grow(checks);
    end(checks, size - 1 - checks);
    List<Edge> edges = new ArrayList<>(List.of(new Edge("start", "c0", "")));
    for (int i = 0; i < checks; i++) {
      List<String> answers = answers(targets.get(i).size());
      for (int arm = 0; arm < answers.size(); arm++) {
        edges.add(new Edge("c" + i, targets.get(i).get(arm), answers.get(arm)));
      }
    }
    return new Flowchart("varied", start, nodes, edges);
  }

  /** Checks, each led to by an earlier one, some by a second one too. */
  private void grow(int checks) {
    for (int i = 0; i < checks; i++) {
      nodes.put("c" + i, check("c" + i));
      targets.add(new ArrayList<>());
      if (i > 0) {
        arms(i).add("c" + i);
      }
      if (i > 3 && random.nextInt(6) == 0) {
        arms(i).add("c" + i);
      }
    }
  }

  /** Arms of a check before a number, one with few of them. */
  private List<String> arms(int before) {
    int at = random.nextInt(before);
    while (targets.get(at).size() >= 5) {
      at = (at + 1) % before;
    }
    return targets.get(at);
  }

  /** Outcomes, each told at least once, and so that every check has two answers. */
  private void end(int checks, int outcomes) {
    for (int i = 0; i < outcomes; i++) {
      nodes.put("o" + i, outcome("o" + i));
    }
    int next = 0;
    for (List<String> arms : targets) {
      while (arms.size() < 2) {
        arms.add("o" + (next < outcomes ? next++ : random.nextInt(outcomes)));
      }
    }
    for (; next < outcomes; next++) {
      int at = random.nextInt(checks);
      while (targets.get(at).size() >= 9) {
        at = (at + 1) % checks;
      }
      targets.get(at).add("o" + next);
    }
    targets.forEach(arms -> Collections.shuffle(arms, random));
  }

  private List<String> answers(int count) {
    List<List<String>> large = SCALES.stream().filter(scale -> scale.size() >= count).toList();
    List<String> scale = large.get(random.nextInt(large.size()));
    List<String> answers = new ArrayList<>(scale.subList(0, count));
    if (shuffled) {
      Collections.shuffle(answers, random);
    }
    return answers;
  }

  private Check check(String id) {
    List<Warning> warnings = WARNINGS.stream().filter(warning -> random.nextInt(5) == 0).toList();
    List<String> steps = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      steps.add(words(3 + random.nextInt(random.nextInt(6) == 0 ? 40 : 9)));
    }
    return new Check(id, warnings, steps, words(3 + random.nextInt(12)) + "?");
  }

  private Outcome outcome(String id) {
    Ending ending = Ending.values()[random.nextInt(Ending.values().length)];
    return new Outcome(id, ending, words(2 + random.nextInt(6)), "Remedy: " + id);
  }

  private String words(int count) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      words.add(WORDS.get(random.nextInt(WORDS.size())));
    }
    return String.join(" ", words);
  }
}
