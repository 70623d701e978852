package io.faultwright.cli;

import io.faultwright.certificate.Badge;
import io.faultwright.certificate.Certificate;
import io.faultwright.certificate.CertificateWords;
import io.faultwright.certificate.Certificates;
import io.faultwright.certificate.Register;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.font.NameFont;
import io.faultwright.font.NameFonts;
import io.faultwright.handin.GradesFile;
import io.faultwright.handin.Marks;
import io.faultwright.json.Json;
import io.faultwright.key.CompactJws;
import io.faultwright.layout.QrSymbol;
import io.faultwright.output.AtomicFolder;
import io.faultwright.output.Refused;
import io.faultwright.output.Sink;
import io.faultwright.render.pdf.CertificatePdf;
import io.faultwright.render.pdf.CertificateSheet;
import io.faultwright.render.pdf.Undrawable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes certificates of those who passed. */
@Command(
    name = "certificates",
    description = {
      "Make a certificate for each who passed: a PDF and a badge, and a register of all.",
      "%nThe folder holds names. Keep the register to yourself.%n"
    })
final class CertificatesCommand implements Callable<Integer> {
  /**
   * Width of the code without its quiet zone, in millimetres: easy for a camera at arm's length.
   */
  private static final double CODE = 22;

  private final Console console;

  @Parameters(
      index = "0",
      paramLabel = "GRADES",
      description = "Folder that `grade` wrote, or its `grades.json`.")
  private Path grades;

  @Option(
      names = "--to",
      required = true,
      paramLabel = "DIR",
      description = "Folder for the certificates; what was written there before is replaced.")
  private Path to;

