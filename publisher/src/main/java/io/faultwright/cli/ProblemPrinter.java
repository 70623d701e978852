package io.faultwright.cli;

import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.report.ProblemJson;
import io.faultwright.report.ProblemText;
import io.faultwright.source.Sources;
import java.util.List;
import java.util.function.ToIntFunction;

/**
 * Prints what keeps an input from being read: to people as a message, to machines as the result.
 */
final class ProblemPrinter {
  private final Console console;
  private final boolean json;

  ProblemPrinter(Console console, boolean json) {
    this.console = console;
    this.json = json;
  }

  /** Reads a knowledge base and works on it; prints what keeps it from being read. */
  int guard(KnowledgeBaseFolder folder, ToIntFunction<Sources> work) {
    try {
      return guard(folder.read(), work);
    } catch (Unreadable unreadable) {
      return print(new Sources(List.of()), unreadable);
    }
  }

  /** Reads one of two revisions and works on it; prints what keeps it from being read. */
  int guard(Revision revision, ToIntFunction<KnowledgeBase> work) {
    KnowledgeBase kb;
    try {
      kb = revision.knowledge();
    } catch (Unreadable unreadable) {
      return print(revision.sources(), unreadable);
    }
    return work.applyAsInt(kb);
  }

  /** Works on sources; prints what keeps them from being read. */
  int guard(Sources sources, ToIntFunction<Sources> work) {
    try {
      return work.applyAsInt(sources);
    } catch (Unreadable unreadable) {
      return print(sources, unreadable);
    }
  }

  /** Prints the problems with the lines they stand on. */
  int print(Sources sources, Unreadable unreadable) {
    if (json) {
      console.print(ProblemJson.write(unreadable.problems()));
    } else {
      Sources shown = unreadable.excerpt().orElse(sources);
      console.say(new ProblemText(shown, console.errInk()).write(unreadable.problems()));
    }
    return Exit.UNREADABLE;
  }
}
