package io.faultwright.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A folder for files that other programs read, which only we can look into; gone when closed. */
public final class Scratch implements AutoCloseable {
  private final Path folder;

  private Scratch(Path folder) {
    this.folder = folder;
  }

  public static Scratch create() throws IOException {
    return new Scratch(Files.createTempDirectory("faultwright"));
  }

  /** The folder itself. */
  public Path folder() {
    return folder;
  }

  /** Writes a file; where it is. */
  public Path write(String name, byte[] content) throws IOException {
    return Files.write(folder.resolve(name), content);
  }

  @Override
  public void close() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      List<Path> innermost = all.sorted(Comparator.reverseOrder()).toList();
      for (Path path : innermost) {
        Files.deleteIfExists(path);
      }
    } catch (UncheckedIOException trouble) {
      throw trouble.getCause();
    }
  }
}
