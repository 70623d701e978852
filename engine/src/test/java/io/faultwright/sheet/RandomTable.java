package io.faultwright.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;

/** A table of limits made by chance, in a style made by chance. */
final class RandomTable {
  /** What stands behind the rows. */
  static final String BEHIND = "  superheat: { rows: [ { high: 9 } ] } # behind";

  private static final List<String> FAMILIES =
      List.of("", "fell", "tarn", "[tarn, scar]", "not fell", "[fell, scar, tarn]");
  private static final List<String> SOFTWARE =
      List.of("", "2.10", "2.1", "at least 2.10", "below 2.10", "not 2.9", "[2.9, at least 3.0]");

  /**
   * A row.
   *
   * @param about texts of family, software and ambient; empty where left out
   * @param low as written, or empty
   * @param high as written, or empty
   */
  record Row(List<String> about, String low, String high) {}

  private final Random random;
  private final boolean step;
  private final int style;
  private final boolean windows;
  private final boolean mark;
  private final List<Row> rows = new ArrayList<>();

  RandomTable(Random random) {
    this.random = random;
    this.step = random.nextBoolean();
    this.style = random.nextInt(4);
    this.windows = random.nextInt(3) == 0;
    this.mark = random.nextInt(4) == 0;
    for (int n = 1 + random.nextInt(7); n > 0; n--) {
      rows.add(row());
    }
  }

  List<Row> rows() {
    return rows;
  }

  /** The rows after a day's work: some changed, some gone, some new, all mixed. */
  List<Row> edited() {
    List<Row> edited = new ArrayList<>();
    for (Row row : rows) {
      int chance = random.nextInt(6);
      if (chance == 0) {
        edited.add(new Row(row.about(), row.low().isEmpty() ? "" : low(), high()));
      } else if (chance == 1) {
        edited.add(new Row(row.about(), "", high()));
      } else if (chance == 2) {
        edited.add(new Row(row().about(), row.low(), row.high()));
      } else if (chance > 3) {
        edited.add(row);
      }
    }
    while (edited.isEmpty() || random.nextBoolean()) {
      edited.add(random.nextInt(edited.size() + 1), row());
    }
    return edited;
  }

  private Row row() {
    String low = random.nextInt(4) == 0 ? "" : low();
    return new Row(
        List.of(one(FAMILIES), one(SOFTWARE), ambient()),
        low,
        low.isEmpty() || random.nextInt(4) > 0 ? high() : "");
  }

  private String one(List<String> of) {
    return of.get(random.nextInt(of.size()));
  }

  private String ambient() {
    int from = random.nextInt(60) - 20;
    String unit = random.nextBoolean() ? " °C" : "";
    if (!step) {
      return random.nextInt(3) == 0 ? (from + 40) + " °F" : from + "." + random.nextInt(10) + unit;
    }
    return from + " to " + (from + 1 + random.nextInt(10)) + unit;
  }

  private String low() {
    return amount(0);
  }

  private String high() {
    return amount(20);
  }

  private String amount(int from) {
    BigDecimal bar = BigDecimal.valueOf(100L * from + random.nextInt(1900), 2);
    return switch (random.nextInt(6)) {
      case 0 -> bar.movePointRight(2).toPlainString() + " kPa(g)";
      case 1 -> 14 * from + 1 + random.nextInt(250) + " psi(g)";
      case 2 -> bar.toPlainString() + " bar(g)";
      case 3 -> bar.toPlainString() + "12345678901234";
      default -> bar.toPlainString();
    };
  }

  /** The file with these rows. */
  String file(List<Row> of) {
    String text =
        "# figures\nlimits:\n  discharge-pressure: # why\n    by: [family, software, ambient]\n"
            + "    between: "
            + (step ? "step" : "interpolate")
            + "\n    rows:"
            + (style == 3 ? " " + brackets(of) : lines(of))
            + "\n"
            + BEHIND
            + "\n";
    return (mark ? "\uFEFF" : "") + (windows ? text.replace("\n", "\r\n") : text);
  }

  private String brackets(List<Row> of) {
    return of.stream().map(RandomTable::flow).collect(Collectors.joining(", ", "[", "]"));
  }

  private String lines(List<Row> of) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < of.size(); i++) {
      if (style == 1 && i % 3 == 0) {
        text.append("\n\n      # part ").append(i).append(": { not: a row }");
      }
      text.append("\n      - ");
      text.append(style == 2 ? block(of.get(i)) : flow(of.get(i)));
      text.append(style == 1 ? " # row " + i : "");
    }
    return text.toString();
  }

  private static String flow(Row row) {
    return entries(row).stream().collect(Collectors.joining(", ", "{ ", " }"));
  }

  private static String block(Row row) {
    return String.join("\n        ", entries(row));
  }

  private static List<String> entries(Row row) {
    List<String> entries = new ArrayList<>();
    add(entries, "high", row.high());
    add(entries, "family", row.about().get(0));
    add(entries, "software", row.about().get(1));
    add(entries, "ambient", row.about().get(2));
    add(entries, "low", row.low());
    return entries;
  }

  private static void add(List<String> entries, String key, String value) {
    if (!value.isEmpty()) {
      entries.add(key + ": " + value);
    }
  }
}
