package io.faultwright.page;

import io.faultwright.change.SequenceChange;
import io.faultwright.change.SequenceChange.Part;
import io.faultwright.model.Build;
import io.faultwright.model.Sequence;
import io.faultwright.page.ChangesSection.ChangedSequence;
import io.faultwright.page.ChangesSection.Turn;
import io.faultwright.page.Target.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What sequences of operation do otherwise than before, with the machines that do so. */
final class ChangedSequences {
  private final Desk desk;
  private final Desk before;
  private final List<SequenceChange> changes;

  /** What a part was and is, in words. */
  private record Said(String before, String now) {}

  /** Courses that came, went or differ on the same machines. */
  private record Alike(boolean added, boolean removed, List<Build> builds) {
    static Alike of(SequenceChange course) {
      return new Alike(course.before().isEmpty(), course.after().isEmpty(), course.builds());
    }
  }

  ChangedSequences(Desk desk, Since since) {
    this.desk = desk;
    this.before = Desk.of(since.before(), new SiteAddresses("", "", Set.of()));
    this.changes = since.comparison().sequences();
  }

  /** By title; those that are gone come last. */
  List<ChangedSequence> all() {
    Set<String> ids = changes.stream().map(SequenceChange::sequence).collect(Collectors.toSet());
    return Stream.of(desk, before)
        .flatMap(one -> Alphabet.sorted(one.kb().sequences().values(), Sequence::title).stream())
        .map(Sequence::id)
        .filter(ids::contains)
        .distinct()
        .map(this::sequence)
        .toList();
  }

  private ChangedSequence sequence(String id) {
    List<SequenceChange> parts =
        changes.stream().filter(change -> change.sequence().equals(id)).toList();
    List<Turn> turns = new ArrayList<>();
    parts.stream()
        .filter(change -> change.part() != Part.COURSE)
        .forEach(change -> turns.addAll(turns(change)));
    turns.addAll(courses(parts.stream().filter(one -> one.part() == Part.COURSE).toList()));
    return new ChangedSequence(link(parts.get(0)), turns);
  }

  private Link link(SequenceChange any) {
    return gone(any)
        ? new Link(own(before, any).title(), "")
        : new Link(own(desk, any).title(), desk.links().href(Kind.SEQUENCE, any.sequence()));
  }

  private static boolean gone(SequenceChange change) {
    return change.whole() && change.after().isEmpty();
  }

  private static Sequence own(Desk side, SequenceChange change) {
    return side.kb().sequences().get(change.sequence());
  }

  /** One for each way in which it changed. */
  private List<Turn> turns(SequenceChange change) {
    return switch (change.part()) {
      case APPLIES -> change.whole() ? List.of(whole(change)) : applies(change);
      case PHASE -> List.of(phase(change));
      default -> values(change);
    };
  }

  private Turn whole(SequenceChange change) {
    String what = gone(change) ? desk.say("Gone") : desk.say("New");
    return new Turn(what, "", "", machines(change, change.builds()));
  }

  private List<Turn> applies(SequenceChange change) {
    Map<String, List<Build>> alike = new LinkedHashMap<>();
    for (Build build : change.builds()) {
      String what =
          build.satisfies(own(desk, change).applies())
              ? desk.say("New for these machines")
              : desk.say("No longer for these machines");
      alike.computeIfAbsent(what, none -> new ArrayList<>()).add(build);
    }
    return alike.entrySet().stream()
        .map(one -> new Turn(one.getKey(), "", "", machines(change, one.getValue())))
        .toList();
  }

  private Turn phase(SequenceChange change) {
    boolean went = change.after().isEmpty();
    String title = titles(change).of(Part.PHASE, change.of());
    String what =
        went ? desk.say("Phase that is gone: {0}", title) : desk.say("New phase: {0}", title);
    return new Turn(what, "", "", machines(change, change.builds()));
  }

  private PartTitles titles(SequenceChange change) {
    Desk side = change.after().isPresent() ? desk : before;
    return new PartTitles(desk, own(side, change));
  }

  private List<Turn> values(SequenceChange change) {
    Map<Said, List<Build>> alike = new LinkedHashMap<>();
    for (Build build : change.builds()) {
      Said said = new Said(words(before, change, old(build)), words(desk, change, build));
      alike.computeIfAbsent(said, none -> new ArrayList<>()).add(build);
    }
    String what = titles(change).of(change.part(), change.of());
    return alike.entrySet().stream()
        .map(
            one ->
                new Turn(
                    what,
                    one.getKey().before(),
                    one.getKey().now(),
                    machines(change, one.getValue())))
        .toList();
  }

  private static String words(Desk side, SequenceChange change, Build build) {
    return new SequenceWords(side, own(side, change), build).of(change.part(), change.of());
  }

  private Build old(Build build) {
    return before.kb().equipment().builds().stream()
        .filter(one -> one.facts().equals(build.facts()))
        .findFirst()
        .orElseThrow();
  }

  private List<Turn> courses(List<SequenceChange> courses) {
    Map<Alike, List<SequenceChange>> alike = new LinkedHashMap<>();
    courses.forEach(
        one -> alike.computeIfAbsent(Alike.of(one), none -> new ArrayList<>()).add(one));
    return alike.values().stream().map(this::course).toList();
  }

  private Turn course(List<SequenceChange> some) {
    SequenceChange first = some.get(0);
    String titles = some.stream().map(this::title).collect(Collectors.joining("; "));
    String now;
    if (first.before().isEmpty()) {
      now = desk.say("New: {0}", titles);
    } else if (first.after().isEmpty()) {
      now = desk.say("Gone: {0}", titles);
    } else {
      now = desk.say("Not as before: {0}", titles);
    }
    String what = titles(first).of(Part.COURSE, first.of());
    return new Turn(what, "", now, machines(first, first.builds()));
  }

  private String title(SequenceChange course) {
    Desk side = course.after().isPresent() ? desk : before;
    return own(side, course).courses().stream()
        .filter(one -> one.id().equals(course.of()))
        .map(Sequence.Course::title)
        .findFirst()
        .orElseThrow();
  }

  /** Among all that are published: a bulletin is read by those too who have other machines. */
  private String machines(SequenceChange change, List<Build> builds) {
    Desk side = gone(change) ? before : desk;
    return builds.isEmpty()
        ? ""
        : SequenceBuilds.words(side, side.kb().equipment().builds(), builds);
  }
}
