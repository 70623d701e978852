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

  /** Problems for which nothing was done. */
  public String write(List<Problem> problems) {
    return all(problems) + closing(problems, "nothing was done");
  }

  /** Problems of some rows or cases, while the others were run. */
  public String skipped(List<Problem> problems) {
    return all(problems) + closing(problems, "what they stand in was left out");
  }

  /** Problems that a draft is published with. */
  public String stillOpen(List<Problem> problems) {
    return all(problems) + closing(problems, "a release is not published with them");
  }

  /** What was left out though nothing is wrong, a line for each. */
  public String notes(List<Problem> notes) {
    return notes.stream().map(this::note).collect(Collectors.joining());
  }

  private String note(Problem note) {
    String places = note.places().stream().map(place -> place + ": ").collect(Collectors.joining());
    String help = note.help().isEmpty() ? "" : "; " + note.help();
    return ink.uneasy("note") + ": " + Columns.printable(places + note.message() + help) + "\n";
  }

  private String all(List<Problem> problems) {
    return problems.stream().map(this::problem).collect(Collectors.joining("\n"));
  }

  /** One problem with its lines and help. */
  String problem(Problem problem) {
    return ink.bad("error")
        + ": "
        + ink.strong(Columns.printable(problem.message()))
        + "\n"
        + problem.places().stream().map(snippet::of).collect(Collectors.joining())
        + (problem.help().isEmpty() ? "" : "  help: " + Columns.printable(problem.help()) + "\n");
  }

  private String closing(List<Problem> problems, String consequence) {
    return problems.size() < 2
        ? ""
        : "\n" + ink.bad(Counts.of(problems.size(), "problem")) + "; " + consequence + "\n";
  }
}
