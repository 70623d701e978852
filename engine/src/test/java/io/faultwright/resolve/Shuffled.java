package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.YamlReader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;

/** A knowledge base in other files and another order, with the same meaning. */
public final class Shuffled {
  private static final Set<String> SECTIONS_OF_EQUIPMENT = Set.of("families", "options", "models");

  private Shuffled() {}

  /** Every definition by itself, dealt out to a few files, all keys in another order. */
  public static Sources of(Sources sources, Random random) {
    List<Node> pieces = new ArrayList<>();
    List<SourceFile> files = new ArrayList<>();
    for (SourceFile file : sources.files()) {
      if (file.path().endsWith(".md") || SignOffReader.isSignOff(file.path())) {
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
