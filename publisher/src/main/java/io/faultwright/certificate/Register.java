package io.faultwright.certificate;

import io.faultwright.certificate.Certificate.Score;
import io.faultwright.certificate.Certificate.Session;
import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.handin.Members;
import io.faultwright.json.Fields;
import io.faultwright.json.Json;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.JsonReader;
import io.faultwright.syntax.Node;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * The certificates that a trainer gave out. It stays with the trainer.
 *
 * @param certificates by number
 */
public record Register(List<Certificate> certificates) {
  private static final String WHAT = "register of certificates";
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setRecordSeparator("\n")
          .setHeader("number", "check", "name", "session", "title", "date", "right", "of")
          .get();

  public Register {
    certificates = List.copyOf(certificates);
  }

  /** The one of a number. */
  public Optional<Certificate> find(String number) {
    return certificates.stream().filter(one -> one.number().equals(number)).findFirst();
  }

  /** As JSON, from which {@link #read} reads it again. */
  public String json() {
    Fields file =
        new Fields()
            .put("what", WHAT)
            .put("certificates", certificates.stream().map(Register::fields).toList());
    return Json.text(file) + "\n";
  }

  private static Fields fields(Certificate one) {
    Session session = one.session();
    return new Fields()
        .put("number", one.number())
        .put("check", one.check())
        .put("name", one.name())
        .put("session", session.id())
        .put("title", session.title())
        .put("handbook", session.handbook())
        .put("maker", session.maker())
        .put("date", one.date().toString())
        .putIfAny("right", one.score().map(Score::right))
        .putIfAny("of", one.score().map(Score::of));
  }

  /** As a table for a spreadsheet. */
  public String csv() {
    StringWriter text = new StringWriter();
    try (CSVPrinter rows = new CSVPrinter(text, FORMAT)) {
      for (Certificate one : certificates) {
        rows.printRecord(
            one.number(),
            one.check(),
            harmless(one.name()),
            one.session().id(),
            harmless(one.session().title()),
            one.date(),
            one.score().map(score -> "" + score.right()).orElse(""),
            one.score().map(score -> "" + score.of()).orElse(""));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  /** A spreadsheet would take a cell that begins so for a formula. */
  private static String harmless(String text) {
    return text.matches("[=+\\-@].*") ? "'" + text : text;
  }

  /**
   * The register in a file.
   *
   * @throws Unreadable with everything that keeps it from being one
   */
  public static Register read(SourceFile file) {
    Problems problems = new Problems();
    Optional<Register> register =
        JsonReader.read(file, problems).root().map(root -> register(root, problems));
    if (!problems.isEmpty()) {
      throw new Unreadable(problems.sorted());
    }
    return register.orElseThrow();
  }

  private static Register register(Node root, Problems problems) {
    Members file = new Members(root, "the register", problems);
    String what = file.text("what").orElse(WHAT);
    if (!what.equals(WHAT)) {
      problems.add(
          file.place("what"),
          "expected `" + WHAT + "`, found `" + what + "`",
          "take the `register.json` that `faultwright certificates` wrote");
    }
    return new Register(
        file.list("certificates").stream().map(node -> certificate(node, problems)).toList());
  }

  private static Certificate certificate(Node node, Problems problems) {
    Members one = new Members(node, "a certificate", problems);
    OptionalInt right = one.optionalNumber("right");
    OptionalInt of = one.optionalNumber("of");
    return new Certificate(
        one.text("number").orElse(""),
        one.text("check").orElse(""),
        one.text("name").orElse(""),
        new Session(
            one.text("session").orElse(""),
            one.text("title").orElse(""),
            one.text("handbook").orElse(""),
            one.text("maker").orElse("")),
        one.day("date").orElse(LocalDate.EPOCH),
        right.isPresent() && of.isPresent()
            ? Optional.of(new Score(right.getAsInt(), of.getAsInt()))
            : Optional.empty());
  }
}
