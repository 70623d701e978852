package io.faultwright.output;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * A folder of folders, each of which comes into being whole, by one renaming, and is never touched
 * again. Beside them stands a start page. A run that dies leaves a hidden folder at most, which the
 * next one clears away, and a start page that lacks the newest folder until then.
 */
public final class AtomicArchive {
  /** The start page. */
  public static final String INDEX = "index.html";

  /** Tells that a folder is never to be replaced. */
  static final String FROZEN = ".faultwright-frozen";

  private static final byte[] NEVER =
      "# this folder is frozen; nothing here is replaced\n".getBytes(StandardCharsets.UTF_8);

  private static final String FRESH = ".faultwright-new";

  private final Path root;

  public AtomicArchive(Path root) {
    this.root = root.toAbsolutePath().normalize();
  }

  /** Makes the start page of what is there. */
  public interface Index {
    byte[] page() throws IOException;
  }

  /**
   * Adds a folder, then writes the start page anew.
   *
   * @param filler may refuse; then nothing is left of the folder
   * @throws Refused where there is something of that name already
   */
  public void add(String name, Sink.Filler filler, Index index) throws IOException {
    Files.createDirectories(root);
    FolderLock held = FolderLock.take(root.resolve(".faultwright-lock")).orElseThrow(this::busy);
    try {
      clear();
      if (Files.exists(root.resolve(name), LinkOption.NOFOLLOW_LINKS)) {
        throw new Refused("`" + name + "` is there already", "give another name");
      }
      new AtomicFolder(root.resolve(name))
          .publish(
              sink -> {
                sink.write(FROZEN, NEVER);
                filler.fill(sink);
              });
      AtomicFile.write(root.resolve(INDEX), index.page());
    } finally {
      held.close();
    }
  }

  private Refused busy() {
    return new Refused(
        "another run is writing to `" + root.getFileName() + "`", "wait until it is done");
  }

  /** Clears away what runs that died have left. */
  private void clear() throws IOException {
    for (Path left : leftOver()) {
      Marker.deletePublished(left);
    }
  }

  private List<Path> leftOver() throws IOException {
    try (Stream<Path> all = Files.list(root)) {
      return all.filter(path -> Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS))
          .filter(path -> path.getFileName().toString().startsWith("."))
          .filter(path -> path.getFileName().toString().endsWith(FRESH))
          .sorted()
          .toList();
    }
  }
}
