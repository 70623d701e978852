package io.faultwright.cli;

import io.faultwright.diagnostic.Problem;
import io.faultwright.field.FieldBook;
import io.faultwright.field.FieldCase;
import io.faultwright.field.FieldReport;
import io.faultwright.field.FrequencyEdit;
import io.faultwright.field.RowCounts;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.pipeline.FieldRuns;
import io.faultwright.pipeline.InputRun;
import io.faultwright.report.FieldCsv;
import io.faultwright.report.FieldJson;
import io.faultwright.report.FieldText;
import io.faultwright.report.FrequencyText;
import io.faultwright.report.RowCountsText;
import io.faultwright.resolve.ColumnMap;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.Sources;
import java.io.BufferedReader;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Sets recorded jobs beside the rules: where technicians found something else, and how often. */
@Command(
    name = "field",
    description =
        "Set recorded jobs beside the rules: where technicians confirmed another fault, and which"
            + " reading tells those jobs apart.")
final class FieldCommand implements Callable<Integer> {
  private final Console console;

  @Spec private CommandSpec spec;

  @Mixin private KnowledgeBaseFolder folder;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "FILE",
      description =
          "Recorded jobs: a table (CSV) with a header row, or YAML with `cases:`; `-` is standard"
              + " input.")
  private List<String> files = new ArrayList<>();

  @Mixin private ColumnsOption columns;

  @Option(
      names = "--frequencies",
      description = "Also say how often each fault is met, the confirmed jobs added.")
  private boolean frequencies;

  @Option(
      names = "--write",
      description = "Put the updated frequencies into the knowledge base; with `--frequencies`.")
  private boolean write;

  @Option(
      names = "--format",
      paramLabel = "text|json|csv",
      description = "How to print; csv has a row for each job instead of the report.")
  private RunFormat format = RunFormat.TEXT;

  FieldCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    require(frequencies || !write, "`--write` goes with `--frequencies`");
    require(
        !frequencies || format != RunFormat.CSV,
        "`--frequencies` are printed as text or json, not as csv");
    ProblemPrinter printer = new ProblemPrinter(console, format == RunFormat.JSON);
    return printer.guard(
        folder,
        sources -> {
          FieldRuns runs = new FieldRuns(sources);
          return columns.with(
              printer, runs::columns, map -> run(sources, runs, map.orElse(ColumnMap.NONE)));
        });
  }

  private void require(boolean sound, String message) {
    if (!sound) {
      throw new ParameterException(spec.commandLine(), message);
    }
  }

  private int run(Sources sources, FieldRuns runs, ColumnMap map) {
    KnowledgeBase kb = runs.knowledge();
    FieldBook book = new FieldBook(kb);
    Consumer<FieldCase> each =
        format == RunFormat.CSV ? new FieldCsv(console.out())::add : book::add;
    List<InputRun> all = new ArrayList<>();
    try (RowProgress progress = new RowProgress(console)) {
      Consumer<FieldCase> shown = each.andThen(one -> progress.row());
      files.forEach(file -> all.add(read(runs, file, map, shown)));
    }
    console.out().flush();
    RowCounts counts = all.stream().map(InputRun::counts).reduce(RowCounts.NONE, RowCounts::plus);
    said(all, counts);
    if (format != RunFormat.CSV) {
      FieldReport report = book.report(counts);
      print(kb, report, all);
      if (frequencies) {
        frequencies(kb, sources, report);
      }
    }
    return SkippedRows.code(counts);
  }

  private InputRun read(FieldRuns runs, String file, ColumnMap map, Consumer<FieldCase> each) {
    String shown = InputFile.shown(file);
    BufferedReader text = InputFile.open(file, console.in());
    return InputFile.guard(shown, text, () -> runs.of(shown, text, map, each));
  }

  private void said(List<InputRun> all, RowCounts counts) {
    SkippedRows skipped = new SkippedRows(console);
    all.forEach(format == RunFormat.JSON ? skipped::notes : skipped::say);
    if (format == RunFormat.CSV) {
      console.say(RowCountsText.line(counts));
    }
  }

  private void print(KnowledgeBase kb, FieldReport report, List<InputRun> all) {
    if (format == RunFormat.JSON) {
      List<Problem> problems = all.stream().flatMap(run -> run.problems().stream()).toList();
      console.print(new FieldJson(kb).write(report, problems, frequencies));
    } else {
      String text = new FieldText(kb, console.outInk()).write(report);
      String further = frequencies ? "\n" + FrequencyText.write(report.frequencies()) : "";
      console.print(text + further);
    }
  }

  /** Nothing is written that could not be read again. */
  private void frequencies(KnowledgeBase kb, Sources sources, FieldReport report) {
    if (!write) {
      say("nothing was written: `--write` puts these frequencies into the knowledge base");
      return;
    }
    FrequencyEdit edit =
        new FrequencyEdit(
            kb, sources, path -> ChangedFiles.unchanged(folder.path(), path, sources));
    SortedMap<String, String> changed = edit.of(report.frequencies());
    FrequencyEdit.requireWritten(Resolver.resolve(edit.after(changed)), report.frequencies());
    ChangedFiles.write(folder.path(), changed);
    say(
        changed.isEmpty()
            ? "nothing was written: no fault was confirmed"
            : "written: " + String.join(", ", changed.keySet()));
  }

  /** Into the report for people, and beside the one for machines. */
  private void say(String line) {
    if (format == RunFormat.JSON) {
      console.say(line + "\n");
    } else {
      console.print(line + "\n");
    }
  }
}
