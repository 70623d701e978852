package io.faultwright.analysis.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.analysis.operation.SecondBySecond.Cost;
import io.faultwright.finding.EventCourse;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Counter;
import io.faultwright.model.Sequence.Energised;
import io.faultwright.model.Sequence.Lasting;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.model.Sequence.Row;
import io.faultwright.model.Sequence.Transition;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/** What has to be found of a sequence, from what every program of it does state by state. */
final class ExpectedFindings {
  private final Sequence sequence;
  private final List<SecondBySecond> plain;
  private final Set<String> reached = new HashSet<>();
  private final Set<Transition> taken = new HashSet<>();
  private final Set<Transition> undecided = new HashSet<>();

  /** A finding in few words, each with the shortest course where it must be the shortest. */
  private final TreeMap<String, Optional<Cost>> expected = new TreeMap<>();

  ExpectedFindings(Sequence sequence, List<SecondBySecond> plain) {
    this.sequence = sequence;
    this.plain = plain;
    for (SecondBySecond one : plain) {
      reached.addAll(one.phases.keySet());
      taken.addAll(one.taken.keySet());
      undecided.addAll(one.counted.keySet());
      one.undecided.keySet().forEach(pair -> undecided.addAll(List.of(pair.one(), pair.other())));
    }
  }

  void agree(List<Finding> findings, String name) {
    shown();
    unclear();
    Set<String> open = open();
    for (Phase phase : sequence.phases()) {
      if (reached.contains(phase.id())) {
        phase.next().forEach(line -> line(phase, line));
        phase.on().forEach(on -> output(phase, on));
      } else if (!open.contains(phase.id())) {
        expect(FindingKind.PHASE_NEVER_REACHED, List.of(phase.place()), "", Optional.empty());
      }
    }
    TreeMap<String, Optional<Cost>> found = new TreeMap<>();
    for (Finding finding : findings) {
      String key = key(finding.kind(), finding.places(), rest(finding));
      found.put(
          key,
          expected.getOrDefault(key, Optional.empty()).isPresent()
              ? finding.course().map(this::cost)
              : Optional.empty());
    }
    assertEquals(findings.size(), found.size(), name + " tells something twice: " + findings);
    assertEquals(expected, found, name);
  }

  private Cost cost(EventCourse course) {
    long events = course.entries().stream().filter(entry -> entry.event().isPresent()).count();
    return new Cost((int) events, course.end().divide(sequence.step()).intValue());
  }

  /** What the places do not tell. */
  private static String rest(Finding finding) {
    String[] quoted = finding.message().split("`");
    return switch (finding.kind()) {
      case ENERGISED_TOGETHER -> quoted[1] + " " + quoted[3] + " " + quoted[5];
      case TIMER_NEVER_EXPIRES ->
          finding.message().contains(" comes on ")
              ? "on"
              : quoted[1].split(" ")[0].equals("until") ? "until" : "";
      default -> "";
    };
  }

  private static String key(FindingKind kind, List<Place> places, String rest) {
    return kind + " " + places + " " + rest;
  }

  private void expect(FindingKind kind, List<Place> places, String rest, Optional<Cost> cost) {
    expected.merge(
        key(kind, places, rest),
        cost,
        (one, other) -> one.get().compareTo(other.get()) <= 0 ? one : other);
  }

  private void shown() {
    for (SecondBySecond one : plain) {
      one.undecided.forEach(
          (pair, cost) ->
              expect(
                  FindingKind.LINES_AT_ONCE,
                  List.of(pair.one().place(), pair.other().place()),
                  "",
                  Optional.of(cost)));
      one.counted.forEach(
          (line, cost) ->
              expect(FindingKind.LINES_AT_ONCE, List.of(line.place()), "", Optional.of(cost)));
      one.together.forEach(
          (both, cost) ->
              expect(
                  FindingKind.ENERGISED_TOGETHER,
                  List.of(both.apart().place()),
                  String.join(" ", both.outputs().stream().sorted().toList()) + " " + both.phase(),
                  Optional.of(cost)));
      one.restless.ifPresent(
          cost ->
              expect(
                  FindingKind.SEQUENCE_NEVER_RESTS,
                  List.of(sequence.place()),
                  "",
                  Optional.of(cost)));
      one.phases.forEach(
          (id, cost) -> {
            if (!sequence.phase(id).last() && !one.left.contains(id)) {
              expect(
                  FindingKind.PHASE_NEVER_LEFT,
                  List.of(sequence.phase(id).place()),
                  "",
                  Optional.of(cost));
            }
          });
    }
  }

