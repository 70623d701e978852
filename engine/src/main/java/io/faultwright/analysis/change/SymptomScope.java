package io.faultwright.analysis.change;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Never;
import io.faultwright.model.Reading;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What one side brings to a symptom.
 *
 * @param side the side
 * @param symptom the symptom as it has it
 * @param nevers the statements about what cannot happen that can matter
 * @param asked its own ids of the readings that bear on the outcome
 */
record SymptomScope(Side side, Symptom symptom, List<Never> nevers, SortedSet<String> asked) {
  /** The conditions of a symptom. */
  static List<Condition> conditions(Symptom symptom) {
    List<Condition> conditions = new ArrayList<>();
    conditions.add(symptom.recognise());
    symptom.first().forEach(first -> conditions.add(first.when()));
    symptom.rules().values().stream().map(Rule::when).forEach(conditions::add);
    return conditions;
  }

  /**
   * Both sides of a symptom, the old one first. A general {@code never} counts where it shares a
   * reading with the symptom of either side, directly or through other statements. Where general
   * statements changed, all of them count: one may now leave nothing possible on some equipment.
   */
  static List<SymptomScope> of(Joined joined, Symptom before, Symptom after) {
    Draft old = new Draft(joined.before(), before);
    Draft current = new Draft(joined.after(), after);
    SortedSet<String> names = new TreeSet<>(old.names());
    names.addAll(current.names());
    if (!old.statements().equals(current.statements())) {
      old.takeAll();
      current.takeAll();
    }
    while (old.takeRelated(names) | current.takeRelated(names)) {
      names.addAll(old.names());
      names.addAll(current.names());
    }
    return List.of(old.scope(), current.scope());
  }

  /** A scope while its statements are gathered. */
  private static final class Draft {
    private final Side side;
    private final Symptom symptom;
    private final List<Never> chosen;
    private final List<Never> rest;
    private final SortedSet<String> asked = new TreeSet<>();

    Draft(Side side, Symptom symptom) {
      this.side = side;
      this.symptom = symptom;
      this.chosen = new ArrayList<>(symptom.nevers().values());
      this.rest = new ArrayList<>(side.own().nevers().values());
      conditions(symptom).forEach(condition -> asked.addAll(readings(condition)));
      chosen.forEach(never -> asked.addAll(readings(never.when())));
    }

    Collection<String> names() {
      return asked.stream().map(side::name).toList();
    }

    /** What all general statements say, with the readings and limits they speak of. */
    Set<String> statements() {
      ConditionKey key = new ConditionKey(side.own());
      return side.own().nevers().values().stream()
          .map(
              never ->
                  key.of(never.when())
                      + readings(never.when()).stream().map(this::meaning).toList())
          .collect(Collectors.toSet());
    }

    private String meaning(String id) {
      Reading reading = side.own().readings().get(id);
      String limits =
          Optional.ofNullable(side.own().limits().get(id))
              .map(
                  table ->
                      table.between().toString()
                          + table.rows().stream().map(this::meaning).toList())
              .orElse("");
      return id + reading.domain() + side.having(id) + limits;
    }

    private String meaning(LimitsTable.Row row) {
      return side.satisfying(row.builds()) + " " + row.at() + row.low() + row.high();
    }

    void takeAll() {
      take(List.copyOf(rest));
    }

    private void take(List<Never> statements) {
      chosen.addAll(statements);
      rest.removeAll(statements);
      statements.forEach(never -> asked.addAll(readings(never.when())));
    }

    /** Takes every statement that shares a reading with those named; whether there was one. */
    boolean takeRelated(Set<String> names) {
      List<Never> related = rest.stream().filter(never -> isRelated(never, names)).toList();
      take(related);
      return !related.isEmpty();
    }

    private boolean isRelated(Never never, Set<String> names) {
      Set<String> own = readings(never.when());
      return own.isEmpty() || own.stream().map(side::name).anyMatch(names::contains);
    }

    private Set<String> readings(Condition condition) {
      Set<String> readings = new TreeSet<>();
      condition.tests().flatMap(this::readings).forEach(readings::add);
      return readings;
    }

    private Stream<String> readings(Test test) {
      if (!side.hasReading(test.subject())) {
        return Stream.empty();
      }
      Stream<String> own = Stream.of(test.subject());
      Stream<String> all =
          test.pattern() instanceof AgainstLimits
              ? Stream.concat(own, side.own().limits().get(test.subject()).drivers().stream())
              : own;
      return all.flatMap(this::withOperands);
    }

    private Stream<String> withOperands(String reading) {
      return Stream.concat(
          Stream.of(reading),
          side.own().readings().get(reading).operands().stream().flatMap(this::withOperands));
    }

    SymptomScope scope() {
      return new SymptomScope(side, symptom, chosen, asked);
    }
  }
}
