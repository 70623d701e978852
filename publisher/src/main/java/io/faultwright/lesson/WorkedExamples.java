package io.faultwright.lesson;

import io.faultwright.analysis.judge.Judge;
import io.faultwright.analysis.judge.Observed;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.flow.ScopedChart;
import io.faultwright.flow.Way;
import io.faultwright.model.Band;
import io.faultwright.model.Case;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Session.Phase;
import io.faultwright.model.Session.WorkedExample;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import io.faultwright.page.LessonSource.Drawn;
import io.faultwright.page.LessonSource.Example;
import io.faultwright.page.LessonSource.Moment;
import io.faultwright.page.LessonSource.Taken;
import io.faultwright.run.Runner;
import io.faultwright.run.Trace;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Works recorded cases step by step: what is known, what the rules say, how far the chart leads.
 */
final class WorkedExamples {
  private final KnowledgeBase kb;
  private final LessonCharts charts;
  private final Judge judge;
  private final Runner runner;

  WorkedExamples(KnowledgeBase kb, LessonCharts charts) {
    this.kb = kb;
    this.charts = charts;
    this.judge = new Judge(kb);
    this.runner = new Runner(kb, RuleCompiler.compile(kb));
  }

  Example work(WorkedExample told) {
    Case recorded = kb.cases().get(told.recorded());
    Symptom symptom = kb.symptoms().get(recorded.symptom());
    SortedMap<String, Value> known = new TreeMap<>();
    List<Moment> moments = new ArrayList<>();
    for (Phase phase : told.steps()) {
      Observed before = observe(symptom, recorded, known);
      phase.readings().forEach(id -> known.put(id, recorded.given().readings().get(id)));
      moments.add(moment(symptom, phase, before, observe(symptom, recorded, known)));
    }
    Observed machine = observe(symptom, recorded, new TreeMap<>());
    return new Example(told, recorded, machine.builds(), moments);
  }

  private Observed observe(Symptom symptom, Case recorded, SortedMap<String, Value> readings) {
    return judge.observe(symptom, new Situation(recorded.given().equipment(), readings));
  }

  private Moment moment(Symptom symptom, Phase phase, Observed before, Observed now) {
    Trace trace = runner.run(symptom.id(), now.given());
    return new Moment(
        phase,
        taken(phase, before, now),
        trace.answers(),
        trace.stillPossible(),
        trace.ruledOut(),
        way(symptom, now));
  }

  /** Those of the step, and what is known by them that was not before. */
  private List<Taken> taken(Phase phase, Observed before, Observed now) {
    Stream<Taken> read = phase.readings().stream().map(id -> taken(id, false, now));
    Stream<Taken> follows =
        kb.readings().values().stream()
            .filter(reading -> reading.derived().isPresent())
            .map(reading -> reading.id())
            .filter(id -> !now.given().readings().containsKey(id))
            .filter(id -> now.value(id).isPresent() && before.value(id).isEmpty())
            .map(id -> taken(id, true, now));
    return Stream.concat(read, follows).toList();
  }

  private Taken taken(String id, boolean computed, Observed now) {
    SortedMap<String, Value> beside = new TreeMap<>();
    Stream.concat(drivers(id).stream(), kb.readings().get(id).operands().stream())
        .forEach(other -> now.value(other).ifPresent(value -> beside.put(other, value)));
    return new Taken(id, now.value(id).orElseThrow(), computed, band(id, now), beside);
  }

  private Optional<Band> band(String id, Observed now) {
    return kb.limits().containsKey(id) ? now.band(id) : Optional.empty();
  }

  private List<String> drivers(String id) {
    return Optional.ofNullable(kb.limits().get(id)).map(LimitsTable::drivers).orElse(List.of());
  }

  private Optional<Drawn> way(Symptom symptom, Observed now) {
    Optional<ScopedChart> chart = charts.forMachine(symptom, now.builds());
    return chart.map(one -> charts.along(one, Way.along(kb, one, now)));
  }
}
