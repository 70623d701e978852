package io.faultwright.page;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.All;
import io.faultwright.model.Condition.Any;
import io.faultwright.model.Condition.Not;
import io.faultwright.model.Condition.Test;
import java.util.List;
import java.util.Optional;

/** Conditions as nested lines. */
final class Clauses {
  private final Desk desk;

  Clauses(Desk desk) {
    this.desk = desk;
  }

  /** The lines that must all hold; none for a condition that always holds. */
  List<Clause> of(Condition condition) {
    return condition.match(
        all -> all.parts().stream().flatMap(part -> of(part).stream()).toList(),
        any -> List.of(any(any)),
        not -> List.of(not(not)),
        test -> List.of(line(test, test.subject())));
  }

  private Clause any(Any any) {
    return any.parts().size() == 1
        ? one(any.parts().get(0))
        : heading(desk.say("one of these:"), any.parts());
  }

  private Clause not(Not not) {
    return not.part()
        .match(
            all -> denied(desk.say("not all of these together:"), all.parts()),
            any -> denied(desk.say("none of these:"), any.parts()),
            inner -> one(inner.part()),
            test -> line(not, test.subject()));
  }

  private Clause denied(String heading, List<Condition> parts) {
    return parts.size() == 1 ? not(new Not(parts.get(0))) : heading(heading, parts);
  }

  private Clause heading(String words, List<Condition> parts) {
    return new Clause(Optional.empty(), words, parts.stream().map(this::one).toList());
  }

  private Clause one(Condition part) {
    List<Clause> lines = of(part);
    return lines.size() == 1
        ? lines.get(0)
        : new Clause(
            Optional.empty(),
            lines.isEmpty() ? desk.say("always") : desk.say("all of these:"),
            lines);
  }

  /** A single line, whose words after the subject's title say what it must be. */
  private Clause line(Condition condition, String subject) {
    String title = desk.words().subject(subject);
    return new Clause(
        Optional.of(desk.links().subject(subject, title)), value(condition, subject), List.of());
  }

  /** What the only subject of a line must be. */
  String value(Condition line, String subject) {
    String before = desk.words().subject(subject) + ": ";
    String words = desk.words().condition(line);
    return words.startsWith(before) ? words.substring(before.length()) : words;
  }

  /** The condition on one line. */
  String line(Condition condition) {
    return condition.equals(Condition.ALWAYS) ? "" : desk.words().condition(condition);
  }

  /** The parts that are about one subject. */
  static List<Condition> about(Condition condition, String subject) {
    List<Condition> parts = condition instanceof All all ? all.parts() : List.of(condition);
    return parts.stream()
        .filter(part -> Subjects.tests(part).map(Test::subject).anyMatch(subject::equals))
        .toList();
  }
}
