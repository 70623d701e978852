package io.faultwright.cli;

import io.faultwright.adequacy.Measured;
import io.faultwright.flow.ChartWalk;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.output.AtomicFile;
import io.faultwright.page.CasesSheet;
import io.faultwright.page.CasesSheets;
import io.faultwright.pipeline.CaseMeasure;
import io.faultwright.pipeline.Stop;
import io.faultwright.render.html.CasesHtml;
import io.faultwright.report.CasesJson;
import io.faultwright.report.CasesText;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Says how good the set of recorded cases is. */
@Command(name = "cases", description = "Measure how much of the rules the recorded cases show.")
final class CasesCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private KnowledgeBaseFolder folder;

  @Option(names = "--symptom", paramLabel = "ID", description = "Look at this symptom only.")
  private Optional<String> symptom = Optional.empty();

  @Option(
      names = "--mistakes",
      description =
          "Put small mistakes into rules and limits too, and count those that a case notices;"
              + " takes longer.")
  private boolean mistakes;

  @Option(
      names = "--boundary-values",
      paramLabel = "2|3",
      converter = BoundaryValues.Converter.class,
      description = "How many values each threshold asks for: one on either side, or three.")
  private BoundaryValues boundaryValues = BoundaryValues.TWO;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      converter = SecondsConverter.class,
      description = "Stop after N seconds, and report what was done until then.")
  private Optional<Duration> seconds = Optional.empty();

  @Option(names = "--format", paramLabel = "text|json", description = "How to print the report.")
  private CheckFormat format = CheckFormat.TEXT;

  @Option(names = "--all", description = "List everything that is open, not only the first few.")
  private boolean all;

  @Option(
      names = "--page",
      paramLabel = "FILE.html",
      description = "Write the report as a page for a browser or a printer, too.")
  private Optional<Path> page = Optional.empty();

  @Option(names = "--timings", description = "Print to standard error how long each phase took.")
  private boolean timings;

  CasesCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    return new ProblemPrinter(console, format == CheckFormat.JSON).guard(folder, this::measure);
  }

  private int measure(Sources sources) {
    KnowledgeBase kb = Resolver.resolve(sources);
    try (Interruption interruption = new Interruption(new Stop(seconds), console)) {
      Measured measured = measured(kb, interruption.stop());
      page.ifPresent(file -> write(file, CasesSheets.of(kb, measured)));
      console.print(
          format == CheckFormat.JSON
              ? new CasesJson(kb).write(measured)
              : new CasesText(kb, console.outInk(), all).write(measured));
      return code(measured);
    }
  }

  private Measured measured(KnowledgeBase kb, Stop stop) {
    CaseMeasure.Options options =
        new CaseMeasure.Options(symptom, mistakes, boundaryValues.three());
    try (Watching watching = new Watching(console, timings)) {
      return new CaseMeasure(options, ChartWalk::goals, stop, watching).measure(kb);
    }
  }

  private static void write(Path file, CasesSheet sheet) {
    try {
      AtomicFile.write(file, new CasesHtml().print(sheet).getBytes(StandardCharsets.UTF_8));
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  private static int code(Measured measured) {
    boolean open = measured.counts().failed() > 0 || !measured.done().whole();
    return open ? Exit.FINDINGS : Exit.CLEAN;
  }
}
