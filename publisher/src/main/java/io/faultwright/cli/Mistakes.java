package io.faultwright.cli;

import io.faultwright.diagnostic.NearMatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with a command as it was typed, and what was likely meant. */
final class Mistakes implements IParameterExceptionHandler {
  private final Console console;

  Mistakes(Console console) {
    this.console = console;
  }

  @Override
  public int handleParseException(ParameterException mistake, String[] args) {
    CommandLine command = mistake.getCommandLine();
    console.say("error: " + message(mistake) + "\n");
    help(mistake, command).forEach(line -> console.say("  help: " + line + "\n"));
    return Exit.UNREADABLE;
  }

  private static List<String> help(ParameterException mistake, CommandLine command) {
    List<String> lines = new ArrayList<>();
    if (mistake instanceof UnmatchedArgumentException unmatched) {
      String written = unmatched.getUnmatched().get(0);
      lines.add(
          NearMatch.help(written, written.startsWith("-") ? options(command) : commands(command)));
    }
    if (mistake.getArgSpec() != null && mistake.getArgSpec().description().length > 0) {
      lines.add(name(mistake.getArgSpec()) + ": " + mistake.getArgSpec().description()[0]);
    }
    lines.add("`" + command.getCommandSpec().qualifiedName() + " --help` shows how it is used");
    lines.removeIf(String::isBlank);
    return lines;
  }

  private static String message(ParameterException mistake) {
    if (mistake instanceof UnmatchedArgumentException unmatched) {
      return unmatched(unmatched);
    }
    if (mistake instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
      List<ArgSpec> absent = missing.getMissing();
      return absent.stream().map(Mistakes::name).collect(Collectors.joining(", "))
          + (absent.size() == 1 ? " is missing" : " are missing");
    }
    return mistake.getArgSpec() != null && mistake.getValue() != null
        ? "`" + bareName(mistake.getArgSpec()) + "` cannot be `" + mistake.getValue() + "`"
        : lowered(mistake.getMessage());
  }

  private static String unmatched(UnmatchedArgumentException unmatched) {
    String written = unmatched.getUnmatched().get(0);
    if (written.startsWith("-")) {
      return "there is no option `" + written + "`";
    }
    return unmatched.getCommandLine().getSubcommands().isEmpty()
        ? "`" + written + "` is one argument too many"
        : "there is no command `" + written + "`";
  }

  private static String name(ArgSpec argument) {
    return argument instanceof OptionSpec option
        ? "`" + option.longestName() + " " + option.paramLabel() + "`"
        : "`" + argument.paramLabel() + "`";
  }

  private static String bareName(ArgSpec argument) {
    return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
  }

  private static List<String> options(CommandLine command) {
    return command.getCommandSpec().options().stream().map(OptionSpec::longestName).toList();
  }

  private static List<String> commands(CommandLine command) {
    return List.copyOf(command.getSubcommands().keySet());
  }

  private static String lowered(String text) {
    return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
  }
}
