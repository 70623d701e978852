package io.faultwright.cli;

import static io.faultwright.cli.SmallBase.ADA;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Signatures with keys that are made here and thrown away. */
class SignWithKeyTest {
  private static final String LOW = "sign-offs/rule/warm/low.engineering.yaml";
  private static final String SIGNERS = "sign-offs/signers.yaml";

  @TempDir static Path keys;
  @TempDir Path temporary;
  private SmallBase base;

  @BeforeAll
  static void makeKeys() throws IOException, InterruptedException {
    for (String name : List.of("ada", "ben")) {
      ran("ssh-keygen", "-q", "-t", "ed25519", "-N", "", "-C", name, "-f", ssh(name));
    }
    Files.createDirectory(keys.resolve("gpg"));
    for (String name : List.of("ada", "ben")) {
      String[] make = {
        "--quick-generate-key", name + "@brantmoor.example", "ed25519", "sign", "never"
      };
      ran(gpg(make));
    }
  }

  @AfterAll
  static void stopAgent() throws IOException, InterruptedException {
    ran("gpgconf", "--homedir", keys.resolve("gpg").toString(), "--kill", "all");
  }

  private static String ssh(String name) {
    return keys.resolve(name).toString();
  }

  private static String[] gpg(String... arguments) {
    List<String> all =
        new ArrayList<>(
            List.of("gpg", "--homedir", keys.resolve("gpg").toString(), "--batch", "--quiet"));
    all.addAll(List.of("--passphrase", ""));
    all.addAll(List.of(arguments));
    return all.toArray(String[]::new);
  }

