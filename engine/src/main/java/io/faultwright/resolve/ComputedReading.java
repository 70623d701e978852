package io.faultwright.resolve;

import io.faultwright.model.Access;
import io.faultwright.model.Condition;
import io.faultwright.model.Derived;
import io.faultwright.model.Domain;
import io.faultwright.model.Reading;
import io.faultwright.model.Sorted;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Unit;
import io.faultwright.syntax.Node;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Makes the reading that is computed from others: taking it is taking all of these. */
final class ComputedReading {
  /** What every computed reading may say besides how it is computed. */
  static final List<String> KEYS = List.of("title", "resolution", "guide");

  private static final Set<String> KINDS =
      Set.of(
          DifferenceResolver.DIFFERENCE,
          SaturationResolver.SUPERHEAT,
          SaturationResolver.SUBCOOLING,
          SaturationResolver.SATURATION);

  private final Context context;
  private final Definition definition;
  private final Fields fields;

  ComputedReading(Context context, Definition definition, Fields fields) {
    this.context = context;
    this.definition = definition;
    this.fields = fields;
  }

  /** Whether a reading says that it is computed. */
  static boolean isOne(Definition reading) {
    return reading.body() instanceof Node.MapNode map
        && map.entries().stream().anyMatch(entry -> KINDS.contains(entry.name()));
  }

  /** Reports what does not fit a computed reading. */
  void checkKeys(String... further) {
    List<String> fitting = Stream.concat(KEYS.stream(), Stream.of(further)).toList();
    fields.without(
        fitting,
        key -> "`" + key + "` does not fit " + definition.what() + ", which is computed",
        "it follows from the readings it is computed from; take it out");
  }

  /**
   * The reading.
   *
   * @param operands what it is computed from, in the order in which they are taken
   * @param range every value it can have
   * @param applies the equipment on which it can be computed
   */
  Reading from(List<Reading> operands, Derived form, Unit unit, Interval range, Condition applies) {
    Optional<BigFraction> resolution =
        fields
            .scalar("resolution")
            .flatMap(step -> new DomainResolver(context).resolution(step, unit));
    String title = fields.text("title").orElse(Words.title(definition.id()));
    return new Reading(
        definition.id(),
        definition.place(),
        title,
        title,
        new Domain.Measured(unit, range, resolution),
        operands.stream().map(Reading::access).max(Comparator.<Access>naturalOrder()).orElseThrow(),
        operands.stream().map(Reading::minutes).reduce(BigFraction.ZERO, BigFraction::add),
        operands.stream().flatMap(ComputedReading::how).toList(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        cautions(operands),
        fields.scalar("guide").map(guide -> context.names().reference(Kind.GUIDE, guide)),
        applies,
        Sorted.set(List.of()),
        Optional.of(form),
        Optional.empty(),
        Optional.empty(),
        new TreeSet<>());
  }

  private static Stream<String> how(Reading operand) {
    Stream<String> question =
        operand.derived().isPresent() ? Stream.of() : Stream.of(operand.ask());
    return Stream.concat(question, operand.how().stream());
  }

  private static SortedSet<String> cautions(List<Reading> operands) {
    SortedSet<String> cautions = new TreeSet<>();
    operands.forEach(operand -> cautions.addAll(operand.cautions()));
    return cautions;
  }
}
