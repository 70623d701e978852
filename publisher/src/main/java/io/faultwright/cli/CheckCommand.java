package io.faultwright.cli;

import io.faultwright.key.PersonalKeys;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.pipeline.Checked;
import io.faultwright.pipeline.ItemCheck;
import io.faultwright.pipeline.Pipeline;
import io.faultwright.pipeline.Scope;
import io.faultwright.pipeline.SignOffCheck;
import io.faultwright.report.CheckJson;
import io.faultwright.report.CheckJunit;
import io.faultwright.report.CheckReport;
import io.faultwright.report.CheckSarif;
import io.faultwright.report.CheckText;
import io.faultwright.report.Surroundings;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Proves that no situation is unanswered or answered twice, or shows the ones that are. */
@Command(
    name = "check",
    description = "Prove the rules complete and free of contradictions, or show where not.")
final class CheckCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private KnowledgeBaseFolder folder;

  @Option(names = "--symptom", paramLabel = "ID", description = "Check this symptom only.")
  private Optional<String> symptom;

  @Option(
      names = "--format",
      paramLabel = "text|json|sarif|junit",
      description = "How to print the report; SARIF and JUnit XML are for forges.")
  private CheckFormat format = CheckFormat.TEXT;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      converter = SecondsConverter.class,
      description = "Stop the analyses after N seconds; shares not finished by then are bounds.")
  private Optional<Duration> seconds;

  @Option(names = "--strict", description = "Let warnings count as errors.")
  private boolean strict;

  @Option(
      names = "--pages",
      paramLabel = "URL",
      converter = PagesConverter.class,
      description = "Web address (https://...) of the pages of docs/findings, for links in SARIF.")
  private Optional<String> pages;

  @Option(
      names = "--sign-offs",
      description = "Also look whether everything is signed that has to be before a release.")
  private boolean signOffs;

  @Option(names = "--timings", description = "Print to standard error how long each phase took.")
  private boolean timings;

  CheckCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    return new ProblemPrinter(console, problems()).guard(folder, this::check);
  }

  private ProblemPrinter.Form problems() {
    return switch (format) {
      case TEXT -> ProblemPrinter.TEXT;
      case JSON -> ProblemPrinter.JSON;
      case SARIF -> (sources, problems) -> Optional.of(new CheckSarif(around()).write(problems));
      case JUNIT ->
          (sources, problems) ->
              Optional.of(new CheckJunit(around(), strict, signOffs).write(sources, problems));
    };
  }

  private int check(Sources sources) {
    Scope scope = new Scope(symptom, seconds);
    Checked checked = signed(ItemCheck.checked(checked(sources, scope), scope), scope);
    console.print(written(checked.knowledge(), sources, checked.report()));
    return code(checked.report());
  }

  private String written(KnowledgeBase kb, Sources sources, CheckReport report) {
    return switch (format) {
      case TEXT -> new CheckText(kb, sources, console.outInk()).write(report);
      case JSON -> new CheckJson(kb).write(report);
      case SARIF -> new CheckSarif(around()).write(kb, report);
      case JUNIT -> new CheckJunit(around(), strict, signOffs).write(kb, sources, report);
    };
  }

  private Surroundings around() {
    return new Surroundings(folder.below(), ProductVersion.number(), pages);
  }

  private Checked checked(Sources sources, Scope scope) {
    try (Watching watching = new Watching(console, timings)) {
      return new Pipeline(scope, watching).check(sources);
    }
  }

  private Checked signed(Checked checked, Scope scope) {
    try {
      return signOffs
          ? new SignOffCheck(
                  checked,
                  GuidePictures.read(folder.path()),
                  new PersonalKeys(console.environment()))
              .checked(scope)
          : checked;
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  private int code(CheckReport report) {
    boolean findings = report.errors() > 0 || strict && report.warnings() > 0;
    return findings || !report.complete() ? Exit.FINDINGS : Exit.CLEAN;
  }
}
