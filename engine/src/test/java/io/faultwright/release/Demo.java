package io.faultwright.release;

import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.SignOff;
import io.faultwright.model.SignOffs;
import io.faultwright.model.Signed;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The demo handbook, with everything in it signed. */
final class Demo {
  private static final Path FOLDER = Path.of("..", "rules", "walk-in-freezers");

  static final Sources SOURCES = FolderReader.read(FOLDER);
  static final KnowledgeBase KNOWLEDGE = Resolver.resolve(SOURCES);
  static final SignOffs SIGNED = signed(KNOWLEDGE);

  private Demo() {}

  /** Everything in a knowledge base, signed as it is. */
  static SignOffs signed(KnowledgeBase kb) {
    Meanings meanings = new Meanings(kb, new TreeMap<>());
    List<SignOff> all = new ArrayList<>();
    for (Signed signed : Signed.all(kb)) {
      all.add(signOff(meanings.of(signed), "Ada Example", Optional.of("Ben Example")));
    }
    return new SignOffs(all, new TreeMap<>());
  }

  static SignOff signOff(Meaning meaning, String name, Optional<String> author) {
    return new SignOff(
        new Place("sign-offs/x.yaml", 1, 1, 1),
        meaning.of(),
        "engineering",
        name,
        "2026-03-02",
        author,
        "",
        meaning.hash(),
        meaning.shortHashes(),
        Optional.empty());
  }

  /** The demo with a text of a file replaced. */
  static KnowledgeBase edited(String path, String before, String after) {
    String text = SOURCES.find(path).orElseThrow().text();
    assertTrue(text.contains(before), path + " has no " + before);
    assertNotEquals(before, after);
    List<SourceFile> files = new ArrayList<>(SOURCES.files());
    files.removeIf(file -> file.path().equals(path));
    files.add(
        new SourceFile(path, text.replaceFirst(java.util.regex.Pattern.quote(before), after)));
    return Resolver.resolve(new Sources(files));
  }

  /** What of the demo's signatures does not hold any more in another revision. */
  static Set<String> lapsed(KnowledgeBase kb) {
    Set<String> lapsed = new TreeSet<>();
    new SignOffStates(kb, SIGNED, new TreeMap<>(), SignatureCheck.NONE)
        .all().stream()
            .flatMap(state -> state.signatures().stream())
            .filter(signature -> !signature.holds())
            .forEach(signature -> lapsed.add(signature.signOff().of().toString()));
    return lapsed;
  }
}
