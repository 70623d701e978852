package io.faultwright.cli;

import io.faultwright.pipeline.Checked;
import io.faultwright.pipeline.KnownProofs;
import io.faultwright.pipeline.Pipeline;
import io.faultwright.pipeline.Scope;
import io.faultwright.report.CheckText;
import io.faultwright.source.Sources;

/** Checks rules before something is made of them, and says why nothing is. */
final class Proving {
  private final Console console;
  private final boolean timings;

  Proving(Console console, boolean timings) {
    this.console = console;
    this.timings = timings;
  }

  Checked checked(Sources sources) {
    return checked(sources, KnownProofs.NONE);
  }

  /**
   * Checks what is not known to be without error.
   *
   * @param known proofs that need not be made again
   */
  Checked checked(Sources sources, KnownProofs known) {
    try (Watching watching = new Watching(console, timings)) {
      return new Pipeline(Scope.ALL, watching, known).check(sources);
    }
  }

  /**
   * Prints the findings and that nothing was done.
   *
   * @param nothing what was not done, and how it could be done all the same
   */
  int refuse(Checked checked, Sources sources, Refusal nothing) {
    console.say(
        new CheckText(checked.knowledge(), sources, console.errInk()).write(checked.report()));
    console.say("\n" + nothing.message() + "\n");
    console.say("  help: " + nothing.help() + "\n");
    return Exit.FINDINGS;
  }

  /** What is said below the findings. */
  record Refusal(String message, String help) {}
}
