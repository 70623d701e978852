package io.faultwright.page;

import io.faultwright.model.Build;
import io.faultwright.model.Fault;
import io.faultwright.model.Reading;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Apart;
import io.faultwright.model.Sequence.Course;
import io.faultwright.model.Sequence.Output;
import io.faultwright.page.Target.Kind;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Sequences of operation as printed. */
final class SequenceSections {
  private final Desk desk;
  private final boolean inBook;
  private final Predicate<Build> shown;

  /**
   * @param inBook whether for the book, which sets the text of drawings by itself
   */
  SequenceSections(Desk desk, boolean inBook) {
    this(desk, inBook, build -> true);
  }

  /**
   * @param shown machines that are shown, of those that work by a sequence
   */
  SequenceSections(Desk desk, boolean inBook, Predicate<Build> shown) {
    this.desk = desk;
    this.inBook = inBook;
    this.shown = shown;
  }

  SequenceSection of(Sequence sequence) {
    SequenceBuilds builds = new SequenceBuilds(desk, sequence, shown);
    return new SequenceSection(
        new Target(Kind.SEQUENCE, sequence.id()).anchor(),
        sequence.title(),
        desk.links().own(Kind.SEQUENCE, sequence.id(), sequence.title()),
        sequence.about(),
        new Clauses(desk).of(sequence.applies()),
        sequence.outputs().stream().map(Output::title).toList(),
        new PhaseRows(desk, sequence, builds).all(),
        sequence.apart().stream().map(apart -> apart(sequence, apart)).toList(),
        new TimesTables(desk, sequence, builds).all(),
        new CourseItems(desk, sequence, builds, inBook).all());
  }

  private Fact apart(Sequence sequence, Apart apart) {
    List<String> outputs =
        sequence.outputs().stream()
            .filter(output -> apart.outputs().contains(output.id()))
            .map(Output::title)
            .toList();
    return new Fact(String.join(" + ", outputs), apart.because());
  }

  /** Every sequence, by title. */
  static List<Link> links(Desk desk) {
    return Alphabet.sorted(desk.kb().sequences().values(), Sequence::title).stream()
        .map(one -> new Link(one.title(), desk.links().href(Kind.SEQUENCE, one.id())))
        .toList();
  }

  /** The courses that show a fault. */
  static List<Link> showing(Desk desk, Fault fault) {
    return sequences(desk)
        .flatMap(
            sequence ->
                sequence.courses().stream()
                    .filter(course -> course.fault().equals(Optional.of(fault.id())))
                    .map(course -> course(desk, sequence, course)))
        .toList();
  }

  private static Stream<Sequence> sequences(Desk desk) {
    return Alphabet.sorted(desk.kb().sequences().values(), Sequence::title).stream();
  }

  private static Link course(Desk desk, Sequence sequence, Course course) {
    return new Link(
        sequence.title() + ": " + course.title(),
        desk.links().page(CourseItems.target(sequence, course)));
  }

  /** The sequences in which a reading tells how a time is set. */
  static List<Link> timedBy(Desk desk, Reading reading) {
    return sequences(desk)
        .filter(
            sequence ->
                sequence.times().stream()
                    .anyMatch(time -> time.reading().equals(Optional.of(reading.id()))))
        .map(one -> new Link(one.title(), desk.links().href(Kind.SEQUENCE, one.id())))
        .toList();
  }
}
