package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.Tree;
import io.faultwright.syntax.YamlReader;
import java.util.Locale;
import java.util.Optional;

/**
 * A file after its own syntax was read; files do not depend on each other so far.
 *
 * @param file the file
 * @param tree its tree; absent for a guide
 * @param problems what is wrong with its syntax
 */
record ParsedFile(SourceFile file, Optional<Tree> tree, Problems problems) {
  static ParsedFile of(SourceFile file) {
    Problems problems = new Problems();
    boolean guide = file.path().toLowerCase(Locale.ROOT).endsWith(".md");
    Optional<Tree> tree = guide ? Optional.empty() : Optional.of(YamlReader.read(file, problems));
    return new ParsedFile(file, tree, problems);
  }
}