  /** Phases behind a line of which it is not said when it goes first. */
  private Set<String> open() {
    Set<String> open = new HashSet<>();
    List<Transition> lines = new ArrayList<>(undecided);
    for (int i = 0; i < lines.size(); i++) {
      Transition line = lines.get(i);
      Stream<String> limits =
          line.count().stream().map(sequence::counter).flatMap(one -> one.go().stream());
      for (String id : Stream.concat(Stream.of(line.go()), limits).toList()) {
        if (!reached.contains(id) && open.add(id)) {
          lines.addAll(sequence.phase(id).next());
        }
      }
    }
    return open;
  }

  private void line(Phase phase, Transition line) {
    if (taken.contains(line) || undecided.contains(line)) {
      return;
    }
    List<SecondBySecond> with =
        plain.stream()
            .filter(one -> one.phases.containsKey(phase.id()))
            .filter(one -> one.lines(phase.id()).contains(line))
            .toList();
    boolean known =
        line.after().isEmpty()
            || with.stream()
                .anyMatch(one -> one.steps(one.lasting(line.after().get())).isPresent());
    if (with.isEmpty() || known) {
      boolean timed =
          !with.isEmpty() && line.event().isEmpty() && line.after().isPresent() && !isRiddle(line);
      expect(
          timed ? FindingKind.TIMER_NEVER_EXPIRES : FindingKind.LINE_NEVER_TAKEN,
          List.of(line.place()),
          "",
          Optional.empty());
    }
  }

  private static boolean isRiddle(Transition line) {
    return line.states().stream()
        .anyMatch(
            one ->
                line.states().stream()
                        .anyMatch(
                            other ->
                                one.input().equals(other.input())
                                    && !one.state().equals(other.state()))
                    || line.event()
                        .filter(event -> event.input().equals(one.input()))
                        .filter(event -> !event.state().equals(Optional.of(one.state())))
                        .isPresent());
  }

  private void output(Phase phase, Energised on) {
    List<SecondBySecond> with =
        plain.stream()
            .filter(one -> one.phases.containsKey(phase.id()))
            .filter(one -> one.on(phase.id()).contains(on))
            .toList();
    if (on.from().filter(from -> isIdle(from, with)).isPresent()) {
      expect(FindingKind.TIMER_NEVER_EXPIRES, List.of(on.place()), "on", Optional.empty());
    }
    if (on.until().filter(until -> isIdle(until, with)).isPresent()) {
      expect(FindingKind.TIMER_NEVER_EXPIRES, List.of(on.place()), "until", Optional.empty());
    }
  }

  private boolean isIdle(Lasting lasting, List<SecondBySecond> with) {
    return with.stream().anyMatch(one -> one.steps(lasting).isPresent())
        && plain.stream().noneMatch(one -> one.over.contains(lasting));
  }

  private void unclear() {
    sequence.times().forEach(time -> unclear(time.id(), time.place(), time.rows()));
    for (Counter counter : sequence.counters()) {
      if (!counter.limit().isEmpty()) {
        unclear(counter.id(), counter.place(), counter.limit());
      }
    }
  }

  private void unclear(String id, Place place, List<Row> rows) {
    boolean idle =
        sequence.phases().stream().noneMatch(phase -> needs(phase.next(), phase.on(), id));
    Function<SecondBySecond, Optional<Cost>> at =
        one ->
            one.phases.entrySet().stream()
                .filter(entry -> needs(one.lines(entry.getKey()), one.on(entry.getKey()), id))
                .map(Map.Entry::getValue)
                .min(Cost::compareTo);
    List<SecondBySecond> delivered =
        plain.stream()
            .filter(one -> one.isAsDelivered())
            .filter(one -> idle || at.apply(one).isPresent())
            .toList();
    delivered.stream()
        .filter(one -> one.values(rows).isEmpty())
        .findFirst()
        .ifPresent(one -> expect(FindingKind.TIME_UNCLEAR, List.of(place), "", at.apply(one)));
    delivered.stream()
        .filter(one -> new HashSet<>(one.values(rows)).size() > 1)
        .findFirst()
        .ifPresent(
            one ->
                expect(
                    FindingKind.TIME_UNCLEAR,
                    rows.stream().filter(one::has).map(Row::place).toList(),
                    "",
                    at.apply(one)));
  }

  private boolean needs(List<Transition> lines, List<Energised> on, String id) {
    return lines.stream().anyMatch(line -> needs(line, id))
        || on.stream()
            .flatMap(one -> Stream.concat(one.from().stream(), one.until().stream()))
            .anyMatch(lasting -> lasting.time().equals(Optional.of(id)));
  }

  private boolean needs(Transition line, String id) {
    return line.count().contains(id)
        || line.after()
            .map(after -> plain.get(0).lasting(after))
            .flatMap(Lasting::time)
            .equals(Optional.of(id));
  }
}
