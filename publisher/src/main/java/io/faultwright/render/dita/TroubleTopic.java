package io.faultwright.render.dita;

import io.faultwright.page.CautionPanel;
import io.faultwright.page.Fact;
import io.faultwright.page.FaultSection;
import io.faultwright.page.FirstItem;
import io.faultwright.page.Link;
import io.faultwright.page.NeverItem;
import io.faultwright.page.RuleItem;
import io.faultwright.page.Step;
import io.faultwright.page.SymptomSection;
import io.faultwright.words.Words;
import io.faultwright.xml.Xml;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A complaint as a troubleshooting topic: the condition is what is seen and what must be right
 * first; each thing the rules conclude is a solution, its causes the rules, its remedy the repair.
 */
final class TroubleTopic {
  private final Words say;
  private final String language;

  TroubleTopic(Words say, String language) {
    this.say = say;
    this.language = language;
  }

  Xml write(SymptomSection symptom) {
    Xml xml = new Xml().open("troubleshooting", "id", symptom.anchor(), "xml:lang", language);
    xml.text("title", symptom.title());
    if (!symptom.about().isBlank()) {
      xml.text("shortdesc", symptom.about());
    }
    xml.open("troublebody");
    condition(xml, symptom);
    outcomes(symptom).forEach((outcomes, rules) -> solution(xml, symptom, outcomes, rules));
    xml.close();
    if (!symptom.readings().isEmpty()) {
      xml.open("related-links");
      symptom
          .readings()
          .forEach(
              one ->
                  xml.empty(
                      "link", "href", one.anchor() + Doctype.TOPIC.ending(), "type", "topic"));
      xml.close();
    }
    return xml.close();
  }

  private void condition(Xml xml, SymptomSection symptom) {
    xml.open("condition");
    Blocks blocks = new Blocks(xml, say);
    blocks.cautions(symptom.cautions());
    blocks.clauses(say.say("Only for"), symptom.applies());
    blocks.clauses(say.say("You see"), symptom.recognise());
    for (FirstItem first : symptom.first()) {
      blocks.clauses(say.say("Must be right first"), first.when());
      blocks.line(say.say("If not, work") + " " + first.otherwise().text());
    }
    for (NeverItem never : symptom.nevers()) {
      blocks.clauses(say.say("Cannot happen: take these readings again"), never.when());
      blocks.line(never.because());
    }
    xml.close();
  }

  /** Rules by what they lead to, in the order of the first. */
  private static Map<Told, List<RuleItem>> outcomes(SymptomSection symptom) {
    return symptom.rules().stream()
        .collect(
            Collectors.groupingBy(
                rule -> new Told(rule.verb(), rule.outcomes()),
                LinkedHashMap::new,
                Collectors.toList()));
  }

  /** What rules lead to. */
  private record Told(String verb, List<RuleItem.Outcome> outcomes) {
    boolean names(FaultSection fault) {
      String here = "#" + fault.anchor();
      return outcomes.stream()
          .map(RuleItem.Outcome::href)
          .anyMatch(href -> href.endsWith(here) || href.equals(fault.self().href()));
    }

    String words() {
      return verb
          + ": "
          + outcomes.stream().map(RuleItem.Outcome::text).collect(Collectors.joining("; "));
    }
  }

  private void solution(Xml xml, SymptomSection symptom, Told told, List<RuleItem> rules) {
    List<FaultSection> faults = symptom.faults().stream().filter(told::names).toList();
    xml.open("troubleSolution");
    cause(xml, told, faults, rules);
    if (faults.isEmpty() || told.verb().equals(say.say("Ruled out"))) {
      xml.open("remedy").open("steps").open("step").text("cmd", told.words());
      xml.close().close().close();
    } else {
      faults.forEach(fault -> remedy(xml, fault));
    }
    xml.close();
  }

  private void cause(Xml xml, Told told, List<FaultSection> faults, List<RuleItem> rules) {
    xml.open("cause");
    Blocks blocks = new Blocks(xml, say);
    blocks.line(told.words());
    for (FaultSection fault : faults) {
      blocks.line(fault.about());
      blocks.clauses(say.say("Only for"), fault.applies());
    }
    for (RuleItem rule : rules) {
      String number = say.say("Rule") + " " + rule.number();
      String others = rule.insteadOf().stream().map(Link::text).collect(Collectors.joining(", "));
      String silent = others.isEmpty() ? "" : ", " + say.say("instead of") + " " + others;
      blocks.line(number + silent);
      blocks.clauses(say.say("If all of these hold"), rule.when());
      blocks.line(rule.because());
    }
    xml.close();
  }

  private void remedy(Xml xml, FaultSection fault) {
    if (fault.remedy().isEmpty() && fault.verify().isEmpty()) {
      return;
    }
    xml.open("remedy").text("title", fault.title()).open("steps");
    preparation(xml, fault);
    List<CautionPanel> before = fault.cautions();
    for (Step step : fault.remedy()) {
      step(xml, step, before);
      before = List.of();
    }
    if (!fault.verify().isEmpty()) {
      xml.text("stepsection", say.say("Check that it worked"));
    }
    for (Step step : fault.verify()) {
      step(xml, step, before);
      before = List.of();
    }
    xml.close().close();
  }

  /** Parts and nameplate data, before the first step. */
  private void preparation(Xml xml, FaultSection fault) {
    boolean nothing = fault.parts().isEmpty() && fault.nameplate().isEmpty();
    if (nothing || fault.remedy().isEmpty()) {
      return;
    }
    xml.open("stepsection");
    Blocks blocks = new Blocks(xml, say);
    blocks.list("ul", say.say("Parts"), fault.parts().stream().map(TroubleTopic::words).toList());
    fault.nameplate().ifPresent(plate -> plate(blocks, plate));
    xml.close();
  }

  private static String words(Fact part) {
    return part.text().isBlank() ? part.label() : part.label() + ": " + part.text();
  }

  private void plate(Blocks blocks, FaultSection.Plate plate) {
    List<String> columns = new ArrayList<>(List.of(say.say("Models")));
    columns.addAll(plate.columns());
    List<List<String>> rows =
        plate.rows().stream()
            .map(
                row ->
                    Stream.concat(Stream.of(String.join(", ", row.models())), row.cells().stream())
                        .toList())
            .toList();
    blocks.table(columns, rows);
  }

  private void step(Xml xml, Step step, List<CautionPanel> before) {
    xml.open("step");
    Blocks blocks = new Blocks(xml, say);
    blocks.cautions(before);
    blocks.cautions(step.cautions());
    blocks.cautions(step.reminders());
    xml.text("cmd", step.text()).close();
  }
}
