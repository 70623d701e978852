package io.faultwright.output;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/** Keeps two runs from publishing to one folder; a run that dies lets go by itself. */
final class FolderLock implements AutoCloseable {
  private final Path file;
  private final FileChannel channel;

  private FolderLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /** The lock, or nothing where another run holds it. */
  static Optional<FolderLock> take(Path file) throws IOException {
    FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    if (locked(channel) && Files.exists(file)) {
      return Optional.of(new FolderLock(file, channel));
    }
    channel.close();
    return Optional.empty();
  }

  private static boolean locked(FileChannel channel) throws IOException {
    try {
      FileLock lock = channel.tryLock();
      return lock != null;
    } catch (OverlappingFileLockException inThisProcess) {
      return false;
    }
  }

  @Override
  public void close() throws IOException {
    channel.close();
    Files.deleteIfExists(file);
  }
}
