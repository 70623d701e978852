package io.faultwright.cli;

import io.faultwright.report.Ink;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** The commands there are. */
@Command(
    name = "faultwright",
    versionProvider = ProductVersion.class,
    header = "Fault-diagnosis rules in plain YAML: proved, then published.",
    description = {
      "%nKB is a folder with `handbook.yaml`; every *.yaml below it is read.",
      "Exit codes: 0 clean, 1 findings of severity error, 2 wrong use or unreadable input,"
          + " 3 internal failure."
    },
    synopsisSubcommandLabel = "COMMAND")
final class Faultwright implements Runnable {
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      scope = CommandLine.ScopeType.INHERIT,
      description = "Show this help.")
  private boolean help;

  @Option(
      names = {"-V", "--version"},
      versionHelp = true,
      description = "Show the version.")
  private boolean version;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  /** Runs what the arguments ask for; never throws. */
  static int execute(Console console, String... args) {
    try {
      return commandLine(console, args).execute(args);
    } catch (Throwable failure) {
      return new Failures(console).internal(failure);
    }
  }

  /** In the order in which they are listed. */
  private static List<Callable<Integer>> commands(Console console) {
    return List.of(
        new CheckCommand(console),
        new RunCommand(console),
        new FollowCommand(console),
        new FieldCommand(console),
        new PublishCommand(console),
        new ChartCommand(console),
        new CardCommand(console),
        new CompareCommand(console),
        new CasesCommand(console),
        new SuggestCommand(console),
        new ExportCommand(console),
        new ImportCommand(console),
        new TellApartCommand(console),
        new SignCommand(console),
        new BulletinCommand(console),
        new ReviewCommand(console),
        new ReleaseCommand(console),
        new SessionCommand(console),
        new QuizCommand(console),
        new GradeCommand(console),
        new CertificatesCommand(console),
        new VerifyCertificateCommand(console));
  }

  private static String name(Callable<Integer> command) {
    return command.getClass().getAnnotation(Command.class).name();
  }

  /** With all commands, or only with the one that is asked for: to look at all takes a while. */
  private static CommandLine commandLine(Console console, String... args) {
    List<Callable<Integer>> all = commands(console);
    List<Callable<Integer>> asked =
        all.stream().filter(one -> args.length > 0 && name(one).equals(args[0])).toList();
    CommandLine line = new CommandLine(new Faultwright());
    (asked.isEmpty() ? all : asked).forEach(line::addSubcommand);
    Ansi ansi = console.outInk() == Ink.COLOURED ? Ansi.ON : Ansi.OFF;
    return line.setOut(console.out())
        .setErr(console.err())
        .setColorScheme(CommandLine.Help.defaultColorScheme(ansi))
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setParameterExceptionHandler(new Mistakes(console))
        .setExecutionExceptionHandler(
            (Exception failure, CommandLine at, ParseResult parsed) ->
                new Failures(console).of(failure));
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getErr());
    throw new ParameterException(spec.commandLine(), "a command is missing");
  }
}
