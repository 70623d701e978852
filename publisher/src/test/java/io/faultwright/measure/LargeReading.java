package io.faultwright.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * A reading of the generated handbook.
 *
 * @param id its id
 * @param yaml it as a trainer writes it
 * @param splits the ways in which rules tell its values apart
 */
record LargeReading(String id, String yaml, List<List<Branch>> splits) {
  private static final List<String> HOW =
      List.of(
          "Hold the probe still until the figure settles.",
          "Look at it from the front, with a lamp.",
          "Wait for two minutes of steady running.",
          "Write the figure down before you move on.");

  /**
   * One way on from a check.
   *
   * @param pattern what a rule says of it
   * @param sample a value for a case
   */
  record Branch(String pattern, String sample) {}

  static LargeReading choice(String id, String subject, Random random) {
    List<String> values = new ArrayList<>(List.of("right", "worn", "missing", "loose"));
    values = values.subList(0, 2 + random.nextInt(3));
    String yaml =
        head(id, subject, "panel", random) + "    values: [" + String.join(", ", values) + "]\n";
    List<Branch> each = values.stream().map(value -> new Branch(value, value)).toList();
    String first = values.get(0);
    List<Branch> two = List.of(new Branch(first, first), new Branch("not " + first, values.get(1)));
    return new LargeReading(id, yaml, List.of(each, two));
  }

  static LargeReading amount(String id, String subject, Random random) {
    int low = 20 + 5 * random.nextInt(4);
    int high = low + 10 + 5 * random.nextInt(4);
    String yaml =
        head(id, subject, "live-voltage", random)
            + "    unit: A\n    range: 0 to 90\n    resolution: 0.5\n    set-up: panel-open\n";
    Branch below = new Branch("below " + low + " A", low - 5 + " A");
    return new LargeReading(
        id,
        yaml,
        List.of(
            List.of(below, new Branch("at least " + low + " A", high + 5 + " A")),
            List.of(
                below,
                new Branch(low + " to " + high + " A", low + 5 + " A"),
                new Branch("above " + high + " A", high + 5 + " A"))));
  }

  /** One that is judged against limits, which leave room for 2, 12 and 28 bar. */
  static LargeReading judged(String id, String subject, Random random) {
    String yaml =
        head(id, subject, "refrigerant-circuit", random)
            + "    unit: bar(g)\n    range: 0 to 30\n    resolution: 0.1\n"
            + "    accuracy: 1 % of 35\n    set-up: gauges-connected\n";
    Branch below = new Branch("below limits", "2 bar(g)");
    Branch within = new Branch("within limits", "12 bar(g)");
    Branch above = new Branch("above limits", "28 bar(g)");
    return new LargeReading(
        id,
        yaml,
        List.of(
            List.of(below, within, above),
            List.of(below, new Branch("not below limits", "12 bar(g)")),
            List.of(within, new Branch("outside limits", "28 bar(g)"))));
  }

  /** The control software, which is a fact of the machine and no reading of its own. */
  static LargeReading software() {
    return new LargeReading(
        "software",
        "",
        List.of(List.of(new Branch("below 3.0", "2.9"), new Branch("at least 3.0", "3.2"))));
  }

  private static String head(String id, String subject, String access, Random random) {
    return """
          %s:
            title: %s
            ask: What is the %s after ten minutes of steady running?
            minutes: %d
            access: %s
            guide: guide-%02d
            how: ["%s", "%s"]
        """
        .formatted(
            id,
            subject,
            subject.toLowerCase(Locale.ROOT),
            1 + random.nextInt(5),
            access,
            random.nextInt(LargeHandbook.GUIDES),
            HOW.get(random.nextInt(2)),
            HOW.get(2 + random.nextInt(2)));
  }
}
