package io.faultwright.revision;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderContents;
import io.faultwright.syntax.FolderReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.eclipse.jgit.errors.RevisionSyntaxException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectLoader;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevSort;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;
import org.eclipse.jgit.treewalk.TreeWalk;
import org.eclipse.jgit.treewalk.filter.PathFilter;

/** The history of a knowledge base: reads it as it was at a tag, on a branch, in a commit. */
public final class GitHistory implements History {
  private static final long LARGEST_FILE = 32L * 1024 * 1024;
  private static final long LARGEST_FOLDER = 4 * LARGEST_FILE;

  private final Path folder;

  /**
   * @param folder the knowledge base as it lies on the disk
   */
  public GitHistory(Path folder) {
    this.folder = folder;
  }

  /** Whether the folder lies in a repository. */
  public boolean exists() {
    return builder().getGitDir() != null;
  }

  private FileRepositoryBuilder builder() {
    QuietReader.install();
    return new FileRepositoryBuilder().findGitDir(folder.toAbsolutePath().normalize().toFile());
  }

  /**
   * Every file of the knowledge base in a revision.
   *
   * @param revision a tag, branch or commit
   * @throws Unreadable where there is no such revision, or no knowledge base in it
   */
  @Override
  public Sources read(String revision) {
    FileRepositoryBuilder builder = builder();
    if (builder.getGitDir() == null) {
      throw unreadable(
          "`" + folder + "` lies in no Git repository, so it has no revision `" + revision + "`",
          "give two folders, or a knowledge base that lies in a repository");
    }
    try (Repository repository = builder.build()) {
      return read(repository, revision);
    } catch (IOException broken) {
      throw broken(broken);
    }
  }

  /**
   * All commits that led to the one checked out, that one first; none where there is no repository.
   *
   * @throws Unreadable where the repository cannot be read
   */
  @Override
  public List<Moment> moments() {
    FileRepositoryBuilder builder = builder();
    if (builder.getGitDir() == null) {
      return List.of();
    }
    try (Repository repository = builder.build();
        RevWalk commits = new RevWalk(repository)) {
      ObjectId head = repository.resolve(Constants.HEAD + "^{commit}");
      return head == null ? List.of() : moments(repository, commits, head);
    } catch (IOException broken) {
      throw broken(broken);
    }
  }

  private List<Moment> moments(Repository repository, RevWalk commits, ObjectId head)
      throws IOException {
    String prefix = prefix(repository);
    commits.sort(RevSort.TOPO);
    commits.markStart(commits.parseCommit(head));
    List<Moment> moments = new ArrayList<>();
    for (RevCommit commit : commits) {
      moments.add(
          new Moment(
              commit.name(),
              commit
                  .getAuthorIdent()
                  .getWhenAsInstant()
                  .atZone(commit.getAuthorIdent().getZoneId())
                  .toLocalDate()
                  .toString(),
              commit.getShortMessage(),
              state(repository, commit, prefix),
              Stream.of(commit.getParents()).map(RevCommit::name).toList()));
    }
    return moments;
  }

  private static String state(Repository repository, RevCommit commit, String prefix)
      throws IOException {
    if (prefix.isEmpty()) {
      return commit.getTree().name();
    }
    try (TreeWalk at = TreeWalk.forPath(repository, prefix, commit.getTree())) {
      return at == null ? "" : at.getObjectId(0).name();
    }
  }

  private Unreadable broken(IOException broken) {
    return unreadable(
        "the repository of `" + folder + "` cannot be read: " + broken.getMessage(),
        "check it with your Git program");
  }

  private Sources read(Repository repository, String revision) throws IOException {
    try (RevWalk commits = new RevWalk(repository)) {
      RevCommit commit = commits.parseCommit(commit(repository, revision));
      SortedMap<String, byte[]> files = files(repository, commit, prefix(repository));
      if (!files.containsKey(FolderReader.MARKER)) {
        throw unreadable(
            "in revision `"
                + revision
                + "` the folder `"
                + folder
                + "` has no file `"
                + FolderReader.MARKER
                + "`",
            "give a revision in which the knowledge base stood there");
      }
      return FolderContents.decode(files);
    }
  }

  private ObjectId commit(Repository repository, String revision) throws IOException {
    try {
      Optional<ObjectId> found = Optional.ofNullable(repository.resolve(revision + "^{commit}"));
      return found.orElseThrow(() -> unknown(names(repository), revision));
    } catch (RevisionSyntaxException wrong) {
      throw unknown(names(repository), revision);
    }
  }

  private static Unreadable unknown(List<String> names, String revision) {
    return unreadable(
        "there is no revision `" + revision + "`",
        names.isEmpty()
            ? "give a tag, a branch or a commit; the repository has no tags and branches yet"
            : NearMatch.help(revision, names));
  }

  /** Short names of branches and tags. */
  private static List<String> names(Repository repository) {
    List<String> names = new ArrayList<>();
    try {
      for (String kind : List.of(Constants.R_TAGS, Constants.R_HEADS, Constants.R_REMOTES)) {
        for (Ref ref : repository.getRefDatabase().getRefsByPrefix(kind)) {
          names.add(Repository.shortenRefName(ref.getName()));
        }
      }
      return names;
    } catch (IOException broken) {
      return names;
    }
  }

  /** Path of the knowledge base in the repository; empty where it is the whole of it. */
  private String prefix(Repository repository) throws IOException {
    Path root = repository.getWorkTree().toPath().toRealPath();
    return root.relativize(folder.toRealPath()).toString().replace('\\', '/');
  }

  private static SortedMap<String, byte[]> files(
      Repository repository, RevCommit commit, String prefix) throws IOException {
    SortedMap<String, byte[]> files = new TreeMap<>();
    try (TreeWalk walk = new TreeWalk(repository)) {
      walk.addTree(commit.getTree());
      walk.setRecursive(true);
      if (!prefix.isEmpty()) {
        walk.setFilter(PathFilter.create(prefix));
      }
      int skipped = prefix.isEmpty() ? 0 : prefix.length() + 1;
      long bytes = 0;
      while (walk.next()) {
        if (isFile(walk) && walk.getPathString().length() > skipped) {
          String path = walk.getPathString().substring(skipped);
          if (FolderContents.wants(path)) {
            ObjectLoader file = repository.open(walk.getObjectId(0));
            bytes += file.getSize();
            requireSize(path, file.getSize(), bytes);
            files.put(path, file.getBytes());
          }
        }
      }
    }
    return files;
  }

  /** Links are skipped, as they are in a folder: what they point to is read under its own name. */
  private static boolean isFile(TreeWalk walk) {
    FileMode mode = walk.getFileMode(0);
    return mode == FileMode.REGULAR_FILE || mode == FileMode.EXECUTABLE_FILE;
  }

  private static void requireSize(String path, long file, long all) {
    if (file > LARGEST_FILE) {
      throw unreadable("`" + path + "` has more than 32 MB", "split it; files are merged by id");
    }
    if (all > LARGEST_FOLDER) {
      throw unreadable(
          "the files of the knowledge base have more than 128 MB", "split the knowledge base");
    }
  }

  private static Unreadable unreadable(String message, String help) {
    return new Unreadable(List.of(new Problem(List.of(), message, help)));
  }
}
