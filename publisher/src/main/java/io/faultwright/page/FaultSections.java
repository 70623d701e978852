package io.faultwright.page;

import io.faultwright.model.Fault;
import io.faultwright.model.Part;
import io.faultwright.page.Target.Kind;
import java.util.List;
import java.util.Objects;

/** Faults with their repairs. */
final class FaultSections {
  private final Desk desk;

  FaultSections(Desk desk) {
    this.desk = desk;
  }

  FaultSection of(Fault fault) {
    Steps steps = new Steps(desk);
    return new FaultSection(
        new Target(Kind.FAULT, fault.id()).anchor(),
        fault.title(),
        desk.links().own(Kind.FAULT, fault.id(), fault.title()),
        fault.about(),
        new Clauses(desk).of(fault.applies()),
        new Cautions(desk).of(fault.cautions()),
        steps.of(fault.remedy(), fault.cautions()),
        steps.of(fault.verify(), List.of()),
        parts(fault),
        desk.links().guide(fault.guide()),
        desk.links().symptoms(desk.uses().symptomsWithFault(fault.id())));
  }

  private List<Fact> parts(Fault fault) {
    return fault.parts().stream()
        .map(desk.kb().parts()::get)
        .filter(Objects::nonNull)
        .map(FaultSections::part)
        .toList();
  }

  private static Fact part(Part part) {
    return new Fact(part.title(), part.number().orElse(""));
  }
}
