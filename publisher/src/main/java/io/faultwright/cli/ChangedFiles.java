package io.faultwright.cli;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.output.AtomicFile;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Files of a knowledge base that a command changes. */
final class ChangedFiles {
  private ChangedFiles() {}

  /**
   * The text of a file, byte for byte.
   *
   * @throws Unreadable where it is not what was read
   */
  static String unchanged(Path folder, String path, Sources sources) {
    try {
      String raw = Files.readString(folder.resolve(path));
      if (sources.find(path).filter(SourceFile.of(path, raw)::equals).isPresent()) {
        return raw;
      }
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
    throw new Unreadable(
        List.of(
            new Problem(List.of(), "`" + path + "` was changed while it was read", "start again")));
  }

  /** Writes each file, by its path. */
  static void write(Path folder, Map<String, String> files) {
    for (Map.Entry<String, String> changed : files.entrySet()) {
      try {
        Path target = folder.resolve(changed.getKey());
        AtomicFile.write(target, changed.getValue().getBytes(StandardCharsets.UTF_8));
      } catch (IOException trouble) {
        throw new UncheckedIOException(trouble);
      }
    }
  }
}
