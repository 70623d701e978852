package io.faultwright.cli;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.layout.Paper;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.page.Since;
import io.faultwright.piece.Ledger;
import io.faultwright.piece.Workshop;
import io.faultwright.pipeline.Checked;
import io.faultwright.pipeline.KnownProofs;
import io.faultwright.report.ProblemText;
import io.faultwright.site.ChartDrawings;
import io.faultwright.site.Options;
import io.faultwright.site.SitePublisher;
import io.faultwright.site.Summary;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Publishes a handbook whose rules are proved, or a draft of one whose rules are not. */
@Command(
    name = "publish",
    description = "Check the rules, then write charts and the handbook as a folder of pages.")
final class PublishCommand implements Callable<Integer> {
  private static final Proving.Refusal NOTHING =
      new Proving.Refusal(
          "nothing was published",
          "mend the errors, or publish with `--draft`: DRAFT then stands on every page");

  private final Console console;

  @Spec private CommandSpec spec;

  @Mixin private KnowledgeBaseFolder folder;

  @Option(
      names = "--to",
      required = true,
      paramLabel = "DIR",
      description =
          "Folder to write; it is replaced as a whole. With --single-file, the file to write.")
  private Path to;

  @Option(
      names = "--single-file",
      description = "Write one HTML file instead of a folder, to mail or to put on a stick.")
  private boolean singleFile;

  @Option(names = "--pdf", description = "Also write the handbook as one PDF.")
  private boolean pdf;

  @Option(
      names = "--draft",
      description = "Publish in spite of errors, with DRAFT on every page and the findings listed.")
  private boolean draft;

  @Option(
      names = "--since",
      paramLabel = "OLD",
      description = "Tell what changed since this folder, or Git tag, branch or commit.")
  private Optional<String> since = Optional.empty();

  @Option(names = "--paper", paramLabel = "a4|letter", description = "Sheet size.")
  private Paper paper = Paper.A4;

  @Option(names = "--timings", description = "Print to standard error how long each phase took.")
  private boolean timings;

  PublishCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    refuseOddFile();
    ProblemPrinter printer = new ProblemPrinter(console, false);
    if (since.isEmpty()) {
      return printer.guard(folder, sources -> checkAndPublish(sources, Optional.empty()));
    }
    String current = folder.path().toString();
    Revisions revisions = new Revisions(since.get(), current, Optional.empty());
    Revision old = new Revision("old", since.get(), revisions::before);
    return printer.guard(
        folder, sources -> printer.guard(old, kb -> checkAndPublish(sources, Optional.of(kb))));
  }

  private void refuseOddFile() {
    if (singleFile && !to.toString().toLowerCase(Locale.ROOT).endsWith(".html")) {
      throw new ParameterException(
          spec.commandLine(),
          "`" + to + "` does not end in `.html`, as the file of `--single-file` does");
    }
    if (singleFile && pdf) {
      throw new ParameterException(
          spec.commandLine(), "`--single-file` holds no book; publish with `--pdf` into a folder");
    }
  }

  private int checkAndPublish(Sources sources, Optional<KnowledgeBase> before) {
    Proving proving = new Proving(console, timings);
    Workshop workshop = new Workshop(Ledger.read(to));
    PublishedProofs proofs = new PublishedProofs(workshop);
    Checked checked = proving.checked(sources, draft ? KnownProofs.NONE : proofs);
    boolean marked = draft || isUnderSignOff(checked);
    if (checked.report().errors() > 0 && !draft) {
      return proving.refuse(checked, sources, NOTHING);
    }
    try {
      Optional<Since> told =
          before.map(old -> EarlierRelease.since(old, checked.knowledge(), console, timings));
      proofs.confirm();
      Options options = options(checked, marked, told);
      Summary summary = publish(checked.knowledge(), options, workshop);
      console.print(words(summary));
      sayUnreleased(marked);
      console.say(Undrawn.warning("book", summary.undrawn()));
      console.say(untranslated(checked));
      if (!summary.problems().isEmpty()) {
        console.say(new ProblemText(sources, console.errInk()).stillOpen(summary.problems()));
      }
      return Exit.CLEAN;
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  /** Cautions may be among them, so that it is said whenever a handbook is published. */
  private static String untranslated(Checked checked) {
    boolean some =
        checked.report().findings().stream()
            .anyMatch(finding -> finding.kind() == FindingKind.UNTRANSLATED);
    return some
        ? "warning: some texts have no translation and are published as they are written;"
            + " `faultwright check` names them\n"
        : "";
  }

  private Summary publish(KnowledgeBase kb, Options options, Workshop workshop) throws IOException {
    try (Watching watching = new Watching(console, timings)) {
      watching.phase("charts");
      var charts = new ChartDrawings(kb, options.draft(), paper).all(workshop);
      watching.phase("site");
      SitePublisher publisher = new SitePublisher(workshop);
      return singleFile
          ? publisher.publishAsOneFile(kb, charts, options, to)
          : publisher.publish(kb, charts, options, to);
    }
  }

  /** Then only a release goes out as anything but a draft. */
  private static boolean isUnderSignOff(Checked checked) {
    return checked.knowledge().handbook().signOffs().asked();
  }

  private Options options(Checked checked, boolean marked, Optional<Since> told)
      throws IOException {
    List<Finding> findings = marked ? checked.report().findings() : List.of();
    return new Options(marked, findings, pdf, paper, told, GuidePictures.read(folder.path()));
  }

  private void sayUnreleased(boolean marked) {
    if (marked && !draft) {
      console.say(
          "note: DRAFT stands on every page, since the handbook asks for sign-offs;"
              + " `faultwright release` publishes without\n");
    }
  }

  private String words(Summary summary) {
    String book = pdf ? ", a book of " + summary.pdfPages() + " pages" : "";
    return "published to "
        + to
        + ": "
        + summary.pages()
        + " pages, "
        + summary.charts()
        + " chart pages"
        + book
        + "\n";
  }
}
