package io.faultwright.resolve;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Derived;
import io.faultwright.model.Domain;
import io.faultwright.model.Reading;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads readings that are computed as the difference of two others. */
final class DifferenceResolver {
  static final String DIFFERENCE = "difference";

  private final Context context;
  private final Problems problems;
  private final Map<String, Reading> known;

  /**
   * @param known readings that could be read and are no differences
   */
  DifferenceResolver(Context context, Map<String, Reading> known) {
    this.context = context;
    this.problems = context.problems();
    this.known = known;
  }

  /**
   * The reading; empty where it could not be read.
   *
   * @param fields everything that a reading may say
   */
  Optional<Reading> resolve(Definition definition, Fields fields) {
    List<Scalar> written = operands(fields);
    new ComputedReading(context, definition, fields).checkKeys(DIFFERENCE);
    List<Reading> operands =
        written.stream().flatMap(operand -> operand(operand).stream()).toList();
    return operands.size() == 2 && areAlike(definition, written, operands)
        ? Optional.of(reading(definition, fields, operands.get(0), operands.get(1)))
        : Optional.empty();
  }

  private List<Scalar> operands(Fields fields) {
    Optional<Node> written = fields.find(DIFFERENCE);
    List<Scalar> ids =
        written
            .filter(ListNode.class::isInstance)
            .map(list -> ((ListNode) list).items())
            .orElse(List.of())
            .stream()
            .filter(Scalar.class::isInstance)
            .map(Scalar.class::cast)
            .toList();
    boolean pair =
        written.isPresent()
            && written.get() instanceof ListNode list
            && list.items().size() == 2
            && ids.size() == 2;
    if (written.isPresent() && !pair) {
      problems.add(
          written.get().place(),
          "`difference` takes two readings, found " + found(written.get()),
          "write `difference: [one, other]`; the second is taken away from the first");
    }
    return pair ? ids : List.of();
  }

  private static String found(Node node) {
    return node instanceof ListNode list && list.items().size() != 2
        ? "a list of " + list.items().size()
        : node.kind();
  }

  private Optional<Reading> operand(Scalar written) {
    String id = context.names().reference(Kind.READING, written);
    if (isComputed(id)) {
      problem(
          written,
          Words.quoted(id) + " is computed itself",
          "name readings that are taken on the machine, or saturation temperatures");
    }
    Optional<Reading> reading = Optional.ofNullable(known.get(id));
    if (reading.isPresent() && !(reading.get().domain() instanceof Domain.Measured)) {
      problem(
          written,
          Words.quoted(id) + " is a choice, and a difference needs numbers",
          "name a reading with `unit` and `range`");
    }
    return reading.filter(one -> one.domain() instanceof Domain.Measured);
  }

  private boolean isComputed(String id) {
    return Optional.ofNullable(context.outline().of(Kind.READING).get(id))
        .filter(DifferenceResolver::isComputed)
        .isPresent();
  }

  /** Whether a reading says that it is computed. */
  static boolean isComputed(Definition reading) {
    return reading.body() instanceof Node.MapNode map
        && map.entries().stream().anyMatch(entry -> entry.name().equals(DIFFERENCE));
  }

  private boolean areAlike(Definition definition, List<Scalar> written, List<Reading> operands) {
    Unit first = unit(operands.get(0));
    Unit second = unit(operands.get(1));
    boolean same = operands.get(0).id().equals(operands.get(1).id());
    boolean alike = first.dimension() == second.dimension();
    List<Place> places = written.stream().map(Scalar::place).toList();
    if (same) {
      problem(written.get(1), definition.what() + " is always zero", "name two different readings");
    } else if (!alike) {
      problems.add(
          new Problem(
              places,
              UnitAdvice.mismatch(second, first, Words.quoted(operands.get(0).id())),
              "a difference needs two readings of one kind"));
    }
    return alike && !same;
  }

  private static Unit unit(Reading reading) {
    return ((Domain.Measured) reading.domain()).unit();
  }

  private Reading reading(Definition definition, Fields fields, Reading first, Reading second) {
    Unit unit = unit(first);
    Derived form = Derived.difference(first, second);
    Map<String, Reading> operands = Map.of(first.id(), first, second.id(), second);
    Interval range =
        form.range(id -> ((Domain.Measured) operands.get(id).domain()).range(), Optional.empty())
            .orElseThrow();
    return new ComputedReading(context, definition, fields)
        .from(
            List.of(first, second), form, Units.ofDifferences(unit), range, form.applies(operands));
  }

  private void problem(Scalar written, String message, String help) {
    problems.add(written.place(), message, help);
  }
}
