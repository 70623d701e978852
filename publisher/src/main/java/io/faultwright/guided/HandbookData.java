package io.faultwright.guided;

import io.faultwright.json.Fields;
import io.faultwright.model.Build;
import io.faultwright.model.Equipment;
import io.faultwright.model.Handbook;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Model;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Nameplate;
import io.faultwright.model.Option;
import io.faultwright.model.ShownUnits;
import io.faultwright.model.Symptom;
import io.faultwright.model.Version;
import io.faultwright.page.Alphabet;
import io.faultwright.page.SitePaths;
import io.faultwright.page.Target;
import io.faultwright.page.Target.Kind;
import io.faultwright.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What the page has to know before a complaint is chosen. */
final class HandbookData {
  private final KnowledgeBase kb;
  private final Wording wording;
  private final BuildNumbers builds;

  HandbookData(KnowledgeBase kb) {
    this.kb = kb;
    this.wording = Wording.published(kb);
    this.builds = new BuildNumbers(kb.equipment());
  }

  /** The script that hands it over. */
  byte[] script(boolean draft) {
    Handbook handbook = kb.handbook();
    Equipment equipment = kb.equipment();
    return Script.call(
        "handbook",
        new Fields()
            .put("title", handbook.title())
            .put("language", handbook.language())
            .put("revision", handbook.revision())
            .put("date", handbook.date())
            .put("maker", handbook.maker())
            .putIfAny("hotline", handbook.hotline())
            .put("draft", draft)
            .put("disclaimer", handbook.disclaimer())
            .put("equipment", builds.seal())
            .put("systems", handbook.units().map(ShownUnits::word).orElse("written"))
            .put("facts", facts())
            .put("builds", builds.all().stream().map(this::build).toList())
            .put("models", models())
            .putIfAny("softwareWhere", equipment.nameplate().flatMap(Nameplate::software))
            .putIfAny("nameplate", equipment.nameplate().map(HandbookData::nameplate))
            .put("symptoms", symptoms())
            .put("decimal", wording.say().decimal())
            .put("words", words()));
  }

  private Fields words() {
    Fields words = new Fields();
    wording.say().calledFor(GuidedScript.text()).forEach(words::put);
    return words;
  }

  private List<Fields> facts() {
    List<Fields> facts = new ArrayList<>();
    facts.add(
        fact(
            Equipment.FAMILY,
            kb.equipment().families().values().stream()
                .map(family -> List.of(family.id(), family.title()))
                .toList()));
    kb.equipment().options().values().forEach(option -> facts.add(fact(option)));
    List<Version> versions = kb.equipment().versions();
    if (!versions.isEmpty()) {
      facts.add(
          fact(
              Equipment.SOFTWARE,
              versions.stream().map(version -> List.of(version.text(), version.text())).toList()));
    }
    return facts;
  }

  private Fields fact(Option option) {
    return fact(
        option.id(),
        option.values().stream()
            .map((NamedValue value) -> List.of(value.id(), value.title()))
            .toList());
  }

  private Fields fact(String id, List<List<String>> values) {
    return new Fields().put("id", id).put("title", wording.subject(id)).put("values", values);
  }

  private Fields build(Build build) {
    Fields facts = new Fields();
    for (String attribute : kb.equipment().attributes()) {
      if (!attribute.equals(Equipment.MODEL) && !attribute.equals(Equipment.SOFTWARE)) {
        facts.putIfAny(attribute, build.attribute(attribute));
      }
    }
    return new Fields()
        .put("model", build.model().id())
        .putIfAny("software", build.software().map(Version::text))
        .put("facts", facts)
        .putIfAny("refrigerant", build.model().refrigerant())
        .putIfAny(
            "flammable",
            build
                .model()
                .refrigerant()
                .map(kb.equipment().refrigerants()::get)
                .map(refrigerant -> refrigerant.safety().flammable()));
  }

  private List<Fields> models() {
    return Alphabet.sorted(kb.equipment().models().values(), Model::id).stream()
        .map(this::model)
        .toList();
  }

  private Fields model(Model model) {
    return new Fields()
        .put("id", model.id())
        .put("title", model.title())
        .put("family", model.family())
        .put("page", SitePaths.file(Target.EQUIPMENT) + "#" + anchor(model))
        .put("software", model.software().stream().map(Version::text).toList())
        .put(
            "data",
            model.labels().stream()
                .map(
                    label ->
                        List.of(
                            wording.label(label),
                            wording.figure(model.nameplate(label).orElse(""))))
                .toList());
  }

  private static String anchor(Model model) {
    return new Target(Kind.MODEL, model.id()).anchor();
  }

  private static Fields nameplate(Nameplate nameplate) {
    return new Fields()
        .put("where", nameplate.where())
        .put("segments", nameplate.segments().stream().map(HandbookData::segment).toList());
  }

  private static Fields segment(Nameplate.Segment segment) {
    if (segment instanceof Nameplate.Literal literal) {
      return new Fields().put("text", literal.text());
    }
    if (segment instanceof Nameplate.Coded coded) {
      return new Fields()
          .put("fact", coded.attribute())
          .put("codes", coded.codes().entrySet().stream().map(HandbookData::code).toList());
    }
    return new Fields().put("digits", ((Nameplate.Digits) segment).count());
  }

  private static List<String> code(Map.Entry<String, String> code) {
    return List.of(code.getKey(), code.getValue());
  }

  private List<Fields> symptoms() {
    return Alphabet.sorted(kb.symptoms().values(), Symptom::title).stream()
        .map(this::symptom)
        .toList();
  }

  private Fields symptom(Symptom symptom) {
    Stream<String> seen =
        wording.lines(symptom.recognise()).stream().filter(line -> !line.isEmpty());
    return new Fields()
        .put("id", symptom.id())
        .put("title", symptom.title())
        .put("about", symptom.about())
        .put("page", SitePaths.file(new Target(Kind.SYMPTOM, symptom.id())))
        .put("builds", builds.of(symptom.applies()))
        .put(
            "recognise",
            symptom.recognise().tests().findAny().isPresent() ? seen.toList() : List.of())
        .put("file", SitePaths.diagnosis(symptom.id()));
  }
}
