package io.faultwright.report;

import io.faultwright.field.FieldCase;
import io.faultwright.model.Case;
import io.faultwright.run.Verdict;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** What the rules say about recorded jobs as a table, a row for each job. */
public final class FieldCsv {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setRecordSeparator("\n")
          .setHeader(
              "file",
              "line",
              "case",
              "origin",
              "symptom",
              "status",
              "answers",
              "contradictory",
              "rules",
              "confirmed",
              "result")
          .get();

  private final CSVPrinter rows;

  /** Begins a table. */
  public FieldCsv(Appendable out) {
    try {
      rows = new CSVPrinter(out, FORMAT);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Writes the row of a job. */
  public void add(FieldCase one) {
    try {
      row(one);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void row(FieldCase one) throws IOException {
    Case job = one.recorded();
    Verdict verdict = one.firing().verdict();
    rows.printRecord(
        job.place().file(),
        job.place().line(),
        job.id(),
        job.origin().orElse(""),
        job.symptom(),
        verdict.status().word(),
        verdict.answers().isEmpty() ? "" : FieldWords.answers(verdict.answers()),
        verdict.contradictory() ? "yes" : "no",
        String.join("; ", one.firing().rules()),
        one.confirmed() ? FieldWords.answers(job.expect()) : "",
        one.agrees().map(agrees -> agrees ? "agreed" : "disagreed").orElse(""));
  }
}
