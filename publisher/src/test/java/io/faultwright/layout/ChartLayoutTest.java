package io.faultwright.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.flow.Demos;
import io.faultwright.flow.Flowchart;
import io.faultwright.flow.Imprint;
import io.faultwright.model.ShownUnits;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Charts of all sizes keep the laws of a printed page. */
class ChartLayoutTest {
  static Stream<Arguments> handMade() {
    return Stream.of(
        Arguments.of("small", SampleCharts.small()),
        Arguments.of("defrost", SampleCharts.defrost()),
        Arguments.of("spine of 3", SampleCharts.spine(3)),
        Arguments.of("spine of 8", SampleCharts.spine(8)),
        Arguments.of("spine of 30", SampleCharts.spine(30)));
  }

  /** Two hundred charts of 3 to 150 nodes. */
  static Stream<Arguments> generated() {
    return IntStream.range(0, 200)
        .mapToObj(seed -> Arguments.of(seed, VariedCharts.of(seed, 3 + seed * 147 / 199)));
  }

  static Stream<Arguments> derived() {
    return Stream.concat(
            Demos.all().stream(),
            Stream.of(ShownUnits.US, ShownUnits.BOTH).flatMap(u -> Demos.shownIn(u).stream()))
        .flatMap(
            knowledge ->
                knowledge.symptoms().values().stream()
                    .flatMap(symptom -> Demos.charts(knowledge, symptom).stream())
                    .map(
                        one ->
                            Arguments.of(
                                one.chart().symptom() + " " + one.scope(),
                                one.chart(),
                                Imprint.of(knowledge.handbook(), true))));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("handMade")
  void handMadeChartsKeepTheLaws(String name, Flowchart chart) {
    for (Paper paper : Paper.values()) {
      PageLaws.check(chart, pages(chart, SampleCharts.IMPRINT, paper), paper);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("generated")
  void generatedChartsKeepTheLaws(int seed, Flowchart chart) {
    Paper paper = Paper.values()[seed % Paper.values().length];
    PageLaws.check(chart, pages(chart, SampleCharts.IMPRINT, paper), paper);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("derived")
  void derivedChartsKeepTheLaws(String id, Flowchart chart, Imprint imprint) {
    for (Paper paper : Paper.values()) {
      List<ChartPage> pages = pages(chart, imprint, paper);
      PageLaws.check(chart, pages, paper);
      PageLaws.checkModelOrder(chart, pages);
      List<ChartPage> online =
          new ChartLayout(imprint, paper)
              .pages(chart, Optional.of("https://handbook.example/freezers/symptom/" + id));
      PageLaws.check(chart, online, paper);
      assertTrue(online.stream().allMatch(page -> page.code().isPresent()));
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void theSameChartIsLaidOutAlike(Paper paper) {
    Flowchart chart = SampleCharts.random(7, 60);
    assertEquals(
        pages(chart, SampleCharts.IMPRINT, paper), pages(chart, SampleCharts.IMPRINT, paper));
  }

  @Test
  void smallChartsTakeOnePageInLargeType() {
    List<ChartPage> pages = pages(SampleCharts.small(), SampleCharts.IMPRINT, Paper.A4);
    assertEquals(1, pages.size());
    double size = pages.get(0).nodes().get(0).texts().get(0).size();
    assertTrue(size >= 12, () -> "size " + size);
  }

  /** No text is cut or printed on another, even one of two thousand letters. */
  @Test
  void endlessTextsTakeLargerPaper() {
    Flowchart chart = SampleCharts.hostile();
    List<ChartPage> pages = pages(chart, SampleCharts.IMPRINT, Paper.LETTER);
    PageLaws.checkOnAnyPaper(chart, pages);
    int longest = Math.max(Paper.LETTER.width(), Paper.LETTER.height());
    assertTrue(pages.stream().anyMatch(page -> Math.max(page.width(), page.height()) > longest));
  }

  /** The head takes two lines; what it leaves out stands at the foot, all of it. */
  @Test
  void aLongScopeStandsInFullAtTheFoot() {
    String models =
        IntStream.rangeClosed(1, 60)
            .mapToObj(i -> String.format(Locale.ROOT, "FELL-%02d", i))
            .collect(Collectors.joining(", "));
    for (String scope : List.of("FELL-01, FELL-02", models)) {
      Flowchart chart =
          new SampleCharts.Builder("Alarm lamp stays on", scope)
              .check("lamp", "Does the lamp go out?", List.of())
              .fault("a", "One", "")
              .fault("b", "Two", "")
              .edge("start", "", "lamp")
              .edge("lamp", "Yes", "a")
              .edge("lamp", "No", "b")
              .build();
      for (Paper paper : Paper.values()) {
        List<ChartPage> pages = pages(chart, SampleCharts.IMPRINT, paper);
        PageLaws.check(chart, pages, paper);
        String texts =
            pages.get(0).texts().stream().map(Text::content).collect(Collectors.joining(" "));
        assertTrue(texts.contains(scope), texts);
        assertEquals(scope.equals(models), texts.contains("(in full at the foot of the page)"));
      }
    }
  }

  @Test
  void draftsSaySo() {
    Imprint draft = new Imprint("Handbook", "", "7", "2026-03-02", "", true, "en");
    ChartPage page = pages(SampleCharts.small(), draft, Paper.A4).get(0);
    assertTrue(page.texts().stream().anyMatch(text -> text.content().equals("DRAFT, Page 1 of 1")));
  }

  /** A page holds about twelve nodes, and connectors that count half. */
  @Test
  void pagesAreNotOverfull() {
    for (ChartPage page : pages(SampleCharts.random(3, 120), SampleCharts.IMPRINT, Paper.A4)) {
      assertTrue(page.nodes().size() <= 20, () -> "nodes " + page.nodes().size());
    }
  }

  private static List<ChartPage> pages(Flowchart chart, Imprint imprint, Paper paper) {
    return new ChartLayout(imprint, paper).pages(chart);
  }
}
