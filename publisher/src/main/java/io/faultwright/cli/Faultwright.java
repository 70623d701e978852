package io.faultwright.cli;

import io.faultwright.report.Ink;
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
      return commandLine(console).execute(args);
    } catch (Throwable failure) {
      return new Failures(console).internal(failure);
    }
  }

  private static CommandLine commandLine(Console console) {
    Ansi ansi = console.outInk() == Ink.COLOURED ? Ansi.ON : Ansi.OFF;
    return new CommandLine(new Faultwright())
        .addSubcommand(new CheckCommand(console))
        .addSubcommand(new RunCommand(console))
        .addSubcommand(new FieldCommand(console))
        .addSubcommand(new PublishCommand(console))
        .addSubcommand(new ChartCommand(console))
        .addSubcommand(new CardCommand(console))
        .addSubcommand(new CompareCommand(console))
        .addSubcommand(new CasesCommand(console))
        .addSubcommand(new SuggestCommand(console))
        .addSubcommand(new ExportCommand(console))
        .addSubcommand(new ImportCommand(console))
        .addSubcommand(new TellApartCommand(console))
        .addSubcommand(new SignCommand(console))
        .addSubcommand(new BulletinCommand(console))
        .addSubcommand(new ReviewCommand(console))
        .addSubcommand(new ReleaseCommand(console))
        .addSubcommand(new QuizCommand(console))
        .setOut(console.out())
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
