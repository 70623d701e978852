package io.faultwright.site;

import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/**
 * The same knowledge base in other files: every definition is dealt to one of a few files of other
 * names, as it is written. Only for files in block style, with steps of two blanks.
 */
final class Rearranged {
  private static final int FILES = 4;

  /** Sections whose definitions stand one level deeper. */
  private static final Set<String> DEEP = Set.of("equipment", "translations");

  private static final Set<String> WHOLE = Set.of("handbook", "equipment/nameplate");

  private final List<Definition> definitions = new ArrayList<>();
  private final Random random;

  private Rearranged(Random random) {
    this.random = random;
  }

  /** Lines that belong together, and the keys that they stand under. */
  private record Definition(List<String> under, List<String> lines) {}

  static Sources of(Sources sources, Random random) {
    Rearranged other = new Rearranged(random);
    List<SourceFile> files = new ArrayList<>();
    for (SourceFile file : sources.files()) {
      if (file.path().endsWith(".md")) {
        files.add(file);
      } else {
        other.take(List.of(), file.text().lines().toList());
      }
    }
    files.addAll(other.dealt());
    return new Sources(files);
  }

  /** Takes what stands under some keys apart, down to the definitions. */
  private void take(List<String> under, List<String> lines) {
    for (List<String> block : blocks(lines, " ".repeat(2 * under.size()))) {
      if (isOfDefinitions(under, block.get(0))) {
        List<String> deeper = new ArrayList<>(under);
        deeper.add(block.get(0));
        take(deeper, block.subList(1, block.size()));
      } else {
        definitions.add(new Definition(under, block));
      }
    }
  }

  private static boolean isOfDefinitions(List<String> under, String key) {
    String path = String.join("", under).replace(":", "/") + key.strip().replace(":", "");
    boolean deep = under.isEmpty() || under.size() == 1 && DEEP.contains(path.split("/")[0]);
    return deep && key.endsWith(":") && !WHOLE.contains(path.replace(" ", ""));
  }

  /** A block begins with each line that has just this much before it and is no comment. */
  private static List<List<String>> blocks(List<String> lines, String indent) {
    List<List<String>> blocks = new ArrayList<>();
    for (String line : lines) {
      boolean begins =
          line.startsWith(indent) && line.substring(indent.length()).matches("[^ #:].*");
      if (begins) {
        blocks.add(new ArrayList<>());
      }
      if (!blocks.isEmpty()) {
        blocks.get(blocks.size() - 1).add(line);
      }
    }
    return blocks;
  }

  private List<SourceFile> dealt() {
    Collections.shuffle(definitions, random);
    List<SourceFile> files = new ArrayList<>();
    for (int i = 0; i < FILES; i++) {
      String name = "part-" + random.nextInt(1000) + "/of-" + i + ".yaml";
      files.add(
          SourceFile.of(
              name, text(definitions.size() * i / FILES, definitions.size() * (i + 1) / FILES)));
    }
    return files;
  }

  private String text(int from, int to) {
    Map<String, Map<String, List<String>>> sections = new LinkedHashMap<>();
    for (Definition one : definitions.subList(from, to)) {
      String section = one.under().isEmpty() ? "" : one.under().get(0);
      String deeper = one.under().size() < 2 ? "" : one.under().get(1);
      sections
          .computeIfAbsent(section, key -> new LinkedHashMap<>())
          .computeIfAbsent(deeper, key -> new ArrayList<>())
          .addAll(one.lines());
    }
    StringBuilder text = new StringBuilder();
    sections.forEach(
        (section, parts) -> {
          text.append(section).append('\n');
          parts.forEach(
              (deeper, lines) ->
                  text.append(deeper).append('\n').append(String.join("\n", lines)).append('\n'));
        });
    return text.toString();
  }
}
