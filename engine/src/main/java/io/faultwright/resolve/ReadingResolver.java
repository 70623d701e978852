package io.faultwright.resolve;

import io.faultwright.model.Access;
import io.faultwright.model.Condition;
import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.Reading;
import io.faultwright.model.Sorted;
import io.faultwright.model.Value;
import io.faultwright.syntax.Node.Scalar;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiFunction;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads the section {@code readings}. */
final class ReadingResolver {
  private static final String ASSUME = "assume";
  private static final List<String> KEYS =
      List.of(
          "title",
          "ask",
          "unit",
          "range",
          "resolution",
          "values",
          DifferenceResolver.DIFFERENCE,
          SaturationResolver.SUPERHEAT,
          SaturationResolver.SUBCOOLING,
          SaturationResolver.SATURATION,
          ASSUME,
          "normal",
          AccuracyResolver.ACCURACY,
          "instrument",
          "where",
          "phase",
          "how",
          "access",
          MinutesResolver.MINUTES,
          PreparationResolver.SET_UP,
          PreparationResolver.AFTER,
          "cautions",
          "guide",
          "applies");

  private final Context context;
  private final Equipment published;
  private final ConditionResolver equipment;
  private final CautionRule cautions;
  private final DomainResolver domains;
  private final AccuracyResolver accuracies;
  private final AccessResolver access;
  private final MinutesResolver minutes;
  private final PreparationResolver preparation;

  ReadingResolver(
      Context context,
      Equipment published,
      ConditionResolver equipment,
      CautionRule cautions,
      PreparationResolver preparation) {
    this.context = context;
    this.published = published;
    this.equipment = equipment;
    this.cautions = cautions;
    this.domains = new DomainResolver(context);
    this.accuracies = new AccuracyResolver(context);
    this.access = new AccessResolver(context.problems());
    this.minutes = new MinutesResolver(context);
    this.preparation = preparation;
  }

  /** The readings whose domain could be read, by id. */
  SortedMap<String, Reading> resolveAll() {
    SortedMap<String, Reading> observed = new TreeMap<>();
    Map<Definition, Fields> saturated = new LinkedHashMap<>();
    Map<Definition, Fields> differences = new LinkedHashMap<>();
    for (Definition definition : context.outline().of(Kind.READING).values()) {
      Fields fields = Fields.of(definition, KEYS, context.problems());
      if (fields.has(DifferenceResolver.DIFFERENCE)) {
        differences.put(definition, fields);
      } else if (SaturationResolver.kind(fields).isPresent()) {
        saturated.put(definition, fields);
      } else {
        resolve(definition, fields).ifPresent(reading -> observed.put(reading.id(), reading));
      }
    }
    preparation.reportCircles(observed);
    SaturationResolver saturation = new SaturationResolver(context, observed, published);
    SortedMap<String, Reading> known = with(observed, saturated, saturation::resolve);
    return with(known, differences, new DifferenceResolver(context, known)::resolve);
  }

  private static SortedMap<String, Reading> with(
      SortedMap<String, Reading> known,
      Map<Definition, Fields> computed,
      BiFunction<Definition, Fields, Optional<Reading>> resolver) {
    SortedMap<String, Reading> all = new TreeMap<>(known);
    computed.forEach(
        (definition, fields) ->
            resolver
                .apply(definition, fields)
                .ifPresent(reading -> all.put(reading.id(), reading)));
    return all;
  }

  private Optional<Reading> resolve(Definition definition, Fields fields) {
    Optional<Domain> domain = domains.resolve(definition, fields);
    Reading draft = reading(definition, fields, domain.orElse(DomainResolver.STAND_IN));
    return domain.map(known -> draft);
  }

  private Reading reading(Definition definition, Fields fields, Domain domain) {
    Access needed = access.of(fields);
    return new Reading(
        definition.id(),
        definition.place(),
        fields.text("title").orElse(Words.title(definition.id())),
        fields.requireText("ask"),
        domain,
        needed,
        fields.scalar(MinutesResolver.MINUTES).flatMap(minutes::read).orElse(BigFraction.ONE),
        fields.texts("how"),
        fields.text("where"),
        fields.text("phase"),
        fields.text("instrument"),
        accuracies.resolve(definition, fields, domain),
        cautions.forAccess(needed, fields.oneOrMore("cautions")),
        fields.scalar("guide").map(guide -> context.names().reference(Kind.GUIDE, guide)),
        fields.read("applies", equipment::all, Condition.ALWAYS),
        normal(definition, fields, domain),
        Optional.empty(),
        fields.scalar(ASSUME).flatMap(written -> assumed(definition, written, domain)),
        preparation.setUp(definition, fields, needed),
        preparation.after(definition, fields));
  }

  private Optional<Value> assumed(Definition definition, Scalar written, Domain domain) {
    String id = definition.id();
    String text = written.text().strip();
    return domain.match(
        measured ->
            new QuantityPatterns(context.quantities(), context.problems())
                .amount(
                    written.place(),
                    text,
                    new Subject.Quantity(id, measured, false, Sorted.set(List.of())))
                .map(Value.Number::new),
        choice -> normal(definition, written, choice).map(Value.Word::new));
  }

  private SortedSet<String> normal(Definition definition, Fields fields, Domain domain) {
    SortedSet<String> values = new TreeSet<>();
    for (Scalar written : fields.oneOrMore("normal")) {
      normal(definition, written, domain).ifPresent(values::add);
    }
    return values;
  }

  private Optional<String> normal(Definition definition, Scalar written, Domain domain) {
    return domain.match(
        measured -> {
          notForMeasured(fieldsOf(definition), written);
          return Optional.empty();
        },
        choice -> normal(definition, written, choice));
  }

  private static String fieldsOf(Definition definition) {
    return definition.what();
  }

  private Optional<String> normal(Definition definition, Scalar written, Domain.Choice choice) {
    boolean complete = choice != DomainResolver.STAND_IN;
    Subject.Named subject = new Subject.Named(definition.id(), choice.ids(), true, complete);
    return new NamedPatterns(context.problems())
        .value(written.place(), written.text().strip(), subject);
  }

  private void notForMeasured(String what, Scalar written) {
    context
        .problems()
        .add(
            written.place(),
            "`normal` fits readings with values, but " + what + " is measured",
            "write what is normal as a table below `limits:`");
  }
}
