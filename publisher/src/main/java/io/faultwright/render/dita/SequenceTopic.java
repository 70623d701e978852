package io.faultwright.render.dita;

import io.faultwright.page.Fact;
import io.faultwright.page.SequenceSection;
import io.faultwright.page.SequenceSection.CourseItem;
import io.faultwright.page.SequenceSection.Exit;
import io.faultwright.page.SequenceSection.OutputCell;
import io.faultwright.page.SequenceSection.PhaseRow;
import io.faultwright.page.SequenceSection.ShownCell;
import io.faultwright.page.SequenceSection.SideBySide;
import io.faultwright.page.SequenceSection.Stretch;
import io.faultwright.page.SequenceSection.TimeRow;
import io.faultwright.page.SequenceSection.TimesTable;
import io.faultwright.words.Words;
import io.faultwright.xml.Xml;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A sequence of operation: its phases, its times, and what the display says in each course. Timing
 * diagrams are left out; the tables hold the same times.
 */
final class SequenceTopic {
  private final Words say;
  private final String language;

  SequenceTopic(Words say, String language) {
    this.say = say;
    this.language = language;
  }

  Xml write(SequenceSection sequence) {
    Xml xml = new Xml().open("topic", "id", sequence.anchor(), "xml:lang", language);
    xml.text("title", sequence.title()).open("body");
    Blocks blocks = new Blocks(xml, say);
    xml.text(
        "note",
        say.say(
            "The machine starts by itself. Watch with the panels on. Isolate and lock out before"
                + " you reach in."),
        "type",
        "warning");
    blocks.line(sequence.about());
    blocks.clauses(say.say("Only for"), sequence.applies());
    phases(xml, blocks, sequence);
    if (!sequence.times().isEmpty()) {
      section(xml, say.say("Times"));
      sequence.times().forEach(table -> times(blocks, table));
      xml.close();
    }
    sequence.courses().forEach(course -> course(xml, blocks, course));
    return xml.close().close();
  }

  private static void section(Xml xml, String title) {
    xml.open("section").text("title", title);
  }

  private void phases(Xml xml, Blocks blocks, SequenceSection sequence) {
    section(xml, say.say("Phases"));
    blocks.table(
        List.of(
            say.say("No."),
            say.say("Phase"),
            say.say("Display"),
            say.say("Outputs that are on"),
            say.say("What ends it, and what follows")),
        sequence.phases().stream().map(this::phase).toList());
    blocks.list(
        "ul",
        say.say("Never on together"),
        sequence.apart().stream().map(SequenceTopic::apart).toList());
    xml.close();
  }

  private static String apart(Fact pair) {
    return pair.label() + (pair.text().isEmpty() ? "" : " – " + pair.text());
  }

  private List<String> phase(PhaseRow phase) {
    return List.of(
        Integer.toString(phase.number()),
        phase.title() + (phase.about().isEmpty() ? "" : ". " + phase.about()),
        display(phase.display().orElse(""), phase.stop()),
        phase.cells().stream()
            .flatMap(cell -> cell.on().stream().map(part -> on(cell, part)))
            .collect(Collectors.joining("; ")),
        phase.exits().isEmpty()
            ? phase.end()
            : phase.exits().stream().map(this::exit).collect(Collectors.joining("; ")));
  }

  private String display(String shows, boolean stop) {
    return (stop ? say.say("STOP") + " " : "") + shows;
  }

  private static String on(OutputCell cell, Stretch part) {
    return Stream.of(cell.output(), part.when(), part.applies())
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private String exit(Exit exit) {
    List<String> further = new ArrayList<>();
    exit.values().forEach(value -> further.add(value.label() + ": " + value.text()));
    further.addAll(exit.notes());
    if (!exit.applies().isEmpty()) {
      further.add(say.say("Only for") + ": " + exit.applies());
    }
    if (!exit.because().isEmpty()) {
      further.add(exit.because());
    }
    return String.join(", ", exit.when())
        + " → "
        + exit.go().text()
        + (further.isEmpty() ? "" : " (" + String.join("; ", further) + ")");
  }

  private void times(Blocks blocks, TimesTable table) {
    List<String> columns = new ArrayList<>(List.of(say.say("Time or limit")));
    columns.addAll(table.machines());
    if (table.set()) {
      columns.add(say.say("Can be set"));
    }
    if (table.read()) {
      columns.add(say.say("Read at"));
    }
    blocks.table(columns, table.rows().stream().map(row -> time(table, row)).toList());
  }

  private static List<String> time(TimesTable table, TimeRow row) {
    List<String> cells =
        new ArrayList<>(List.of(row.title() + (row.note().isEmpty() ? "" : ", " + row.note())));
    cells.addAll(row.values());
    if (table.set()) {
      cells.add(row.range());
    }
    if (table.read()) {
      cells.add(row.reading().map(link -> link.text()).orElse(""));
    }
    return cells;
  }

  private void course(Xml xml, Blocks blocks, CourseItem course) {
    section(xml, say.say("What the display says, and for how long") + ": " + course.title());
    course.fault().ifPresent(fault -> blocks.line(say.say("Fault") + ": " + fault.text()));
    if (!course.restless().isEmpty()) {
      blocks.line(say.say("Phases follow each other without end on: {0}", course.restless()));
    }
    course.tables().forEach(table -> sideBySide(blocks, table));
    xml.close();
  }

  private void sideBySide(Blocks blocks, SideBySide table) {
    List<String> columns = new ArrayList<>(List.of(say.say("No.")));
    columns.addAll(table.machines());
    blocks.table(
        columns,
        IntStream.range(0, table.rows().size())
            .mapToObj(
                row ->
                    Stream.concat(
                            Stream.of(Integer.toString(row + 1)),
                            table.rows().get(row).stream().map(this::shown))
                        .toList())
            .toList());
  }

  private String shown(ShownCell cell) {
    return cell.span().isEmpty()
        ? "–"
        : (display(cell.shows(), cell.stop()) + " " + cell.lasts()).strip()
            + ", "
            + cell.span()
            + ", "
            + cell.phases();
  }
}
