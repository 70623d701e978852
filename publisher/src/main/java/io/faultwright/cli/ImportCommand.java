package io.faultwright.cli;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.resolve.Resolver;
import io.faultwright.sheet.ImportText;
import io.faultwright.sheet.Imported;
import io.faultwright.sheet.LimitsImport;
import io.faultwright.sheet.SheetFile;
import io.faultwright.sheet.SheetFormat;
import io.faultwright.source.Sources;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes tables of limits back from a spreadsheet program. */
@Command(
    name = "import",
    description = "Put the rows of a spreadsheet file into the tables of limits they belong to.")
final class ImportCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private KnowledgeBaseFolder folder;

  @Parameters(index = "1", paramLabel = "FILE", description = "File to read: .xlsx or .csv.")
  private Path file;

  @Option(
      names = "--limits",
      paramLabel = "READING",
      description =
          "The reading whose table to import; may be given several times. Without it, the names"
              + " of the sheets say it.")
  private List<String> readings = List.of();

  @Option(names = "--preview", description = "Only show what would change.")
  private boolean preview;

  @Option(
      names = "--drop-comments",
      description = "Import even where comments in the rows are lost.")
  private boolean dropComments;

  ImportCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    SheetFormat format = SheetArguments.format(file);
    ProblemPrinter printer = new ProblemPrinter(console, false);
    return printer.guard(
        new Sources(List.of()),
        none -> {
          SheetFile sheets = SheetArguments.read(file, format);
          return printer.guard(folder, sources -> read(sources, sheets, printer));
        });
  }

  private int read(Sources sources, SheetFile sheets, ProblemPrinter printer) {
    LimitsImport limits = new LimitsImport(sources, path -> disk(path, sources));
    return printer.guard(
        sheets.sources(),
        only -> {
          Imported imported = limits.read(sheets, readings);
          return printer.guard(
              imported.after(), after -> checked(after, imported, sources, printer));
        });
  }

  /** Nothing is written that could not be read again. */
  private int checked(Sources after, Imported imported, Sources before, ProblemPrinter printer) {
    Resolver.resolve(after);
    console.print(ImportText.write(imported));
    List<Problem> lost = imported.lostComments();
    if (preview) {
      return say("nothing was written: this is a preview");
    }
    if (!lost.isEmpty() && !dropComments) {
      return printer.print(before, new Unreadable(lost));
    }
    return write(imported);
  }

  private int write(Imported imported) {
    ChangedFiles.write(folder.path(), imported.files());
    return say(
        imported.files().isEmpty()
            ? "nothing was written: nothing changes"
            : "written: " + String.join(", ", imported.files().keySet()));
  }

  private int say(String line) {
    console.print(line + "\n");
    return Exit.CLEAN;
  }

  /** The text of a file with the line ends it has; it must not have changed since it was read. */
  private String disk(String path, Sources sources) {
    return ChangedFiles.unchanged(folder.path(), path, sources);
  }
}
