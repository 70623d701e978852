package io.faultwright.cli;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.key.PersonalKeys;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.SignOff;
import io.faultwright.model.SignOffRules;
import io.faultwright.model.SignOffs;
import io.faultwright.model.Signed;
import io.faultwright.model.SignedKind;
import io.faultwright.model.Signer;
import io.faultwright.output.AtomicFile;
import io.faultwright.output.Refused;
import io.faultwright.release.Meanings;
import io.faultwright.release.Proof;
import io.faultwright.release.SignOffStates;
import io.faultwright.release.SignOffYaml;
import io.faultwright.resolve.Resolver;
import io.faultwright.resolve.SignOffReader;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Records that a person has read something and found it right. */
@Command(
    name = "sign",
    description = {
      "Record that you have read something and found it right, as it is now.",
      "%nA change of its meaning lapses the signature; another layout of the files does not."
          + " Without a key nobody can tell who wrote the name: it is an unverified name.%n"
    })
final class SignCommand implements Callable<Integer> {
  private final Console console;
  private final PersonalKeys keys;

  @Mixin private KnowledgeBaseFolder folder;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "KIND",
      description = "What to sign: symptom, rule, limits, chart, guide or sequence.")
  private Optional<String> kind = Optional.empty();

  @Parameters(
      index = "2..*",
      paramLabel = "ID",
      description = "Which of them; a rule as in `room-too-warm/fan-stands`.")
  private List<String> ids = List.of();

  @Option(
      names = "--all",
      description =
          "Sign everything of the kind, or everything that this role has to sign, that is not"
              + " signed in this role already.")
  private boolean all;

  @Option(
      names = "--show",
      description = "Only print what a signature would stand for; nothing is signed.")
  private boolean show;

  @Mixin private SignerOptions signer;

  SignCommand(Console console) {
    this.console = console;
    this.keys = new PersonalKeys(console.environment());
  }

  @Override
  public Integer call() {
    return new ProblemPrinter(console, false).guard(folder, this::sign);
  }

  private int sign(Sources sources) {
    KnowledgeBase kb = Resolver.resolve(sources);
    SignOffs signOffs = SignOffReader.read(sources, kb);
    try {
      SortedMap<String, byte[]> pictures = GuidePictures.read(folder.path());
      Meanings meanings = new Meanings(kb, pictures);
      List<Signed> chosen = chosen(kb);
      if (show) {
        chosen.forEach(signed -> console.print(meanings.of(signed).text()));
        return Exit.CLEAN;
      }
      signer.require(signOffs);
      List<Signed> due = due(chosen, new SignOffStates(kb, signOffs, pictures, keys));
      due.forEach(signed -> signer.requireFitting(kb.handbook().signOffs(), signed));
      List<SignOff> fresh = new ArrayList<>();
      for (Signed signed : due) {
        fresh.add(signed(signer.of(meanings.of(signed)), signOffs));
      }
      write(fresh);
      return Exit.CLEAN;
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  /** What was asked for, without what is signed in this role already if all was asked for. */
  private List<Signed> due(List<Signed> chosen, SignOffStates states) {
    return chosen.stream().filter(signed -> !all || !isSigned(states, signed)).toList();
  }

  private boolean isSigned(SignOffStates states, Signed signed) {
    return states.of(signed).signatures().stream()
        .anyMatch(one -> one.holds() && one.signOff().role().equals(signer.role()));
  }

  private List<Signed> chosen(KnowledgeBase kb) {
    Optional<SignedKind> known = kind.map(SignCommand::known);
    if (all == !ids.isEmpty() || known.isEmpty() && !all) {
      throw new Refused(
          all ? "`--all` and ids at once" : "nothing is named that is to be signed",
          "write kind and id, as in `rule room-too-warm/fan-stands`, or `--all`");
    }
    return all
        ? everything(kb, known)
        : ids.stream().map(id -> named(kb, known.get(), id)).toList();
  }

  private List<Signed> everything(KnowledgeBase kb, Optional<SignedKind> known) {
    SignOffRules rules = kb.handbook().signOffs();
    return Signed.all(kb).stream()
        .filter(
            signed ->
                known.isPresent()
                    ? signed.kind() == known.get()
                    : rules.of(signed.kind()).contains(signer.role()))
        .toList();
  }

  private static SignedKind known(String word) {
    return SignedKind.of(word)
        .orElseThrow(
            () ->
                new Refused(
                    "`" + word + "` is nothing that can be signed",
                    NearMatch.help(word, SignedKind.words())));
  }

  private static Signed named(KnowledgeBase kb, SignedKind kind, String id) {
    Signed signed = new Signed(kind, id);
    if (signed.place(kb).isEmpty()) {
      List<String> there =
          Signed.all(kb).stream().filter(one -> one.kind() == kind).map(Signed::id).toList();
      throw new Refused("there is no " + signed.words(), NearMatch.help(id, there));
    }
    return signed;
  }

  /** With the signature of a key where one was given; it must be the person's. */
  private SignOff signed(SignOff plain, SignOffs signOffs) throws IOException {
    if (signer.format().isEmpty()) {
      return plain;
    }
    SignOff signed = keys.sign(plain, signer.format().get(), signer.key());
    Signer known = signOffs.signer(plain.name()).orElseThrow();
    Proof proof = keys.of(signed, known);
    if (proof.state() != Proof.State.VERIFIED) {
      throw new Refused(
          "that key is none of `"
              + plain.name()
              + "` in `"
              + SignOffs.SIGNERS
              + "`: "
              + proof.reason(),
          "sign with the key that stands there, or let it be changed");
    }
    return signed;
  }

  private void write(List<SignOff> fresh) throws IOException {
    for (SignOff signOff : fresh) {
      Path file = folder.path().resolve(SignOffs.path(signOff.of(), signOff.role()));
      AtomicFile.write(file, SignOffYaml.write(signOff).getBytes(StandardCharsets.UTF_8));
    }
    console.print(words(fresh));
  }

  private String words(List<SignOff> fresh) {
    if (fresh.isEmpty()) {
      return "nothing to sign: everything is signed as `" + signer.role() + "` already\n";
    }
    String name =
        signer.format().isPresent() ? "verified by key" : "unverified name: no key signed it";
    return fresh.stream().map(one -> "  " + one.of() + "\n").collect(Collectors.joining())
        + "signed as "
        + signer.role()
        + " by "
        + signer.name()
        + " ("
        + name
        + "): "
        + fresh.size()
        + "\n";
  }
}
