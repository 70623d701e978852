package io.faultwright.measure;

import java.util.List;
import java.util.SortedMap;

/** The files of the generated handbook that do not depend on its rules. */
final class BookEquipment {
  private static final String HANDBOOK =
      """
      handbook:
        title: Generated freezer handbook
        maker: Brantmoor Cold
        revision: "1"
        date: 2026-03-02
        language: en
        disclaimer: >-
          Every rule and figure is generated to measure the tool. Do not use one on a real machine.
          Local codes and licensed practice come first.
      equipment:
        families:
          fell: { title: Fell, about: "Packaged unit, air-cooled." }
          tarn: { title: Tarn, about: "Split unit, air-cooled." }
        options:
          controller:
            title: Controller
            values:
              k1: { title: K1 controller, software: [2.9, 2.10] }
              k2: { title: K2 controller, software: [3.0, 3.2] }
        models:
          FL-12: { title: Fell 12, family: fell, options: { controller: k1 } }
          FL-16: { title: Fell 16, family: fell, options: { controller: k2 } }
          TN-20: { title: Tarn 20, family: tarn, options: { controller: k2 } }
      cautions:
        live-voltage:
          signal: danger
          text: >-
            Live parts will kill. Only a licensed person may work here. Isolate, lock out and prove dead
            before you touch anything. Follow the local code.
          covers: [live-voltage]
        refrigerant-pressure:
          signal: warning
          text: >-
            The circuit is under pressure and can freeze skin or injure eyes. Wear gloves and goggles.
            Only a person with the local licence may open it.
          covers: [refrigerant-circuit]
      """;

  private static final String AMBIENT =
      """
        ambient-temperature:
          title: Ambient temperature
          ask: What is the temperature of the air that enters the condenser?
          unit: °C
          range: -20 to 45
          minutes: 1
      """;

  private static final List<Integer> AMBIENTS = List.of(-20, 10, 25, 45);

  private BookEquipment() {}

  static void write(SortedMap<String, String> files, int symptoms) {
    files.put("handbook.yaml", HANDBOOK);
    files.put("readings.yaml", readings(symptoms));
    files.put("limits.yaml", limits());
  }

  private static String readings(int symptoms) {
    StringBuilder text =
        new StringBuilder("readings:\n").append(complaint(symptoms)).append(AMBIENT);
    BookColumn.ALL.forEach(column -> text.append(reading(column)));
    return text.toString();
  }

  private static String complaint(int symptoms) {
    StringBuilder text =
        new StringBuilder("  complaint:\n    ask: What does the customer complain about?\n");
    text.append("    values:\n");
    for (int symptom = 0; symptom < symptoms; symptom++) {
      text.append("      %s: Complaint number %d\n".formatted(Book.symptom(symptom), symptom + 1));
    }
    return text.append("      nothing: Nothing\n    normal: nothing\n").toString();
  }

  private static String reading(BookColumn column) {
    StringBuilder text =
        new StringBuilder(
            "  %s:\n    title: %s\n    ask: What is the %s, after ten minutes of steady running?\n"
                .formatted(column.column().id(), column.title(), column.words()));
    column.details().forEach(detail -> text.append("    ").append(detail).append("\n"));
    return text.append("    how: [\"").append(column.how()).append("\"]\n").toString();
  }

  private static String limits() {
    StringBuilder text = new StringBuilder("limits:\n");
    BookColumn.ALL.stream()
        .map(column -> column.column().id())
        .filter(id -> id.endsWith("-pressure"))
        .forEach(id -> text.append(table(id)));
    return text.toString();
  }

  /** Limits that rise with the ambient and leave room below and above. */
  private static String table(String id) {
    StringBuilder text =
        new StringBuilder(
            "  %s:\n    by: [family, ambient-temperature]\n    between: interpolate\n    rows:\n"
                .formatted(id));
    for (String family : List.of("fell", "tarn")) {
      int base = family.equals("fell") ? 6 : 7;
      for (int at = 0; at < AMBIENTS.size(); at++) {
        text.append(
            "      - { family: %s, ambient-temperature: %d °C, low: %d, high: %d }\n"
                .formatted(family, AMBIENTS.get(at), base + at, base + at + 8));
      }
    }
    return text.toString();
  }
}
