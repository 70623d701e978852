package io.faultwright.flow;

import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Path;
import java.util.List;

/** Knowledge bases for tests: the two demonstration handbooks, and whatever a test writes. */
public final class Demos {
  private static final String HANDBOOK =
      """
      handbook:
        title: Test handbook
        maker: Brantmoor Cold
        revision: "1"
        date: 2026-03-02
        language: en
        disclaimer: For tests only.
        hotline: +00 000 000
      """;

  private static final List<KnowledgeBase> BOTH =
      List.of(read("walk-in-freezers"), read("pass-through-dishwashers"));

  private Demos() {}

  /** The demonstration handbooks. */
  public static List<KnowledgeBase> all() {
    return BOTH;
  }

  private static KnowledgeBase read(String name) {
    return Resolver.resolve(FolderReader.read(Path.of("..", "rules", name)));
  }

  /** A knowledge base from YAML without a {@code handbook}. */
  static KnowledgeBase of(String yaml) {
    Sources sources = new Sources(List.of(SourceFile.of("handbook.yaml", HANDBOOK + yaml)));
    try {
      return Resolver.resolve(sources);
    } catch (Unreadable unreadable) {
      throw new AssertionError(unreadable.problems().toString(), unreadable);
    }
  }
}
