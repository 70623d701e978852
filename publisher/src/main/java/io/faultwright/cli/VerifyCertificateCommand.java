package io.faultwright.cli;

import io.faultwright.certificate.Certificate;
import io.faultwright.certificate.Register;
import io.faultwright.diagnostic.NearMatch;
import io.faultwright.report.Columns;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Looks a certificate up in the register. */
@Command(
    name = "verify-certificate",
    description = "Look a certificate up in your register: whether it holds, and whose it is.")
final class VerifyCertificateCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(
      index = "0",
      paramLabel = "REGISTER",
      description = "Folder that `certificates` wrote, or its `register.json`.")
  private Path register;

  @Parameters(index = "1", paramLabel = "NUMBER", description = "As printed on the certificate.")
  private String number;

  @Parameters(
      index = "2..*",
      arity = "1..*",
      paramLabel = "CHECK",
      description = "The check value, with or without blanks.")
  private List<String> check;

  VerifyCertificateCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Path inside = CourseFolder.CERTIFICATES.in(register);
    Path beside = register.resolve("register.json");
    Path file =
        Files.isRegularFile(inside) ? inside : Files.isDirectory(register) ? beside : register;
    return new ProblemPrinter(console, false)
        .guard(
            () -> InputFile.read(file.toString(), console.in()), text -> look(Register.read(text)));
  }

  private int look(Register all) {
    String wanted = number.strip().toLowerCase(Locale.ROOT);
    Optional<Certificate> found = all.find(wanted);
    if (found.isEmpty()) {
      List<String> known = all.certificates().stream().map(Certificate::number).toList();
      String near =
          NearMatch.of(wanted, known).map(one -> "; did you mean " + one + "?").orElse("");
      console.print(
          "does not hold: the register has no certificate "
              + Columns.printable(wanted)
              + near
              + "\n");
      return Exit.FINDINGS;
    }
    String typed = String.join("", check).replaceAll("[\\s-]", "").toLowerCase(Locale.ROOT);
    if (!typed.equals(found.get().check())) {
      console.print("does not hold: the check value of " + wanted + " is another one\n");
      return Exit.FINDINGS;
    }
    console.print("holds\n" + facts(found.get()));
    return Exit.CLEAN;
  }

  private static String facts(Certificate one) {
    String score =
        one.score().map(s -> "  " + s.right() + " of " + s.of() + " items right\n").orElse("");
    return Columns.printable("  " + one.name())
        + "\n"
        + Columns.printable("  " + one.session().title() + " (" + one.session().id() + ")")
        + "\n"
        + Columns.printable("  " + one.session().handbook() + ", " + one.session().maker())
        + "\n  "
        + one.date()
        + "\n"
        + score;
  }
}
