package io.faultwright.page;

import io.faultwright.layout.Timing;
import io.faultwright.layout.Timing.Group;
import io.faultwright.layout.Timing.Lane;
import io.faultwright.layout.Timing.On;
import io.faultwright.layout.Timing.Stretch;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Input;
import io.faultwright.model.Sequence.Output;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.operation.Timeline;
import io.faultwright.operation.Timeline.Happened;
import io.faultwright.operation.Timeline.Stay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a machine did, as a timing diagram without coordinates. */
final class Timings {
  private final Desk desk;
  private final Sequence sequence;
  private final InputWords inputs;
  private final Timeline timeline;

  Timings(Desk desk, Timeline timeline) {
    this.desk = desk;
    this.timeline = timeline;
    this.sequence = timeline.program().sequence();
    this.inputs = new InputWords(desk.words().say(), sequence);
  }

  Timing of(String title) {
    return new Timing(
        title,
        seconds(timeline.end()),
        timeline.stays().stream().filter(stay -> stay.steps() > 0).map(this::phase).toList(),
        List.of(
            new Group(desk.say("Outputs"), sequence.outputs().stream().map(this::output).toList()),
            new Group(
                desk.say("Inputs"), sequence.inputs().stream().flatMap(this::input).toList())));
  }

  private double seconds(long steps) {
    return timeline.seconds(steps).doubleValue();
  }

  private Stretch phase(Stay stay) {
    Phase phase = sequence.phase(stay.phase());
    String title =
        phase.stop() ? desk.say("Stop: {0}", phase.display().orElse(phase.title())) : phase.title();
    return new Stretch(
        sequence.phases().indexOf(phase) + 1,
        title,
        phase.stop(),
        seconds(stay.from()),
        seconds(stay.to()));
  }

  private Lane output(Output output) {
    List<On> on =
        timeline.on(output.id()).stream()
            .map(one -> new On(seconds(one.from()), seconds(one.to())))
            .toList();
    return new Lane(output.title(), on, List.of());
  }

  /** A lane for each state but that at the beginning; of many states, those that come. */
  private Stream<Lane> input(Input input) {
    List<Happened> events =
        timeline.events().stream().filter(one -> one.event().input().equals(input.id())).toList();
    if (input.isPush()) {
      List<Double> pushes = events.stream().map(one -> seconds(one.step())).toList();
      return pushes.isEmpty()
          ? Stream.empty()
          : Stream.of(new Lane(input.title(), List.of(), pushes));
    }
    return input.states().stream()
        .map(NamedValue::id)
        .filter(state -> !input.atStart().equals(Optional.of(state)))
        .filter(state -> input.states().size() == 2 || comes(events, state))
        .map(state -> new Lane(inputs.state(input, state), during(events, state), List.of()));
  }

  private static boolean comes(List<Happened> events, String state) {
    return events.stream().anyMatch(one -> one.event().state().equals(Optional.of(state)));
  }

  private List<On> during(List<Happened> events, String state) {
    List<On> during = new ArrayList<>();
    long from = -1;
    for (Happened one : events) {
      boolean on = one.event().state().equals(Optional.of(state));
      if (on && from < 0) {
        from = one.step();
      } else if (!on && from >= 0) {
        add(during, from, one.step());
        from = -1;
      }
    }
    if (from >= 0) {
      add(during, from, timeline.end());
    }
    return during;
  }

  private void add(List<On> during, long from, long to) {
    if (to > from) {
      during.add(new On(seconds(from), seconds(to)));
    }
  }
}
