package io.faultwright.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Families, models, options and cautions of the generated handbook. */
final class LargeEquipment {
  private static final List<String> FAMILIES = List.of("fell", "tarn", "scar", "moor");

  private static final String HEAD =
      """
      handbook:
        title: Generated service handbook
        maker: Brantmoor Cold
        revision: "1"
        date: 2026-03-02
        language: en
        disclaimer: >-
          Every rule and figure is generated to measure the tool. Do not use one on a real machine.
          Local codes and licensed practice come first.
        hotline: +00 000 000
        base: https://handbook.example/generated
        start: welcome
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
        moving-fan:
          signal: warning
          text: A fan can start without notice. Isolate the unit and lock it out before you reach in.
      set-ups:
        gauges-connected: { title: Gauges connected, minutes: 4, access: refrigerant-circuit }
        panel-open: { title: Panel open, minutes: 2, access: panel }
      equipment:
        families:
          fell: { title: Fell, about: "Packaged unit, air-cooled." }
          tarn: { title: Tarn, about: "Split unit, air-cooled." }
          scar: { title: Scar, about: Remote condenser on the roof. }
          moor: { title: Moor, about: "Packaged unit, water-cooled." }
        options:
          defrost: { title: Defrost, values: { hot-gas: Hot gas, electric: Electric } }
          controller:
            title: Controller
            values:
              k1: { title: K1 controller, software: [2.9, 2.10] }
              k2: { title: K2 controller, software: [3.0, 3.2] }
      """;

  private LargeEquipment() {}

  /** Ids of the models, dealt to the families in turn. */
  static List<String> models(int count) {
    List<String> models = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      String letters = family(i).substring(0, 2).toUpperCase(Locale.ROOT);
      models.add(letters + "-" + (12 + 4 * (i / FAMILIES.size())));
    }
    return models;
  }

  private static String family(int model) {
    return FAMILIES.get(model % FAMILIES.size());
  }

  static String handbook(int models) {
    StringBuilder text = new StringBuilder(HEAD).append("  models:\n");
    List<String> ids = models(models);
    for (int i = 0; i < models; i++) {
      int build = i / FAMILIES.size() + i;
      text.append(
          "    %s: { title: %s, family: %s, options: { defrost: %s, controller: %s } }%n"
              .formatted(
                  ids.get(i),
                  "Machine " + ids.get(i),
                  family(i),
                  build % 2 == 0 ? "hot-gas" : "electric",
                  build / 2 % 2 == 0 ? "k1" : "k2"));
    }
    return text.toString();
  }

  /** Rows of limits that differ from family to family and follow the ambient. */
  static String byFamily(String reading, int base) {
    StringBuilder text =
        new StringBuilder(
            "  %s:\n    by: [family, ambient-temperature]\n    between: interpolate\n    rows:\n"
                .formatted(reading));
    for (int family = 0; family < FAMILIES.size(); family++) {
      for (int at = 0; at < 3; at++) {
        int low = base + family % 2 + at;
        text.append(
            "      - { family: %s, ambient-temperature: %d °C, low: %d, high: %d }\n"
                .formatted(FAMILIES.get(family), List.of(-20, 20, 45).get(at), low, low + 8));
      }
    }
    return text.toString();
  }

  /** Rows of limits that differ from model to model. */
  static String byModel(String reading, int models, int base) {
    StringBuilder text =
        new StringBuilder("  %s:\n    by: [model]\n    rows:\n".formatted(reading));
    List<String> ids = models(models);
    for (int i = 0; i < models; i++) {
      int low = 8 + (i / 5 + base) % 4;
      text.append("      - { model: %s, low: %d, high: %d }\n".formatted(ids.get(i), low, low + 6));
    }
    return text.toString();
  }
}
