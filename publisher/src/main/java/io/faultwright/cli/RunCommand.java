package io.faultwright.cli;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.pipeline.CaseRuns;
import io.faultwright.pipeline.TableRun;
import io.faultwright.report.ProblemText;
import io.faultwright.report.RunReport;
import io.faultwright.report.TraceCsv;
import io.faultwright.report.TraceJson;
import io.faultwright.report.TraceText;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.io.BufferedReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
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
    if (input.isPresent() && !ids.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "give the ids of cases or `--input`, not both");
    }
    return printer().guard(folder, this::run);
  }

  private ProblemPrinter printer() {
    return new ProblemPrinter(console, format == RunFormat.JSON);
  }

  private int run(Sources sources) {
    CaseRuns runs = new CaseRuns(sources);
    if (input.isEmpty()) {
      return print(runs.knowledge(), sources, runs.named(ids));
    }
    if (format == RunFormat.CSV) {
      Optional<BufferedReader> table = InputFile.table(input.get(), console.in());
      if (table.isPresent()) {
        return rowByRow(runs, table.get());
      }
    }
    SourceFile file = InputFile.read(input.get(), console.in());
    return printer()
        .guard(new Sources(List.of(file)), only -> print(runs.knowledge(), only, runs.of(file)));
  }

  private int print(KnowledgeBase kb, Sources sources, RunReport report) {
    console.print(
        switch (format) {
          case TEXT -> new TraceText(kb, console.outInk()).write(report, explain);
          case JSON -> new TraceJson(kb).write(report, explain);
          case CSV -> TraceCsv.write(report);
        });
    if (format != RunFormat.JSON && !report.problems().isEmpty()) {
      console.say(new ProblemText(sources, console.errInk()).skipped(report.problems()));
    }
    return code(report);
  }

  /** A table from a table: nothing of it is kept. */
  private int rowByRow(CaseRuns runs, BufferedReader table) {
    String path = InputFile.shown(input.get());
    TraceCsv rows = new TraceCsv(console.out());
    TableRun run = InputFile.guard(path, table, () -> runs.of(path, table, rows::add));
    console.out().flush();
    if (!run.problems().isEmpty()) {
      console.say(new ProblemText(run.excerpt(), console.errInk()).skipped(run.problems()));
    }
    if (run.left() > 0) {
      console.say(run.left() + " further problems are not shown\n");
    }
    if (!run.problems().isEmpty()) {
      return Exit.UNREADABLE;
    }
    return run.failed() > 0 ? Exit.FINDINGS : Exit.CLEAN;
  }

  private static int code(RunReport report) {
    if (!report.problems().isEmpty()) {
      return Exit.UNREADABLE;
    }
    return report.failed() > 0 ? Exit.FINDINGS : Exit.CLEAN;
  }
}
