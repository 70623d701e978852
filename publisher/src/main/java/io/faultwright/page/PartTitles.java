package io.faultwright.page;

import io.faultwright.change.SequenceChange.Part;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Timer;

/** How the parts of a sequence of operation are called where a change of them is told. */
record PartTitles(Desk desk, Sequence sequence) {
  /**
   * The title of a part.
   *
   * @param of id of the phase, time, timer or counter
   */
  String of(Part part, String of) {
    return switch (part) {
      case TIME -> sequence.time(of).title();
      case SETTING -> of(Part.TIME, of) + ": " + desk.say("Can be set");
      case TIMER -> timer(of).title();
      case LIMIT -> sequence.counter(of).title();
      case PHASE -> sequence.phase(of).title();
      case DISPLAY -> of(Part.PHASE, of) + ": " + desk.say("Display");
      case STOP -> of(Part.PHASE, of) + ": " + desk.say("Is a stop");
      case ON -> of(Part.PHASE, of) + ": " + desk.say("Outputs that are on");
      case NEXT -> of(Part.PHASE, of) + ": " + desk.say("What ends it, and what follows");
      case START -> desk.say("First phase");
      case APART -> desk.say("Never on together");
      case COURSE -> desk.say("What the display says, and for how long");
      case APPLIES -> desk.say("Sequence of operation");
    };
  }

  private Timer timer(String id) {
    return sequence.timers().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }
}
