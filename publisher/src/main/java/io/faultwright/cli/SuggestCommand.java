package io.faultwright.cli;

import io.faultwright.adequacy.Criterion;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.output.AtomicFile;
import io.faultwright.output.Refused;
import io.faultwright.pipeline.CaseSuggestions;
import io.faultwright.pipeline.CaseSuggestions.Options;
import io.faultwright.pipeline.CaseSuggestions.Suggested;
import io.faultwright.pipeline.Stop;
import io.faultwright.report.SuggestionYaml;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Finds few cases that would show what the recorded ones do not. */
@Command(
    name = "suggest",
    description = "Suggest few cases that show what the recorded ones do not, for you to confirm.")
final class SuggestCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private KnowledgeBaseFolder folder;

  @Option(names = "--symptom", paramLabel = "ID", description = "Look at this symptom only.")
  private Optional<String> symptom;

  @Option(
      names = "--to-show",
      split = ",",
      paramLabel = "WHAT",
      description = {
        "What the cases should show, with commas: ${COMPLETION-CANDIDATES}; all but `pairs` where"
            + " nothing is said."
      })
  private List<Target> targets = new ArrayList<>();

  @Option(
      names = "--boundary-values",
      paramLabel = "2|3",
      converter = BoundaryValues.Converter.class,
      description = "Values at a threshold: the last on either side, or those and itself.")
  private BoundaryValues values = BoundaryValues.TWO;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      converter = SecondsConverter.class,
      description = "Stop after N seconds; what was found until then is printed.")
  private Optional<Duration> seconds;

  @Option(
      names = "--to",
      paramLabel = "FILE.yaml",
      description = "Write the cases into a new file; printed where nothing is said.")
  private Optional<Path> to;

  SuggestCommand(Console console) {
    this.console = console;
  }

  /** What cases can be asked to show. */
  enum Target {
    RULES,
    CONDITIONS,
    MC_DC,
    BOUNDARIES,
    FAULTS,
    PAIRS,
    MISTAKES;

    /** As typed and as shown in the help. */
    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  @Override
  public Integer call() {
    return new ProblemPrinter(console, false).guard(folder, this::suggest);
  }

  private int suggest(Sources sources) {
    to.filter(Files::exists)
        .ifPresent(
            file -> {
              throw new Refused("`" + file + "` exists already", "name a new file");
            });
    KnowledgeBase kb = Resolver.resolve(sources);
    try (Interruption until = new Interruption(new Stop(seconds), console)) {
      Suggested found = found(kb, until.stop());
      print(found, new SuggestionYaml(kb).write(found.cases(), found.done()));
      return found.done().whole() ? Exit.CLEAN : Exit.FINDINGS;
    }
  }

  private Suggested found(KnowledgeBase kb, Stop stop) {
    try (Watching watching = new Watching(console, false)) {
      return new CaseSuggestions(options(), stop, watching).suggest(kb);
    }
  }

  private void print(Suggested found, String text) {
    if (to.isEmpty()) {
      console.print(text);
      return;
    }
    try {
      AtomicFile.write(to.get(), text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    console.say(found.cases().size() + " to be confirmed, in `" + to.get().getFileName() + "`\n");
  }

  private Options options() {
    Set<Target> wanted = targets.isEmpty() ? EnumSet.allOf(Target.class) : EnumSet.copyOf(targets);
    if (targets.isEmpty()) {
      wanted.remove(Target.PAIRS);
    }
    boolean mistakes = wanted.remove(Target.MISTAKES);
    Set<Criterion> criteria = EnumSet.noneOf(Criterion.class);
    wanted.forEach(target -> criteria.add(Criterion.valueOf(target.name())));
    return new Options(symptom, criteria, mistakes, values.three());
  }
}
