package io.faultwright.cli;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Parameters;

/** The argument that names a knowledge base. */
final class KnowledgeBaseFolder {
  @Parameters(index = "0", paramLabel = "KB", description = "Folder with `handbook.yaml`.")
  private Path folder;

  Path path() {
    return folder;
  }

  /**
   * The path to it with a slash at its end where it was given from a folder above, which is then
   * taken for the top of the repository; else empty.
   */
  String below() {
    Path plain = folder.normalize();
    boolean elsewhere = plain.isAbsolute() || plain.startsWith("..");
    String path = plain.toString().replace('\\', '/');
    return elsewhere || path.isEmpty() ? "" : path + "/";
  }

  /**
   * Every file of the knowledge base.
   *
   * @throws Unreadable with the nearest folder where there is none of this name
   */
  Sources read() {
    if (Files.isDirectory(folder)) {
      return FolderReader.read(folder);
    }
    boolean file = Files.exists(folder);
    throw new Unreadable(
        List.of(
            new Problem(
                List.of(),
                "`" + folder + "` is " + (file ? "a file, not a folder" : "not there"),
                file ? helpForFile() : helpForMissing())));
  }

  private String helpForFile() {
    return "give the folder: `"
        + Optional.ofNullable(folder.getParent()).orElse(Path.of("."))
        + "`";
  }

  private String helpForMissing() {
    return near(folder)
        .map(path -> "did you mean `" + path + "`?")
        .orElse("give the folder that holds `" + FolderReader.MARKER + "`");
  }

  /** The folder beside one that is not there whose name comes nearest. */
  static Optional<Path> near(Path folder) {
    Path parent = Optional.ofNullable(folder.getParent()).orElse(Path.of("."));
    List<String> folders =
        Optional.ofNullable(parent.toFile().listFiles(File::isDirectory)).stream()
            .flatMap(Arrays::stream)
            .map(File::getName)
            .filter(name -> !name.startsWith("."))
            .toList();
    return Optional.ofNullable(folder.getFileName())
        .flatMap(name -> NearMatch.of(name.toString(), folders))
        .map(folder::resolveSibling);
  }
}
