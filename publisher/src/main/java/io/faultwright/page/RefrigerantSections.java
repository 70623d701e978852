package io.faultwright.page;

import io.faultwright.model.Caution;
import io.faultwright.model.Model;
import io.faultwright.model.ShownUnits;
import io.faultwright.page.Target.Kind;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Refrigerant;
import io.faultwright.quantity.UnitSystem;
import io.faultwright.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The saturation tables of the refrigerants that some reading is computed with. */
final class RefrigerantSections {
  private final Desk desk;

  RefrigerantSections(Desk desk) {
    this.desk = desk;
  }

  List<RefrigerantSection> all() {
    return desk.uses().refrigerants().stream().map(this::of).toList();
  }

  RefrigerantSection of(Refrigerant refrigerant) {
    List<SaturationTable> tables =
        systems()
            .map(system -> new SaturationTable(refrigerant, system, desk.words().say()))
            .toList();
    return new RefrigerantSection(
        new Target(Kind.REFRIGERANT, refrigerant.id()).anchor(),
        title(refrigerant, desk.words().say()),
        desk.links()
            .own(Kind.REFRIGERANT, refrigerant.id(), title(refrigerant, desk.words().say())),
        refrigerant.safety().flammable()
            ? new Cautions(desk).of(List.of(Caution.FLAMMABLE_REFRIGERANT))
            : List.of(),
        facts(refrigerant, tables),
        SaturationTable.glides(refrigerant),
        tables.stream().map(SaturationTable::table).toList(),
        desk.links().readings(desk.uses().readingsWithRefrigerant()));
  }

  static String title(Refrigerant refrigerant, Words say) {
    return say.say("{0}: pressure and temperature", refrigerant.id());
  }

  private List<Fact> facts(Refrigerant refrigerant, List<SaturationTable> tables) {
    List<Fact> facts = new ArrayList<>();
    facts.add(
        new Fact(
            desk.say("Safety"),
            desk.say("Class {0} of ASHRAE 34 and ISO 817", refrigerant.safety().name())));
    facts.add(new Fact(desk.say("Models"), models(refrigerant)));
    Interval known = SaturationTable.known(refrigerant);
    facts.add(
        new Fact(
            desk.say("Holds"),
            tables.stream().map(table -> table.stretch(known)).collect(Collectors.joining("; "))));
    facts.add(new Fact(desk.say("Source"), refrigerant.source()));
    return facts;
  }

  private String models(Refrigerant refrigerant) {
    return Alphabet.sorted(desk.kb().equipment().models().values(), Model::id).stream()
        .filter(model -> model.refrigerant().equals(Optional.of(refrigerant.id())))
        .map(Model::id)
        .collect(Collectors.joining(", "));
  }

  /** Those in which the handbook is published; where that is not said, those of its pressures. */
  private Stream<UnitSystem> systems() {
    Optional<ShownUnits> shown = desk.kb().handbook().units();
    if (shown.equals(Optional.of(ShownUnits.BOTH))) {
      return Stream.of(UnitSystem.SI, UnitSystem.US);
    }
    boolean us = shown.map(ShownUnits.US::equals).orElseGet(() -> desk.uses().writtenInUs());
    return Stream.of(us ? UnitSystem.US : UnitSystem.SI);
  }
}
