package io.faultwright.cli;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.pipeline.Compared;
import io.faultwright.pipeline.Comparing;
import io.faultwright.report.CompareJson;
import io.faultwright.report.CompareText;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what means something else in a new revision, proved over all situations. */
@Command(
    name = "compare",
    description = "Show what means something else in a new revision, or prove that nothing does.")
final class CompareCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(
      index = "0",
      paramLabel = "OLD",
      description = "Folder of the old revision, or its Git tag, branch or commit.")
  private String before;

  @Parameters(
      index = "1",
      paramLabel = "NEW",
      description = "Folder of the new revision, or its Git tag, branch or commit.")
  private String after;

  @Option(
      names = "--of",
      paramLabel = "KB",
      description = "Knowledge base that the Git revisions are of, where no folder is given.")
  private Optional<Path> of = Optional.empty();

  @Option(names = "--format", paramLabel = "text|json", description = "How to print the report.")
  private CheckFormat format = CheckFormat.TEXT;

  @Option(names = "--timings", description = "Print to standard error how long each phase took.")
  private boolean timings;

  CompareCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Revisions revisions = new Revisions(before, after, of);
    Revision old = new Revision("old", before, revisions::before);
    Revision current = new Revision("new", after, revisions::after);
    ProblemPrinter printer = new ProblemPrinter(console, format == CheckFormat.JSON);
    return printer.guard(old, first -> printer.guard(current, second -> compare(first, second)));
  }

  private int compare(KnowledgeBase first, KnowledgeBase second) {
    Compared compared = compared(first, second);
    console.print(
        format == CheckFormat.JSON
            ? new CompareJson(compared.shared()).write(compared.comparison())
            : new CompareText(compared.shared(), console.outInk()).write(compared.comparison()));
    return compared.comparison().sameMeaning() ? Exit.CLEAN : Exit.FINDINGS;
  }

  private Compared compared(KnowledgeBase first, KnowledgeBase second) {
    try (Watching watching = new Watching(console, timings)) {
      return new Comparing(watching).compare(first, second);
    }
  }
}
