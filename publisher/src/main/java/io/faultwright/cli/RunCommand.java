package io.faultwright.cli;

import io.faultwright.input.TableUse;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.pipeline.CaseRuns;
import io.faultwright.pipeline.InputRun;
import io.faultwright.report.CaseRun;
import io.faultwright.report.RowCountsText;
import io.faultwright.report.RunReport;
import io.faultwright.report.TraceCsv;
import io.faultwright.report.TraceJson;
import io.faultwright.report.TraceText;
import io.faultwright.resolve.ColumnMap;
import io.faultwright.source.Sources;
import java.io.BufferedReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs cases through the rules and says what they conclude, and why. */
@Command(
    name = "run",
    description = "Run cases through the rules: what is concluded, still possible, ruled out.")
final class RunCommand implements Callable<Integer> {
  private final Console console;

  @Spec private CommandSpec spec;

  @Mixin private KnowledgeBaseFolder folder;

  @Parameters(
      index = "1..*",
      paramLabel = "CASE-ID",
      description = "Cases of the knowledge base; all of them where none is named.")
  private List<String> ids = new ArrayList<>();

  @Option(
      names = "--input",
      paramLabel = "FILE",
      description = {
        "Cases from a file instead: YAML with `cases:`, a table (CSV) with a header row, or the"
            + " JSON report of `check`; `-` is standard input."
      })
  private Optional<String> input;

  @Mixin private ColumnsOption columns;

  @Option(
      names = "--explain",
      description = "Say for each rule why it fires, could fire or cannot.")
  private boolean explain;

  @Option(names = "--format", paramLabel = "text|json|csv", description = "How to print.")
  private RunFormat format = RunFormat.TEXT;

  RunCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    require(input.isEmpty() || ids.isEmpty(), "give the ids of cases or `--input`, not both");
    require(input.isPresent() || !columns.isGiven(), "`--columns` goes with `--input`");
    ProblemPrinter printer = new ProblemPrinter(console, format == RunFormat.JSON);
    return printer.guard(folder, sources -> run(sources, printer));
  }

  private void require(boolean sound, String message) {
    if (!sound) {
      throw new ParameterException(spec.commandLine(), message);
    }
  }

  private int run(Sources sources, ProblemPrinter printer) {
    CaseRuns runs = new CaseRuns(sources);
    return input
        .map(file -> columns.with(printer, runs::columns, map -> runFile(runs, file, map)))
        .orElseGet(() -> print(runs.knowledge(), runs.named(ids)));
  }

  private int print(KnowledgeBase kb, RunReport report) {
    console.print(
        switch (format) {
          case TEXT -> new TraceText(kb, console.outInk()).write(report, explain);
          case JSON -> new TraceJson(kb).write(report, explain);
          case CSV -> TraceCsv.write(report);
        });
    return report.failed() > 0 ? Exit.FINDINGS : Exit.CLEAN;
  }

  /** Text and rows are printed case by case, and no case is kept. */
  private int runFile(CaseRuns runs, String file, Optional<ColumnMap> map) {
    KnowledgeBase kb = runs.knowledge();
    TraceText text = new TraceText(kb, console.outInk());
    List<CaseRun> kept = new ArrayList<>();
    InputRun run =
        read(
            runs,
            file,
            map.map(TableUse::foreign).orElse(TableUse.OWN),
            switch (format) {
              case TEXT -> one -> console.out().print(text.run(one, explain));
              case JSON -> kept::add;
              case CSV -> new TraceCsv(console.out())::add;
            });
    if (format == RunFormat.TEXT) {
      console
          .out()
          .print(text.closing(run.counts().run(), run.counts().agreed(), run.counts().disagreed()));
    } else if (format == RunFormat.JSON) {
      RunReport report = new RunReport(kb.handbook().title(), kept, run.problems());
      console.out().print(new TraceJson(kb).write(report, explain));
    }
    console.out().flush();
    return said(run);
  }

  private InputRun read(CaseRuns runs, String file, TableUse use, Consumer<CaseRun> each) {
    String shown = InputFile.shown(file);
    BufferedReader text = InputFile.open(file, console.in());
    return InputFile.guard(shown, text, () -> runs.of(shown, text, use, each));
  }

  private int said(InputRun run) {
    SkippedRows skipped = new SkippedRows(console);
    if (format == RunFormat.JSON) {
      skipped.notes(run);
    } else {
      skipped.say(run);
    }
    console.say(RowCountsText.line(run.counts()));
    return SkippedRows.code(run.counts());
  }
}
