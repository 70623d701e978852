package io.faultwright.resolve;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.SignOff;
import io.faultwright.model.SignOffs;
import io.faultwright.model.Signer;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.YamlReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Reads what is signed: the files below {@code sign-offs/}. They are no part of the knowledge base,
 * they speak about it.
 */
public final class SignOffReader {
  private final KnowledgeBase kb;
  private final Problems problems = new Problems();
  private final SortedMap<String, SignOff> known = new TreeMap<>();
  private final SortedMap<String, Signer> signers = new TreeMap<>();

  private SignOffReader(KnowledgeBase kb) {
    this.kb = kb;
  }

  /** Whether a file speaks about the knowledge base instead of belonging to it. */
  static boolean isSignOff(String path) {
    return path.startsWith(SignOffs.FOLDER);
  }

  /**
   * What is signed.
   *
   * @param sources all files of a knowledge base
   * @param kb what is in them
   * @throws Unreadable with every problem of every sign-off
   */
  public static SignOffs read(Sources sources, KnowledgeBase kb) {
    SignOffReader reader = new SignOffReader(kb);
    sources.files().stream().filter(file -> isSignOff(file.path())).forEach(reader::read);
    if (!reader.problems.isEmpty()) {
      throw new Unreadable(reader.problems.sorted());
    }
    return new SignOffs(new ArrayList<>(reader.known.values()), reader.signers);
  }

  private void read(SourceFile file) {
    int before = problems.count();
    Optional<Node> root = YamlReader.read(file, problems).root();
    if (file.path().equals(SignOffs.SIGNERS)) {
      root.ifPresent(node -> signers.putAll(new SignerResolver(problems).resolve(node)));
    } else if (root.isPresent()) {
      new SignOffResolver(kb, problems).resolve(root.get()).ifPresent(this::add);
    } else if (problems.count() == before) {
      problems.add(
          new Place(file.path(), 1, 1, 1),
          "the sign-off is empty",
          "delete the file, and sign with `faultwright sign`");
    }
  }

  private void add(SignOff signOff) {
    SignOff earlier = known.putIfAbsent(signOff.of() + "." + signOff.role(), signOff);
    if (earlier != null) {
      problems.add(
          new Problem(
              List.of(signOff.place(), earlier.place()),
              signOff.of().words() + " is signed twice as `" + signOff.role() + "`",
              "keep one of the two"));
    }
  }
}
