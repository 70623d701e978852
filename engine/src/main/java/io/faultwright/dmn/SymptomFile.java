package io.faultwright.dmn;

import io.faultwright.model.Build;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Reading;
import io.faultwright.model.Symptom;
import io.faultwright.model.Version;
import io.faultwright.xml.Xml;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Writes the decisions of a symptom as a file of DMN 1.3 (OMG formal/21-02-01). */
final class SymptomFile {
  /** The type of a list of texts. */
  static final String TEXTS = "texts";

  private static final String DMN = "https://www.omg.org/spec/DMN/20191111/MODEL/";
  private static final String FEEL = "https://www.omg.org/spec/DMN/20191111/FEEL/";
  private static final String TYPE = "type__";

  private final KnowledgeBase kb;
  private final Symptom symptom;
  private final SymptomModel model;
  private final SymptomModel.Inputs inputs;
  private final Labels labels;
  private final SortedSet<String> typed = new TreeSet<>();
  private final Xml xml = new Xml();

  SymptomFile(KnowledgeBase kb, Symptom symptom) {
    this.kb = kb;
    this.symptom = symptom;
    this.model = new SymptomModel(kb, symptom);
    this.inputs = model.inputs();
    this.labels = new Labels(kb);
  }

  String write() {
    xml.open(
        "definitions",
        "xmlns",
        DMN,
        "id",
        "definitions",
        "name",
        symptom.id(),
        "namespace",
        DmnExport.NAMESPACE + symptom.id(),
        "expressionLanguage",
        FEEL,
        "typeLanguage",
        FEEL);
    xml.text("description", symptom.title());
    types();
    inputs();
    List<String> all = new ArrayList<>(List.of(Names.MODEL, Names.SOFTWARE));
    inputs.readings().forEach(reading -> all.add(Names.of(reading)));
    inputs.untaken().forEach(reading -> all.add(Names.untaken(reading)));
    decision(
        Names.GROUP, "Group of machines", "string", all.subList(0, 2), List.of(), model.groups());
    List<String> asked = new ArrayList<>(List.of(Names.GROUP));
    for (String reading : model.limited()) {
      String label = labels.title(reading) + ", against its limits";
      Table table = model.side(reading);
      decision(Names.side(reading), label, "string", all, List.of(Names.GROUP), table);
      asked.add(Names.side(reading));
    }
    String before = Names.before(symptom.id());
    decision(before, "Before the rules", TYPE + "answer", all, asked, model.before());
    asked.add(before);
    String title = symptom.title();
    decision(Names.answer(symptom.id()), title, TYPE + "answer", all, asked, model.answer());
    return Xml.DECLARATION + xml.close();
  }

  private void types() {
    xml.open("itemDefinition", "name", TEXTS, "isCollection", "true")
        .text("typeRef", "string")
        .close();
    xml.open("itemDefinition", "name", TYPE + "answer");
    component("status", "string");
    component("answers", TEXTS);
    component("words", TEXTS);
    xml.close();
    List<Build> builds = model.builds();
    texts(Names.MODEL, builds.stream().map(build -> build.model().id()).toList());
    texts(
        Names.SOFTWARE,
        builds.stream()
            .flatMap((Build build) -> build.software().stream())
            .map(Version::text)
            .toList());
    inputs.readings().forEach(this::type);
  }

  private void component(String name, String type) {
    xml.open("itemComponent", "name", name).text("typeRef", type).close();
  }

  private void type(String id) {
    Reading reading = kb.readings().get(id);
    if (reading.derived().isEmpty()) {
      type(id, reading.domain());
    }
  }

  private void type(String reading, Domain domain) {
    domain.match(
        measured -> range(reading, measured), choice -> texts(Names.of(reading), choice.ids()));
  }

  private Void texts(String name, List<String> values) {
    SortedSet<String> allowed = new TreeSet<>(values);
    if (!allowed.isEmpty()) {
      type(name, "string", allowed.stream().map(Feel::string).collect(Collectors.joining(", ")));
    }
    return null;
  }

