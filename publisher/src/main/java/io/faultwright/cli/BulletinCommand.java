package io.faultwright.cli;

import io.faultwright.archive.ReleaseArchive;
import io.faultwright.layout.Paper;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.output.AtomicFolder;
import io.faultwright.page.Bulletin;
import io.faultwright.page.Since;
import io.faultwright.resolve.Resolver;
import io.faultwright.site.Bulletins;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Shows what the next release would tell the field. */
@Command(
    name = "bulletin",
    description = {
      "Preview the bulletin of the next release: what it changes, for whom, and which printed"
          + " copies are no longer right.",
      "%nIt is marked as a draft. `faultwright release` makes the one to be passed on.%n"
    })
final class BulletinCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private KnowledgeBaseFolder folder;

  @Option(
      names = "--since",
      required = true,
      paramLabel = "OLD",
      description =
          "Folder in which all releases lie, for the newest of them; or another folder, Git tag,"
              + " branch or commit.")
  private String since;

  @Option(
      names = "--to",
      required = true,
      paramLabel = "DIR",
      description = "Folder to write; it is replaced as a whole.")
  private Path to;

  @Mixin private BulletinNote note;

  @Option(names = "--no-pdf", description = "Do without the PDF.")
  private boolean withoutPdf;

  @Option(names = "--paper", paramLabel = "a4|letter", description = "Sheet size.")
  private Paper paper = Paper.A4;

  @Option(names = "--timings", description = "Print to standard error how long each phase took.")
  private boolean timings;

  BulletinCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    ProblemPrinter printer = new ProblemPrinter(console, false);
    String current = folder.path().toString();
    Revisions revisions = new Revisions(since, current, Optional.empty());
    Optional<EarlierRelease> release = release();
    Revision old =
        release.isPresent()
            ? new Revision("old", since, release.get()::sources)
            : new Revision("old", since, revisions::before);
    return printer.guard(
        folder,
        sources ->
            printer.guard(old, kb -> write(sources, release.map(one -> one.dated(kb)).orElse(kb))));
  }

  private Optional<EarlierRelease> release() {
    try {
      Path archive = Path.of(since);
      return Files.isDirectory(archive)
          ? EarlierRelease.in(new ReleaseArchive(archive))
          : Optional.empty();
    } catch (InvalidPathException revision) {
      return Optional.empty();
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  private int write(Sources sources, KnowledgeBase old) {
    KnowledgeBase kb = Resolver.resolve(sources);
    Since told = EarlierRelease.since(old, kb, console, timings);
    try {
      Bulletins bulletins = new Bulletins(kb, paper, true);
      Optional<Bulletin> bulletin = bulletins.bulletin(told, note.reasons());
      SortedMap<String, byte[]> files =
          bulletin.isPresent()
              ? bulletins.files(bulletin.get(), !withoutPdf)
              : bulletins.changedTexts(told);
      new AtomicFolder(to).publish(sink -> sink.writeAll(files));
      console.print(words(bulletin, files));
      note.warn(console, bulletin);
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
    return Exit.CLEAN;
  }

  private String words(Optional<Bulletin> bulletin, SortedMap<String, byte[]> files) {
    String what =
        bulletin.isPresent()
            ? "preview of the bulletin"
            : "no bulletin: every situation has the answer it had; list of changed texts";
    return what + " written to " + to + ": " + String.join(", ", files.keySet()) + "\n";
  }
}
