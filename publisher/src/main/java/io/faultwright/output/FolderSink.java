package io.faultwright.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;

/**
 * Writes files into a folder, each on the marker's list before it exists. A file that stood in the
 * earlier folder with the same content is taken over as it is: it gets a second name.
 */
final class FolderSink implements Sink {
  private final Path folder;
  private final Path earlier;
  private final Set<String> files = new HashSet<>();

  /**
   * A sink.
   *
   * @param earlier the folder that is being replaced; may be missing
   */
  FolderSink(Path folder, Path earlier) throws IOException {
    this.folder = folder;
    this.earlier = earlier;
    Marker.start(folder);
  }

  @Override
  public void write(String path, byte[] content) throws IOException {
    Path file = listed(path);
    Path old = earlier.resolve(path);
    if (!holds(old, content) || !linked(file, old)) {
      Files.write(file, content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    }
  }

  @Override
  public void take(String path, Path same) throws IOException {
    Path file = listed(path);
    if (!linked(file, same)) {
      Files.copy(same, file);
    }
  }

  /** Where a file is to be written, once it is on the list. */
  private Path listed(String path) throws IOException {
    Path file = folder.resolve(path).normalize();
    if (!file.startsWith(folder) || file.equals(folder) || path.equals(Marker.NAME)) {
      throw new IllegalArgumentException("`" + path + "` is not a path within the folder");
    }
    if (!files.add(path)) {
      throw new IllegalArgumentException("`" + path + "` is written twice");
    }
    Marker.add(folder, path);
    Files.createDirectories(file.getParent());
    return file;
  }

  private static boolean holds(Path old, byte[] content) throws IOException {
    return Files.isRegularFile(old, LinkOption.NOFOLLOW_LINKS)
        && Files.size(old) == content.length
        && Arrays.equals(Files.readAllBytes(old), content);
  }

  private static boolean linked(Path file, Path old) {
    try {
      Files.createLink(file, old);
      return true;
    } catch (IOException | UnsupportedOperationException notHere) {
      return false;
    }
  }
}
