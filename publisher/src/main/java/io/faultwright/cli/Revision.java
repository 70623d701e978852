package io.faultwright.cli;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.Sources;
import java.util.List;
import java.util.function.Supplier;

/** One of two revisions; its problems say which one they are of. */
final class Revision {
  private final String word;
  private final String name;
  private final Supplier<Sources> reader;
  private Sources sources = new Sources(List.of());

  /**
   * @param word which of the two it is: {@code old} or {@code new}
   * @param name as it was given
   * @param reader reads its files
   */
  Revision(String word, String name, Supplier<Sources> reader) {
    this.word = word;
    this.name = name;
    this.reader = reader;
  }

  /**
   * The knowledge base.
   *
   * @throws Unreadable with problems that name the revision
   */
  KnowledgeBase knowledge() {
    try {
      sources = reader.get();
      return Resolver.resolve(sources);
    } catch (Unreadable unreadable) {
      throw new Unreadable(unreadable.problems().stream().map(this::named).toList());
    }
  }

  private Problem named(Problem problem) {
    String which = problem.message().contains("`" + name + "`") ? "" : " `" + name + "`";
    String message = word + " revision" + which + ": " + problem.message();
    return new Problem(problem.places(), message, problem.help());
  }

  /** Its files, once they were read: problems are shown with their lines. */
  Sources sources() {
    return sources;
  }
}
