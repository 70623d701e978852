package io.faultwright.page;

import io.faultwright.model.Build;
import io.faultwright.model.Fault;
import io.faultwright.model.Model;
import io.faultwright.model.Part;
import io.faultwright.page.FaultSection.Plate;
import io.faultwright.page.FaultSection.PlateRow;
import io.faultwright.page.Target.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

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
        plate(fault),
        steps.of(fault.remedy(), fault.cautions()),
        steps.of(fault.verify(), List.of()),
        parts(fault),
        desk.links().guide(fault.guide()),
        desk.links().symptoms(desk.uses().symptomsWithFault(fault.id())),
        SequenceSections.showing(desk, fault));
  }

  private Optional<Plate> plate(Fault fault) {
    return fault.nameplate().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Plate(fault.nameplate().stream().map(desk.words()::label).toList(), rows(fault)));
  }

  private List<PlateRow> rows(Fault fault) {
    Map<List<String>, List<String>> rows = new LinkedHashMap<>();
    for (Model model : models(fault)) {
      rows.computeIfAbsent(cells(fault, model), cells -> new ArrayList<>()).add(model.id());
    }
    return rows.entrySet().stream()
        .map(row -> new PlateRow(List.copyOf(row.getValue()), row.getKey()))
        .toList();
  }

  private List<Model> models(Fault fault) {
    return Alphabet.sorted(
        desk.kb().equipment().builds().stream()
            .filter(build -> build.satisfies(fault.applies()))
            .map(Build::model)
            .collect(Collectors.toSet()),
        Model::id);
  }

  private List<String> cells(Fault fault, Model model) {
    return fault.nameplate().stream()
        .map(label -> desk.words().figure(model.nameplate(label).orElse("")))
        .toList();
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
