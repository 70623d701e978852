package io.faultwright.lesson;

import io.faultwright.analysis.judge.Judge;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.flow.ChartBuilder;
import io.faultwright.flow.Imprint;
import io.faultwright.flow.ScopedChart;
import io.faultwright.flow.Way;
import io.faultwright.layout.Box;
import io.faultwright.layout.ChartLayout;
import io.faultwright.layout.ChartPage;
import io.faultwright.layout.Paper;
import io.faultwright.layout.Trail;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Session;
import io.faultwright.model.Symptom;
import io.faultwright.page.LessonSource.Drawn;
import io.faultwright.prose.Html;
import io.faultwright.render.svg.ChartSvg;
import io.faultwright.render.svg.ChartSvg.Emphasis;
import io.faultwright.words.Words;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The charts of a session's complaints, whole or as far as a way has come. */
final class LessonCharts {
  private final KnowledgeBase kb;
  private final ChartLayout layout;
  private final Words say;
  private final Judge judge;
  private final Map<String, List<ScopedChart>> charts = new HashMap<>();
  private final Map<ScopedChart, List<ChartPage>> pages = new HashMap<>();

  LessonCharts(KnowledgeBase kb, boolean draft, Paper paper) {
    this.kb = kb;
    this.layout = new ChartLayout(Imprint.of(kb.handbook(), draft), paper);
    this.judge = new Judge(kb);
    this.say = Words.of(kb.handbook().language());
  }

  /**
   * The charts that the examples of a session are worked by; without an example about the symptom,
   * the first one for a machine that is taught.
   */
  List<Drawn> taught(Symptom symptom, Session session) {
    List<ScopedChart> worked =
        session.examples().stream()
            .map(example -> kb.cases().get(example.recorded()))
            .filter(recorded -> recorded.symptom().equals(symptom.id()))
            .map(recorded -> judge.observe(symptom, recorded.given()).builds())
            .flatMap(builds -> forMachine(symptom, builds).stream())
            .distinct()
            .toList();
    Stream<ScopedChart> shown =
        worked.isEmpty() ? first(symptom, session).stream() : worked.stream();
    return shown.flatMap(this::whole).toList();
  }

  private Optional<ScopedChart> first(Symptom symptom, Session session) {
    return charts(symptom).stream()
        .filter(chart -> chart.builds().stream().anyMatch(session::teaches))
        .findFirst();
  }

  private Stream<Drawn> whole(ScopedChart chart) {
    List<ChartPage> all = pages(chart);
    return IntStream.range(0, all.size())
        .mapToObj(i -> drawn(chart, i, Emphasis.NONE, Cutout.whole(all.get(i))));
  }

  /** The chart that all of some machines are worked by; absent where there is none to work by. */
  Optional<ScopedChart> forMachine(Symptom symptom, List<Build> builds) {
    return charts(symptom).stream()
        .filter(chart -> !builds.isEmpty() && chart.builds().containsAll(builds))
        .filter(chart -> !chart.course().steps().isEmpty())
        .findFirst();
  }

  /** The page to which a way has come. */
  Drawn along(ScopedChart chart, Way way) {
    Trail trail = Trail.of(pages(chart), way.nodes());
    int page = trail.lastPage();
    return drawn(
        chart,
        page,
        Emphasis.along(trail, page),
        Cutout.around(pages(chart).get(page), trail, page));
  }

  private Drawn drawn(ScopedChart chart, int page, Emphasis emphasis, Box part) {
    List<ChartPage> all = pages(chart);
    return new Drawn(
        chart.scope(),
        page + 1,
        all.size(),
        new Html(ChartSvg.inline(all.get(page), say, emphasis)),
        new Html(ChartSvg.part(all.get(page), say, emphasis, part)));
  }

  private List<ScopedChart> charts(Symptom symptom) {
    return charts.computeIfAbsent(
        symptom.id(), id -> ChartBuilder.charts(SymptomSpace.of(kb, symptom)));
  }

  private List<ChartPage> pages(ScopedChart chart) {
    return pages.computeIfAbsent(chart, one -> layout.pages(one.chart()));
  }
}
