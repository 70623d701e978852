package io.faultwright.cli;

import io.faultwright.archive.ReleaseArchive;
import io.faultwright.archive.ReleaseNote;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.key.PersonalKeys;
import io.faultwright.layout.Paper;
import io.faultwright.model.Handbook;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.SignOff;
import io.faultwright.output.Refused;
import io.faultwright.output.Sink;
import io.faultwright.page.ArchiveSheet;
import io.faultwright.page.Bulletin;
import io.faultwright.page.Released;
import io.faultwright.page.Since;
import io.faultwright.page.SitePaths;
import io.faultwright.piece.Ledger;
import io.faultwright.piece.Workshop;
import io.faultwright.pipeline.Checked;
import io.faultwright.pipeline.Scope;
import io.faultwright.pipeline.SignOffCheck;
import io.faultwright.pipeline.Stop;
import io.faultwright.release.SignOffList;
import io.faultwright.render.html.ArchiveHtml;
import io.faultwright.report.CheckJson;
import io.faultwright.report.CheckText;
import io.faultwright.report.Ink;
import io.faultwright.resolve.Resolver;
import io.faultwright.site.Bulletins;
import io.faultwright.site.ChartDrawings;
import io.faultwright.site.Drawn;
import io.faultwright.site.Options;
import io.faultwright.site.SitePublisher;
import io.faultwright.site.Summary;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Freezes a handbook that is proved and signed. */
@Command(
    name = "release",
    description = {
      "Freeze a handbook that is proved and signed: sources, site, book, report, sign-offs, checksums.",
      "%nThe release comes into being whole, in a folder named by its number, or not at all. No"
          + " release is ever changed.%n"
    })
final class ReleaseCommand implements Callable<Integer> {
  private static final String SITE = "site/";
  private static final String REVIEW = "review/";
  private static final String SOURCES = ReleaseArchive.SOURCES + "/";

  private final Console console;

  @Mixin private KnowledgeBaseFolder folder;

  @Option(
      names = "--number",
      required = true,
      paramLabel = "N",
      description = "Number of the release, greater than that of any before.")
  private int number;

  @Option(
      names = "--date",
      required = true,
      paramLabel = "YYYY-MM-DD",
      description = "Date of the release, not before that of any other; no clock is asked.")
  private String date;

  @Option(
      names = "--to",
      required = true,
      paramLabel = "DIR",
      description = "Folder in which all releases of the handbook lie.")
  private Path to;

  @Mixin private BulletinNote note;

  @Option(names = "--no-pdf", description = "Do without the handbook as one PDF.")
  private boolean withoutPdf;

  @Option(names = "--strict", description = "Let warnings count as errors.")
  private boolean strict;

  @Option(names = "--paper", paramLabel = "a4|letter", description = "Sheet size.")
  private Paper paper = Paper.A4;

  @Option(names = "--timings", description = "Print to standard error how long each phase took.")
  private boolean timings;

  ReleaseCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    LocalDate day = SignerOptions.dateOf(date);
    if (number < 1) {
      throw new Refused("`" + number + "` is no number of a release", "count from 1");
    }
    return new ProblemPrinter(console, false).guard(folder, sources -> release(sources, day));
  }

  private int release(Sources sources, LocalDate day) {
    try {
      ReleaseArchive archive = new ReleaseArchive(to);
      archive.requireNext(new ReleaseNote(number, day.toString(), "", ""));
      SortedMap<String, byte[]> pictures = GuidePictures.read(folder.path());
      Proving proving = new Proving(console, timings);
      SignOffCheck signed =
          new SignOffCheck(
              proving.checked(sources), pictures, new PersonalKeys(console.environment()));
      Checked checked = signed.checked(Scope.ALL);
      if (checked.report().errors() > 0 || strict && checked.report().warnings() > 0) {
        return proving.refuse(checked, sources, nothing());
      }
      refuseLateSignatures(checked, day);
      write(archive, checked, signed, new Content(sources, pictures, day));
      return Exit.CLEAN;
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  /** What goes in besides what is made. */
  private record Content(Sources sources, SortedMap<String, byte[]> pictures, LocalDate day) {}

  private Proving.Refusal nothing() {
    return new Proving.Refusal(
        "release " + number + " was not made",
        "mend the errors, and let what is not signed be signed with `faultwright sign`");
  }

  private static void refuseLateSignatures(Checked checked, LocalDate day) {
    Optional<SignOff> late =
        checked.signOffs().all().stream()
            .filter(one -> LocalDate.parse(one.date()).isAfter(day))
            .findFirst();
    if (late.isPresent()) {
      throw new Refused(
          late.get().of().words()
              + " was signed by `"
              + late.get().name()
              + "` on "
              + late.get().date()
              + ", after the date of the release, "
              + day,
          "give the date of the release with `--date`");
    }
  }

  private void write(ReleaseArchive archive, Checked checked, SignOffCheck signed, Content content)
      throws IOException {
    KnowledgeBase kb = checked.knowledge().released(number, content.day().toString());
    ReleaseNote next = note(kb.handbook(), checked.knowledge().handbook().revision());
    SortedMap<String, byte[]> papers = papers(checked, signed, content);
    ReleaseHistory history = new ReleaseHistory(archive, next, content.sources());
    Optional<Since> since = since(archive, kb);
    Optional<Bulletin> bulletin;
    try (Watching watching = new Watching(console, timings)) {
      Stop never = new Stop(Optional.empty());
      ReviewReport.of(kb, checked, signed, history, false, never, watching)
          .files()
          .forEach((path, bytes) -> papers.put(REVIEW + path, bytes));
      Workshop workshop = new Workshop(Ledger.empty());
      watching.phase("charts");
      SortedMap<String, SortedMap<String, Drawn>> charts =
          new ChartDrawings(kb, false, paper).all(workshop);
      watching.phase("bulletin");
      bulletin = bulletin(kb, since, charts, papers);
      Options options = options(releases(archive, next), bulletin, content);
      watching.phase("site");
      archive.add(
          next,
          sink -> {
            sink.writeAll(papers);
            tell(site(kb, charts, options, workshop, sink));
          },
          all -> index(kb, all));
    }
    console.print("released as " + to.resolve(Integer.toString(number)) + "\n");
    note.warn(console, bulletin);
  }

  private ReleaseNote note(Handbook handbook, String revision) {
    return new ReleaseNote(number, handbook.date(), handbook.title(), revision);
  }

  /** Those there are and the one to come, as its site links to them. */
  private static List<Released> releases(ReleaseArchive archive, ReleaseNote next)
      throws IOException {
    return Stream.concat(archive.releases().stream(), Stream.of(next))
        .map(one -> released(one, "../../"))
        .toList();
  }

  private Options options(List<Released> releases, Optional<Bulletin> bulletin, Content content) {
    return new Options(
        false,
        List.of(),
        !withoutPdf,
        paper,
        Optional.empty(),
        bulletin,
        releases,
        content.pictures());
  }

  /** What differs from the release before; nothing where this is the first. */
  private Optional<Since> since(ReleaseArchive archive, KnowledgeBase kb) throws IOException {
    Optional<EarlierRelease> earlier = EarlierRelease.in(archive);
    if (earlier.isEmpty()) {
      return Optional.empty();
    }
    try {
      KnowledgeBase before = earlier.get().dated(Resolver.resolve(earlier.get().sources()));
      return Optional.of(EarlierRelease.since(before, kb, console, timings));
    } catch (Unreadable unreadable) {
      console.say(
          "warning: no bulletin, since the rules of release "
              + earlier.get().number()
              + " cannot be read any more: "
              + unreadable.problems().get(0).message()
              + "\n");
      return Optional.empty();
    }
  }

  /** Adds the bulletin to the papers, or a list where only texts changed. */
  private Optional<Bulletin> bulletin(
      KnowledgeBase kb,
      Optional<Since> since,
      SortedMap<String, SortedMap<String, Drawn>> charts,
      SortedMap<String, byte[]> papers)
      throws IOException {
    if (since.isEmpty()) {
      return Optional.empty();
    }
    Bulletins bulletins = new Bulletins(kb, paper, false);
    Optional<Bulletin> bulletin = bulletins.bulletin(since.get(), note.reasons(), charts);
    papers.putAll(
        bulletin.isPresent()
            ? bulletins.files(bulletin.get(), !withoutPdf)
            : bulletins.changedTexts(since.get()));
    return bulletin;
  }

  private static Summary site(
      KnowledgeBase kb,
      SortedMap<String, SortedMap<String, Drawn>> charts,
      Options options,
      Workshop workshop,
      Sink sink)
      throws IOException {
    return new SitePublisher(workshop)
        .publishInto(kb, charts, options, (path, bytes) -> sink.write(SITE + path, bytes));
  }

  private void tell(Summary summary) {
    console.say(Undrawn.warning("book", summary.undrawn()));
  }

  private static SortedMap<String, byte[]> papers(
      Checked checked, SignOffCheck signed, Content content) {
    SortedMap<String, byte[]> papers = new TreeMap<>();
    for (SourceFile file : content.sources().files()) {
      papers.put(SOURCES + file.path(), utf8(file.text()));
    }
    content.pictures().forEach((path, bytes) -> papers.put(SOURCES + "guides/" + path, bytes));
    KnowledgeBase kb = checked.knowledge();
    papers.put(
        "report.txt",
        utf8(new CheckText(kb, content.sources(), Ink.PLAIN).write(checked.report())));
    papers.put("report.json", utf8(new CheckJson(kb).write(checked.report())));
    papers.put("sign-offs.txt", utf8(SignOffList.write(signed.states())));
    return papers;
  }

  private static Released released(ReleaseNote note, String up) {
    return new Released(note.number(), note.date(), up + note.number() + "/" + SITE + "index.html");
  }

  private static byte[] index(KnowledgeBase kb, List<ReleaseNote> all) {
    String newest = all.get(all.size() - 1).number() + "/" + SITE;
    List<Released> releases = all.stream().map(one -> released(one, "")).toList();
    return utf8(
        new ArchiveHtml()
            .print(ArchiveSheet.of(kb.handbook(), releases, newest + SitePaths.STYLE)));
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