  private static String ran(String... command) throws IOException, InterruptedException {
    Process process = new ProcessBuilder(command).redirectError(Redirect.DISCARD).start();
    process.getOutputStream().close();
    String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), text);
    return text;
  }

  @BeforeEach
  void write() throws IOException {
    base = new SmallBase(temporary.resolve("kb"));
    base.environment("GNUPGHOME", keys.resolve("gpg").toString());
  }

  private void signersOfSsh(String ada, String ben) throws IOException {
    base.write(
        SIGNERS,
        "signers:\n  Ada Example: { ssh: \""
            + Files.readString(Path.of(ssh(ada) + ".pub")).strip()
            + "\" }\n  Ben Example: { ssh: \""
            + Files.readString(Path.of(ssh(ben) + ".pub")).strip()
            + "\" }\n");
  }

  private void signersOfGpg() throws IOException, InterruptedException {
    base.write(SIGNERS, "signers:\n" + armoured(ADA, "ada") + armoured("Ben Example", "ben"));
  }

  private static String armoured(String person, String name)
      throws IOException, InterruptedException {
    String key = ran(gpg("--armor", "--export", name + "@brantmoor.example"));
    String lines = key.lines().map(line -> "      " + line + "\n").collect(Collectors.joining());
    return "  " + person + ":\n    gpg: |\n" + lines;
  }

  private int sign(String name, String... key) {
    List<String> all = new ArrayList<>(List.of("rule", "warm/low"));
    all.addAll(List.of("--role", "engineering", "--name", name, "--date", "2026-03-01"));
    all.addAll(List.of(key));
    return base.run("sign", all.toArray(String[]::new));
  }

  /** The finding about the rule's signature; empty where there is none. */
  private String found() {
    base.run("check", "--sign-offs");
    return base.out()
        .lines()
        .filter(line -> line.startsWith("error[") && line.contains("`warm/low`"))
        .collect(Collectors.joining());
  }

  @Test
  void sshKeyOfThePersonIsVerified() throws IOException {
    signersOfSsh("ada", "ben");
    assertEquals(0, sign(ADA, "--ssh-key", ssh("ada")), base::err);
    assertTrue(base.out().contains("verified by key"), base.out());
    assertEquals("", found());
  }

  @Test
  void sshSignatureEditedByHandIsBroken() throws IOException {
    signersOfSsh("ada", "ben");
    for (String edit : List.of("date: 2026-03-01", "name: \"Ada Example\"", "role: engineering")) {
      base.edit("handbook.yaml", "rule: engineering,", "rule: [engineering, engineer],");
      sign(ADA, "--ssh-key", ssh("ada"));
      base.edit(LOW, edit, edit.replace("01", "02").replace("Ada", "Ben").replace("ing", ""));
      assertTrue(found().contains("error[broken-signature]"), edit + base.out() + base.err());
      base.edit("handbook.yaml", "[engineering, engineer]", "engineering");
    }
  }

  @Test
  void meaningEditedByHandAfterAChangeIsBroken() throws IOException {
    signersOfSsh("ada", "ben");
    sign(ADA, "--ssh-key", ssh("ada"));
    String signed = Files.readString(base.file(LOW));
    base.edit("handbook.yaml", "below limits", "below 0.9 A");
    base.edit("handbook.yaml", "within limits", "0.9 to 2 A");
    assertTrue(found().contains("error[lapsed-signature]"), base.out());
    sign(ADA, "--ssh-key", ssh("ada"));
    String current = Files.readString(base.file(LOW));
    base.write(LOW, signed.replace(meaning(signed), meaning(current)));
    assertTrue(found().contains("error[broken-signature]"), base.out());
  }

  private static String meaning(String file) {
    return file.lines().filter(line -> line.startsWith("meaning: ")).findFirst().orElseThrow();
  }

  @Test
  void wrongSshKeyIsRefused() throws IOException {
    signersOfSsh("ada", "ben");
    assertEquals(2, sign(ADA, "--ssh-key", ssh("ben")));
    assertTrue(base.err().contains("that key is none of `Ada Example`"), base.err());
    assertFalse(Files.exists(base.file(LOW)));
  }

  /** Ben's key is known, but not as Ada's. */
  @Test
  void keyOfAColleagueDoesNotPass() throws IOException {
    signersOfSsh("ben", "ada");
    assertEquals(0, sign(ADA, "--ssh-key", ssh("ben")), base::err);
    signersOfSsh("ada", "ben");
    assertTrue(found().contains("error[broken-signature]"), base.out());
  }

  @Test
  void whoHasAKeyMustUseIt() throws IOException {
    signersOfSsh("ada", "ben");
    assertEquals(2, sign(ADA));
    assertTrue(base.err().contains("`Ada Example` has a key"), base.err());
    sign(ADA, "--ssh-key", ssh("ada"));
    String whole = Files.readString(base.file(LOW));
    base.write(LOW, whole.substring(0, whole.indexOf("signature:")));
    assertTrue(found().contains("no signature with it is there"), base.out());
    base.edit(LOW, ADA, "ADA  EXAMPLE");
    assertTrue(found().contains("no signature with it is there"), base.out());
    assertEquals(2, sign("ada example"));
    assertEquals(0, sign("Cy Example"), base::err);
    assertEquals("", found());
  }

  @Test
  void keyThatIsNotThereIsToldClearly() throws IOException {
    signersOfSsh("ada", "ben");
    assertEquals(2, sign(ADA, "--ssh-key", ssh("nobody")));
    assertTrue(base.err().contains("`ssh-keygen` did not sign"), base.err());
  }

  @Test
  void gpgKeyOfThePersonIsVerifiedAndNoOther() throws IOException, InterruptedException {
    signersOfGpg();
    assertEquals(2, sign(ADA, "--gpg-key", "ben@brantmoor.example"));
    assertTrue(base.err().contains("that key is none of `Ada Example`"), base.err());
    assertEquals(0, sign(ADA, "--gpg-key", "ada@brantmoor.example"), base::err);
    assertEquals("", found());
    base.edit(LOW, "2026-03-01", "2026-03-02");
    assertTrue(found().contains("error[broken-signature]"), base.out());
    assertTrue(found().contains("BAD signature"), base.out());
    assertNoRelease();
  }

  /** Nothing is released with such a signature; the message names it. */
  private void assertNoRelease() {
    Path releases = temporary.resolve("releases");
    int code =
        base.run("release", "--number", "1", "--date", "2026-03-09", "--to", releases.toString());
    assertEquals(1, code, base::out);
    assertTrue(base.err().contains("under rule `warm/low` does not count"), base.err());
    assertTrue(base.err().contains("release 1 was not made"), base.err());
    assertFalse(Files.exists(releases));
  }
}
