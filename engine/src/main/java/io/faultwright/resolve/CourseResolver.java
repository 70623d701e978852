package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Condition;
import io.faultwright.model.Sequence.Course;
import io.faultwright.model.Sequence.Event;
import io.faultwright.model.Sequence.Happening;
import io.faultwright.model.Sequence.Time;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads what happens round a controller, in good order or with a fault. */
final class CourseResolver {
  private static final List<String> KEYS =
      List.of("title", "fault", "applies", "set", "lasts", "events");
  private static final Pattern AT = Pattern.compile("(.+?)\\s+at\\s+(\\S+(?:\\s\\S+)?)");
  private static final Pattern INTO =
      Pattern.compile("(.+?)\\s+(\\d\\S*(?:\\s\\S+)?)\\s+into\\s+(\\S+)");

  private final Context context;
  private final Problems problems;
  private final ConditionResolver facts;
  private final Durations durations;
  private final SequenceNames times;
  private final List<Time> settings;
  private final SequenceNames phases;
  private final EventWords events;

  CourseResolver(
      Context context,
      ConditionResolver facts,
      Durations durations,
      SequenceNames times,
      List<Time> settings,
      SequenceNames phases,
      EventWords events) {
    this.context = context;
    this.problems = context.problems();
    this.facts = facts;
    this.durations = durations;
    this.times = times;
    this.settings = settings;
    this.phases = phases;
    this.events = events;
  }

  Course course(Definition one) {
    Fields fields = Fields.of(one, KEYS, problems);
    return new Course(
        one.id(),
        one.place(),
        fields.text("title").orElse(Words.title(one.id())),
        fields.scalar("fault").map(id -> context.names().reference(Kind.FAULT, id)),
        fields.read("applies", facts::all, Condition.ALWAYS),
        set(fields),
        fields.requireScalar("lasts").flatMap(durations::told).orElse(BigFraction.ONE),
        fields.list("events").stream().flatMap(node -> happening(node).stream()).toList());
  }

  private SortedMap<String, BigFraction> set(Fields fields) {
    SortedMap<String, BigFraction> set = new TreeMap<>();
    for (Entry entry : fields.map("set")) {
      String time = times.reference(entry.key());
      if (entry.value() instanceof Scalar written) {
        durations
            .read(written)
            .filter(seconds -> canBe(time, seconds, written))
            .ifPresent(seconds -> set.put(time, seconds));
      } else {
        problems.add(
            entry.value().place(),
            "a time is set to one value, found " + entry.value().kind(),
            "write `" + time + ": 60 s`");
      }
    }
    return set;
  }

  private boolean canBe(String time, BigFraction seconds, Scalar written) {
    return settings.stream()
        .filter(one -> one.id().equals(time))
        .allMatch(one -> SetTimes.fits(one, seconds, written.place(), problems));
  }

  private Optional<Happening> happening(Node node) {
    if (!(node instanceof Scalar written)) {
      problems.add(node.place(), "an event is a text, found " + node.kind(), help());
      return Optional.empty();
    }
    String text = written.text().strip();
    Matcher into = INTO.matcher(text);
    if (into.matches()) {
      String phase = phases.reference(written, into.group(3));
      return happening(written, into.group(1), into.group(2), Optional.of(phase));
    }
    Matcher at = AT.matcher(text);
    if (at.matches()) {
      return happening(written, at.group(1), at.group(2), Optional.empty());
    }
    problems.add(written.place(), "it is not said when " + Words.quoted(text), help());
    return Optional.empty();
  }

  private static String help() {
    return "write `door-switch opens 90 s into heating`, or `door-switch opens at 1:30`";
  }

  private Optional<Happening> happening(
      Scalar written, String event, String time, Optional<String> phase) {
    Optional<Event> what = events.event(written, event.strip());
    Optional<BigFraction> when =
        phase.isPresent()
            ? durations.read(written.place(), time.strip())
            : durations.moment(written.place(), time.strip());
    return what.flatMap(
        known -> when.map(seconds -> new Happening(written.place(), phase, seconds, known)));
  }
}
