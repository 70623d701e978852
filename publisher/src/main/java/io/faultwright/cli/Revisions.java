package io.faultwright.cli;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.revision.GitHistory;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Two arguments that name revisions: an existing folder is that folder; anything else is a Git
 * revision of the knowledge base that is named besides.
 */
final class Revisions {
  private final String before;
  private final String after;
  private final Optional<Path> of;

  Revisions(String before, String after, Optional<Path> of) {
    this.before = before;
    this.after = after;
    this.of = of;
  }

  Sources before() {
    return read(before);
  }

  Sources after() {
    return read(after);
  }

  private Sources read(String name) {
    Optional<Path> folder = folder(name);
    return folder.isPresent()
        ? FolderReader.read(folder.get())
        : new GitHistory(knowledgeBase(name)).read(name);
  }

  private static Optional<Path> folder(String name) {
    try {
      return Optional.of(Path.of(name)).filter(Files::isDirectory);
    } catch (InvalidPathException revision) {
      return Optional.empty();
    }
  }

  private Path knowledgeBase(String revision) {
    return of.or(() -> Stream.of(before, after).flatMap(name -> folder(name).stream()).findFirst())
        .orElseThrow(() -> unnamed(revision));
  }

  private static Unreadable unnamed(String revision) {
    return new Unreadable(
        List.of(
            new Problem(
                List.of(),
                "`" + revision + "` is no folder, and no folder says of what it is a revision",
                near(revision)
                    .map(path -> "did you mean `" + path + "`?")
                    .orElse("name the knowledge base with `--of`"))));
  }

  private static Optional<Path> near(String name) {
    try {
      return KnowledgeBaseFolder.near(Path.of(name));
    } catch (InvalidPathException revision) {
      return Optional.empty();
    }
  }
}
