package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.model.Access;
import io.faultwright.model.Caution;
import io.faultwright.model.Caution.Signal;
import io.faultwright.model.Equipment;
import io.faultwright.syntax.Node.Scalar;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads the section {@code cautions}. */
final class CautionResolver {
  private static final List<String> KEYS = List.of("signal", "text", "covers");
  private static final List<String> SIGNALS =
      Arrays.stream(Signal.values()).map(signal -> signal.name().toLowerCase(Locale.ROOT)).toList();

  private final Context context;
  private final Equipment equipment;
  private final AccessResolver access;

  CautionResolver(Context context, Equipment equipment) {
    this.context = context;
    this.equipment = equipment;
    this.access = new AccessResolver(context.problems());
  }

  SortedMap<String, Caution> resolveAll() {
    SortedMap<String, Caution> cautions = new TreeMap<>();
    flammable().ifPresent(caution -> cautions.put(caution.id(), caution));
    context.outline().of(Kind.CAUTION).forEach((id, one) -> cautions.put(id, resolve(one)));
    return cautions;
  }

  /** The caution that flammable refrigerants bring along; a trainer's own of its id replaces it. */
  private Optional<Caution> flammable() {
    List<String> refrigerants =
        equipment.refrigerants().values().stream()
            .filter(refrigerant -> refrigerant.safety().flammable())
            .map(refrigerant -> refrigerant.id() + " (" + refrigerant.safety() + ")")
            .toList();
    return context
        .outline()
        .equipment()
        .filter(written -> !refrigerants.isEmpty())
        .map(
            written ->
                new Caution(
                    Caution.FLAMMABLE_REFRIGERANT,
                    written.place(),
                    Signal.WARNING,
                    "Models with "
                        + String.join(", ", refrigerants)
                        + ": the refrigerant is flammable. Keep flames and sparks away. Air the"
                        + " room. Watch a gas detector for this refrigerant. Only persons licensed"
                        + " for flammable refrigerants open the circuit. Follow the local codes.",
                    EnumSet.of(Access.REFRIGERANT_CIRCUIT)));
  }

  private Caution resolve(Definition definition) {
    Fields fields = Fields.of(definition, KEYS, context.problems());
    Set<Access> covers = EnumSet.noneOf(Access.class);
    fields.oneOrMore("covers").forEach(word -> access.read(word).ifPresent(covers::add));
    return new Caution(
        definition.id(),
        definition.place(),
        fields.requireScalar("signal").flatMap(this::signal).orElse(Signal.NOTICE),
        fields.requireText("text"),
        covers);
  }

  private Optional<Signal> signal(Scalar written) {
    String word = written.text().strip();
    if (SIGNALS.contains(word)) {
      return Optional.of(Signal.valueOf(word.toUpperCase(Locale.ROOT)));
    }
    context
        .problems()
        .add(
            written.place(),
            "unknown signal word " + Words.quoted(word),
            NearMatch.help(word, SIGNALS));
    return Optional.empty();
  }
}
