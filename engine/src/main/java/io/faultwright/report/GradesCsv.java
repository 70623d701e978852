package io.faultwright.report;

import io.faultwright.grading.Given;
import io.faultwright.grading.Share;
import io.faultwright.handin.Entry;
import io.faultwright.handin.Grades;
import io.faultwright.handin.IssuedQuiz.Item;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Grades as a table, a row for each participant: marks, each symptom, each item. */
public final class GradesCsv {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setRecordSeparator("\n").get();

  private GradesCsv() {}

  /** The table. */
  public static String write(Grades grades) {
    StringWriter text = new StringWriter();
    try (CSVPrinter rows = new CSVPrinter(text, FORMAT)) {
      rows.printRecord(heading(grades));
      for (Entry entry : grades.entries()) {
        rows.printRecord(row(grades, entry));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static List<String> heading(Grades grades) {
    List<String> heading =
        new ArrayList<>(
            List.of("participant", "name", "handed-in", "right", "items", "percent", "result"));
    grades.quiz().symptoms().keySet().forEach(id -> heading.add("symptom " + id));
    grades.quiz().items().stream().map(Item::id).forEach(heading::add);
    return heading;
  }

  private static List<String> row(Grades grades, Entry entry) {
    Share all = entry.score().all();
    List<String> row =
        new ArrayList<>(
            List.of(
                Integer.toString(entry.participant()),
                harmless(entry.name()),
                entry.handedIn(),
                Integer.toString(all.right()),
                Integer.toString(all.of()),
                Figures.percent(all.share()),
                GradesText.result(entry)));
    for (String symptom : grades.quiz().symptoms().keySet()) {
      Share share = entry.score().topics().getOrDefault(symptom, new Share(0, 0));
      row.add(share.of() == 0 ? "" : Figures.percent(share.share()));
    }
    entry.sheet().items().stream().map(GradesCsv::mark).forEach(row::add);
    return row;
  }

  private static String mark(Given given) {
    return given.isRight() ? "1" : given.chosen().isPresent() ? "0" : "";
  }

  /** A spreadsheet would take a cell that begins so for a formula; names never do. */
  private static String harmless(String name) {
    return name.matches("[=+\\-@].*") ? "'" + name : name;
  }
}
