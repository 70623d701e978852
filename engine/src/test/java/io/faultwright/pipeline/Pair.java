package io.faultwright.pipeline;

import io.faultwright.change.Comparison;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.report.CompareText;
import io.faultwright.report.Ink;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Two revisions of the demo handbook, or of one made up for a test. */
final class Pair {
  static final Path DEMO = Path.of("../rules/walk-in-freezers");

  private final List<SourceFile> before;
  private final List<SourceFile> after;

  private Pair(List<SourceFile> files) {
    this.before = List.copyOf(files);
    this.after = new ArrayList<>(files);
  }

  static Pair ofDemo() {
    return new Pair(List.copyOf(FolderReader.read(DEMO).files()));
  }

  static Pair of(String yaml) {
    return new Pair(List.of(new SourceFile("handbook.yaml", yaml)));
  }

  /** Writes something else into the new revision; the old text must be there. */
  Pair edit(String path, String old, String current) {
    for (int i = 0; i < after.size(); i++) {
      SourceFile file = after.get(i);
      if (file.path().equals(path)) {
        if (!file.text().contains(old)) {
          throw new AssertionError(path + " does not hold " + old);
        }
        after.set(i, new SourceFile(path, file.text().replace(old, current)));
        return this;
      }
    }
    throw new AssertionError("no file " + path);
  }

  /** Takes a file out of the new revision and puts others in. */
  Pair replace(String path, SourceFile... files) {
    after.removeIf(file -> file.path().equals(path));
    after.addAll(List.of(files));
    return this;
  }

  String text(String path) {
    return after.stream().filter(file -> file.path().equals(path)).findFirst().orElseThrow().text();
  }

  KnowledgeBase before() {
    return Resolver.resolve(new Sources(before));
  }

  KnowledgeBase after() {
    return Resolver.resolve(new Sources(after));
  }

  Compared compared() {
    return new Comparing(Watch.NOBODY).compare(before(), after());
  }

  Comparison comparison() {
    return compared().comparison();
  }

  /** What changed in each symptom, without examples. */
  String words() {
    Compared compared = compared();
    return new CompareText(compared.shared(), Ink.PLAIN)
        .write(compared.comparison())
        .lines()
        .collect(Collectors.joining("\n", "", "\n"));
  }
}
