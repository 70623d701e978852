package io.faultwright.cli;

import io.faultwright.finding.Finding;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.output.AtomicFolder;
import io.faultwright.pipeline.QuizRun;
import io.faultwright.quiz.Quiz;
import io.faultwright.report.CheckText;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes the quiz of a session out of the rules. */
@Command(
    name = "quiz",
    description = {
      "Make the quiz of a session: every item is proved to have exactly one right answer.",
      "%nGive out what lies in `hand-out`. All else holds the answers: keep it to yourself.%n"
    })
final class QuizCommand implements Callable<Integer> {
  private static final int MOST = 999;

  private final Console console;

  @Mixin private KnowledgeBaseFolder folder;

  @Parameters(index = "1", paramLabel = "SESSION", description = "Id of the session.")
  private String session;

  @Option(
      names = "--seed",
      required = true,
      paramLabel = "N",
      description = "A number of your choice; the same number makes the same quiz.")
  private long seed;

  @Option(
      names = "--items",
      paramLabel = "N",
      description = "So many items from all symptoms of the session, instead of its blueprint.")
  private Optional<Integer> items = Optional.empty();

  @Option(
      names = "--participants",
      paramLabel = "N",
      defaultValue = "1",
      description = "So many variants, each with figures of its own; 1 where nothing is said.")
  private int participants;

  @Option(
      names = "--to",
      required = true,
      paramLabel = "DIR",
      description = "Folder for the quiz; what was written there before is replaced.")
  private Path to;

  @Option(
      names = "--paper",
      description = "Also write the quiz on paper, and a table for what is ticked on it.")
  private boolean paper;

  @Mixin private LanguageOption language;

  @Option(names = "--timings", description = "Print to standard error how long each phase took.")
  private boolean timings;

  @Spec private CommandSpec spec;

  QuizCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    require(items.orElse(1), "--items");
    require(participants, "--participants");
    CourseFolder.QUIZ.require(to);
    return new ProblemPrinter(console, false).guard(folder, this::quiz);
  }

  private void require(int number, String option) {
    if (number < 1 || number > MOST) {
      throw new ParameterException(
          spec.commandLine(), "`" + option + "` is " + number + "; give 1 to " + MOST);
    }
  }

  private int quiz(Sources sources) {
    try (Watching watching = new Watching(console, timings)) {
      QuizRun run = new QuizRun(sources, session, watching);
      KnowledgeBase printed = language.of(run.knowledge());
      List<Finding> findings = run.findings();
      if (!findings.isEmpty()) {
        CheckText text = new CheckText(run.knowledge(), sources, console.outInk());
        console.print(text.findings(findings) + "no quiz was written\n");
        return Exit.FINDINGS;
      }
      OptionalInt wanted = items.map(OptionalInt::of).orElse(OptionalInt.empty());
      Quiz quiz = run.make(seed, wanted, participants);
      write(new QuizFiles(printed, run.session(), quiz));
      return Exit.CLEAN;
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  private void write(QuizFiles quiz) throws IOException {
    SortedMap<String, byte[]> files = quiz.all();
    if (paper) {
      console.say(Undrawn.warning("paper", quiz.paper()));
    }
    new AtomicFolder(to).publish(sink -> sink.writeAll(files));
    console.print("written: " + to.resolve("quiz.txt") + "\n");
    console.print("to give out: " + to.resolve("hand-out") + "\n");
  }
}
