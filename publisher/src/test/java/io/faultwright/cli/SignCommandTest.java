package io.faultwright.cli;

import static io.faultwright.cli.SmallBase.ADA;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SignCommandTest {
  private static final String LOW = "sign-offs/rule/warm/low.engineering.yaml";

  @TempDir Path temporary;
  private SmallBase base;

  @BeforeEach
  void write() throws IOException {
    base = new SmallBase(temporary.resolve("kb"));
  }

  @Test
  void whatIsMissingIsNamedOnlyWhenAsked() {
    assertEquals(0, base.run("check"), base::err);
    assertEquals(1, base.run("check", "--sign-offs"));
    assertEquals(
        List.of(
            "limits `fan-current` is not signed as `engineering`",
            "symptom `warm` is not signed as `engineering`",
            "symptom `warm` is not signed as `field-service`",
            "rule `warm/high` is not signed as `engineering`",
            "rule `warm/low` is not signed as `engineering`",
            "rule `warm/right` is not signed as `engineering`"),
        errors());
  }

  private List<String> errors() {
    return base.out()
        .lines()
        .filter(line -> line.startsWith("error["))
        .map(line -> line.substring(line.indexOf(": ") + 2))
        .toList();
  }

  @Test
  void signedByAllItIsClean() throws IOException {
    base.signAll("engineering", ADA);
    assertTrue(base.out().contains("unverified name"), base.out());
    assertTrue(base.out().endsWith(": 5\n"), base.out());
    base.signAll("field-service", "Ben Example");
    assertEquals(0, base.run("check", "--sign-offs"), base::out);
    base.signAll("engineering", ADA);
    assertTrue(base.out().startsWith("nothing to sign"), base.out());
    assertEquals(List.of(LOW), filesWith("warm/low.").toList());
  }

  private Stream<String> filesWith(String part) throws IOException {
    try (Stream<Path> all = Files.walk(base.folder())) {
      return all
          .map(path -> base.folder().relativize(path).toString().replace('\\', '/'))
          .filter(path -> path.contains(part))
          .toList()
          .stream();
    }
  }

  @Test
  void signingTwiceWritesTheSameBytes() throws IOException {
    sign("rule", "warm/low");
    byte[] once = Files.readAllBytes(base.file(LOW));
    sign("rule", "warm/low");
    assertEquals(new String(once), Files.readString(base.file(LOW)));
  }

  private int sign(String kind, String id, String... further) {
    List<String> all =
        Stream.concat(
                Stream.of(kind, id, "--role", "engineering", "--name", ADA, "--date", "2026-03-01"),
                Stream.of(further))
            .toList();
    return base.run("sign", all.toArray(String[]::new));
  }

  @Test
  void aLimitLapsesWhatGoesByItAndSaysWhy() throws IOException {
    base.signAll("engineering", ADA);
    base.signAll("field-service", "Ben Example");
    base.edit("handbook.yaml", "low: 1,", "low: 1.1,");
    base.edit("handbook.yaml", "fan-current: 1 A }", "fan-current: 1.2 A }");
    assertEquals(1, base.run("check", "--sign-offs"));
    String why = " signed on 2026-03-01: limits `fan-current` changed";
    assertEquals(
        List.of(
            "limits `fan-current` is not what `Ada Example` (`engineering`)" + why,
            "symptom `warm` is not what `Ada Example` (`engineering`)" + why,
            "symptom `warm` is not what `Ben Example` (`field-service`)" + why,
            "rule `warm/low` is not what `Ada Example` (`engineering`)" + why,
            "rule `warm/right` is not what `Ada Example` (`engineering`)" + why),
        errors());
  }

  @Test
  void whatIsSignedCanBeRead() {
    assertEquals(0, base.run("sign", "rule", "warm/low", "--show"));
    assertTrue(base.out().contains("limits fan-current = LimitsTable("), base.out());
    assertFalse(Files.exists(base.file("sign-offs")));
  }

  @Test
  void wrongUseIsToldWithTheNearestName() {
    refused("there is no rule `warm/lo`", "did you mean `warm/low`?", sign("rule", "warm/lo"));
    refused("`rul` is nothing that can be signed", "`rule`", sign("rul", "warm/low"));
    refused("is not a date", "2026-03-02", as("engineering", ADA, "1 March"));
    refused("`--name` is missing", "who", as("engineering", " ", "2026-03-01"));
    refused(
        "a rule is not signed as `enginering`",
        "did you mean `engineering`?",
        as("enginering", ADA, "2026-03-01"));
    refused("nothing is named", "--all", base.run("sign"));
    refused(
        "has no ssh key of `Ada Example`", "signers:", sign("rule", "warm/low", "--ssh-key", "id"));
    assertFalse(Files.exists(base.file("sign-offs")));
  }

  private int as(String role, String name, String date) {
    return base.run("sign", "rule", "warm/low", "--role", role, "--name", name, "--date", date);
  }

  private void refused(String message, String help, int code) {
    assertEquals(2, code, base::out);
    assertTrue(base.err().contains(message), base.err());
    assertTrue(base.err().contains(help), base.err());
    assertFalse(base.err().contains("Exception"), base.err());
  }

  @Test
  void fourEyesAreTwoPeople() throws IOException {
    base.edit("handbook.yaml", "rule: engineering", "four-eyes: yes, rule: engineering");
    refused("nobody is named as the author", "--author", sign("rule", "warm/low"));
    refused(
        "`Ada Example` wrote it and would sign it too",
        "somebody",
        sign("rule", "warm/low", "--author", "ada  example"));
    assertEquals(0, sign("rule", "warm/low", "--author", "Ben Example"), base::err);
    base.edit(LOW, "Ben Example", ADA);
    base.run("check", "--sign-offs");
    assertTrue(
        errors().contains("`Ada Example` wrote rule `warm/low` and signed it as `engineering`"),
        base.out());
  }

  @Test
  void aSignOffOfSomethingThatIsGoneIsUnreadable() throws IOException {
    assertEquals(0, sign("rule", "warm/low"), base::err);
    base.edit("handbook.yaml", "      low: {", "      lower: {");
    assertEquals(2, base.run("check"));
    assertTrue(base.err().contains(LOW + ":2:5"), base.err());
    assertTrue(base.err().contains("did you mean `warm/lower`?"), base.err());
  }
}
