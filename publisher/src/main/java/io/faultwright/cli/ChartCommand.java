package io.faultwright.cli;

import io.faultwright.analysis.order.OrderCost;
import io.faultwright.flow.ScopedChart;
import io.faultwright.layout.ChartPage;
import io.faultwright.layout.Paper;
import io.faultwright.model.Handbook;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.output.AtomicFile;
import io.faultwright.pipeline.Checked;
import io.faultwright.render.pdf.ChartPdf;
import io.faultwright.render.pdf.PdfBook;
import io.faultwright.render.svg.ChartSvg;
import io.faultwright.site.SingleChart;
import io.faultwright.source.Sources;
import io.faultwright.words.Words;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the chart of one symptom, for all equipment or for one model. */
@Command(
    name = "chart",
    description = "Check the rules, then write the chart of one symptom as SVG or PDF.")
final class ChartCommand implements Callable<Integer> {
  private static final String SVG = ".svg";
  private static final String PDF = ".pdf";

  private static final Proving.Refusal NOTHING =
      new Proving.Refusal(
          "no chart was written",
          "mend the errors, or write it with `--draft`: DRAFT then stands on every page");

  private final Console console;

  @Spec private CommandSpec spec;

  @Mixin private KnowledgeBaseFolder folder;

  @Mixin private LanguageOption language;

  @Parameters(index = "1", paramLabel = "SYMPTOM", description = "Id of the symptom.")
  private String symptom = "";

  @Option(names = "--for", paramLabel = "MODEL", description = "Chart for this model only.")
  private Optional<String> model = Optional.empty();

  @Option(
      names = "--software",
      paramLabel = "VERSION",
      description = "Chart for this software version only.")
  private Optional<String> software = Optional.empty();

  @Option(
      names = "--to",
      required = true,
      paramLabel = "FILE",
      description = "File to write, `.svg` or `.pdf`; as SVG, several pages are numbered files.")
  private Path to;

  @Option(names = "--paper", paramLabel = "a4|letter", description = "Sheet size.")
  private Paper paper = Paper.A4;

  @Option(names = "--draft", description = "Write in spite of errors, with DRAFT on every page.")
  private boolean draft;

  @Option(names = "--timings", description = "Print to standard error how long each phase took.")
  private boolean timings;

  ChartCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (!isKind(SVG) && !isKind(PDF)) {
      throw new ParameterException(
          spec.commandLine(),
          "`" + to + "` ends neither in `" + SVG + "` nor in `" + PDF + "`: one of them is needed");
    }
    return new ProblemPrinter(console, false).guard(folder, this::write);
  }

  private boolean isKind(String ending) {
    return to.toString().toLowerCase(Locale.ROOT).endsWith(ending);
  }

  private int write(Sources sources) {
    Proving proving = new Proving(console, timings);
    Checked checked = proving.checked(sources);
    SingleChart chart = new SingleChart(symptom, model, software);
    KnowledgeBase shown = language.of(checked.knowledge());
    chart.found(shown);
    if (checked.report().errors() > 0 && !draft) {
      return proving.refuse(checked, sources, NOTHING);
    }
    try {
      List<ScopedChart> charts = chart.charts(shown);
      write(shown, chart.pages(shown, charts, draft || shown.handbook().signOffs().asked(), paper));
      charts.forEach(one -> one.cost().ifPresent(cost -> console.print(words(one, cost))));
      return Exit.CLEAN;
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  private void write(KnowledgeBase kb, List<ChartPage> pages) throws IOException {
    if (isKind(PDF)) {
      writePdf(kb.handbook(), pages);
      return;
    }
    for (int i = 0; i < pages.size(); i++) {
      Path file = pages.size() == 1 ? to : numbered(i + 1);
      String svg = ChartSvg.standalone(pages.get(i), Words.of(kb.handbook().language()));
      AtomicFile.write(file, svg.getBytes(StandardCharsets.UTF_8));
      console.print("wrote " + file + "\n");
    }
  }

  private void writePdf(Handbook handbook, List<ChartPage> pages) throws IOException {
    String title = pages.get(0).title();
    PdfBook pdf = new ChartPdf(title, handbook.language(), handbook.date()).write(pages);
    AtomicFile.write(to, pdf.bytes());
    console.print("wrote " + to + ": " + pdf.pages() + (pdf.pages() == 1 ? " page" : " pages"));
    console.print("\n");
    console.say(Undrawn.warning("chart", pdf.undrawn()));
  }

  /** What a way through the chart takes on average, and what is known of other orders. */
  private static String words(ScopedChart chart, OrderCost cost) {
    String scope = chart.scope().isEmpty() ? "All equipment" : chart.scope();
    String others =
        cost.gap() == 0
            ? "no order that the symptom allows costs less"
            : String.format(
                Locale.ROOT,
                "no order that it allows costs less by more than %.1f %%",
                100 * cost.gap());
    return String.format(
        Locale.ROOT,
        "%s: %.1f min on average, %.1f weighted by access; %s\n",
        scope,
        cost.minutes(),
        cost.weighted(),
        others);
  }

  /** {@code FILE-1.svg}, {@code FILE-2.svg} … */
  private Path numbered(int number) {
    String name = to.getFileName().toString();
    int end = name.length() - SVG.length();
    return to.resolveSibling(name.substring(0, end) + "-" + number + name.substring(end));
  }
}
