package io.faultwright.cli;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.model.KeySignature;
import io.faultwright.model.SignOff;
import io.faultwright.model.SignOffRules;
import io.faultwright.model.SignOffs;
import io.faultwright.model.Signed;
import io.faultwright.model.Signer;
import io.faultwright.output.Refused;
import io.faultwright.release.Meaning;
import io.faultwright.source.Place;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.SortedSet;
import picocli.CommandLine.Option;

/** The options that say who signs, as what, and when. */
final class SignerOptions {
  @Option(
      names = "--role",
      paramLabel = "ROLE",
      description = "In which role, one of those that `sign-off` of the handbook asks for.")
  private String role = "";

  @Option(names = "--name", paramLabel = "NAME", description = "Your name.")
  private String name = "";

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      description = "The day on which you sign; no clock is asked.")
  private String date = "";

  @Option(
      names = "--author",
      paramLabel = "NAME",
      description = "Who wrote it; needed where the handbook asks for four eyes.")
  private Optional<String> author = Optional.empty();

  @Option(names = "--note", paramLabel = "TEXT", description = "What else you want to say.")
  private String note = "";

  @Option(
      names = "--ssh-key",
      paramLabel = "FILE",
      description = "Sign with this SSH key, through `ssh-keygen`.")
  private Optional<String> sshKey = Optional.empty();

  @Option(
      names = "--gpg-key",
      paramLabel = "KEY",
      description = "Sign with this OpenPGP key, through `gpg`.")
  private Optional<String> gpgKey = Optional.empty();

  /**
   * Looks at what was given, apart from what is to be signed.
   *
   * @throws Refused with what is missing or odd
   */
  void require(SignOffs signOffs) {
    requireGiven("--role", role, "say in which role you sign");
    requireGiven("--name", name, "say who you are");
    requireGiven("--date", date, "say on which day you sign, as in `2026-03-02`");
    dateOf(date);
    if (sshKey.isPresent() && gpgKey.isPresent()) {
      throw new Refused("two keys at once", "keep `--ssh-key` or `--gpg-key`");
    }
    Optional<Signer> signer = signOffs.signer(name());
    if (format().isEmpty() && signer.isPresent()) {
      throw new Refused(
          "`" + name() + "` has a key in `" + SignOffs.SIGNERS + "`",
          "sign with it: `--ssh-key FILE` or `--gpg-key KEY`");
    }
    if (format().isPresent()
        && signer.filter(one -> !one.keys(format().get()).isEmpty()).isEmpty()) {
      throw new Refused(
          "`" + SignOffs.SIGNERS + "` has no " + format().get().word() + " key of `" + name() + "`",
          "write the public key there, below `signers:` and the name, as docs/reviewer.md shows");
    }
  }

  /**
   * Looks whether the handbook lets this person sign that.
   *
   * @throws Refused where it does not
   */
  void requireFitting(SignOffRules rules, Signed signed) {
    SortedSet<String> roles = rules.of(signed.kind());
    if (!roles.isEmpty() && !roles.contains(role)) {
      throw new Refused(
          "a " + signed.kind().word() + " is not signed as `" + role + "`",
          NearMatch.help(role, roles));
    }
    if (!role.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
      throw new Refused(
          "`" + role + "` is not a role",
          "roles have lower-case letters, digits and single hyphens");
    }
    if (rules.fourEyes() && author.isEmpty()) {
      throw new Refused(
          "the handbook asks for four eyes, and nobody is named as the author",
          "say who wrote it with `--author NAME`");
    }
    if (rules.fourEyes() && SignOffs.samePerson(author.orElseThrow(), name)) {
      throw new Refused(
          "`" + name() + "` wrote it and would sign it too",
          "let somebody sign it who did not write it");
    }
  }

  /** The date of an option. */
  static LocalDate dateOf(String written) {
    try {
      return LocalDate.parse(written.strip());
    } catch (DateTimeException wrong) {
      throw new Refused(
          "`" + written + "` is not a date", "write year, month and day as in `2026-03-02`");
    }
  }

  private static void requireGiven(String option, String value, String help) {
    if (value.isBlank()) {
      throw new Refused("`" + option + "` is missing", help);
    }
  }

  String role() {
    return role;
  }

  String name() {
    return oneLine(name);
  }

  /** What kind of key signs; absent where none does. */
  Optional<KeySignature.Format> format() {
    return sshKey.isPresent()
        ? Optional.of(KeySignature.Format.SSH)
        : gpgKey.map(any -> KeySignature.Format.GPG);
  }

  /** Which key signs. */
  String key() {
    return sshKey.or(() -> gpgKey).orElseThrow();
  }

  /** The sign-off, without the signature of a key. */
  SignOff of(Meaning meaning) {
    Signed of = meaning.of();
    return new SignOff(
        new Place(SignOffs.path(of, role), 1, 1, 1),
        of,
        role,
        name(),
        dateOf(date).toString(),
        author.map(SignerOptions::oneLine),
        oneLine(note),
        meaning.hash(),
        meaning.shortHashes(),
        Optional.empty());
  }

  private static String oneLine(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }
}
