package io.faultwright.page;

import io.faultwright.prose.Html;
import java.util.List;
import java.util.Optional;

/**
 * A sequence of operation.
 *
 * @param anchor id of its element
 * @param title as printed
 * @param self its own page
 * @param about a sentence or two
 * @param applies equipment that works so; empty for all
 * @param outputs titles of what the controller switches
 * @param phases in the written order
 * @param apart outputs that are never on together, a line each
 * @param times how long things last and how often they may come
 * @param courses what happens in time, in good order and with faults
 */
public record SequenceSection(
    String anchor,
    String title,
    Link self,
    String about,
    List<Clause> applies,
    List<String> outputs,
    List<PhaseRow> phases,
    List<Fact> apart,
    List<TimesTable> times,
    List<CourseItem> courses)
    implements Content {
  /**
   * A phase in the table.
   *
   * @param anchor id of its element
   * @param number from 1
   * @param title as printed
   * @param about what happens in it; may be empty
   * @param display what the display shows
   * @param stop whether the machine has stopped
   * @param cells one for each output
   * @param exits what ends it
   * @param end what is said where nothing ends it; else empty
   */
  public record PhaseRow(
      String anchor,
      int number,
      String title,
      String about,
      Optional<String> display,
      boolean stop,
      List<OutputCell> cells,
      List<Exit> exits,
      String end) {}

  /** Whether and when an output is on in a phase. */
  public record OutputCell(String output, List<Stretch> on) {}

  /**
   * A part of a phase.
   *
   * @param when empty for all of it
   * @param applies equipment on which it is so; empty for all
   */
  public record Stretch(String when, String applies) {}

  /**
   * What ends a phase.
   *
   * @param when lines that must all hold
   * @param values the time in it, where it differs between machines
   * @param go what follows
   * @param notes what is counted, and what it goes ahead of
   * @param applies equipment on which it is so; empty for all
   * @param because why; may be empty
   */
  public record Exit(
      List<String> when,
      List<Fact> values,
      Link go,
      List<String> notes,
      String applies,
      String because) {}

  /**
   * How long things last, one column for each group of machines with the same values.
   *
   * @param machines headings of the columns
   * @param set whether some time can be set
   * @param read whether some reading tells how a time is set
   * @param rows one for each time, timer or limit
   */
  public record TimesTable(List<String> machines, boolean set, boolean read, List<TimeRow> rows) {}

  /**
   * A time, a timer or a limit.
   *
   * @param title as printed
   * @param note what it runs through or leads to; may be empty
   * @param values one for each column
   * @param range within which it can be set; may be empty
   * @param reading that tells how it is set
   */
  public record TimeRow(
      String title, String note, List<String> values, String range, Optional<Link> reading) {}

  /**
   * A course of events.
   *
   * @param anchor id of its element
   * @param title as printed
   * @param fault that shows so; absent in good order
   * @param tables machines side by side; several where one would be too wide
   * @param timings a diagram for each group of machines that behave alike
   * @param restless machines on which phases follow each other without end; may be empty
   */
  public record CourseItem(
      String anchor,
      String title,
      Optional<Link> fault,
      List<SideBySide> tables,
      List<TimingFigure> timings,
      String restless) {
    /** With one table alone. */
    CourseItem with(SideBySide table) {
      return new CourseItem(anchor, title, fault, List.of(table), timings, restless);
    }
  }

  /**
   * Machines side by side.
   *
   * @param machines headings of the columns
   * @param rows from the beginning on, a cell for each column
   */
  public record SideBySide(List<String> machines, List<List<ShownCell>> rows) {
    /** Some of its rows alone. */
    SideBySide rows(int from, int to) {
      return new SideBySide(machines, rows.subList(from, to));
    }
  }

  /**
   * What one display shows, and for how long.
   *
   * @param shows what the display shows; empty where nothing special
   * @param phases titles of the phases meanwhile
   * @param stop whether the machine has stopped
   * @param span from when to when
   * @param lasts for how long; to the end of the course where it is not over
   * @param over whether it is over when the course is
   * @param differs whether most other machines show something else or for another time
   */
  public record ShownCell(
      String shows,
      String phases,
      boolean stop,
      String span,
      String lasts,
      boolean over,
      boolean differs) {
    /** Nothing: the course is over on these machines. */
    static final ShownCell NONE = new ShownCell("", "", false, "", "", true, false);

    ShownCell marked(boolean differing) {
      return new ShownCell(shows, phases, stop, span, lasts, over, differing);
    }

    boolean isShown() {
      return !span.isEmpty();
    }
  }

  /**
   * A timing diagram.
   *
   * @param title what it shows
   * @param machines for which it is drawn
   * @param svg the drawing
   * @param texts the drawing's text where it is lifted out; else none
   */
  public record TimingFigure(String title, String machines, Html svg, List<ChartText> texts) {}
}
