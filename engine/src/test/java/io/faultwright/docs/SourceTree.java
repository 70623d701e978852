package io.faultwright.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The main sources of both modules: their packages, and who imports whom. */
final class SourceTree {
  private static final Pattern IMPORT =
      Pattern.compile(
          "^import (?:static )?io\\.faultwright\\.([a-z.]+)\\.[A-Z]", Pattern.MULTILINE);
  private static final Path ROOT = Path.of("src", "main", "java", "io", "faultwright");

  private final Path root;

  private SourceTree(Path module) {
    this.root = module.resolve(ROOT);
  }

  static SourceTree of(String module) {
    return new SourceTree(Path.of("..", module));
  }

  /** From each package to those it imports, below {@code io.faultwright}. */
  SortedMap<String, SortedSet<String>> arrows() {
    SortedMap<String, SortedSet<String>> arrows = new TreeMap<>();
    for (Path file : files()) {
      String own =
          root.relativize(file.getParent()).toString().replace('\\', '/').replace('/', '.');
      SortedSet<String> used = arrows.computeIfAbsent(own, name -> new TreeSet<>());
      IMPORT.matcher(Stored.read(file)).results().forEach(found -> used.add(found.group(1)));
      used.remove(own);
    }
    return arrows;
  }

  /** Whether a class of this name, with its package, is among the sources. */
  boolean has(String type) {
    return Files.exists(root.resolve(type.replace('.', '/') + ".java"));
  }

  private Set<Path> files() {
    try (Stream<Path> files = Files.walk(root)) {
      return new TreeSet<>(files.filter(file -> file.toString().endsWith(".java")).toList());
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }
}
