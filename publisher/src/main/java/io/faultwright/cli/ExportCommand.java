package io.faultwright.cli;

import io.faultwright.output.AtomicFile;
import io.faultwright.output.Refused;
import io.faultwright.sheet.LimitsExport;
import io.faultwright.sheet.SheetFormat;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes tables of limits for a spreadsheet program. */
@Command(
    name = "export",
    description = "Write tables of limits to a file that spreadsheet programs open.")
final class ExportCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private KnowledgeBaseFolder folder;

  @Option(
      names = "--limits",
      paramLabel = "READING",
      description =
          "The reading whose table to write; may be given several times. Without it, all.")
  private List<String> readings = List.of();

  @Option(
      names = "--to",
      required = true,
      paramLabel = "FILE",
      description = "File to write: .xlsx with a sheet for each table, or .csv with one table.")
  private Path to;

  @Option(names = "--replace", description = "Write over the file where it is there already.")
  private boolean replace;

  ExportCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    SheetFormat format = SheetArguments.format(to);
    if (Files.exists(to) && !replace) {
      throw new Refused(
          "`" + to + "` is there already", "give another name, or write over it with `--replace`");
    }
    return new ProblemPrinter(console, false).guard(folder, sources -> export(sources, format));
  }

  private int export(Sources sources, SheetFormat format) {
    byte[] content = LimitsExport.bytes(sources, readings, format);
    try {
      AtomicFile.write(to, content);
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
    console.print("written: " + to + "\n");
    return Exit.CLEAN;
  }
}
