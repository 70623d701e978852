package io.faultwright.syntax;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Reads the files of a knowledge base: {@code *.yaml} and {@code *.yml} at any depth, and {@code
 * *.md} below {@code guides/}. Hidden files and folders are skipped. A link that leaves the folder
 * is refused; one that stays inside is skipped, because its target is read under its own name.
 */
public final class FolderReader {
  /** The file that marks a folder as a knowledge base. */
  public static final String MARKER = "handbook.yaml";

  private static final long LARGEST_FILE = YamlReader.LARGEST;
  private static final long LARGEST_FOLDER = 4L * YamlReader.LARGEST;

  private final Path root;
  private final Problems problems = new Problems();
  private final List<SourceFile> files = new ArrayList<>();
  private long bytes;

  private FolderReader(Path root) {
    this.root = root;
  }

  /**
   * Every file of the knowledge base in a folder.
   *
   * @throws Unreadable with everything that keeps the folder from being read
   */
  public static Sources read(Path folder) {
    FolderReader reader = new FolderReader(folder);
    reader.readAll();
    if (!reader.problems.isEmpty()) {
      throw new Unreadable(reader.problems.sorted());
    }
    return new Sources(reader.files);
  }

  private void readAll() {
    if (!Files.isDirectory(root)) {
      general("there is no folder `" + root + "`", "give the folder that holds `" + MARKER + "`");
      return;
    }
    readFolder(root);
    if (Files.notExists(root.resolve(MARKER))) {
      general("the folder `" + root + "` has no file `" + MARKER + "`", helpForMarker());
    }
  }

  private String helpForMarker() {
    List<String> names =
        files.stream().map(SourceFile::path).filter(path -> !path.contains("/")).toList();
    return NearMatch.of(MARKER, names)
        .map(name -> "rename `" + name + "`")
        .orElse("it marks a knowledge base and holds `handbook:`");
  }

  private void general(String message, String help) {
    problems.add(new Problem(List.of(), message, help));
  }

  private void readFolder(Path folder) {
    try (var children = Files.newDirectoryStream(folder)) {
      TreeSet<Path> inOrder = new TreeSet<>();
      children.forEach(inOrder::add);
      inOrder.stream().filter(child -> !isHidden(child)).forEach(this::readChild);
    } catch (IOException unreadable) {
      general("the folder `" + name(folder) + "` cannot be read", "check its permissions");
    }
  }

  private static boolean isHidden(Path child) {
    return child.getFileName().toString().startsWith(".");
  }

  private void readChild(Path child) {
    if (Files.isSymbolicLink(child)) {
      checkLink(child);
    } else if (Files.isDirectory(child, LinkOption.NOFOLLOW_LINKS)) {
      readFolder(child);
    } else if (FolderContents.wants(name(child))) {
      readFile(child);
    }
  }

  private void checkLink(Path link) {
    if (!staysInside(link)) {
      problem(
          link,
          "the link `" + name(link) + "` leads out of the knowledge base",
          "copy what it points to into the folder");
    }
  }

  private boolean staysInside(Path link) {
    try {
      return link.toRealPath().startsWith(root.toRealPath());
    } catch (IOException broken) {
      return false;
    }
  }

  private void readFile(Path file) {
    try {
      if (Files.size(file) > LARGEST_FILE) {
        problem(file, "the file has more than 32 MB", "split it; files are merged by id");
        return;
      }
      decode(name(file), Files.readAllBytes(file));
    } catch (IOException unreadable) {
      problem(file, "the file cannot be read", "check its permissions");
    }
  }

  private void decode(String name, byte[] content) {
    boolean within = bytes <= LARGEST_FOLDER;
    bytes += content.length;
    if (bytes <= LARGEST_FOLDER) {
      Utf8.Decoded decoded = Utf8.decode(name, content);
      decoded.problem().ifPresent(problems::add);
      files.add(decoded.file());
    } else if (within) {
      general("the files of the knowledge base have more than 128 MB", "split the knowledge base");
    }
  }

  private void problem(Path file, String message, String help) {
    problems.add(new Place(name(file), 1, 1, 1), message, help);
  }

  private String name(Path path) {
    return root.relativize(path).toString().replace(path.getFileSystem().getSeparator(), "/");
  }
}
