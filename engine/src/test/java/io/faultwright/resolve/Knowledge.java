package io.faultwright.resolve;

import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Path;

/** The knowledge base that uses every feature of the language. */
final class Knowledge {
  static final Path FOLDER = Path.of("src/test/resources/knowledge/freezer");

  private Knowledge() {}

  static Sources sources() {
    return FolderReader.read(FOLDER);
  }
}
