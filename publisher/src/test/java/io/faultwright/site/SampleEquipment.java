package io.faultwright.site;

import io.faultwright.model.Equipment;
import io.faultwright.model.Family;
import io.faultwright.model.Model;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Nameplate;
import io.faultwright.model.Option;
import io.faultwright.model.Version;
import io.faultwright.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** The equipment of the sample handbook: two families, two kinds of defrost, three models. */
final class SampleEquipment {
  private final UnaryOperator<String> write;
  private int line;

  /**
   * @param write through which every text of the trainer's passes
   */
  SampleEquipment(UnaryOperator<String> write) {
    this.write = write;
  }

  Equipment build() {
    SortedMap<String, Family> families = new TreeMap<>();
    families.put("fell", new Family("fell", place(), t("Fell"), t("Packaged, air-cooled.")));
    families.put("tarn", new Family("tarn", place(), t("Tarn"), t("Split, with a line set.")));
    SortedMap<String, Option> options = new TreeMap<>();
    options.put(
        "defrost",
        new Option(
            "defrost",
            place(),
            t("Defrost"),
            List.of(
                new NamedValue("hot-gas", t("Hot gas")),
                new NamedValue("electric", t("Electric")))));
    SortedMap<String, Model> models = new TreeMap<>();
    models.put("FL-12G", model("FL-12G", "Fell 12", "fell", "hot-gas"));
    models.put("FL-20E", model("FL-20E", "Fell 20 E", "fell", "electric"));
    models.put("TN-20G", model("TN-20G", "Tarn 20", "tarn", "hot-gas"));
    return new Equipment(families, options, models, Optional.of(nameplate()), new TreeMap<>());
  }

  private Model model(String id, String title, String family, String defrost) {
    SortedMap<String, String> data = new TreeMap<>();
    data.put(t("charge"), t("1.1 kg"));
    return new Model(
        id,
        place(),
        t(title),
        family,
        sorted("defrost", defrost),
        List.of(new Version("2.9"), new Version("2.10")),
        Optional.empty(),
        data);
  }

  private Nameplate nameplate() {
    return new Nameplate(
        t("Inside the door of the electrical panel."),
        Optional.of(t("On the display for three seconds after power comes on.")),
        List.of(
            new Nameplate.Coded("family", sorted("FL", "fell", "TN", "tarn")),
            new Nameplate.Literal("-"),
            new Nameplate.Digits(2),
            new Nameplate.Coded("defrost", sorted("G", "hot-gas", "E", "electric"))));
  }

  private static SortedMap<String, String> sorted(String... pairs) {
    SortedMap<String, String> map = new TreeMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      map.put(pairs[i], pairs[i + 1]);
    }
    return map;
  }

  private Place place() {
    return new Place("equipment.yaml", ++line, 1, 1);
  }

  private String t(String text) {
    return write.apply(text);
  }
}
