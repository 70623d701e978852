package io.faultwright.docs;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** A small knowledge base that is bad in one way. */
final class Specimen {
  static final Path FOLDER = Stored.RESOURCES.resolve("findings");
  private static final String RULES = "rules.yaml";

  private final Path folder;

  Specimen(FindingKind kind) {
    this.folder = FOLDER.resolve(kind.slug());
  }

  Path expected() {
    return folder.resolve("expected.txt");
  }

  /** The file that pages quote. */
  String rules() {
    return Stored.read(folder.resolve(RULES));
  }

  /** What {@code check} prints. */
  String output() {
    return new Tool(FolderReader.read(folder)).check();
  }

  Set<FindingKind> kinds() {
    return kinds(FolderReader.read(folder));
  }

  /**
   * What is left once the page's advice is followed.
   *
   * @param fence a block {@code diff}, which may name another file, also one that is not there yet
   */
  Set<FindingKind> kindsAfter(Fence fence) {
    String path = fence.value("file").orElse(RULES);
    Sources before = FolderReader.read(folder);
    String text = before.find(path).map(SourceFile::text).orElse("");
    List<SourceFile> files = new ArrayList<>(before.files());
    files.removeIf(file -> file.path().equals(path));
    files.add(SourceFile.of(path, new Mending(fence.body()).apply(text)));
    return kinds(new Sources(files));
  }

  private static Set<FindingKind> kinds(Sources sources) {
    return new Tool(sources)
        .checked().report().findings().stream().map(Finding::kind).collect(Collectors.toSet());
  }
}
