package io.faultwright.cli;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** Reads the PNG and JPEG files that stand beside the guides; hidden ones and links are skipped. */
final class GuidePictures {
  private static final long LARGEST = 16L * 1024 * 1024;

  private GuidePictures() {}

  /**
   * The pictures of a knowledge base, by path relative to its {@code guides} folder.
   *
   * @throws Unreadable where one is too large
   */
  static SortedMap<String, byte[]> read(Path knowledgeBase) throws IOException {
    Path guides = knowledgeBase.resolve("guides");
    SortedMap<String, byte[]> pictures = new TreeMap<>();
    if (Files.isDirectory(guides)) {
      try (Stream<Path> files = Files.walk(guides)) {
        for (Path file : files.filter(one -> isPicture(guides.relativize(one), one)).toList()) {
          pictures.put(name(guides, file), bytes(file));
        }
      }
    }
    return pictures;
  }

  private static boolean isPicture(Path relative, Path file) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    boolean hidden =
        StreamSupport.stream(relative.spliterator(), false)
            .anyMatch(part -> part.toString().startsWith("."));
    return name.matches(".*\\.(png|jpe?g)")
        && !hidden
        && Files.isRegularFile(file)
        && !Files.isSymbolicLink(file);
  }

  private static String name(Path guides, Path file) {
    String separator = file.getFileSystem().getSeparator();
    return guides.relativize(file).toString().replace(separator, "/");
  }

  private static byte[] bytes(Path file) throws IOException {
    if (Files.size(file) > LARGEST) {
      String message = "the picture `" + file + "` has more than 16 MB";
      throw new Unreadable(List.of(new Problem(List.of(), message, "make it smaller")));
    }
    return Files.readAllBytes(file);
  }
}
