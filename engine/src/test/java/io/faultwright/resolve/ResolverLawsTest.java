package io.faultwright.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.diagnostic.Problems;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.YamlReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What must not matter: line ends, repetition, the order of keys, the files things stand in. */
class ResolverLawsTest {
  private static final int ROUNDS = 60;
  private static final Set<String> SECTIONS_OF_EQUIPMENT = Set.of("families", "options", "models");

  private final KnowledgeBase expected = Resolver.resolve(Knowledge.sources());

  @Test
  void twiceGivesTheSame() {
    assertEquals(expected, Resolver.resolve(Knowledge.sources()));
  }

  @Test
  void lineEndsAndByteOrderMark(@TempDir Path folder) throws IOException {
    for (SourceFile file : Knowledge.sources().files()) {
      Path copy = folder.resolve(file.path());
      Files.createDirectories(copy.getParent());
      Files.writeString(copy, "\uFEFF" + file.text().replace("\n", "\r\n"));
    }
    assertEquals(expected, Resolver.resolve(FolderReader.read(folder)));
  }

  @Test
  void orderOfKeysAndFiles() {
    for (int seed = 0; seed < ROUNDS; seed++) {
      Random random = new Random(seed);
      KnowledgeBase found = Resolver.resolve(shuffled(random));
      assertEquals(Normal.of(expected), Normal.of(found), "seed " + seed);
    }
  }

  /** Every definition by itself, dealt out to a few files, all keys in another order. */
  private static Sources shuffled(Random random) {
    List<Node> pieces = new ArrayList<>();
    List<SourceFile> files = new ArrayList<>();
    for (SourceFile file : Knowledge.sources().files()) {
      if (file.path().endsWith(".md")) {
        files.add(file);
      } else {
        MapNode root = (MapNode) YamlReader.read(file, new Problems()).root().orElseThrow();
        root.entries().forEach(section -> pieces.addAll(pieces(section)));
      }
    }
    Collections.shuffle(pieces, random);
    for (int i = 0; i < pieces.size(); i++) {
      files.add(new SourceFile("f" + i + ".yaml", TreeText.of(pieces.get(i), random)));
    }
    return new Sources(files);
  }

  private static List<Node> pieces(Entry section) {
    if (section.name().equals("handbook")) {
      return List.of(wrapped(section));
    }
    List<Entry> inner = ((MapNode) section.value()).entries();
    if (section.name().equals("equipment")) {
      return inner.stream().flatMap(part -> equipment(section, part).stream()).toList();
    }
    return inner.stream().map(one -> under(section, wrapped(one))).collect(Collectors.toList());
  }

  private static List<Node> equipment(Entry equipment, Entry part) {
    if (!SECTIONS_OF_EQUIPMENT.contains(part.name())) {
      return List.of(under(equipment, wrapped(part)));
    }
    return ((MapNode) part.value())
        .entries().stream().map(one -> under(equipment, under(part, wrapped(one)))).toList();
  }

  private static Node under(Entry section, Node content) {
    return wrapped(new Entry(section.key(), content));
  }

  private static Node wrapped(Entry entry) {
    return new MapNode(List.of(entry), entry.key().place());
  }
}
