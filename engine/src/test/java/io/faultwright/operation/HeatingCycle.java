package io.faultwright.operation;

import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Sequence;
import io.faultwright.resolve.Resolver;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Path;

/** The knowledge base of its own on which sequences are tested; every figure is invented. */
public final class HeatingCycle {
  public static final KnowledgeBase BASE =
      Resolver.resolve(
          FolderReader.read(Path.of("src", "test", "resources", "sequences", "heating-cycle")));
  public static final Sequence SEQUENCE = BASE.sequences().get("heating-cycle");

  private HeatingCycle() {}

  /** The sequence on a software version. */
  public static Program on(String software) {
    return Program.of(SEQUENCE, build(software));
  }

  /** The build with a software version; each version is on one model only. */
  public static Build build(String software) {
    return BASE.equipment().builds().stream()
        .filter(build -> build.software().orElseThrow().text().equals(software))
        .findFirst()
        .orElseThrow();
  }
}