  /** Without its ends where one has no finite decimals; the tables keep to them all the same. */
  private Void range(String reading, Domain.Measured measured) {
    List<BigFraction> ends = Grid.ends(measured.range()).toList();
    if (Feel.whole(ends).equals(BigInteger.ONE)) {
      type(Names.of(reading), "number", Feel.interval(measured.range(), BigFraction.ONE));
    }
    return null;
  }

  private void type(String name, String base, String allowed) {
    typed.add(name);
    xml.open("itemDefinition", "name", TYPE + name)
        .text("typeRef", base)
        .open("allowedValues")
        .text("text", allowed)
        .close()
        .close();
  }

  private void inputs() {
    input(Names.MODEL, "Model", "The model number on the nameplate.", "string");
    input(Names.SOFTWARE, "Software", "The software version of the controller.", "string");
    for (String id : inputs.readings()) {
      Reading reading = kb.readings().get(id);
      boolean number = reading.domain() instanceof Domain.Measured;
      String computed = reading.derived().isPresent() ? " Computed beforehand, off a curve." : "";
      input(
          Names.of(id),
          labels.title(id),
          labels.question(id) + values(reading).orElse("") + computed,
          number ? "number" : "string");
    }
    for (String id : inputs.untaken()) {
      String words =
          "True where it is known that this cannot be taken; its value is then left out.";
      input(Names.untaken(id), labels.title(id) + ": cannot be taken", words, "boolean");
    }
  }

  private static Optional<String> values(Reading reading) {
    return reading.domain() instanceof Domain.Choice choice && !choice.yesNo()
        ? Optional.of(
            choice.values().stream()
                .map(SymptomFile::value)
                .collect(Collectors.joining("; ", " (", ")")))
        : Optional.empty();
  }

  private static String value(NamedValue value) {
    return value.id() + ": " + value.title();
  }

  private void input(String name, String label, String description, String type) {
    xml.open("inputData", "id", id(name), "name", name, "label", label)
        .text("description", description)
        .empty("variable", "name", name, "typeRef", typed.contains(name) ? TYPE + name : type)
        .close();
  }

  private static String id(String name) {
    return "id_" + name;
  }

  private void decision(
      String name, String label, String type, List<String> data, List<String> others, Table table) {
    xml.open("decision", "id", id(name), "name", name, "label", label)
        .empty("variable", "name", name, "typeRef", type);
    SortedSet<String> used = table.names();
    others.stream().filter(used::contains).forEach(one -> required("requiredDecision", one));
    data.stream().filter(used::contains).forEach(one -> required("requiredInput", one));
    table(name, table);
    xml.close();
  }

  private void required(String kind, String name) {
    xml.open("informationRequirement").empty(kind, "href", "#" + id(name)).close();
  }

  private void table(String name, Table table) {
    xml.open("decisionTable", "id", id(name) + "__table", "hitPolicy", "UNIQUE");
    for (Table.Input input : table.inputs()) {
      xml.open("input", "label", input.label())
          .open("inputExpression", "typeRef", input.type())
          .text("text", input.expression())
          .close()
          .close();
    }
    table.outputs().forEach(this::output);
    for (Table.Row row : table.rows()) {
      xml.open("rule");
      row.tests().forEach(test -> entry("inputEntry", test));
      row.results().forEach(result -> entry("outputEntry", result));
      xml.close();
    }
    xml.close();
  }

  private void output(Table.Output output) {
    if (output.name().isEmpty()) {
      xml.open("output");
    } else {
      xml.open("output", "name", output.name(), "typeRef", output.type());
    }
    xml.open("defaultOutputEntry").text("text", output.otherwise()).close().close();
  }

  private void entry(String kind, String text) {
    xml.open(kind).text("text", text).close();
  }
}
