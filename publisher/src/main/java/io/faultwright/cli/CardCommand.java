package io.faultwright.cli;

import io.faultwright.layout.ChartPage;
import io.faultwright.layout.Paper;
import io.faultwright.model.Handbook;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.output.AtomicFile;
import io.faultwright.pipeline.Checked;
import io.faultwright.render.pdf.ChartPdf;
import io.faultwright.render.pdf.PdfBook;
import io.faultwright.site.SingleChart;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.io.UncheckedIOException;
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

/** Writes the pocket card of one symptom. */
@Command(
    name = "card",
    description = "Check the rules, then write the pocket card of one symptom as PDF.")
final class CardCommand implements Callable<Integer> {
  private static final Proving.Refusal NOTHING =
      new Proving.Refusal(
          "no card was written",
          "mend the errors, or write it with `--draft`: DRAFT then stands on it");

  private final Console console;

  @Spec private CommandSpec spec;

  @Mixin private KnowledgeBaseFolder folder;

  @Mixin private LanguageOption language;

  @Parameters(index = "1", paramLabel = "SYMPTOM", description = "Id of the symptom.")
  private String symptom = "";

  @Option(
      names = "--for",
      paramLabel = "MODEL",
      description = "Card for this model only, with its limits.")
  private Optional<String> model = Optional.empty();

  @Option(
      names = "--software",
      paramLabel = "VERSION",
      description = "Card for this software version only.")
  private Optional<String> software = Optional.empty();

  @Option(
      names = "--to",
      required = true,
      paramLabel = "FILE",
      description = "File to write, `.pdf`.")
  private Path to;

  @Option(names = "--four-up", description = "Four cards on one sheet, with marks where it is cut.")
  private boolean fourUp;

  @Option(
      names = "--paper",
      paramLabel = "a4|letter",
      description = "Sheet size; a card is a quarter of it.")
  private Paper paper = Paper.A4;

  @Option(names = "--draft", description = "Write in spite of errors, with DRAFT on the card.")
  private boolean draft;

  @Option(names = "--timings", description = "Print to standard error how long each phase took.")
  private boolean timings;

  CardCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (!to.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
      throw new ParameterException(
          spec.commandLine(), "`" + to + "` does not end in `.pdf`, as a card is a PDF");
    }
    return new ProblemPrinter(console, false).guard(folder, this::write);
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
      write(
          shown.handbook(),
          chart.card(shown, draft || shown.handbook().signOffs().asked(), paper, fourUp));
      return Exit.CLEAN;
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  private void write(Handbook handbook, ChartPage card) throws IOException {
    PdfBook pdf =
        new ChartPdf(card.title(), handbook.language(), handbook.date()).write(List.of(card));
    AtomicFile.write(to, pdf.bytes());
    console.print("wrote " + to + "\n");
    console.say(Undrawn.warning("card", pdf.undrawn()));
  }
}
