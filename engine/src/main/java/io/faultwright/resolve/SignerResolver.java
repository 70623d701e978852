package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Signer;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Reads whose keys are known. */
final class SignerResolver {
  private static final String SIGNERS = "signers";
  private static final List<String> FILE_KEYS = List.of(SIGNERS);
  private static final List<String> KEYS = List.of("ssh", "gpg");

  /** Kind and key of a public SSH key, perhaps with a comment; nothing before and nothing else. */
  private static final Pattern SSH =
      Pattern.compile("[a-z][a-z0-9@.-]* [A-Za-z0-9+/]+={0,2}( [^\\p{Cntrl}]*)?");

  private final Problems problems;

  SignerResolver(Problems problems) {
    this.problems = problems;
  }

  SortedMap<String, Signer> resolve(Node root) {
    Fields file = new Fields(root, "the file of keys", root.place(), FILE_KEYS, problems);
    SortedMap<String, Signer> signers = new TreeMap<>();
    for (Entry entry : file.map(SIGNERS)) {
      signers.put(entry.name().strip(), signer(entry));
    }
    return signers;
  }

  private Signer signer(Entry entry) {
    Place place = entry.key().place();
    String what = "signer " + Words.quoted(entry.name());
    Fields fields = new Fields(entry.value(), what, place, KEYS, problems);
    List<Scalar> ssh = fields.oneOrMore("ssh");
    List<Scalar> gpg = fields.oneOrMore("gpg");
    if (fields.readable() && ssh.isEmpty() && gpg.isEmpty()) {
      problems.add(place, what + " has no key", "add `ssh:` or `gpg:` with the public key");
    }
    ssh.stream()
        .filter(key -> !SSH.matcher(key.text().strip()).matches())
        .forEach(this::notAnSshKey);
    gpg.stream().filter(key -> !isPublicGpgKey(key.text())).forEach(this::notGpgKey);
    return new Signer(entry.name().strip(), place, texts(ssh), texts(gpg));
  }

  private static List<String> texts(List<Scalar> written) {
    return written.stream().map(scalar -> scalar.text().strip()).toList();
  }

  private static boolean isPublicGpgKey(String text) {
    return text.strip().startsWith("-----BEGIN PGP PUBLIC KEY BLOCK-----");
  }

  private void notAnSshKey(Scalar written) {
    problems.add(
        written.place(),
        "this is not a public SSH key",
        "write the line of the file `*.pub`, as in `ssh-ed25519 AAAA…`; never a private key");
  }

  private void notGpgKey(Scalar written) {
    problems.add(
        written.place(),
        "this is not a public OpenPGP key in its armour",
        "write what `gpg --armor --export NAME` prints, below `gpg: |`; never a private key");
  }
}
