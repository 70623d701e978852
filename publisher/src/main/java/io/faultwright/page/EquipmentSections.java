package io.faultwright.page;

import io.faultwright.model.Equipment;
import io.faultwright.model.Family;
import io.faultwright.model.Model;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Option;
import io.faultwright.model.Version;
import io.faultwright.page.EquipmentSection.Item;
import io.faultwright.page.EquipmentSection.ModelRow;
import io.faultwright.page.EquipmentSection.OptionItem;
import io.faultwright.page.Target.Kind;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Families, options, models and the nameplate as printed. */
final class EquipmentSections {
  private final Desk desk;

  EquipmentSections(Desk desk) {
    this.desk = desk;
  }

  EquipmentSection section() {
    Equipment equipment = desk.kb().equipment();
    return new EquipmentSection(
        equipment.nameplate().map(new Nameplates(desk)::of),
        Alphabet.sorted(equipment.families().values(), Family::title).stream()
            .map(this::family)
            .toList(),
        options().stream().map(this::option).toList(),
        columns(),
        models().stream().map(model -> row(model, cells(model))).toList(),
        labels(),
        models().stream()
            .filter(model -> !model.data().isEmpty())
            .map(model -> row(model, data(model)))
            .toList(),
        desk.kb().handbook().base().map(base -> stickers()));
  }

  private Link stickers() {
    return new Link(
        desk.say("Labels with a code for the nameplate"), desk.links().page(Target.STICKERS));
  }

  private List<Model> models() {
    return Alphabet.sorted(desk.kb().equipment().models().values(), Model::id);
  }

  private List<String> labels() {
    return models().stream()
        .flatMap(model -> model.data().keySet().stream())
        .distinct()
        .sorted()
        .toList();
  }

  private List<String> data(Model model) {
    return labels().stream()
        .map(label -> desk.words().figure(model.data().getOrDefault(label, "")))
        .toList();
  }

  private List<Option> options() {
    return Alphabet.sorted(desk.kb().equipment().options().values(), Option::title);
  }

  private Item family(Family family) {
    return new Item(new Target(Kind.FAMILY, family.id()).anchor(), family.title(), family.about());
  }

  private OptionItem option(Option option) {
    return new OptionItem(
        new Target(Kind.OPTION, option.id()).anchor(),
        option.title(),
        option.values().stream().map(NamedValue::title).toList());
  }

  private List<String> columns() {
    return Stream.of(
            Stream.of(desk.words().subject(Equipment.FAMILY)),
            options().stream().map(Option::title),
            Stream.of(desk.words().subject(Equipment.SOFTWARE)))
        .flatMap(titles -> titles)
        .toList();
  }

  private static ModelRow row(Model model, List<String> cells) {
    return new ModelRow(
        new Target(Kind.MODEL, model.id()).anchor(), model.id(), model.title(), cells);
  }

  private List<String> cells(Model model) {
    return Stream.of(
            Stream.of(desk.words().value(Equipment.FAMILY, model.family())),
            options().stream().map(option -> value(model, option)),
            Stream.of(software(model)))
        .flatMap(cells -> cells)
        .toList();
  }

  private String value(Model model, Option option) {
    return model.options().containsKey(option.id())
        ? desk.words().value(option.id(), model.options().get(option.id()))
        : desk.say("none");
  }

  private String software(Model model) {
    return model.software().isEmpty()
        ? desk.say("none")
        : model.software().stream().map(Version::text).collect(Collectors.joining(", "));
  }
}
