package io.faultwright.model;

import io.faultwright.source.Place;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/**
 * A training session: what is taught, in which order, and the quiz about it. It speaks about the
 * handbook and is no part of it.
 *
 * @param id identifier
 * @param place where it stands
 * @param title as printed
 * @param about what it is for, Markdown; may be empty
 * @param date on which it is held
 * @param handInBy last day on which answers are taken
 * @param symptoms ids, in the order in which they are taught, at least one
 * @param families ids of the families taught; empty: all of them
 * @param pages own pages, in the written order
 * @param sequences sequences of operation that are shown, in the written order
 * @param examples worked examples, in the written order
 * @param quiz what is asked; absent for a session without a quiz
 */
public record Session(
    String id,
    Place place,
    String title,
    String about,
    Optional<LocalDate> date,
    Optional<LocalDate> handInBy,
    List<String> symptoms,
    SortedSet<String> families,
    List<OwnPage> pages,
    List<TaughtSequence> sequences,
    List<WorkedExample> examples,
    Optional<QuizPlan> quiz) {
  public Session {
    symptoms = List.copyOf(symptoms);
    families = Sorted.set(families);
    pages = List.copyOf(pages);
    sequences = List.copyOf(sequences);
    examples = List.copyOf(examples);
  }

  /** Whether a machine is among those that are taught. */
  public boolean teaches(Build build) {
    return families.isEmpty() || families.contains(build.model().family());
  }

  /**
   * A page of the trainer's.
   *
   * @param text Markdown
   */
  public record OwnPage(Place place, String title, String text) {}

  /**
   * A sequence of operation that is shown.
   *
   * @param sequence its id
   * @param courses ids of its courses, in the order in which they are shown
   */
  public record TaughtSequence(Place place, String sequence, List<String> courses) {
    public TaughtSequence {
      courses = List.copyOf(courses);
    }
  }

  /**
   * A recorded case, told step by step.
   *
   * @param recorded id of the case
   * @param steps in the order of time
   */
  public record WorkedExample(Place place, String title, String recorded, List<Phase> steps) {
    public WorkedExample {
      steps = List.copyOf(steps);
    }
  }

  /**
   * What is read in one phase of the machine's cycle.
   *
   * @param phase name of the phase
   * @param readings ids of readings that the case gives, in the order in which they are taken
   * @param text what there is to say; may be empty
   */
  public record Phase(Place place, String phase, List<String> readings, String text) {
    public Phase {
      readings = List.copyOf(readings);
    }
  }
}
