package io.faultwright.translation;

import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Apart;
import io.faultwright.model.Sequence.Counter;
import io.faultwright.model.Sequence.Course;
import io.faultwright.model.Sequence.Input;
import io.faultwright.model.Sequence.Output;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.model.Sequence.Time;
import io.faultwright.model.Sequence.Timer;
import io.faultwright.model.Sequence.Transition;

/** A sequence of operation in other words. What a display shows stays as it is. */
record SequenceTexts(Reword reword) {
  Sequence of(Sequence old) {
    return new Sequence(
        old.id(),
        old.place(),
        reword.text(old.title(), old.place()),
        reword.text(old.about(), old.place()),
        old.applies(),
        old.step(),
        old.outputs().stream().map(this::output).toList(),
        old.inputs().stream().map(this::input).toList(),
        old.times().stream().map(this::time).toList(),
        old.timers().stream().map(this::timer).toList(),
        old.counters().stream().map(this::counter).toList(),
        old.phases().stream().map(this::phase).toList(),
        old.start(),
        old.apart().stream().map(this::apart).toList(),
        old.outcomes(),
        old.courses().stream().map(this::course).toList());
  }

  private Output output(Output old) {
    return new Output(old.id(), old.place(), reword.text(old.title(), old.place()));
  }

  private Input input(Input old) {
    String title = reword.text(old.title(), old.place());
    return new Input(
        old.id(), old.place(), title, reword.values(old.states(), old.place()), old.atStart());
  }

  private Time time(Time old) {
    String title = reword.text(old.title(), old.place());
    return new Time(old.id(), old.place(), title, old.rows(), old.setting(), old.reading());
  }

  private Timer timer(Timer old) {
    String title = reword.text(old.title(), old.place());
    return new Timer(old.id(), old.place(), title, old.lasts(), old.during());
  }

  private Counter counter(Counter old) {
    String title = reword.text(old.title(), old.place());
    return new Counter(old.id(), old.place(), title, old.limit(), old.go());
  }

  private Phase phase(Phase old) {
    return new Phase(
        old.id(),
        old.place(),
        reword.text(old.title(), old.place()),
        reword.text(old.about(), old.place()),
        old.display(),
        old.stop(),
        old.last(),
        old.on(),
        old.next().stream().map(this::transition).toList());
  }

  private Transition transition(Transition old) {
    return new Transition(
        old.place(),
        old.event(),
        old.states(),
        old.after(),
        old.applies(),
        old.go(),
        old.count(),
        old.reset(),
        old.aheadOf(),
        reword.text(old.because(), old.place()));
  }

  private Apart apart(Apart old) {
    return new Apart(old.place(), old.outputs(), reword.text(old.because(), old.place()));
  }

  private Course course(Course old) {
    return new Course(
        old.id(),
        old.place(),
        reword.text(old.title(), old.place()),
        old.fault(),
        old.applies(),
        old.set(),
        old.lasts(),
        old.happenings());
  }
}
