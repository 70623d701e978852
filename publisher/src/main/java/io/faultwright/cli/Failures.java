package io.faultwright.cli;

import io.faultwright.output.Refused;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;

/** Turns what went wrong into words and an exit code; never a stack trace unless asked for. */
final class Failures {
  private final Console console;

  Failures(Console console) {
    this.console = console;
  }

  int of(Exception failure) {
    if (failure instanceof Refused refused) {
      return refused(refused.getMessage(), refused.help());
    }
    if (failure instanceof UncheckedIOException trouble) {
      return of(trouble.getCause());
    }
    return failure instanceof IOException trouble
        ? refused(words(trouble), "check that it is there, and that you may read and write it")
        : internal(failure);
  }

  private static String words(IOException trouble) {
    return trouble instanceof FileSystemException file
        ? "cannot read or write `" + file.getFile() + "`"
        : "cannot read or write: " + trouble.getMessage();
  }

  private int refused(String message, String help) {
    console.say("error: " + message + "\n  help: " + help + "\n");
    return Exit.UNREADABLE;
  }

  /** A defect of the program. */
  int internal(Throwable failure) {
    console.say("internal failure: " + oneLine(failure) + "\n");
    console.say(
        "  help: this is a defect of Faultwright, not of your files; report it with the line above\n"
            + "        and the files it happened with; FAULTWRIGHT_TRACE=1 adds where it happened\n");
    if (console.tracing()) {
      failure.printStackTrace(console.err());
      console.err().flush();
    }
    return Exit.INTERNAL;
  }

  private static String oneLine(Throwable failure) {
    Throwable root = failure;
    while (root.getCause() != null && root.getCause() != root) {
      root = root.getCause();
    }
    return root.toString().replaceAll("\\s*\\R\\s*", " ");
  }
}
