package io.faultwright.cli;

import io.faultwright.ambiguity.Distinctions;
import io.faultwright.pipeline.TellingApart;
import io.faultwright.pipeline.TellingApart.Ahead;
import io.faultwright.report.DistinctionJson;
import io.faultwright.report.DistinctionText;
import io.faultwright.report.ProspectJson;
import io.faultwright.report.ProspectText;
import io.faultwright.source.Sources;
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

/** Says which readings tell faults apart, or what a case leaves open and what to read next. */
@Command(
    name = "tell-apart",
    description = "Show which readings tell faults apart, or what to read next in a case.")
final class TellApartCommand implements Callable<Integer> {
  private final Console console;

  @Spec private CommandSpec spec;

  @Mixin private KnowledgeBaseFolder folder;

  @Parameters(
      index = "1..*",
      paramLabel = "FAULT",
      description = {
        "Say more about these faults: one from all others, or several from each other."
      })
  private List<String> faults = List.of();

  @Option(names = "--symptom", paramLabel = "ID", description = "Look at this symptom only.")
  private Optional<String> symptom = Optional.empty();

  @Option(
      names = "--case",
      paramLabel = "CASE-ID",
      description = "Say what this case leaves open, and what to read next.")
  private Optional<String> recorded = Optional.empty();

  @Option(names = "--format", paramLabel = "text|json", description = "How to print.")
  private CheckFormat format = CheckFormat.TEXT;

  @Option(names = "--timings", description = "Print to standard error how long each phase took.")
  private boolean timings;

  TellApartCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (recorded.isPresent() && (symptom.isPresent() || !faults.isEmpty())) {
      throw new ParameterException(
          spec.commandLine(), "give `--case` alone, or else faults and `--symptom`");
    }
    return new ProblemPrinter(console, format == CheckFormat.JSON).guard(folder, this::tell);
  }

  private int tell(Sources sources) {
    console.print(found(sources));
    return Exit.CLEAN;
  }

  private String found(Sources sources) {
    try (Watching watching = new Watching(console, timings)) {
      TellingApart telling = new TellingApart(sources, watching);
      return recorded.isPresent()
          ? ahead(telling, recorded.get())
          : distinctions(telling, telling.distinctions(symptom, faults));
    }
  }

  private String ahead(TellingApart telling, String id) {
    Ahead ahead = telling.ahead(id);
    return format == CheckFormat.JSON
        ? new ProspectJson(telling.knowledge()).write(ahead.prospect(), ahead.verdict())
        : new ProspectText(telling.knowledge(), console.outInk())
            .write(ahead.prospect(), ahead.verdict());
  }

  private String distinctions(TellingApart telling, Distinctions found) {
    if (format == CheckFormat.JSON) {
      return new DistinctionJson(telling.knowledge()).write(found);
    }
    DistinctionText text = new DistinctionText(telling.knowledge(), console.outInk());
    return faults.isEmpty() ? text.overview(found) : text.details(found);
  }
}
