package io.faultwright.release;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.SignOff;
import io.faultwright.model.SignOffRules;
import io.faultwright.model.SignOffs;
import io.faultwright.model.Signed;
import io.faultwright.model.Signer;
import io.faultwright.release.Signature.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The sign-off of everything in a knowledge base that can be signed. */
public final class SignOffStates {
  private final KnowledgeBase kb;
  private final SignOffs signOffs;
  private final SignatureCheck check;
  private final Meanings meanings;
  private final Map<Signed, List<SignOff>> bySigned;

  /**
   * States as they are now.
   *
   * @param pictures that guides may show, by path in the {@code guides} folder
   * @param check looks at signatures with keys
   */
  public SignOffStates(
      KnowledgeBase kb,
      SignOffs signOffs,
      SortedMap<String, byte[]> pictures,
      SignatureCheck check) {
    this.kb = kb;
    this.signOffs = signOffs;
    this.check = check;
    this.meanings = new Meanings(kb, pictures);
    this.bySigned = signOffs.all().stream().collect(Collectors.groupingBy(SignOff::of));
  }

  /** Everything that can be signed, by kind and id. */
  public List<SignOffState> all() {
    return Signed.all(kb).stream().map(this::of).toList();
  }

  /** One thing of the knowledge base. */
  public SignOffState of(Signed signed) {
    List<Signature> signatures =
        bySigned.getOrDefault(signed, List.of()).stream().map(this::signature).toList();
    SortedSet<String> required = rules().of(signed.kind());
    SortedSet<String> missing = new TreeSet<>(required);
    signatures.forEach(one -> missing.remove(one.signOff().role()));
    return new SignOffState(signed, signed.place(kb).orElseThrow(), signatures, required, missing);
  }

  private SignOffRules rules() {
    return kb.handbook().signOffs();
  }

  private Signature signature(SignOff signOff) {
    Proof proof = proof(signOff);
    Meaning meaning = meanings.of(signOff.of());
    boolean same = meaning.hash().equals(signOff.meaning());
    List<String> changed = same ? List.of() : changes(signOff.parts(), meaning.shortHashes());
    return new Signature(signOff, standing(signOff, same, proof), changed, proof);
  }

  private Standing standing(SignOff signOff, boolean same, Proof proof) {
    if (proof.state() == Proof.State.BROKEN) {
      return Standing.BROKEN;
    }
    if (!same) {
      return Standing.LAPSED;
    }
    return rules().fourEyes() && !otherEyes(signOff) ? Standing.OWN : Standing.HOLDS;
  }

  /** Whether somebody else is known to have written what is signed. */
  private static boolean otherEyes(SignOff signOff) {
    return signOff
        .author()
        .filter(author -> !SignOffs.samePerson(author, signOff.name()))
        .isPresent();
  }

  /** Who has a key must use it; who has none cannot be verified. */
  private Proof proof(SignOff signOff) {
    Optional<Signer> signer = signOffs.signer(signOff.name());
    if (signOff.proof().isEmpty()) {
      return signer.isEmpty()
          ? Proof.UNVERIFIED
          : Proof.broken("`" + signOff.name() + "` has a key, and no signature with it is there");
    }
    if (signer.isEmpty() || signer.get().keys(signOff.proof().get().format()).isEmpty()) {
      return Proof.broken(
          "`"
              + SignOffs.SIGNERS
              + "` has no "
              + signOff.proof().get().format().word()
              + " key of `"
              + signOff.name()
              + "`");
    }
    return check.of(signOff, signer.get());
  }

  private static List<String> changes(
      SortedMap<String, String> before, SortedMap<String, String> now) {
    List<String> changes = new ArrayList<>();
    SortedSet<String> names = new TreeSet<>(before.keySet());
    names.addAll(now.keySet());
    for (String name : names) {
      if (!before.containsKey(name)) {
        changes.add(quoted(name) + " came");
      } else if (!now.containsKey(name)) {
        changes.add(quoted(name) + " is gone");
      } else if (!before.get(name).equals(now.get(name))) {
        changes.add(quoted(name) + " changed");
      }
    }
    return changes;
  }

  /** {@code limits suction-pressure} with its id in backticks. */
  private static String quoted(String part) {
    int blank = part.indexOf(' ');
    return part.substring(0, blank + 1) + "`" + part.substring(blank + 1) + "`";
  }
}
