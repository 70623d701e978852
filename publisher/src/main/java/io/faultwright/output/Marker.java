package io.faultwright.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The list of its own files that a published folder carries; what is not on it is not ours. */
final class Marker {
  static final String NAME = ".faultwright-published";
  private static final String HEADING = "# files published here; the next publish replaces them";

  /** Files that desktops put into any folder they show. */
  private static final Set<String> LITTER = Set.of(".DS_Store", "Thumbs.db", "desktop.ini");

  private Marker() {}

  static boolean marks(Path folder) {
    return Files.isRegularFile(folder.resolve(NAME));
  }

  static void start(Path folder) throws IOException {
    Files.writeString(folder.resolve(NAME), HEADING + "\n", StandardCharsets.UTF_8);
  }

  /** Lists a file, before it is written. */
  static void add(Path folder, String file) throws IOException {
    Files.writeString(
        folder.resolve(NAME), file + "\n", StandardCharsets.UTF_8, StandardOpenOption.APPEND);
  }

  /** Files in the folder that are not on its list. */
  static SortedSet<String> strangers(Path folder) throws IOException {
    SortedSet<String> strangers = new TreeSet<>(files(folder));
    strangers.remove(NAME);
    if (marks(folder)) {
      Files.readAllLines(folder.resolve(NAME), StandardCharsets.UTF_8).forEach(strangers::remove);
    }
    strangers.removeIf(path -> LITTER.contains(path.substring(path.lastIndexOf('/') + 1)));
    return strangers;
  }

  private static List<String> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(path -> !Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS))
          .map(path -> folder.relativize(path).toString().replace('\\', '/'))
          .toList();
    }
  }

  /** Deletes a folder of which every file is on its list. */
  static void deletePublished(Path folder) throws IOException {
    if (!strangers(folder).isEmpty()) {
      throw new IOException(folder.getFileName() + " holds files that were not published");
    }
    inOrder(folder).forEach(Marker::delete);
  }

  /** What a folder holds, inner first; its list last but the folder, should a kill come between. */
  static List<Path> inOrder(Path folder) throws IOException {
    Path list = folder.resolve(NAME);
    try (Stream<Path> all = Files.walk(folder)) {
      return all.sorted(
              Comparator.comparing((Path path) -> path.equals(folder))
                  .thenComparing(path -> path.equals(list))
                  .thenComparing(Comparator.reverseOrder()))
          .toList();
    }
  }

  private static void delete(Path path) {
    try {
      Files.delete(path);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
