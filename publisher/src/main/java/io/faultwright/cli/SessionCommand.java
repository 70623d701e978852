package io.faultwright.cli;

import io.faultwright.key.PersonalKeys;
import io.faultwright.layout.Paper;
import io.faultwright.lesson.Lesson;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Session;
import io.faultwright.output.AtomicFolder;
import io.faultwright.page.LessonSheet;
import io.faultwright.page.LessonSheets;
import io.faultwright.page.LessonSource;
import io.faultwright.pipeline.Checked;
import io.faultwright.pipeline.KnownProofs;
import io.faultwright.pipeline.Scope;
import io.faultwright.pipeline.SignOffCheck;
import io.faultwright.pipeline.TaughtSession;
import io.faultwright.render.html.LessonHtml;
import io.faultwright.render.pdf.PdfBook;
import io.faultwright.render.pdf.PdfPrinter;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes what a session is taught with: pages for the projector and a handout. */
@Command(
    name = "session",
    description = {
      "Check the rules, then write the pages of a session for the projector, and its handout.",
      "%nThe folder needs no network. Open its `index.html`.%n"
    })
final class SessionCommand implements Callable<Integer> {
  private static final Proving.Refusal NOTHING =
      new Proving.Refusal(
          "nothing was written",
          "mend the errors, or add `--draft`: DRAFT then stands on every page");

  private static final String UNSIGNED =
      "note: DRAFT stands on every page, since sign-offs that the handbook asks for are missing;"
          + " `faultwright check --sign-offs` says which\n";

  private final Console console;

  @Mixin private KnowledgeBaseFolder folder;

  @Parameters(index = "1", paramLabel = "SESSION", description = "Id of the session.")
  private String session;

  @Option(
      names = "--to",
      required = true,
      paramLabel = "DIR",
      description = "Folder for the pages; what was written there before is replaced.")
  private Path to;

  @Option(
      names = "--draft",
      description = "Write it although the rules have errors; DRAFT stands on every page.")
  private boolean draft;

  @Option(names = "--paper", paramLabel = "a4|letter", description = "Sheet size.")
  private Paper paper = Paper.A4;

  @Mixin private LanguageOption language;

  @Option(names = "--timings", description = "Print to standard error how long each phase took.")
  private boolean timings;

  SessionCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    CourseFolder.SESSION.require(to);
    return new ProblemPrinter(console, false).guard(folder, this::write);
  }

  private int write(Sources sources) {
    Proving proving = new Proving(console, timings);
    Checked checked = proving.checked(sources, KnownProofs.NONE);
    Session taught = TaughtSession.of(checked.sessions(), session);
    if (checked.report().errors() > 0 && !draft) {
      return proving.refuse(checked, sources, NOTHING);
    }
    try (Watching watching = new Watching(console, timings)) {
      SortedMap<String, byte[]> pictures = GuidePictures.read(folder.path());
      boolean unsigned = lacksSignOffs(checked, pictures);
      watching.phase("pages");
      KnowledgeBase kb = language.of(checked.knowledge());
      LessonSource source = Lesson.of(kb, taught, draft || unsigned, pictures, paper);
      LessonSheet sheet = LessonSheets.onScreen(source);
      SortedMap<String, byte[]> files = new LessonHtml().projector(sheet, taught.id());
      watching.phase("handout");
      PdfBook handout = new PdfPrinter().print(handout(source), kb.handbook().date());
      files.put("handout.pdf", handout.bytes());
      new AtomicFolder(to).publish(sink -> sink.writeAll(files));
      console.print(
          "written: %s: %d pages to project, a handout of %d pages%n"
              .formatted(to.resolve("index.html"), sheet.leaves().size(), handout.pages())
              .replace(System.lineSeparator(), "\n"));
      console.say(Undrawn.warning("handout", handout.undrawn()));
      console.say(unsigned && !draft ? UNSIGNED : "");
      return Exit.CLEAN;
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  /** Whether the handbook asks for sign-offs, and one of them is missing or has lapsed. */
  private boolean lacksSignOffs(Checked checked, SortedMap<String, byte[]> pictures)
      throws IOException {
    if (!checked.knowledge().handbook().signOffs().asked()) {
      return false;
    }
    PersonalKeys keys = new PersonalKeys(console.environment());
    long before = checked.report().errors();
    return new SignOffCheck(checked, pictures, keys).checked(Scope.ALL).report().errors() > before;
  }

  private String handout(LessonSource source) {
    return new LessonHtml().handout(LessonSheets.onPaper(source, paper), paper);
  }
}
