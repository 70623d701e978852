package io.faultwright.model;

import io.faultwright.quantity.Refrigerant;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What the rules are about.
 *
 * @param families product families, by id
 * @param options features with named values, by id
 * @param models published models, by model number
 * @param nameplate how a model number is read
 * @param refrigerants those of the models, by id
 */
public record Equipment(
    SortedMap<String, Family> families,
    SortedMap<String, Option> options,
    SortedMap<String, Model> models,
    Optional<Nameplate> nameplate,
    SortedMap<String, Refrigerant> refrigerants) {
  /** Id of the one model and family of a knowledge base that does not write its equipment. */
  public static final String IMPLICIT = "equipment";

  /** Names of the facts of a build that are not options. */
  public static final String FAMILY = "family";

  public static final String MODEL = "model";
  public static final String SOFTWARE = "software";

  public Equipment {
    families = Sorted.copy(families);
    options = Sorted.copy(options);
    models = Sorted.copy(models);
    refrigerants = Sorted.copy(refrigerants);
  }

  /** Every published model with every software version of its controller, in a fixed order. */
  public List<Build> builds() {
    return models.values().stream().flatMap(Equipment::builds).toList();
  }

  private static Stream<Build> builds(Model model) {
    return model.software().isEmpty()
        ? Stream.of(new Build(model, Optional.empty()))
        : model.software().stream().map(version -> new Build(model, Optional.of(version)));
  }

  /** Every published software version, oldest first. */
  public List<Version> versions() {
    TreeSet<Version> all = new TreeSet<>();
    models.values().forEach(model -> all.addAll(model.software()));
    return List.copyOf(all);
  }

  /** Whether the refrigerant can burn; one that is not known is taken for one that can. */
  public boolean mayBurn(Build build) {
    return build
        .model()
        .refrigerant()
        .map(refrigerants::get)
        .map(refrigerant -> refrigerant.safety().flammable())
        .orElse(true);
  }

  /** The facts a condition may ask of a build: family, model, software and every option. */
  public List<String> attributes() {
    return Stream.concat(Stream.of(FAMILY, MODEL, SOFTWARE), options.keySet().stream()).toList();
  }
}