  @Option(names = "--with-score", description = "Say how many items are right.")
  private boolean withScore;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "The day of the session, as in 2026-04-14, where its file does not say.")
  private Optional<LocalDate> date = Optional.empty();

  @Option(
      names = "--issuer",
      paramLabel = "ADDRESS",
      description = "Web address that stands for you in badges; that of the handbook if not given.")
  private Optional<String> issuer = Optional.empty();

  @Option(
      names = "--key",
      paramLabel = "FILE",
      description = "Your private key (PEM), to sign badges with; with `--public-key`.")
  private Optional<Path> key = Optional.empty();

  @Option(
      names = "--public-key",
      paramLabel = "FILE",
      description = "The public key that belongs to it (PEM).")
  private Optional<Path> publicKey = Optional.empty();

  @Option(
      names = "--font",
      paramLabel = "FILE",
      description = "A TrueType font (.ttf) for names that ours cannot draw; may be repeated.")
  private List<Path> fonts = new ArrayList<>();

  @Spec private CommandSpec spec;

  CertificatesCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (key.isPresent() != publicKey.isPresent()) {
      throw new ParameterException(spec.commandLine(), "`--key` and `--public-key` go together");
    }
    CourseFolder.CERTIFICATES.require(to);
    Path file = Files.isDirectory(grades) ? CourseFolder.GRADES.in(grades) : grades;
    return new ProblemPrinter(console, false)
        .guard(
            () -> InputFile.read(file.toString(), console.in()),
            text -> make(GradesFile.read(text)));
  }

  private int make(Marks marks) {
    LocalDate day =
        date.or(marks.about()::date)
            .orElseThrow(
                () ->
                    new Refused(
                        "the session has no date", "say when it was held, as `--date 2026-04-14`"));
    List<Certificate> all = Certificates.of(marks, day, withScore);
    if (all.isEmpty()) {
      sayNameless(marks);
      console.say("nobody passed in time and gave a name; no certificates were written\n");
      return Exit.FINDINGS;
    }
    keepOthers(all.get(0).series());
    Optional<CompactJws> signer = key.map(secret -> signer(secret, publicKey.orElseThrow()));
    SortedMap<String, byte[]> files = drawn(all, marks);
    Badge badge = new Badge(marks, issuer);
    all.forEach(one -> badge(one, badge, signer, files));
    write(files, new Register(all));
    say(all, marks);
    return Certificates.nameless(marks).isEmpty() ? Exit.CLEAN : Exit.FINDINGS;
  }

  private CompactJws signer(Path secret, Path known) {
    return CompactJws.of(text(secret), text(known));
  }

  private String text(Path file) {
    return InputFile.read(file.toString(), console.in()).text();
  }

  private static void badge(
      Certificate one, Badge badge, Optional<CompactJws> signer, SortedMap<String, byte[]> files) {
    String stem = "certificates/" + one.number();
    if (signer.isPresent()) {
      files.put(stem + ".jwt", utf8(signer.get().sign(badge.claims(one))));
    } else {
      files.put(stem + ".unsigned.json", utf8(Json.text(badge.unsigned(one)) + "\n"));
    }
  }

  private SortedMap<String, byte[]> drawn(List<Certificate> all, Marks marks) {
    CertificatePdf pdf = new CertificatePdf(new NameFonts(fonts.stream().map(this::font).toList()));
    SortedMap<String, byte[]> files = new TreeMap<>();
    List<Problem> problems = new ArrayList<>();
    for (Certificate one : all) {
      try {
        CertificateSheet sheet = sheet(one, marks.about().language());
        files.put("certificates/" + one.number() + ".pdf", pdf.write(sheet));
      } catch (Undrawable missing) {
        problems.add(problem(one, missing));
      } catch (IOException trouble) {
        throw new UncheckedIOException(trouble);
      }
    }
    if (!problems.isEmpty()) {
      throw new Unreadable(problems);
    }
    return files;
  }

  private NameFont font(Path file) {
    return NameFont.of(InputFile.bytes(file))
        .orElseThrow(
            () ->
                new Refused(
                    "`" + file.getFileName() + "` is not a TrueType font with outlines",
                    "give a file that ends with .ttf; fonts that end with .otf have other outlines"));
  }

  private static Problem problem(Certificate one, Undrawable missing) {
    return new Problem(
        List.of(),
        "certificate "
            + one.number()
            + " of `"
            + one.name()
            + "`: no font has the character "
            + missing.character(),
        "give a font that has it, as `--font FILE.ttf`");
  }

  private static CertificateSheet sheet(Certificate one, String language) {
    CertificateWords words = new CertificateWords(language);
    return new CertificateSheet(
        language,
        one.date().toString(),
        words.issuer(one),
        words.title(),
        one.name(),
        words.passed(),
        one.session().title(),
        words.facts(one),
        words.signature(),
        words.proof(one),
        QrSymbol.of(words.code(one), CODE).orElseThrow(),
        words.codeWords(one));
  }

  private void write(SortedMap<String, byte[]> files, Register register) {
    files.put("register/register.json", utf8(register.json()));
    files.put("register/register.csv", utf8("\uFEFF" + register.csv()));
    files.put(PersonalData.FILE, PersonalData.note("names and certificates of participants"));
    Sink.Filler filler = sink -> sink.writeAll(files);
    try {
      new AtomicFolder(to).publish(filler);
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  /** A folder with the register of another quiz is left as it is. */
  private void keepOthers(String series) {
    Path before = CourseFolder.CERTIFICATES.in(to);
    if (Files.exists(before)
        && Register.read(InputFile.read(before.toString(), console.in())).certificates().stream()
            .anyMatch(one -> !one.series().equals(series))) {
      throw new Refused(
          "`" + to + "` holds the register of another quiz",
          "write to another folder; its certificates hold only while it is kept");
    }
  }

  private void say(List<Certificate> all, Marks marks) {
    sayNameless(marks);
    String how = key.isPresent() ? "signed" : "not signed";
    String count = all.size() == 1 ? "1 certificate" : all.size() + " certificates";
    console.print(count + "; badges are " + how + "\n");
    console.print("written: " + to.resolve("certificates") + ", " + to.resolve("register") + "\n");
  }

  private void sayNameless(Marks marks) {
    Certificates.nameless(marks)
        .forEach(
            number ->
                console.say(
                    "note: participant " + number + " passed and gave no name; left out\n"));
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
