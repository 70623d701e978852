package io.faultwright.output;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes single files so that a reader finds the old or the new text, whole. */
public final class AtomicFile {
  private AtomicFile() {}

  public static void write(Path file, byte[] content) throws IOException {
    Path target = file.toAbsolutePath().normalize();
    if (Files.isDirectory(target)) {
      throw new Refused("`" + target.getFileName() + "` is a folder", "name a file");
    }
    Files.createDirectories(target.getParent());
    Path fresh = target.resolveSibling("." + target.getFileName() + ".faultwright-new");
    try {
      Files.write(fresh, content);
      replace(fresh, target);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }

  private static void replace(Path fresh, Path target) throws IOException {
    try {
      Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException unsupported) {
      Files.move(fresh, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
