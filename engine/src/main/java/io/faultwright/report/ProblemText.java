package io.faultwright.report;

import io.faultwright.diagnostic.Problem;
import io.faultwright.source.Sources;
import java.util.List;
import java.util.stream.Collectors;

/** What keeps a knowledge base from being read, for people. */
public final class ProblemText {
  private final Snippet snippet;
  private final Ink ink;

  public ProblemText(Sources sources, Ink ink) {
    this.snippet = new Snippet(sources, ink);
    this.ink = ink;
  }

  public String write(List<Problem> problems) {
    return problems.stream().map(this::problem).collect(Collectors.joining("\n"))
        + closing(problems);
  }

  private String problem(Problem problem) {
    return ink.bad("error")
        + ": "
        + ink.strong(Columns.printable(problem.message()))
        + "\n"
        + problem.places().stream().map(snippet::of).collect(Collectors.joining())
        + Block.of("help", problem.help());
  }

  private String closing(List<Problem> problems) {
    return problems.size() < 2
        ? ""
        : "\n" + ink.bad(Counts.of(problems.size(), "problem")) + "; nothing was checked\n";
  }
}
