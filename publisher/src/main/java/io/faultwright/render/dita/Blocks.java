package io.faultwright.render.dita;

import io.faultwright.page.CautionPanel;
import io.faultwright.page.Clause;
import io.faultwright.page.Fact;
import io.faultwright.page.LimitsSection;
import io.faultwright.words.Words;
import io.faultwright.xml.Xml;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What topics have in common: notes, conditions, tables. */
final class Blocks {
  private final Xml xml;
  private final Words say;

  Blocks(Xml xml, Words say) {
    this.xml = xml;
    this.say = say;
  }

  /** A line; nothing where there is nothing to say. */
  void line(String text) {
    if (!text.isBlank()) {
      xml.text("p", text);
    }
  }

  /**
   * Cautions as notes of the type of their signal word. A hazard statement wants the hazard, its
   * consequence and how to avoid it apart, and a trainer writes them as one text.
   */
  void cautions(List<CautionPanel> cautions) {
    cautions.forEach(caution -> xml.text("note", caution.text(), "type", caution.style()));
  }

  /** Conditions below a heading. */
  void clauses(String heading, List<Clause> clauses) {
    if (!clauses.isEmpty()) {
      xml.text("p", heading);
      clauses(clauses);
    }
  }

  private void clauses(List<Clause> clauses) {
    xml.open("ul");
    for (Clause clause : clauses) {
      String subject = clause.subject().map(link -> link.text() + ": ").orElse("");
      xml.open("li").text("p", subject + clause.text());
      if (!clause.parts().isEmpty()) {
        clauses(clause.parts());
      }
      xml.close();
    }
    xml.close();
  }

  /** Lines of a list, below a heading. */
  void list(String kind, String heading, List<String> lines) {
    if (!lines.isEmpty()) {
      xml.text("p", heading).open(kind);
      lines.forEach(line -> xml.text("li", line));
      xml.close();
    }
  }

  void facts(List<Fact> facts) {
    if (!facts.isEmpty()) {
      xml.open("dl");
      for (Fact fact : facts) {
        xml.open("dlentry").text("dt", fact.label()).text("dd", fact.text()).close();
      }
      xml.close();
    }
  }

  void limits(LimitsSection limits) {
    xml.text("p", say.say("Limits") + ": " + limits.caption());
    if (!limits.rows().isEmpty()) {
      table(limits.columns(), limits.rows());
    }
    for (LimitsSection.Grid grid : limits.grids()) {
      line(grid.equipment());
      List<String> columns = new ArrayList<>(List.of(grid.side() + " / " + grid.top()));
      columns.addAll(grid.columns());
      table(
          columns,
          grid.rows().stream()
              .map(row -> Stream.concat(Stream.of(row.heading()), row.cells().stream()).toList())
              .toList());
    }
    line(limits.reading());
  }

  void table(List<String> columns, List<List<String>> rows) {
    xml.open("simpletable").open("sthead");
    columns.forEach(column -> xml.text("stentry", column));
    xml.close();
    for (List<String> row : rows) {
      xml.open("strow");
      row.forEach(cell -> xml.text("stentry", cell));
      xml.close();
    }
    xml.close();
  }
}
