package io.faultwright.resolve;

import io.faultwright.model.Equipment;
import io.faultwright.model.Family;
import io.faultwright.model.Model;
import io.faultwright.model.Nameplate;
import io.faultwright.model.Option;
import io.faultwright.source.Place;
import io.faultwright.syntax.FolderReader;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Reads the section {@code equipment}. A knowledge base without it has one model {@code equipment}
 * of one family {@code equipment}, without options and software.
 */
final class EquipmentResolver {

  private final Context context;

  EquipmentResolver(Context context) {
    this.context = context;
  }

  Equipment resolve() {
    boolean implicit =
        context.outline().equipment().isEmpty() && context.names().complete(Kind.MODEL);
    return implicit ? implicit() : written();
  }

  private Equipment implicit() {
    Place place =
        context
            .outline()
            .handbook()
            .map(Definition::place)
            .orElse(new Place(FolderReader.MARKER, 1, 1, 1));
    String title = Words.title(Equipment.IMPLICIT);
    Family family = new Family(Equipment.IMPLICIT, place, title, "");
    Model model =
        new Model(
            Equipment.IMPLICIT,
            place,
            title,
            Equipment.IMPLICIT,
            new TreeMap<>(),
            List.of(),
            Optional.empty(),
            new TreeMap<>());
    return new Equipment(
        sorted(Equipment.IMPLICIT, family),
        new TreeMap<>(),
        sorted(Equipment.IMPLICIT, model),
        Optional.empty(),
        new TreeMap<>());
  }

  private static <V> SortedMap<String, V> sorted(String id, V value) {
    SortedMap<String, V> map = new TreeMap<>();
    map.put(id, value);
    return map;
  }

  private Equipment written() {
    SortedMap<String, Family> families = families();
    RefrigerantResolver refrigerants = new RefrigerantResolver(context);
    OptionResolver optionResolver = new OptionResolver(context, refrigerants);
    SortedMap<String, Option> options = optionResolver.resolveAll();
    Optional<Nameplate> nameplate = new NameplateResolver(context, options).resolve();
    ModelResolver models =
        new ModelResolver(context, options, optionResolver, refrigerants, nameplate);
    SortedMap<String, Model> published = new TreeMap<>();
    context
        .outline()
        .of(Kind.MODEL)
        .values()
        .forEach(model -> published.put(model.id(), models.resolve(model)));
    checkAnyModel();
    return new Equipment(families, options, published, nameplate, refrigerants.used());
  }

  private SortedMap<String, Family> families() {
    SortedMap<String, Family> families = new TreeMap<>();
    context
        .outline()
        .of(Kind.FAMILY)
        .forEach((id, definition) -> families.put(id, family(definition)));
    return families;
  }

  private Family family(Definition definition) {
    Fields fields = Fields.of(definition, List.of("title", "about"), context.problems());
    return new Family(
        definition.id(),
        definition.place(),
        fields.text("title").orElse(Words.title(definition.id())),
        fields.text("about").orElse(""));
  }

  private void checkAnyModel() {
    if (context.names().all(Kind.MODEL).isEmpty() && context.names().complete(Kind.MODEL)) {
      context
          .outline()
          .equipment()
          .ifPresent(
              equipment ->
                  context
                      .problems()
                      .add(
                          equipment.place(),
                          "`equipment` has no models",
                          "write at least one model below `models:`, or remove `equipment`"));
    }
  }
}
