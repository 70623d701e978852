package io.faultwright.measure;

import io.faultwright.flow.ChartBuilder;
import io.faultwright.flow.Demos;
import io.faultwright.flow.Flowchart;
import io.faultwright.flow.Imprint;
import io.faultwright.flow.Node.Connector;
import io.faultwright.flow.ScopedChart;
import io.faultwright.layout.ChartLayout;
import io.faultwright.layout.ChartPage;
import io.faultwright.layout.Paper;
import io.faultwright.layout.SampleCharts;
import io.faultwright.layout.VariedCharts;
import io.faultwright.model.KnowledgeBase;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Prints how many pages and connectors the charts take, and how long a chart is laid out.
 *
 * <p>Arguments: {@code pages} counts the charts of both demo knowledge bases; {@code time NODES
 * CHARTS} times generated charts of so many nodes, each once, after a warm-up.
 */
public final class ChartPaging {
  private static final int WARM_UP = 40;

  private ChartPaging() {}

  public static void main(String[] arguments) {
    if (arguments[0].equals("pages")) {
      Demos.all().forEach(ChartPaging::pages);
    } else {
      time(Integer.parseInt(arguments[1]), Integer.parseInt(arguments[2]));
    }
  }

  private static void pages(KnowledgeBase knowledge) {
    List<Flowchart> charts =
        knowledge.symptoms().values().stream()
            .flatMap(symptom -> ChartBuilder.charts(knowledge, symptom).stream())
            .map(ScopedChart::chart)
            .toList();
    for (Paper paper : Paper.values()) {
      ChartLayout layout = new ChartLayout(Imprint.of(knowledge.handbook(), false), paper);
      List<ChartPage> pages = charts.stream().flatMap(c -> layout.pages(c).stream()).toList();
      System.out.printf(
          Locale.ROOT,
          "%s %s: %d charts, %d pages, %d connectors%n",
          knowledge.handbook().title(),
          paper,
          charts.size(),
          pages.size(),
          pages.stream().mapToLong(ChartPaging::exits).sum());
    }
  }

  private static long exits(ChartPage page) {
    return page.nodes().stream()
        .filter(node -> node.node() instanceof Connector c && c.side() == Connector.Side.EXIT)
        .count();
  }

  private static void time(int nodes, int rounds) {
    ChartLayout layout = new ChartLayout(SampleCharts.IMPRINT, Paper.A4);
    for (int i = 0; i < WARM_UP; i++) {
      layout.pages(VariedCharts.of(-1 - i, nodes));
    }
    double[] seconds = new double[rounds];
    for (int i = 0; i < rounds; i++) {
      Flowchart chart = VariedCharts.of(i, nodes);
      long start = System.nanoTime();
      layout.pages(chart);
      seconds[i] = (System.nanoTime() - start) / 1e9;
    }
    Arrays.sort(seconds);
    System.out.printf(
        Locale.ROOT,
        "%d nodes, %d charts: min %.3f s, median %.3f s, max %.3f s%n",
        nodes,
        rounds,
        seconds[0],
        seconds[rounds / 2],
        seconds[rounds - 1]);
  }
}
