package io.faultwright.operation;

import io.faultwright.operation.Timeline.Stay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What the display says in a stretch of a course, and for how long. What the controller times
 * itself is told exactly; what an event ends could as well have come earlier or later.
 *
 * @param display what it says
 * @param least steps at least
 * @param most steps at most; {@link Program#NEVER} where nothing but an event ends it
 */
public record Shown(String display, long least, long most) {
  /** What is shown in a course, first to last; phases without a display show what was shown. */
  public static List<Shown> of(Timeline timeline) {
    List<Shown> all = new ArrayList<>();
    Optional<String> now = Optional.empty();
    List<Stay> stays = timeline.stays();
    for (int i = 0; i < stays.size(); i++) {
      Stay stay = stays.get(i);
      Optional<String> old = now;
      now = timeline.program().sequence().phase(stay.phase()).display().or(() -> old);
      Optional<Reason> end =
          i + 1 < stays.size() ? Optional.of(stays.get(i + 1).reason()) : Optional.empty();
      now.ifPresent(display -> add(all, stretch(timeline.program(), display, stay, end)));
    }
    return all;
  }

  private static void add(List<Shown> all, Shown next) {
    int last = all.size() - 1;
    if (last >= 0 && all.get(last).display.equals(next.display)) {
      all.set(last, all.get(last).and(next));
    } else {
      all.add(next);
    }
  }

  private Shown and(Shown next) {
    boolean open = most == Program.NEVER || next.most == Program.NEVER;
    return new Shown(display, least + next.least, open ? Program.NEVER : most + next.most);
  }

  private static Shown stretch(Program program, String display, Stay stay, Optional<Reason> end) {
    long limit = limit(program, stay);
    boolean timed =
        end.flatMap(Reason::line)
            .filter(line -> line.event().isEmpty() && line.after().isPresent())
            .isPresent();
    if (!timed) {
      return new Shown(display, 0, limit);
    }
    boolean alone = end.get().line().orElseThrow().states().isEmpty();
    return alone
        ? new Shown(display, stay.steps(), stay.steps())
        : new Shown(display, least(program, stay, end.get()), limit);
  }

  /** After so many steps the phase is over whatever happens. */
  private static long limit(Program program, Stay stay) {
    return Arrays.stream(program.lines(program.phase(stay.phase())))
        .filter(line -> !line.waits() && line.inputs().length == 0 && line.clock() == 0)
        .mapToLong(Line::after)
        .min()
        .orElse(Program.NEVER);
  }

  /** The steps that the line needs; what a timer of several phases has left is not known. */
  private static long least(Program program, Stay stay, Reason end) {
    return Arrays.stream(program.lines(program.phase(stay.phase())))
        .filter(line -> line.source().equals(end.line().orElseThrow()) && line.clock() == 0)
        .mapToLong(Line::after)
        .findFirst()
        .orElse(0);
  }
}
