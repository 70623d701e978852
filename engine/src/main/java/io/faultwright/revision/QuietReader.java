package io.faultwright.revision;

import java.nio.file.Path;
import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.lib.StoredConfig;
import org.eclipse.jgit.storage.file.FileBasedConfig;
import org.eclipse.jgit.util.FS;
import org.eclipse.jgit.util.SystemReader;

/** Keeps JGit from reading or writing anything but the repository itself. */
final class QuietReader extends SystemReader.Delegate {
  private QuietReader(SystemReader system) {
    super(system);
  }

  /** Puts it in place, once for the process. */
  static synchronized void install() {
    if (!(SystemReader.getInstance() instanceof QuietReader)) {
      SystemReader.setInstance(new QuietReader(SystemReader.getInstance()));
    }
  }

  @Override
  public FileBasedConfig openUserConfig(Config parent, FS fs) {
    return new Empty(parent, fs);
  }

  @Override
  public FileBasedConfig openSystemConfig(Config parent, FS fs) {
    return new Empty(parent, fs);
  }

  @Override
  public FileBasedConfig openJGitConfig(Config parent, FS fs) {
    return new Empty(parent, fs);
  }

  @Override
  public StoredConfig getUserConfig() {
    return new Empty(null, FS.DETECTED);
  }

  @Override
  public StoredConfig getJGitConfig() {
    return new Empty(null, FS.DETECTED);
  }

  @Override
  public StoredConfig getSystemConfig() {
    return new Empty(null, FS.DETECTED);
  }

  /** A configuration without a file. */
  private static final class Empty extends FileBasedConfig {
    Empty(Config parent, FS fs) {
      super(parent, Path.of("none").toFile(), fs);
    }

    @Override
    public void load() {
      // there is nothing to load
    }

    @Override
    public void save() {
      // there is nowhere to save
    }

    @Override
    public boolean isOutdated() {
      return false;
    }
  }
}
