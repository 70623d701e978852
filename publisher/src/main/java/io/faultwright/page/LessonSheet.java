package io.faultwright.page;

import io.faultwright.page.SequenceSection.CourseItem;
import io.faultwright.page.SequenceSection.PhaseRow;
import io.faultwright.page.SequenceSection.TimingFigure;
import io.faultwright.prose.Html;
import java.util.List;
import java.util.Optional;

/**
 * A session as pages, one idea each, to be projected one by one or printed one after the other.
 *
 * @param frame title, language and edition of the handbook
 * @param title of the session
 * @param leaves the pages in their order
 */
public record LessonSheet(Frame frame, String title, List<Leaf> leaves) {
  public LessonSheet {
    leaves = List.copyOf(leaves);
  }

  /** A page. */
  public sealed interface Leaf {
    /** Which of its kind it is, by the name of its template. */
    String kind();

    /** Its heading. */
    String title();
  }

  /**
   * The first page.
   *
   * @param about what the session is for
   * @param facts date, equipment, what is taught
   */
  public record Opening(String title, Html about, List<Fact> facts) implements Leaf {
    @Override
    public String kind() {
      return "opening";
    }
  }

  /** A page of the trainer's. */
  public record Prose(String title, Html text) implements Leaf {
    @Override
    public String kind() {
      return "prose";
    }
  }

  /** Cautions. */
  public record Hazards(String title, List<CautionPanel> cautions) implements Leaf {
    @Override
    public String kind() {
      return "hazards";
    }
  }

  /**
   * A complaint.
   *
   * @param anchor by which texts lead to it
   * @param about a sentence or two; may be empty
   * @param applies equipment it is offered for; none: all
   * @param recognise what the caller sees
   * @param first what must be right before
   */
  public record Complaint(
      String anchor,
      String title,
      String about,
      List<Clause> applies,
      List<Clause> recognise,
      List<FirstItem> first)
      implements Leaf {
    @Override
    public String kind() {
      return "complaint";
    }
  }

  /**
   * A page of a chart.
   *
   * @param over the complaint, and the equipment it is for
   */
  public record Chart(String over, String title, LessonDrawing drawing) implements Leaf {
    @Override
    public String kind() {
      return "chart";
    }
  }

  /**
   * A worked example begins.
   *
   * @param over that it is an example, and which
   * @param facts the machine and the complaint
   * @param note why it is recorded; may be empty
   */
  public record Machine(String over, String title, List<Fact> facts, String note) implements Leaf {
    @Override
    public String kind() {
      return "machine";
    }
  }

  /**
   * A reading is to be taken.
   *
   * @param over the phase of the machine's cycle
   * @param ask the question
   * @param cautions before the steps
   * @param how the steps
   */
  public record Take(
      String over, String title, String ask, List<CautionPanel> cautions, List<String> how)
      implements Leaf {
    @Override
    public String kind() {
      return "take";
    }
  }

  /**
   * What the reading says.
   *
   * @param over the phase of the machine's cycle
   * @param value with its unit
   * @param note how it is worked out, or what it is held against; may be empty
   * @param scale where it lies; absent without limits
   * @param limits the table it is held against
   */
  public record Read(
      String over,
      String title,
      String value,
      String note,
      Optional<Scale> scale,
      Optional<PlacedLimits> limits)
      implements Leaf {
    @Override
    public String kind() {
      return "read";
    }
  }

  /**
   * How far this leads.
   *
   * @param over the phase of the machine's cycle
   * @param said what the trainer says about this phase; may be empty
   * @param possible faults still possible
   * @param ruledOut faults that are not
   * @param drawing the chart with the way strong; absent without a chart
   */
  public record Standing(
      String over,
      String title,
      String said,
      List<String> possible,
      List<String> ruledOut,
      Optional<LessonDrawing> drawing)
      implements Leaf {
    @Override
    public String kind() {
      return "standing";
    }
  }

  /**
   * What is done then.
   *
   * @param over of which example
   * @param cautions before everything
   * @param remedy the repair
   * @param verify how to see that it worked
   */
  public record Repair(
      String over, String title, List<CautionPanel> cautions, List<Step> remedy, List<Step> verify)
      implements Leaf {
    @Override
    public String kind() {
      return "repair";
    }
  }

  /**
   * A sequence of operation: its phases at a glance, or their whole table on paper.
   *
   * @param over that it is one
   */
  public record SequencePage(String over, String title, SequenceSection section) implements Leaf {
    @Override
    public String kind() {
      return "sequence";
    }
  }

  /**
   * A phase.
   *
   * @param over the sequence
   */
  public record PhasePage(String over, String title, PhaseRow phase) implements Leaf {
    @Override
    public String kind() {
      return "phase";
    }
  }

  /**
   * How long things last in a sequence of operation.
   *
   * @param over the sequence
   */
  public record TimesPage(String over, String title, SequenceSection section) implements Leaf {
    @Override
    public String kind() {
      return "times";
    }
  }

  /**
   * What the displays show in a course of events.
   *
   * @param over the sequence, and which page of it
   * @param course with the rows that this page shows
   * @param before how many rows stand on the pages before
   */
  public record DisplayPage(String over, String title, CourseItem course, int before)
      implements Leaf {
    @Override
    public String kind() {
      return "display";
    }
  }

  /**
   * A timing diagram.
   *
   * @param over the sequence and the course
   * @param title the machines for which it is drawn
   */
  public record TimingPage(String over, String title, TimingFigure timing) implements Leaf {
    @Override
    public String kind() {
      return "timing";
    }
  }

  /** What comes after. */
  public record Closing(String title, List<Fact> facts) implements Leaf {
    @Override
    public String kind() {
      return "closing";
    }
  }

  /**
   * Where a value lies against its limits, drawn on a line 1000 long.
   *
   * @param from where the limits begin; absent where nothing is below
   * @param to where they end; absent where nothing is above
   * @param at where the value lies
   * @param low the lower limit with its unit; empty where there is none
   * @param high the upper limit with its unit; empty where there is none
   * @param value with its unit
   * @param verdict below, within or above limits
   */
  public record Scale(
      Optional<Integer> from,
      Optional<Integer> to,
      int at,
      String low,
      String high,
      String value,
      String verdict) {}

  /**
   * A table of limits for one machine, with the rows that count here.
   *
   * @param marked positions of those rows, from 0; none where the table is a grid
   */
  public record PlacedLimits(LimitsSection table, List<Integer> marked) {
    public PlacedLimits {
      marked = List.copyOf(marked);
    }
  }
}
