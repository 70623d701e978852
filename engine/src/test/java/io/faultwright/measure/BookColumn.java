package io.faultwright.measure;

import java.util.List;

/**
 * A reading of the generated handbook.
 *
 * @param column what rules test
 * @param title as a trainer would call it
 * @param how an instruction
 * @param details further keys of the reading
 */
record BookColumn(Column column, String title, String how, List<String> details) {
  /** The readings that the rules of the generated handbook test. */
  static final List<BookColumn> ALL =
      List.of(
          amount("room-temperature", "Room temperature", -30, 20, 2, "°C"),
          amount("coil-temperature", "Coil temperature", -40, 30, 2, "°C"),
          amount("discharge-line", "Temperature of the discharge line", 0, 130, 5, "°C"),
          amount("motor-current", "Compressor current", 0, 30, 1, "A"),
          amount("heater-current", "Heater current", 0, 20, 1, "A"),
          amount("defrost-time", "Time of the last defrost", 0, 60, 5, "min"),
          judged("discharge-pressure", "Discharge pressure"),
          judged("suction-pressure", "Suction pressure"),
          choice("ice", "Ice on the coil", "untouched", "loose", "patchy", "none"),
          choice("coil-fan", "Evaporator fan", "runs", "stands", "starts-and-stops"),
          choice("door-gasket", "Door gasket", "tight", "torn", "frozen", "loose"),
          choice("lamp", "Lamp of the controller", "dark", "steady", "slow", "quick"));

  static List<Column> columns() {
    return ALL.stream().map(BookColumn::column).toList();
  }

  String words() {
    return column.id().replace('-', ' ');
  }

  private static BookColumn amount(
      String id, String title, int low, int high, int step, String unit) {
    return new BookColumn(
        new Column.Amount(id, low, high, step, unit),
        title,
        "Hold the probe still until the figure settles, then write it down.",
        List.of("unit: " + unit, "range: " + low + " to " + high, "access: panel", "minutes: 3"));
  }

  private static BookColumn judged(String id, String title) {
    return new BookColumn(
        new Column.Judged(id),
        title,
        "Connect the gauge, let the hose purge, and read after two minutes of steady running.",
        List.of("unit: bar(g)", "range: 0 to 30", "access: refrigerant-circuit", "minutes: 4"));
  }

  private static BookColumn choice(String id, String title, String... values) {
    return new BookColumn(
        new Column.Choice(id, List.of(values)),
        title,
        "Look at it from the front, with a lamp, before anything is moved.",
        List.of("values: [" + String.join(", ", values) + "]", "minutes: 1"));
  }
}
