package io.faultwright.output;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Renames, trying again for a while where it is refused: on Windows a scanner or a viewer may hold
 * a file for a moment.
 */
final class PatientRenaming implements Renaming {
  private static final int TRIES = 6;
  private static final long FIRST_WAIT_MILLISECONDS = 20;

  @Override
  public void rename(Path from, Path to) throws IOException {
    long wait = FIRST_WAIT_MILLISECONDS;
    for (int i = 1; !renamed(from, to, i == TRIES); i++) {
      pause(wait);
      wait *= 2;
    }
  }

  private static boolean renamed(Path from, Path to, boolean last) throws IOException {
    try {
      Files.move(from, to);
      return true;
    } catch (FileSystemException held) {
      if (last) {
        throw held;
      }
      return false;
    }
  }

  private static void pause(long milliseconds) throws IOException {
    try {
      Thread.sleep(milliseconds);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted", e);
    }
  }
}
