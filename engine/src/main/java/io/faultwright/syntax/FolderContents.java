package io.faultwright.syntax;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.stream.Stream;

/** The files of a knowledge base that comes from elsewhere than a folder on the disk. */
public final class FolderContents {
  private FolderContents() {}

  /**
   * Whether a file belongs to a knowledge base.
   *
   * @param path relative to the knowledge base, with forward slashes
   */
  public static boolean wants(String path) {
    String lower = path.toLowerCase(Locale.ROOT);
    boolean hidden = Stream.of(path.split("/")).anyMatch(part -> part.startsWith("."));
    return !hidden
        && (lower.endsWith(".yaml")
            || lower.endsWith(".yml")
            || lower.endsWith(".md") && path.startsWith("guides/"));
  }

  /**
   * The files as text.
   *
   * @param bytes by path
   * @throws Unreadable where one is not UTF-8
   */
  public static Sources decode(SortedMap<String, byte[]> bytes) {
    Problems problems = new Problems();
    List<SourceFile> files = new ArrayList<>();
    for (Map.Entry<String, byte[]> file : bytes.entrySet()) {
      Utf8.Decoded decoded = Utf8.decode(file.getKey(), file.getValue());
      decoded.problem().ifPresent(problems::add);
      files.add(decoded.file());
    }
    List<Problem> found = problems.sorted();
    if (!found.isEmpty()) {
      throw new Unreadable(found);
    }
    return new Sources(files);
  }
}
