package io.faultwright.site;

import io.faultwright.finding.Finding;
import io.faultwright.layout.Paper;
import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.page.Bulletin;
import io.faultwright.page.ChartSheet;
import io.faultwright.page.PrintedCopies;
import io.faultwright.page.PrintedCopies.ChartPages;
import io.faultwright.page.PrintedCopies.Fresh;
import io.faultwright.page.Since;
import io.faultwright.page.Target;
import io.faultwright.page.Target.Kind;
import io.faultwright.pipeline.Compared;
import io.faultwright.pipeline.Comparing;
import io.faultwright.pipeline.Watch;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** The sample handbook compared with an earlier one, in which it had fewer rules and symptoms. */
final class SampleChanges {
  private SampleChanges() {}

  /** A draft that tells what changed, with a bulletin. */
  static Options draft(KnowledgeBase kb, List<Finding> findings, boolean pdf) {
    Since since = since(kb);
    return new Options(
        true,
        findings,
        pdf,
        Paper.A4,
        Optional.of(since),
        Optional.of(bulletin(since)),
        List.of(),
        new TreeMap<>());
  }

  /** With a copy of each kind to be replaced, thrown away and printed. */
  private static Bulletin bulletin(Since since) {
    ChartSheet first = new ChartSheet(() -> "", "", 1, 2);
    ChartSheet second = new ChartSheet(() -> "", "", 2, 2);
    ChartPages charts = new ChartPages(List.of(first, second), List.of(new Fresh(first, 1)));
    PrintedCopies printed =
        new PrintedCopies(
            new TreeMap<>(Map.of("ice-left", charts)),
            new TreeSet<>(Set.of("ice-left")),
            List.of(new Target(Kind.SYMPTOM, "ice-left"), Target.SAFETY));
    return new Bulletin(
        since,
        List.of("The test bench showed another cause."),
        "en",
        new TreeMap<>(Map.of("en", printed)));
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
        kb.sequences(),
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
