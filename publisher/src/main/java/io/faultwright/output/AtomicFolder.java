package io.faultwright.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Publishes a folder so that a reader finds the old one or the new one, whole.
 *
 * <p>The new folder is built beside the target, the old one is renamed aside, the new one is
 * renamed in, the old one is deleted. A run that dies is put right by the next: a target that is
 * missing while an old one stands aside is put back. Only folders that carry a {@link Marker} and
 * hold nothing else are ever replaced.
 */
public final class AtomicFolder {
  private final Path target;
  private final Path fresh;
  private final Path aside;
  private final Path lock;
  private final Renaming renaming;

  public AtomicFolder(Path target) {
    this(target, new PatientRenaming());
  }

  AtomicFolder(Path target, Renaming renaming) {
    this.target = resolved(target.toAbsolutePath().normalize());
    this.renaming = renaming;
    this.fresh = sibling("new");
    this.aside = sibling("old");
    this.lock = sibling("lock");
  }

  /** Where a link to a folder leads: the folder is replaced, the link stays. */
  private static Path resolved(Path path) {
    try {
      return Files.isDirectory(path) ? path.toRealPath() : path;
    } catch (IOException unreadable) {
      return path;
    }
  }

  private Path sibling(String role) {
    return target.resolveSibling("." + target.getFileName() + ".faultwright-" + role);
  }

  /**
   * Replaces the folder.
   *
   * @throws Refused where the target is not a folder that was published
   */
  public void publish(Sink.Filler filler) throws IOException {
    if (target.getFileName() == null) {
      throw new Refused("`" + target + "` is a whole drive", "name a folder on it");
    }
    Files.createDirectories(target.getParent());
    FolderLock held = FolderLock.take(lock).orElseThrow(this::busy);
    try {
      recover();
      refuseForeign();
      build(filler);
      swap();
    } finally {
      held.close();
    }
  }

  private Refused busy() {
    return new Refused(
        "another run is publishing to `" + target.getFileName() + "`", "wait until it is done");
  }

  /** Puts right what a run that died has left. */
  private void recover() throws IOException {
    if (Files.isDirectory(aside)) {
      if (Files.exists(target)) {
        Marker.deletePublished(aside);
      } else {
        renaming.rename(aside, target);
      }
    }
    if (Files.isDirectory(fresh)) {
      Marker.deletePublished(fresh);
    }
  }

  private void refuseForeign() throws IOException {
    if (Files.exists(target) && !Files.isDirectory(target)) {
      throw new Refused("`" + target.getFileName() + "` is a file", "name a folder");
    }
    if (Files.exists(target.resolve(AtomicArchive.FROZEN))) {
      throw new Refused(
          "`" + target.getFileName() + "` is frozen and never replaced", "name another folder");
    }
    SortedSet<String> strangers = Files.exists(target) ? Marker.strangers(target) : new TreeSet<>();
    if (!strangers.isEmpty()) {
      throw new Refused(
          "`"
              + target.getFileName()
              + "` holds files that were not published there, such as `"
              + strangers.first()
              + "`",
          "publish to a new folder, or move those files away");
    }
  }

  private void build(Sink.Filler filler) throws IOException {
    Files.createDirectory(fresh);
    try {
      filler.fill(new FolderSink(fresh, target));
    } catch (IOException | RuntimeException | Error e) {
      Marker.deletePublished(fresh);
      throw e;
    }
  }

  private void swap() throws IOException {
    boolean replaces = Files.exists(target);
    if (replaces) {
      moveAside();
    }
    try {
      renaming.rename(fresh, target);
    } catch (IOException e) {
      if (replaces) {
        renaming.rename(aside, target);
      }
      throw e;
    }
    if (replaces) {
      Marker.deletePublished(aside);
    }
  }

  private void moveAside() throws IOException {
    try {
      renaming.rename(target, aside);
    } catch (IOException e) {
      Marker.deletePublished(fresh);
      throw e;
    }
  }
}
