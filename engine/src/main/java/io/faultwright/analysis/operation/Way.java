package io.faultwright.analysis.operation;

import io.faultwright.analysis.operation.Reach.Limit;
import io.faultwright.model.Sequence.Event;
import io.faultwright.operation.Program;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A course of events that leads to some moments, each event at the earliest step there is for it.
 *
 * @param entries what happens and which phases begin, first to last
 * @param end step at which those moments are
 */
record Way(List<At> entries, long end) {
  /**
   * An event, or a phase that begins.
   *
   * @param event absent where a phase begins
   * @param phase id of the phase; absent where something happens
   */
  record At(long step, Optional<Event> event, Optional<String> phase) {}

  /** Step {@code later} comes at least {@code by} steps after step {@code earlier}. */
  private record Gap(int earlier, int later, long by) {}

  Way {
    entries = List.copyOf(entries);
  }

  /** What happens, first to last. */
  List<At> events() {
    return entries.stream().filter(at -> at.event().isPresent()).toList();
  }

  /** The phases, first to last. */
  List<At> phases() {
    return entries.stream().filter(at -> at.phase().isPresent()).toList();
  }

  static Way to(Program program, Reach reach) {
    return new Search(program, reach.way()).way();
  }

  private static final class Search {
    private final Program program;
    private final List<Reach> way;
    private final List<Gap> gaps = new ArrayList<>();
    private final int[] moments;
    private final int[] began;
    private int last;

    Search(Program program, List<Reach> way) {
      this.program = program;
      this.way = way;
      this.moments = new int[way.size()];
      this.began = new int[program.clockCount()];
    }

    Way way() {
      for (int i = 0; i < way.size(); i++) {
        read(i);
      }
      long[] steps = steps();
      List<At> entries = new ArrayList<>();
      entries.add(phase(0, way.get(0)));
      for (int i = 0; i < way.size(); i++) {
        Reach reach = way.get(i);
        long step = steps[moments[i]];
        reach
            .event()
            .ifPresent(event -> entries.add(new At(step, Optional.of(event), Optional.empty())));
        reach.line().ifPresent(line -> entries.add(phase(step, reach)));
      }
      return new Way(entries, steps[last]);
    }

    private At phase(long step, Reach reach) {
      String id = program.phase(reach.spot().phase()).id();
      return new At(step, Optional.empty(), Optional.of(id));
    }

    private void read(int i) {
      Reach reach = way.get(i);
      if (reach.later()) {
        gaps.add(new Gap(last, last + 1, 1));
        last++;
      }
      moments[i] = last;
      reach.limits().forEach(this::limit);
      reach.line().ifPresent(line -> begin(way.get(i - 1).spot().phase(), reach.spot().phase()));
    }

    private void limit(Limit limit) {
      int since = began[limit.clock()];
      gaps.add(
          limit.atLeast()
              ? new Gap(since, last, limit.steps())
              : new Gap(last, since, -limit.steps()));
    }

    private void begin(int from, int to) {
      for (int clock = 0; clock < began.length; clock++) {
        if (program.begins(clock, from, to)) {
          began[clock] = last;
        }
      }
    }

    /** The earliest steps that keep all gaps; there are some, since the moments can be reached. */
    private long[] steps() {
      long[] steps = new long[last + 1];
      long[] before;
      int rounds = 0;
      do {
        before = steps.clone();
        for (Gap gap : gaps) {
          steps[gap.later()] = Math.max(steps[gap.later()], steps[gap.earlier()] + gap.by());
        }
        if (rounds++ > steps.length + 1) {
          throw new IllegalStateException("no steps fit the way " + gaps);
        }
      } while (!Arrays.equals(before, steps));
      return steps;
    }
  }
}
