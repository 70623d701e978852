package io.faultwright.site;

import io.faultwright.finding.Finding;
import io.faultwright.layout.Paper;
import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.page.Since;
import io.faultwright.pipeline.Compared;
import io.faultwright.pipeline.Comparing;
import io.faultwright.pipeline.Watch;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The sample handbook compared with an earlier one, in which it had fewer rules and symptoms. */
final class SampleChanges {
  private SampleChanges() {}

  /** A draft that tells what changed. */
  static Options draft(KnowledgeBase kb, List<Finding> findings, boolean pdf) {
    return new Options(true, findings, pdf, Paper.A4, Optional.of(since(kb)), new TreeMap<>());
  }

  /** A release with a book that tells what changed. */
  static Options release(KnowledgeBase kb) {
    return new Options(false, List.of(), true, Paper.A4, Optional.of(since(kb)), new TreeMap<>());
  }

  static Since since(KnowledgeBase kb) {
    Compared compared = new Comparing(Watch.NOBODY).compare(earlier(kb), kb);
    return new Since(compared.before(), compared.shared(), compared.comparison());
  }

  private static KnowledgeBase earlier(KnowledgeBase kb) {
    SortedMap<String, Symptom> symptoms = new TreeMap<>(kb.symptoms());
    symptoms.computeIfPresent("ice-left", (id, symptom) -> withoutARule(symptom));
    SortedMap<String, Fault> faults = new TreeMap<>(kb.faults());
    faults.replaceAll((id, fault) -> withoutRemedy(fault));
    return new KnowledgeBase(
        kb.handbook(),
        kb.equipment(),
        kb.readings(),
        kb.limits(),
        faults,
        symptoms,
        kb.nevers(),
        kb.cases(),
        kb.cautions(),
        kb.parts(),
        kb.guides(),
        kb.setUps(),
        kb.charts(),
        kb.wordbook());
  }

  private static Symptom withoutARule(Symptom symptom) {
    SortedMap<String, Rule> rules = new TreeMap<>(symptom.rules());
    rules.remove(rules.firstKey());
    return new Symptom(
        symptom.id(),
        symptom.place(),
        symptom.title(),
        symptom.about(),
        symptom.applies(),
        symptom.recognise(),
        symptom.first(),
        rules,
        symptom.nevers(),
        symptom.together(),
        symptom.guide(),
        symptom.hazards());
  }

  private static Fault withoutRemedy(Fault fault) {
    return new Fault(
        fault.id(),
        fault.place(),
        fault.title(),
        fault.about(),
        List.of(),
        fault.verify(),
        fault.parts(),
        fault.nameplate(),
        fault.cautions(),
        fault.frequency(),
        fault.guide(),
        fault.applies());
  }
}
