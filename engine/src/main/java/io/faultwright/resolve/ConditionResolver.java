package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Condition;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Reads maps of conditions with their {@code any}, {@code all} and {@code not}. */
final class ConditionResolver {
  private final Function<Scalar, Optional<Subject>> subjects;
  private final PatternResolver patterns;
  private final Problems problems;

  private ConditionResolver(Context context, Function<Scalar, Optional<Subject>> subjects) {
    this.subjects = subjects;
    this.patterns = new PatternResolver(context);
    this.problems = context.problems();
  }

  /** For conditions that may ask for facts of the equipment only. */
  static ConditionResolver ofEquipment(Context context, Subjects subjects) {
    return new ConditionResolver(context, subjects::findFact);
  }

  /** For conditions on equipment and readings. */
  static ConditionResolver ofSituation(Context context, Subjects subjects) {
    return new ConditionResolver(context, subjects::find);
  }

  /** Every line of the map must hold. */
  Condition all(Node node) {
    return new Condition.All(node instanceof MapNode map ? lines(map) : notMap(node));
  }

  private List<Condition> lines(MapNode map) {
    return map.entries().stream().flatMap(entry -> line(entry).stream()).toList();
  }

  private Optional<Condition> line(Entry entry) {
    return switch (entry.name()) {
      case "any" -> parts(entry).map(Condition.Any::new);
      case "all" -> parts(entry).map(Condition.All::new);
      case "not" -> Optional.of(new Condition.Not(nested(entry.value())));
      default -> Fields.isEmpty(entry.value()) ? noValue(entry) : test(entry);
    };
  }

  private Optional<Condition> test(Entry entry) {
    return subjects
        .apply(entry.key())
        .flatMap(subject -> patterns.condition(subject, entry.value(), place(entry)));
  }

  private Optional<Condition> noValue(Entry entry) {
    problems.add(
        entry.key().place(),
        "nothing is written after " + Words.quoted(entry.name() + ":"),
        "write a value; " + Fields.COMMA_HELP);
    return Optional.empty();
  }

  /** A single line, for the cells of a table. */
  Optional<Condition> cell(Scalar subject, Node written) {
    return subjects
        .apply(subject)
        .flatMap(found -> patterns.condition(found, written, written.place()));
  }

  /** What a condition may be about; reports a name that is unknown. */
  Optional<Subject> subject(Scalar name) {
    return subjects.apply(name);
  }

  /** What is written about something known. */
  Optional<Condition> pattern(Subject subject, Node written) {
    return patterns.condition(subject, written, written.place());
  }

  private Optional<List<Condition>> parts(Entry entry) {
    List<Condition> parts = readParts(entry);
    if (parts.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(parts);
  }

  private List<Condition> readParts(Entry entry) {
    if (isNothing(entry.value())) {
      problems.add(
          entry.key().place(),
          "`" + entry.name() + "` has no conditions",
          "write some, or remove it");
      return List.of();
    }
    if (entry.value() instanceof ListNode list) {
      return list.items().stream().map(this::nested).toList();
    }
    return entry.value() instanceof MapNode map ? lines(map) : notMap(entry.value());
  }

  private static boolean isNothing(Node node) {
    return node.match(
        scalar -> scalar.text().isBlank(),
        list -> list.items().isEmpty(),
        map -> map.entries().isEmpty());
  }

  private Condition nested(Node node) {
    if (isNothing(node)) {
      problems.add(node.place(), "a condition is missing here", "write `reading: value`");
      return Condition.ALWAYS;
    }
    List<Condition> lines = node instanceof MapNode map ? lines(map) : notMap(node);
    return lines.size() == 1 ? lines.get(0) : new Condition.All(lines);
  }

  private List<Condition> notMap(Node node) {
    problems.add(
        node.place(),
        "expected conditions such as `reading: value`, found " + node.kind(),
        "write one condition a line, or use `any:` with a list of them");
    return List.of();
  }

  /** From the key to the end of the value where both stand on one line, else the key alone. */
  private static Place place(Entry entry) {
    Place key = entry.key().place();
    Place value = entry.value().place();
    boolean sameLine = value.line() == key.line() && value.column() > key.column();
    int length = sameLine ? value.column() + value.length() - key.column() : key.length();
    return new Place(key.file(), key.line(), key.column(), length);
  }
}
