package io.faultwright.cli;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.report.ProblemJson;
import io.faultwright.report.ProblemText;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;

/**
 * Prints what keeps an input from being read: to people as a message, to machines as the result.
 */
final class ProblemPrinter {
  /** Messages for people. */
  static final Form TEXT = (sources, problems) -> Optional.empty();

  /** The contract of our own for machines. */
  static final Form JSON = (sources, problems) -> Optional.of(ProblemJson.write(problems));

  private final Console console;
  private final Form form;

  ProblemPrinter(Console console, boolean json) {
    this(console, json ? JSON : TEXT);
  }

  ProblemPrinter(Console console, Form form) {
    this.console = console;
    this.form = form;
  }

  /** Problems as a result for machines; absent where they are messages for people. */
  interface Form {
    Optional<String> of(Sources sources, List<Problem> problems);
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

  /** Reads one file and works on it; prints what keeps it from being read. */
  int guard(Supplier<SourceFile> file, ToIntFunction<SourceFile> work) {
    SourceFile text;
    try {
      text = file.get();
    } catch (Unreadable unreadable) {
      return print(new Sources(List.of()), unreadable);
    }
    return guard(new Sources(List.of(text)), sources -> work.applyAsInt(text));
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
    Sources shown = unreadable.excerpt().orElse(sources);
    form.of(shown, unreadable.problems())
        .ifPresentOrElse(
            console::print,
            () ->
                console.say(new ProblemText(shown, console.errInk()).write(unreadable.problems())));
    return Exit.UNREADABLE;
  }
}
