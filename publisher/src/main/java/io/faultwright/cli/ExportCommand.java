package io.faultwright.cli;

import io.faultwright.output.AtomicFile;
import io.faultwright.output.AtomicFolder;
import io.faultwright.output.Refused;
import io.faultwright.pipeline.Checked;
import io.faultwright.sheet.LimitsExport;
import io.faultwright.sheet.SheetFormat;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * Writes a handbook for other programs: limits for spreadsheets, rules and repairs by standards.
 */
@Command(
    name = "export",
    description =
        "Write tables of limits for a spreadsheet program, or the handbook in an open standard.")
final class ExportCommand implements Callable<Integer> {
  private static final Proving.Refusal NOTHING =
      new Proving.Refusal("nothing was written", "mend the errors, then export again");

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
      paramLabel = "FILE|FOLDER",
      description =
          "File to write: .xlsx with a sheet for each table, or .csv with one table. With --format,"
              + " a folder.")
  private Path to;

  @Option(
      names = "--format",
      paramLabel = "dita|dmn",
      description =
          "Write the handbook to a folder: DITA 1.3 topics and a map, or DMN 1.3 decision tables.")
  private Optional<ExportFormat> format = Optional.empty();

  @Option(names = "--replace", description = "Write over what was exported there before.")
  private boolean replace;

  ExportCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (format.isPresent() && !readings.isEmpty()) {
      throw new Refused(
          "`--limits` names sheets, and `--format` writes the whole handbook",
          "leave one of them out");
    }
    Optional<SheetFormat> sheets =
        format.isPresent() ? Optional.empty() : Optional.of(SheetArguments.format(to));
    if (Files.exists(to) && !replace) {
      throw new Refused(
          "`" + to + "` is there already", "give another name, or write over it with `--replace`");
    }
    return new ProblemPrinter(console, false)
        .guard(
            folder,
            sources ->
                sheets.isPresent() ? export(sources, sheets.get()) : export(sources, format.get()));
  }

  private int export(Sources sources, SheetFormat sheets) {
    byte[] content = LimitsExport.bytes(sources, readings, sheets);
    return written(() -> AtomicFile.write(to, content));
  }

  /** A handbook with errors goes nowhere. */
  private int export(Sources sources, ExportFormat standard) {
    Proving proving = new Proving(console, false);
    Checked checked = proving.checked(sources);
    if (checked.report().errors() > 0) {
      return proving.refuse(checked, sources, NOTHING);
    }
    SortedMap<String, byte[]> files = standard.files(checked.knowledge());
    return written(() -> new AtomicFolder(to).publish(sink -> sink.writeAll(files)));
  }

  /** Something that writes. */
  private interface Writing {
    void run() throws IOException;
  }

  private int written(Writing writing) {
    try {
      writing.run();
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
    console.print("written: " + to + "\n");
    return Exit.CLEAN;
  }
}
