package io.faultwright.analysis.operation;

import io.faultwright.finding.EventCourse;
import io.faultwright.finding.EventCourse.Entry;
import io.faultwright.model.Build;
import io.faultwright.model.Sequence.After;
import io.faultwright.model.Sequence.Lasting;
import io.faultwright.model.Sequence.Transition;
import io.faultwright.model.Situation;
import io.faultwright.operation.Program;
import io.faultwright.wording.Clock;
import io.faultwright.wording.EventText;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** What was found, as it is told: the build, the course of events, lines in words. */
final class Told {
  private Told() {}

  static Situation build(Build build) {
    return new Situation(build.facts(), new TreeMap<>());
  }

  static EventCourse course(Program program, Reach reach) {
    Way way = Way.to(program, reach);
    List<Entry> entries = new ArrayList<>();
    for (Way.At at : way.entries()) {
      BigFraction seconds = seconds(program, at.step());
      at.event().ifPresent(event -> entries.add(Entry.of(seconds, event)));
      at.phase().ifPresent(phase -> entries.add(Entry.of(seconds, phase)));
    }
    return new EventCourse(
        program.sequence().id(),
        new TreeMap<>(program.set()),
        entries,
        seconds(program, way.end()));
  }

  private static BigFraction seconds(Program program, long steps) {
    return program.sequence().step().multiply(BigInteger.valueOf(steps));
  }

  /** What a line waits for: {@code after `heating-limit`}. */
  static String line(Transition line) {
    List<String> parts = new ArrayList<>();
    line.event().ifPresent(event -> parts.add("`" + EventText.of(event) + "`"));
    line.states().forEach(one -> parts.add("`" + one.input() + " is " + one.state() + "`"));
    line.after().ifPresent(after -> parts.add(after(after)));
    return String.join(" and ", parts) + " to `" + line.go() + "`";
  }

  static String after(After after) {
    String what = after.timer().or(() -> after.lasting().map(Told::lasting)).orElseThrow();
    return "`after " + what + "`";
  }

  /** As it is written: a name, or a number with its unit. */
  static String lasting(Lasting lasting) {
    return lasting.time().orElseGet(() -> Clock.lasting(lasting.seconds().orElseThrow()));
  }
}
