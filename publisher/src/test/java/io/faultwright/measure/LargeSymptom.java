package io.faultwright.measure;

import io.faultwright.measure.LargeReading.Branch;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** One symptom of the generated handbook, with all that is its own: a file of YAML. */
final class LargeSymptom {
  private static final int FEWEST = 8;
  private static final int MOST = 12;
  private static final List<String> PARTS =
      List.of("valve", "fan", "sensor", "relay", "drain", "gasket", "heater", "board", "pump");

  private final int number;
  private final int models;
  private final Random random;
  private final List<LargeReading> own = new ArrayList<>();
  private final List<Leaf> leaves = new ArrayList<>();

  /** The checks that lead to a rule, and what each must show. */
  private record Leaf(List<LargeReading> checks, List<Branch> shown) {
    Leaf with(LargeReading check, Branch branch) {
      List<LargeReading> more = new ArrayList<>(checks);
      List<Branch> wider = new ArrayList<>(shown);
      more.add(check);
      wider.add(branch);
      return new Leaf(more, wider);
    }
  }

  /**
   * A symptom.
   *
   * @param shared readings that other symptoms have too
   */
  LargeSymptom(int number, int models, List<LargeReading> shared, long seed) {
    this.number = number;
    this.models = models;
    this.random = new Random(seed * 1_000_003 + number);
    own.add(LargeReading.choice(id() + "-look", "Look of " + words(), random));
    own.add(LargeReading.choice(id() + "-sound", "Sound of " + words(), random));
    own.add(LargeReading.amount(id() + "-current", "Current of " + words(), random));
    own.add(LargeReading.judged(id() + "-pressure", "Pressure at " + words(), random));
    grow(columns(shared));
  }

  static String id(int number) {
    return "complaint-%03d".formatted(number);
  }

  /** Whether only machines with hot gas can show it. */
  static boolean needsHotGas(int number) {
    return number % 3 == 1;
  }

  private String id() {
    return id(number);
  }

  private String words() {
    return PARTS.get(number % PARTS.size()) + " " + number;
  }

  /** Its own readings and four of the shared ones. */
  private List<LargeReading> columns(List<LargeReading> shared) {
    List<LargeReading> columns = new ArrayList<>(own);
    for (int i = 0; i < 4; i++) {
      columns.add(shared.get((number * 3 + i * 7) % shared.size()));
    }
    if (number % 2 == 1) {
      columns.add(LargeReading.software());
    }
    return columns;
  }

  /** Splits what is left again and again, so that every situation has one rule. */
  private void grow(List<LargeReading> columns) {
    leaves.add(new Leaf(List.of(), List.of()));
    int wanted = FEWEST + random.nextInt(MOST - FEWEST - 1);
    while (leaves.size() < wanted) {
      Leaf leaf = leaves.remove(random.nextInt(leaves.size()));
      LargeReading check = unused(leaf, columns);
      List<Branch> ways = check.splits().get(random.nextInt(check.splits().size()));
      ways.forEach(way -> leaves.add(leaf.with(check, way)));
    }
  }

  /** A check that is new on this way; one of its own that no rule uses yet, if there is one. */
  private LargeReading unused(Leaf leaf, List<LargeReading> columns) {
    List<LargeReading> left = new ArrayList<>(columns);
    left.removeAll(leaf.checks());
    return own.stream()
        .filter(reading -> leaves.stream().noneMatch(other -> other.checks().contains(reading)))
        .filter(left::contains)
        .filter(reading -> random.nextBoolean())
        .findFirst()
        .orElseGet(() -> left.get(random.nextInt(left.size())));
  }

  String yaml() {
    StringBuilder text = new StringBuilder("readings:\n");
    own.forEach(reading -> text.append(reading.yaml()));
    text.append("limits:\n");
    text.append(
        number % 2 == 0
            ? LargeEquipment.byModel(id() + "-pressure", models, number % 4)
            : LargeEquipment.byFamily(id() + "-pressure", 6 + number % 3));
    return text.append(symptom()).append(faults()).append(cases()).toString();
  }

  private String symptom() {
    StringBuilder text =
        new StringBuilder(
            """
            symptoms:
              %1$s:
                title: The %2$s does not do its work
                about: What the customer tells first about the %2$s, and what the room shows.
                recognise: { complaint: %1$s }
            """
                .formatted(id(), words()));
    if (needsHotGas(number)) {
      text.append("    applies: { defrost: hot-gas }\n");
    }
    if (startsWithSupply()) {
      text.append(
          "    first:\n      - when: { supply: right }\n        otherwise: complaint-000\n");
    }
    text.append("    rules:\n");
    for (int rule = 0; rule < leaves.size(); rule++) {
      text.append(rule(rule));
    }
    return text.toString();
  }

  private boolean startsWithSupply() {
    return number % 4 == 3;
  }

  private String rule(int rule) {
    StringBuilder text = new StringBuilder("      rule-%02d:%n        when:%n".formatted(rule));
    Leaf leaf = leaves.get(rule);
    for (int i = 0; i < leaf.checks().size(); i++) {
      text.append("          ").append(leaf.checks().get(i).id()).append(": ");
      text.append(leaf.shown().get(i).pattern()).append("\n");
    }
    text.append("        ").append(answer(rule)).append("\n");
    return text.append("        because: Nothing else leaves the ")
        .append(words())
        .append(" like this.\n")
        .toString();
  }

  private String answer(int rule) {
    if (rule == 0 && number % 5 == 4) {
      return "refer: " + id(number / 2);
    }
    return "conclude: " + fault(rule);
  }

  private String fault(int rule) {
    return id() + "-fault-%02d".formatted(rule);
  }

  private String faults() {
    StringBuilder text = new StringBuilder("faults:\n");
    for (int rule = 0; rule < leaves.size(); rule++) {
      if (answer(rule).startsWith("conclude")) {
        text.append(fault(fault(rule), rule));
      }
    }
    return text.toString();
  }

  private String fault(String id, int rule) {
    return """
          %1$s:
            title: Part %2$d of the %3$s is worn
            about: Part %2$d of the %3$s is worn, and what it feeds no longer gets enough.
            remedy:
              - { do: "Isolate the unit, lock it out and prove it dead.", access: live-voltage }
              - { do: Take off the cover of the %3$s., access: panel }
              - { do: Replace part %2$d., cautions: [moving-fan] }
            verify:
              - Let the unit run for twenty minutes.
              - Take the readings again.
            frequency: %4$d
        """
        .formatted(id, rule, words(), 1 + random.nextInt(9));
  }

  private String cases() {
    StringBuilder text = new StringBuilder("cases:\n");
    for (int rule = 1; rule <= 1 + number % 2; rule++) {
      text.append(
          "  %s-case-%d:\n    symptom: %s\n    given: { model: %s, ambient-temperature: 20 °C"
              .formatted(id(), rule, id(), model(leaves.get(rule))));
      text.append(startsWithSupply() ? ", supply: right" : "");
      Leaf leaf = leaves.get(rule);
      for (int i = 0; i < leaf.checks().size(); i++) {
        text.append(", ").append(leaf.checks().get(i).id()).append(": ");
        text.append(leaf.shown().get(i).sample());
      }
      text.append(" }\n    expect: ").append(fault(rule)).append("\n");
    }
    return text.toString();
  }

  /** Both models have hot gas, so every symptom applies; the third has the newer software. */
  private String model(Leaf leaf) {
    boolean newer = leaf.shown().stream().anyMatch(branch -> branch.sample().equals("3.2"));
    return LargeEquipment.models(models).get(newer ? 2 : 0);
  }
}
