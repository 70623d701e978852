package io.faultwright.report;

import io.faultwright.model.Answer;
import io.faultwright.run.Trace;
import io.faultwright.wording.RuleText;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** What the rules say about cases as a table, a row for each case. */
public final class TraceCsv {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setRecordSeparator("\n")
          .setHeader(
              "case",
              "symptom",
              "status",
              "answers",
              "contradictory",
              "still possible",
              "ruled out",
              "next",
              "borderline",
              "expected",
              "result")
          .get();

  private TraceCsv() {}

  public static String write(RunReport report) {
    StringWriter text = new StringWriter();
    try (CSVPrinter rows = new CSVPrinter(text, FORMAT)) {
      for (CaseRun run : report.runs()) {
        row(rows, run);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static void row(CSVPrinter rows, CaseRun run) throws IOException {
    Trace trace = run.trace();
    rows.printRecord(
        run.recorded().id(),
        trace.symptom(),
        trace.status().word(),
        answers(trace.answers()),
        trace.contradictory() ? "yes" : "no",
        String.join("; ", trace.stillPossible()),
        String.join("; ", trace.ruledOut()),
        trace.next().orElse(""),
        run.borderline().map(BorderlineWords::cell).orElse(""),
        run.judged() ? answers(run.recorded().expect()) : "",
        run.passed().map(passed -> passed ? "passed" : "failed").orElse(""));
  }

  private static String answers(Collection<Answer> answers) {
    return answers.stream().map(RuleText::answer).collect(Collectors.joining("; "));
  }
}
