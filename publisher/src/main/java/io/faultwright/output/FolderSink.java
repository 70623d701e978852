package io.faultwright.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.Set;

/** Writes files into a folder, each on the marker's list before it exists. */
final class FolderSink implements Sink {
  private final Path folder;
  private final Set<String> files = new HashSet<>();

  FolderSink(Path folder) throws IOException {
    this.folder = folder;
    Marker.start(folder);
  }

  @Override
  public void write(String path, byte[] content) throws IOException {
    Path file = folder.resolve(path).normalize();
    if (!file.startsWith(folder) || file.equals(folder) || path.equals(Marker.NAME)) {
      throw new IllegalArgumentException("`" + path + "` is not a path within the folder");
    }
    if (!files.add(path)) {
      throw new IllegalArgumentException("`" + path + "` is written twice");
    }
    Marker.add(folder, path);
    Files.createDirectories(file.getParent());
    Files.write(file, content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
  }
}
