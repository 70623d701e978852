package io.faultwright.cli;

import io.faultwright.key.PersonalKeys;
import io.faultwright.output.AtomicFolder;
import io.faultwright.pipeline.Checked;
import io.faultwright.pipeline.Pipeline;
import io.faultwright.pipeline.Scope;
import io.faultwright.pipeline.SignOffCheck;
import io.faultwright.pipeline.Stop;
import io.faultwright.revision.GitHistory;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes everything that a reviewer looks at as pages for a browser or a printer. */
@Command(
    name = "review",
    description = {
      "Write a report for the reviewer: findings, every rule with its cases, the situations in which"
          + " it answers, its last change and its signers, decision tables, texts.",
      "%nThe last change is looked up in the Git history of the folder, where there is one.%n"
    })
final class ReviewCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private KnowledgeBaseFolder folder;

  @Option(
      names = "--to",
      required = true,
      paramLabel = "DIR",
      description = "Folder for the report; what was written there before is replaced.")
  private Path to;

  @Option(
      names = "--no-mistakes",
      description = "Do not put mistakes into rules and limits to see whether a case notices them.")
  private boolean withoutMistakes;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      converter = SecondsConverter.class,
      description = "Stop after N seconds; the report says what is missing.")
  private Optional<Duration> seconds = Optional.empty();

  @Option(names = "--timings", description = "Print to standard error how long each phase took.")
  private boolean timings;

  ReviewCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    return new ProblemPrinter(console, false).guard(folder, this::review);
  }

  private int review(Sources sources) {
    try (Interruption interruption = new Interruption(new Stop(seconds), console);
        Watching watching = new Watching(console, timings)) {
      Stop stop = interruption.stop();
      Scope scope = new Scope(Optional.empty(), seconds);
      SignOffCheck signed = signed(new Pipeline(scope, watching).check(sources));
      Checked checked = signed.checked(scope);
      ReviewReport report =
          ReviewReport.of(
              checked.knowledge(),
              checked,
              signed,
              new GitHistory(folder.path()),
              !withoutMistakes,
              stop,
              watching);
      write(report.files());
      return checked.report().errors() > 0 || !report.whole() ? Exit.FINDINGS : Exit.CLEAN;
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  private SignOffCheck signed(Checked checked) throws IOException {
    return new SignOffCheck(
        checked, GuidePictures.read(folder.path()), new PersonalKeys(console.environment()));
  }

  private void write(SortedMap<String, byte[]> files) throws IOException {
    new AtomicFolder(to).publish(sink -> sink.writeAll(files));
    console.print("written: " + to.resolve("index.html") + "\n");
  }
}
