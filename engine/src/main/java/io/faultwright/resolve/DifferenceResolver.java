package io.faultwright.resolve;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Access;
import io.faultwright.model.Derived;
import io.faultwright.model.Domain;
import io.faultwright.model.Reading;
import io.faultwright.model.Sorted;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads readings that are computed as the difference of two others. */
final class DifferenceResolver {
  static final String DIFFERENCE = "difference";
  private static final List<String> KEYS = List.of("title", DIFFERENCE, "resolution", "guide");

  private final Context context;
  private final Problems problems;
  private final DomainResolver domains;
  private final Map<String, Reading> observed;

  /**
   * @param observed readings that could be read and are not computed
   */
  DifferenceResolver(Context context, Map<String, Reading> observed) {
    this.context = context;
    this.problems = context.problems();
    this.domains = new DomainResolver(context);
    this.observed = observed;
  }

  /**
   * The reading; empty where it could not be read.
   *
   * @param fields everything that a reading may say
   */
  Optional<Reading> resolve(Definition definition, Fields fields) {
    List<Scalar> written = operands(fields);
    fields.without(
        KEYS,
        key -> "`" + key + "` does not fit " + definition.what() + ", which is computed",
        "it follows from the two readings it is computed from; take it out");
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
          "name readings that are taken on the machine");
    }
    Optional<Reading> reading = Optional.ofNullable(observed.get(id));
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

  /** Taking it is taking both operands; what has to be heeded for either holds for it. */
  private Reading reading(Definition definition, Fields fields, Reading first, Reading second) {
    Derived form = Derived.difference(first, second);
    Map<String, Reading> operands = Map.of(first.id(), first, second.id(), second);
    Unit unit = Units.ofDifferences(unit(first));
    Optional<BigFraction> resolution =
        fields.scalar("resolution").flatMap(step -> domains.resolution(step, unit));
    String title = fields.text("title").orElse(Words.title(definition.id()));
    return new Reading(
        definition.id(),
        definition.place(),
        title,
        title,
        new Domain.Measured(unit, form.range(operands), resolution),
        Stream.of(first.access(), second.access()).max(Comparator.<Access>naturalOrder()).get(),
        first.minutes().add(second.minutes()),
        Stream.of(first, second).flatMap(DifferenceResolver::how).toList(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Sorted.set(cautions(first, second)),
        fields.scalar("guide").map(guide -> context.names().reference(Kind.GUIDE, guide)),
        form.applies(operands),
        Sorted.set(List.of()),
        Optional.of(form));
  }

  private static Stream<String> how(Reading operand) {
    return Stream.concat(Stream.of(operand.ask()), operand.how().stream());
  }

  private static TreeSet<String> cautions(Reading first, Reading second) {
    TreeSet<String> cautions = new TreeSet<>(first.cautions());
    cautions.addAll(second.cautions());
    return cautions;
  }

  private void problem(Scalar written, String message, String help) {
    problems.add(written.place(), message, help);
  }
}
