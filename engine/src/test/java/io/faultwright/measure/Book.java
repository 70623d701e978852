package io.faultwright.measure;

import io.faultwright.measure.Table.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A whole generated handbook, as a trainer might fill it in years: every symptom's rules answer
 * each situation once, apart from a handful of planted gaps and contradictions.
 *
 * @param tables the rules of each symptom
 */
record Book(List<Table> tables) {
  /** Gaps and contradictions that are planted in the whole book, as many of one as of the other. */
  static final int PLANTED = 3;

  private static final int RULES_TO_A_FAULT = 10;
  private static final List<String> REASONS =
      List.of(
          "Nothing else moves the %s and the %s.",
          "The %s and the %s name it.",
          "The %s leaves it alone, the %s agrees.",
          "Both the %s and the %s come from it.");

  static Book of(int symptoms, int rulesEach, long seed) {
    List<Table> tables = new ArrayList<>();
    for (int symptom = 0; symptom < symptoms; symptom++) {
      int extra = extra(symptom, symptoms);
      Table clean =
          PartitionTable.of(
              BookColumn.columns(),
              rulesEach + extra,
              Math.max(2, rulesEach / RULES_TO_A_FAULT),
              seed + symptom);
      Defects defects = new Defects(seed + symptom);
      tables.add(Idle.mended(defects.overlapping(defects.without(clean, extra), extra)));
    }
    return new Book(List.copyOf(tables));
  }

  /** How many gaps and how many contradictions a symptom gets. */
  private static int extra(int symptom, int symptoms) {
    return symptom >= PLANTED ? 0 : PLANTED / Math.min(symptoms, PLANTED);
  }

  static String symptom(int number) {
    return String.format(Locale.ROOT, "complaint-%02d", number + 1);
  }

  /** Texts by file name. */
  SortedMap<String, String> files() {
    SortedMap<String, String> files = new TreeMap<>();
    BookEquipment.write(files, tables.size());
    for (int symptom = 0; symptom < tables.size(); symptom++) {
      files.put("symptoms/" + symptom(symptom) + ".yaml", rules(symptom));
      files.put("faults/" + symptom(symptom) + ".yaml", faults(symptom));
    }
    return files;
  }

  /** One more file: for every rule a case that it alone answers. */
  String cases() {
    StringBuilder text = new StringBuilder("cases:\n");
    for (int symptom = 0; symptom < tables.size(); symptom++) {
      BookCases.write(text, symptom, tables.get(symptom));
    }
    return text.toString();
  }

  /** Faults of different symptoms have different ids. */
  static String fault(int symptom, Row row) {
    return symptom(symptom) + "-" + row.conclusion();
  }

  private String faults(int symptom) {
    TreeSet<String> ids = new TreeSet<>();
    tables.get(symptom).rows().forEach(row -> ids.add(fault(symptom, row)));
    return BookFaults.of(ids);
  }

  private String rules(int symptom) {
    String id = symptom(symptom);
    StringBuilder text = new StringBuilder("symptoms:\n  " + id + ":\n");
    text.append("    title: Complaint number ").append(symptom + 1).append("\n");
    text.append("    about: What the customer tells first, and what the room shows.\n");
    text.append("    recognise: { complaint: ").append(id).append(" }\n    rules:\n");
    List<Row> rows = tables.get(symptom).rows();
    for (int number = 0; number < rows.size(); number++) {
      text.append(rule(symptom, number, rows.get(number)));
    }
    return text.toString();
  }

  private static String rule(int symptom, int number, Row row) {
    StringBuilder text = new StringBuilder("      " + row.id() + ":\n        when:\n");
    TableYaml.when(BookColumn.columns(), row)
        .forEach(line -> text.append("          ").append(line).append("\n"));
    text.append("        conclude: ").append(fault(symptom, row)).append("\n");
    return text.append("        because: ").append(because(number, row)).append("\n").toString();
  }

  private static String because(int number, Row row) {
    List<String> tested = new ArrayList<>();
    for (BookColumn column : BookColumn.ALL) {
      Part part = row.parts().get(BookColumn.ALL.indexOf(column));
      if (!part.equals(column.column().whole())) {
        tested.add(column.words());
      }
    }
    return REASONS
        .get(number % REASONS.size())
        .formatted(tested.get(number % tested.size()), tested.get((number + 1) % tested.size()));
  }
}
