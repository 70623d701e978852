package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.model.Equipment;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Option;
import io.faultwright.model.Reading;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Everything a condition can be about; first the equipment, later the readings too. */
final class Subjects {
  private final Context context;
  private final Map<String, Subject> facts = new TreeMap<>();
  private final Map<String, Subject> readings = new TreeMap<>();
  private final Map<String, String> helps = new TreeMap<>();

  /**
   * The facts of the equipment.
   *
   * @param sound whether the equipment was read without problems
   */
  Subjects(Context context, Equipment equipment, boolean sound) {
    this.context = context;
    fact(Equipment.FAMILY, List.copyOf(equipment.families().keySet()), Kind.FAMILY, sound);
    fact(Equipment.MODEL, List.copyOf(equipment.models().keySet()), Kind.MODEL, sound);
    equipment.options().values().forEach(this::option);
    facts.put(Equipment.SOFTWARE, new Subject.Software(equipment.versions(), sound));
  }

  private void fact(String id, List<String> resolved, Kind kind, boolean sound) {
    Set<String> values = new TreeSet<>(resolved);
    values.addAll(context.names().all(kind));
    boolean complete = sound || context.names().complete(kind);
    facts.put(id, new Subject.Named(id, List.copyOf(values), false, complete));
  }

  private void option(Option option) {
    List<String> values = option.values().stream().map(NamedValue::id).toList();
    facts.put(option.id(), new Subject.Named(option.id(), values, false, true));
  }

  /** Adds a reading. */
  void add(Reading reading) {
    String id = reading.id();
    boolean limits =
        context.names().known(Kind.LIMITS, id) || !context.names().complete(Kind.LIMITS);
    readings.put(
        id,
        reading
            .domain()
            .match(
                measured -> new Subject.Quantity(id, measured, limits, reading.operands()),
                choice -> new Subject.Named(id, choice.ids(), true, true)));
  }

  /** The fact or reading a name stands for; empty where it is unknown or its definition broken. */
  Optional<Subject> find(Scalar name) {
    Optional<Subject> found = lookUp(name.text());
    if (found.isEmpty() && !defined(name.text()) && complete(Kind.READING)) {
      unknown(name, "unknown reading or option ", allNames());
    }
    return found;
  }

  /** As above, where only facts of the equipment may be asked. */
  Optional<Subject> findFact(Scalar name) {
    if (context.names().known(Kind.READING, name.text())) {
      context
          .problems()
          .add(
              name.place(),
              Words.quoted(name.text()) + " is a reading, but only facts of the equipment fit here",
              "facts of the equipment are " + Words.quoted(factNames()));
      return Optional.empty();
    }
    if (!defined(name.text())) {
      unknown(name, "unknown option ", factNames());
    }
    return Optional.ofNullable(facts.get(name.text()));
  }

  private void unknown(Scalar name, String message, Set<String> known) {
    if (complete(Kind.OPTION)) {
      String help = helps.computeIfAbsent(name.text(), text -> NearMatch.help(text, known));
      context.problems().add(name.place(), message + Words.quoted(name.text()), help);
    }
  }

  private Optional<Subject> lookUp(String id) {
    return Optional.ofNullable(facts.get(id)).or(() -> Optional.ofNullable(readings.get(id)));
  }

  private boolean defined(String id) {
    return facts.containsKey(id)
        || context.names().known(Kind.OPTION, id)
        || context.names().known(Kind.READING, id);
  }

  private boolean complete(Kind kind) {
    return context.names().complete(kind);
  }

  private Set<String> factNames() {
    Set<String> names = new TreeSet<>(facts.keySet());
    names.addAll(context.names().all(Kind.OPTION));
    return names;
  }

  private Set<String> allNames() {
    Set<String> names = factNames();
    names.addAll(context.names().all(Kind.READING));
    return names;
  }
}
