package io.faultwright.cli;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Finds and reads what was handed in: result files, tables, and folders of both. */
final class ResultFiles {
  private static final long LARGEST = 4L * 1024 * 1024;

  private final List<SourceFile> files = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private final List<String> skipped = new ArrayList<>();
  private final Set<Path> seen = new LinkedHashSet<>();

  private ResultFiles() {}

  /**
   * Everything in files and folders.
   *
   * @throws Unreadable where one of them is not there, or all of them hold nothing
   */
  static ResultFiles read(List<Path> paths) throws IOException {
    ResultFiles files = new ResultFiles();
    for (Path path : paths) {
      files.read(path);
    }
    if (files.seen.isEmpty()) {
      throw unreadable(
          "there is no result file in " + quoted(paths), "result files end with .json or .csv");
    }
    return files;
  }

  private static String quoted(List<Path> paths) {
    return "`" + String.join("`, `", paths.stream().map(Path::toString).toList()) + "`";
  }

  private static Unreadable unreadable(String message, String help) {
    return new Unreadable(List.of(new Problem(List.of(), message, help)));
  }

  /** What could be read, in the order of the names. */
  List<SourceFile> files() {
    return List.copyOf(files);
  }

  /** What is wrong with the files that could not. */
  List<Problem> problems() {
    return List.copyOf(problems);
  }

  /** Files in folders that were not looked at, since they are neither JSON nor a table. */
  List<String> skipped() {
    return List.copyOf(skipped);
  }

  private void read(Path path) throws IOException {
    String shown = shown(path);
    if (Files.isDirectory(path)) {
      try (Stream<Path> all = Files.walk(path)) {
        for (Path file : all.filter(ResultFiles::isShown).sorted().toList()) {
          inFolder(file, shown + "/" + path.relativize(file).toString().replace('\\', '/'));
        }
      }
    } else if (Files.exists(path)) {
      file(path, shown);
    } else {
      String near =
          KnowledgeBaseFolder.near(path)
              .map(one -> "did you mean `" + one + "`?")
              .orElse("give a result file, a table or a folder of them");
      throw unreadable("`" + path + "` is not there", near);
    }
  }

  private static boolean isShown(Path file) {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        && !file.getFileName().toString().startsWith(".");
  }

  /** As it was given; only the name where that begins at the top of a drive. */
  private static String shown(Path path) {
    Path plain = path.isAbsolute() ? Optional.ofNullable(path.getFileName()).orElse(path) : path;
    return plain.normalize().toString().replace('\\', '/');
  }

  private void inFolder(Path file, String shown) throws IOException {
    String name = shown.toLowerCase(Locale.ROOT);
    if (name.endsWith(".json") || name.endsWith(".csv")) {
      file(file, shown);
    } else {
      skipped.add(shown);
    }
  }

  /** A file that is named twice is read once. */
  private void file(Path file, String shown) throws IOException {
    if (!seen.add(file.toRealPath())) {
      return;
    }
    if (Files.size(file) > LARGEST) {
      problem(shown, "the file has more than 4 MB, and is no result file", "leave it out");
      return;
    }
    try {
      byte[] bytes = Files.readAllBytes(file);
      files.add(
          SourceFile.of(
              shown,
              StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString()));
    } catch (CharacterCodingException other) {
      problem(shown, "the file is not UTF-8 text", "save it with the encoding UTF-8");
    }
  }

  private void problem(String shown, String message, String help) {
    problems.add(Problem.at(new Place(shown, 1, 1, 1), message, help));
  }
}
