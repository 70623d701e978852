package io.faultwright.cli;

import io.faultwright.diagnostic.Problem;
import io.faultwright.logbook.Followed;
import io.faultwright.logbook.Follower;
import io.faultwright.logbook.LogFile;
import io.faultwright.logbook.LogInput;
import io.faultwright.operation.Program;
import io.faultwright.pipeline.Following;
import io.faultwright.report.CaseRun;
import io.faultwright.report.FollowJson;
import io.faultwright.report.FollowText;
import io.faultwright.report.LogDiagnosisText;
import io.faultwright.report.ProblemText;
import io.faultwright.resolve.LogMap;
import io.faultwright.resolve.SetTimes;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.io.BufferedReader;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Follows a log with a sequence of operation, and says where the two part. */
@Command(
    name = "follow",
    description = "Follow a log with a sequence of operation: phases, stops, where the two part.")
final class FollowCommand implements Callable<Integer> {
  private final Console console;

  @Spec private CommandSpec spec;

  @Mixin private KnowledgeBaseFolder folder;

  @Parameters(index = "1", paramLabel = "SEQUENCE", description = "Id of the sequence.")
  private String sequence = "";

  @Option(
      names = "--model",
      required = true,
      paramLabel = "MODEL",
      description = "Model the log is from.")
  private String model = "";

  @Option(
      names = "--software",
      paramLabel = "VERSION",
      description = "Software version on it; may be left out where the model has only one.")
  private Optional<String> software = Optional.empty();

  @Option(
      names = "--log",
      required = true,
      paramLabel = "FILE",
      description =
          "The log: typed lines such as `1:28 door-switch opens`, or with `--columns` a"
              + " table (CSV); `-` is standard input.")
  private String log = "";

  @Option(
      names = "--columns",
      paramLabel = "MAP",
      description = "YAML file that says what the columns of a table mean.")
  private Optional<String> columns = Optional.empty();

  @Option(
      names = "--set",
      paramLabel = "TIME-ID=TIME",
      description = "A time as it is set on the controller, such as `drip-time=\"3 min\"`.")
  private Map<String, String> set = new LinkedHashMap<>();

  @Option(
      names = "--within",
      paramLabel = "TIME",
      description = "By how much the clock of the log may be wrong; one step if not given.")
  private Optional<String> within = Optional.empty();

  @Option(
      names = "--until",
      paramLabel = "TIME",
      description = "Follow the sequence on, after the last entry, up to this time.")
  private Optional<String> until = Optional.empty();

  @Option(
      names = "--last",
      paramLabel = "NUMBER",
      description = "How many phases are printed at most, the last ones; 30 if not given.")
  private int last = 30;

  @Option(
      names = "--symptom",
      paramLabel = "ID",
      description = "Put what the log tells to the rules of this symptom.")
  private Optional<String> symptom = Optional.empty();

  @Option(
      names = "--given",
      paramLabel = "READING=VALUE",
      description = "A reading that the log does not tell, for `--symptom`.")
  private Map<String, String> given = new LinkedHashMap<>();

  @Option(names = "--format", paramLabel = "text|json", description = "How to print.")
  private CheckFormat format = CheckFormat.TEXT;

  FollowCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    require(last >= 0, "`--last` is zero or more");
    require(given.isEmpty() || symptom.isPresent(), "`--given` goes with `--symptom`");
    require(symptom.isEmpty() || format == CheckFormat.TEXT, "`--symptom` is printed as text only");
    ProblemPrinter printer = new ProblemPrinter(console, format == CheckFormat.JSON);
    return printer.guard(folder, sources -> follow(sources, printer));
  }

  private void require(boolean sound, String message) {
    if (!sound) {
      throw new ParameterException(spec.commandLine(), message);
    }
  }

  private int follow(Sources sources, ProblemPrinter printer) {
    Following following = new Following(sources);
    Program program = following.program(sequence, model, software, set);
    if (columns.isEmpty()) {
      return follow(following, program, Optional.empty());
    }
    SourceFile map = InputFile.read(columns.get(), InputStream.nullInputStream());
    List<SourceFile> files = new ArrayList<>(sources.files());
    files.add(map);
    return printer.guard(
        new Sources(files),
        all -> follow(following, program, Optional.of(LogMap.read(map, program.sequence()))));
  }

  private int follow(Following following, Program program, Optional<LogMap> map) {
    long steps = within.map(text -> steps(program, "--within", text)).orElse(1L);
    long further = until.map(text -> steps(program, "--until", text)).orElse(0L);
    String shown = InputFile.shown(log);
    Charset encoding = map.map(LogMap::encoding).orElse(StandardCharsets.UTF_8);
    BufferedReader text = InputFile.open(log, console.in(), encoding);
    Followed followed =
        InputFile.guard(
            shown,
            text,
            notText(shown, encoding, map),
            () -> {
              LogInput input = LogFile.open(shown, text, map, program);
              notes(input);
              return follow(
                  new Follower(program, input.holds(), steps, last), input, program, further);
            });
    console.print(
        format == CheckFormat.JSON
            ? new FollowJson(following.knowledge(), program).write(followed)
            : new FollowText(following.knowledge(), program, console.outInk()).write(followed));
    symptom.ifPresent(id -> console.print(diagnosis(following, program, followed, id)));
    return followed.agrees() ? Exit.CLEAN : Exit.FINDINGS;
  }

  private static Problem notText(String shown, Charset encoding, Optional<LogMap> map) {
    return new Problem(
        List.of(),
        "`" + shown + "` is not " + encoding.name() + " text",
        map.isEmpty()
            ? "save it as UTF-8"
            : "say how it is written in the map of columns, such as `encoding: windows-1252`");
  }

  private String diagnosis(Following following, Program program, Followed followed, String id) {
    CaseRun run = following.diagnosis(program).run(followed, id, given);
    return "\n" + new LogDiagnosisText(following.knowledge(), console.outInk()).write(run);
  }

  private static long steps(Program program, String option, String text) {
    return new SetTimes(program.sequence())
        .seconds(option, text)
        .divide(program.sequence().step())
        .longValue();
  }

  private void notes(LogInput input) {
    ProblemText text = new ProblemText(new Sources(List.of()), console.errInk());
    console.say(text.notes(input.notes()));
  }

  private Followed follow(Follower follower, LogInput input, Program program, long further) {
    try (RowProgress progress = new RowProgress(console)) {
      return Following.follow(follower, input, program, further, progress::row);
    }
  }
}
