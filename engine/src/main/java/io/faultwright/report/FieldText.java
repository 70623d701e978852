package io.faultwright.report;

import io.faultwright.field.Disagreement;
import io.faultwright.field.FieldReport;
import io.faultwright.field.Ground;
import io.faultwright.field.GroundReport;
import io.faultwright.field.Remark;
import io.faultwright.field.SymptomReport;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.wording.Wording;
import java.util.stream.Collectors;

/** What recorded jobs say about the rules, for people. */
public final class FieldText {
  private final Wording wording;
  private final FieldWords words;
  private final Ink ink;

  public FieldText(KnowledgeBase kb, Ink ink) {
    this.wording = new Wording(kb);
    this.words = new FieldWords(kb);
    this.ink = ink;
  }

  /** Every symptom with its rules, what was unclear, and how many rows there were. */
  public String write(FieldReport report) {
    return Columns.printable(report.handbook())
        + "\n\n"
        + report.symptoms().stream().map(this::symptom).collect(Collectors.joining())
        + remarks(report)
        + uncounted(report)
        + RowCountsText.line(report.counts());
  }

  private String symptom(SymptomReport symptom) {
    return ink.strong(symptom.symptom())
        + ": "
        + Columns.printable(wording.symptom(symptom.symptom()))
        + "\n  "
        + RowCountsText.agreement(symptom.agreed(), symptom.disagreed(), symptom.open())
        + "\n"
        + symptom.grounds().stream().map(this::ground).collect(Collectors.joining())
        + "\n";
  }

  private String ground(GroundReport report) {
    String counts = report.agreed() + " agreed, " + report.disagreed() + " disagreed";
    return "  "
        + FieldWords.ground(report.ground())
        + ": "
        + (report.disagreed() > 0 ? ink.uneasy(counts) : ink.good(counts))
        + "\n"
        + report.disagreements().stream()
            .map(rows -> disagreement(report.ground(), rows))
            .collect(Collectors.joining());
  }

  private String disagreement(Ground ground, Disagreement rows) {
    String contrast = words.contrast(ground, rows.contrast());
    return "    "
        + FieldWords.answers(rows.confirmed())
        + " was confirmed in "
        + rows.rows()
        + ": "
        + Columns.printable(FieldWords.places(rows))
        + "\n"
        + (contrast.isEmpty() ? "" : "      " + contrast + "\n");
  }

  private static String remarks(FieldReport report) {
    String all = report.remarks().stream().map(FieldText::remark).collect(Collectors.joining());
    String further =
        report.furtherRemarks() == 0
            ? ""
            : "  " + Counts.of(report.furtherRemarks(), "further remark") + "\n";
    return all.isEmpty() ? "" : "unclear to technicians\n" + all + further + "\n";
  }

  private static String remark(Remark remark) {
    String place = remark.place().file() + ", line " + remark.place().line();
    return "  " + Columns.printable(remark.symptom() + ", " + place + ": " + remark.text()) + "\n";
  }

  private static String uncounted(FieldReport report) {
    return report.uncounted() == 0
        ? ""
        : Counts.of(report.uncounted(), "row") + " of further kinds are not compared\n";
  }
}
