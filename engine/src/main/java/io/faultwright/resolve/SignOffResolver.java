package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.KeySignature;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.SignOff;
import io.faultwright.model.Signed;
import io.faultwright.model.SignedKind;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.Scalar;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Reads the file of one sign-off. */
final class SignOffResolver {
  private static final List<String> KEYS =
      List.of("of", "role", "name", "date", "author", "note", "meaning", "parts", "signature");
  private static final String SIGN_AGAIN =
      "sign with `faultwright sign` instead of writing the file by hand";
  private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

  private final KnowledgeBase kb;
  private final Problems problems;

  SignOffResolver(KnowledgeBase kb, Problems problems) {
    this.kb = kb;
    this.problems = problems;
  }

  /** The sign-off; empty where it does not say what is signed. */
  Optional<SignOff> resolve(Node root) {
    Fields fields = new Fields(root, "the sign-off", root.place(), KEYS, problems);
    Optional<Signed> of = fields.requireScalar("of").flatMap(this::signed);
    Optional<Scalar> role = fields.requireScalar("role");
    role.ifPresent(written -> checkRole(written, of));
    String name = fields.requireText("name");
    String date = fields.requireScalar("date").map(this::date).orElse("");
    String meaning = fields.requireScalar("meaning").map(this::meaning).orElse("");
    Optional<String> author = fields.text("author");
    String note = fields.text("note").orElse("");
    SortedMap<String, String> parts = parts(fields.map("parts"));
    Optional<KeySignature> proof = fields.find("signature").flatMap(this::signature);
    return of.map(
        signed ->
            new SignOff(
                root.place(),
                signed,
                role.map(Scalar::text).orElse(""),
                name,
                date,
                author,
                note,
                meaning,
                parts,
                proof));
  }

  private Optional<Signed> signed(Scalar written) {
    String[] words = written.text().strip().split("\\s+", 2);
    Optional<SignedKind> kind = SignedKind.of(words[0]);
    if (kind.isEmpty() || words.length < 2) {
      problems.add(
          written.place(),
          Words.quoted(written.text()) + " does not say what is signed",
          kind.isEmpty() && words.length == 2
              ? NearMatch.help(words[0], SignedKind.words())
              : "write kind and id, as in `rule room-too-warm/fan-stands`");
      return Optional.empty();
    }
    Signed signed = new Signed(kind.get(), words[1].strip());
    if (signed.place(kb).isEmpty()) {
      problems.add(
          written.place(),
          "unknown " + signed.words(),
          help(signed) + "; where it is gone for good, delete this file");
    }
    return Optional.of(signed);
  }

  private String help(Signed signed) {
    List<String> ids =
        Signed.all(kb).stream().filter(one -> one.kind() == signed.kind()).map(Signed::id).toList();
    return ids.isEmpty() ? "no file defines such a thing yet" : NearMatch.help(signed.id(), ids);
  }

  /** Where the handbook says who signs such things, nobody else does. */
  private void checkRole(Scalar written, Optional<Signed> of) {
    if (!Ids.checkName("a role", written, problems) || of.isEmpty()) {
      return;
    }
    SortedSet<String> roles = kb.handbook().signOffs().of(of.get().kind());
    if (!roles.isEmpty() && !roles.contains(written.text())) {
      problems.add(
          written.place(),
          "unknown role " + Words.quoted(written.text()) + " for a " + of.get().kind().word(),
          NearMatch.help(written.text(), roles));
    }
  }

  private String date(Scalar written) {
    return Dates.read(written, problems).map(LocalDate::toString).orElse("");
  }

  private String meaning(Scalar written) {
    String hash = written.text().strip();
    if (!HASH.matcher(hash).matches()) {
      problems.add(
          written.place(),
          Words.quoted(hash) + " is not a SHA-256 in 64 hexadecimal digits",
          SIGN_AGAIN);
    }
    return hash;
  }

  private SortedMap<String, String> parts(List<Entry> written) {
    SortedMap<String, String> parts = new TreeMap<>();
    for (Entry part : written) {
      if (part.value() instanceof Scalar hash && !hash.isBlank()) {
        parts.put(part.name(), hash.text());
      } else {
        problems.add(
            part.key().place(), "part " + Words.quoted(part.name()) + " has no hash", SIGN_AGAIN);
      }
    }
    return parts;
  }

  private Optional<KeySignature> signature(Node node) {
    List<String> formats = KeySignature.Format.words();
    int before = problems.count();
    Fields fields = new Fields(node, "`signature`", node.place(), formats, problems);
    List<KeySignature> found =
        Arrays.stream(KeySignature.Format.values())
            .flatMap(
                format ->
                    fields.scalar(format.word()).stream()
                        .map(text -> new KeySignature(format, text.text())))
            .toList();
    if (found.size() != 1 && problems.count() == before) {
      problems.add(node.place(), "`signature` takes one of " + Words.quoted(formats), SIGN_AGAIN);
    }
    return found.stream().findFirst();
  }
}
