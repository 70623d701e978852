package io.faultwright.cli;

import io.faultwright.diagnostic.Problem;
import io.faultwright.handin.Grader;
import io.faultwright.handin.Grades;
import io.faultwright.handin.IssuedQuiz;
import io.faultwright.handin.QuizFile;
import io.faultwright.handin.Remark;
import io.faultwright.output.AtomicFolder;
import io.faultwright.page.SitePaths;
import io.faultwright.page.Target;
import io.faultwright.report.DrawText;
import io.faultwright.report.GradesCsv;
import io.faultwright.report.GradesJson;
import io.faultwright.report.GradesText;
import io.faultwright.report.ProblemText;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.function.UnaryOperator;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Grades what participants handed in. */
@Command(
    name = "grade",
    description = {
      "Grade what participants handed in, and tell how good the items of the quiz are.",
      "%nThe folder holds names and marks. Keep it to yourself.%n"
    })
final class GradeCommand implements Callable<Integer> {
  /** Without a byte order mark spreadsheets take a table for text of another encoding. */
  private static final String SPREADSHEET = "\uFEFF";

  private final Console console;

  @Parameters(
      index = "0",
      paramLabel = "QUIZ",
      description = "Folder that `quiz` wrote, or its `quiz.json`.")
  private Path quiz;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "RESULTS",
      description = "Result files, tables of answers (CSV), or folders of both.")
  private List<Path> results = new ArrayList<>();

  @Option(
      names = "--to",
      required = true,
      paramLabel = "DIR",
      description = "Folder for the grades; what was written there before is replaced.")
  private Path to;

  @Option(
      names = "--draw",
      paramLabel = "N",
      description = "Draw so many among those who handed in on time; with `--draw-seed`.")
  private Optional<Integer> draw = Optional.empty();

  @Option(
      names = "--draw-seed",
      paramLabel = "TEXT",
      description = "What the draw follows from; announce it first, or take a public number.")
  private Optional<String> drawSeed = Optional.empty();

  @Spec private CommandSpec spec;

  GradeCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    require(draw.isPresent() == drawSeed.isPresent(), "`--draw` and `--draw-seed` go together");
    require(draw.orElse(1) > 0, "`--draw` is " + draw.orElse(1) + "; give 1 or more");
    CourseFolder.GRADES.require(to);
    Path file = Files.isDirectory(quiz) ? CourseFolder.QUIZ.in(quiz) : quiz;
    return new ProblemPrinter(console, false)
        .guard(
            () -> InputFile.read(file.toString(), console.in()),
            text -> grade(QuizFile.read(text)));
  }

  private void require(boolean sound, String message) {
    if (!sound) {
      throw new ParameterException(spec.commandLine(), message);
    }
  }

  private int grade(IssuedQuiz issued) {
    try {
      ResultFiles files = ResultFiles.read(results);
      Grades grades = Grader.grade(issued, files.files(), files.problems());
      say(grades, files);
      if (grades.entries().isEmpty()) {
        console.say("nothing could be graded; no grades were written\n");
        return Exit.UNREADABLE;
      }
      write(grades);
      console.print(
          new GradesText(grades, address(grades)).summary()
              + "written: "
              + to.resolve("grades.txt")
              + "\n");
      return grades.isDoubtful() ? Exit.FINDINGS : Exit.CLEAN;
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  private void write(Grades grades) throws IOException {
    UnaryOperator<String> address = address(grades);
    SortedMap<String, byte[]> files = new TreeMap<>();
    files.put("grades.txt", utf8(new GradesText(grades, address).write()));
    files.put("grades.json", utf8(new GradesJson(grades, address).write()));
    files.put("grades.csv", utf8(SPREADSHEET + GradesCsv.write(grades)));
    files.put(PersonalData.FILE, PersonalData.note("names, answers and marks of participants"));
    draw.ifPresent(
        wanted ->
            files.put(
                "draw.txt",
                utf8(DrawText.write(wanted, drawSeed.orElseThrow(), grades.drawable()))));
    new AtomicFolder(to).publish(sink -> sink.writeAll(files));
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private void say(Grades grades, ResultFiles files) {
    ProblemText text = new ProblemText(new Sources(files.files()), console.errInk());
    List<Problem> serious = problems(grades, true);
    if (!serious.isEmpty()) {
      console.say(text.skipped(serious));
    }
    console.say(text.notes(problems(grades, false)));
    console.say(
        text.notes(
            files.skipped().stream()
                .map(name -> new Problem(List.of(), "`" + name + "` was not looked at", ""))
                .toList()));
  }

  private static List<Problem> problems(Grades grades, boolean serious) {
    return grades.remarks().stream()
        .filter(remark -> remark.kind().isSerious() == serious)
        .map(Remark::problem)
        .toList();
  }

  /** Where a page stands online; below the top of the site where no address is known. */
  private static UnaryOperator<String> address(Grades grades) {
    String base =
        grades.quiz().about().base().map(one -> one.replaceFirst("/+$", "") + "/").orElse("");
    return page -> base + path(page);
  }

  private static String path(String page) {
    int colon = page.indexOf(':');
    String kind = colon < 0 ? "" : page.substring(0, colon).toUpperCase(Locale.ROOT);
    return switch (kind) {
      case "SYMPTOM", "FAULT", "READING", "GUIDE" ->
          SitePaths.file(new Target(Target.Kind.valueOf(kind), page.substring(colon + 1)));
      default -> page;
    };
  }
}
