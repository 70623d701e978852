package io.faultwright.cli;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.pipeline.Compared;
import io.faultwright.pipeline.Comparing;
import io.faultwright.report.CompareJson;
import io.faultwright.report.CompareText;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.Sources;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
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
    Side old = new Side("old", before, revisions::before);
    Side current = new Side("new", after, revisions::after);
    return old.with(first -> current.with(second -> compare(first, second)));
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

  /** What is done with a knowledge base that could be read. */
  private interface Work {
    int on(KnowledgeBase kb);
  }

  /** One of the two revisions, read with its problems told apart from the other's. */
  private final class Side {
    private final String word;
    private final String name;
    private final Supplier<Sources> reader;

    Side(String word, String name, Supplier<Sources> reader) {
      this.word = word;
      this.name = name;
      this.reader = reader;
    }

    int with(Work work) {
      Sources sources = new Sources(List.of());
      KnowledgeBase kb;
      try {
        sources = reader.get();
        kb = Resolver.resolve(sources);
      } catch (Unreadable unreadable) {
        ProblemPrinter printer = new ProblemPrinter(console, format == CheckFormat.JSON);
        return printer.print(sources, named(unreadable));
      }
      return work.on(kb);
    }

    private Unreadable named(Unreadable unreadable) {
      return new Unreadable(unreadable.problems().stream().map(this::named).toList());
    }

    private Problem named(Problem problem) {
      String message = word + " revision `" + name + "`: " + problem.message();
      return new Problem(problem.places(), message, problem.help());
    }
  }
}
