package io.faultwright.flow;

import java.util.List;
import java.util.function.Function;

/** A symbol of a flowchart, before it has a place; ids are stable from edition to edition. */
public sealed interface Node {
  /** Identifier, unique in its chart. */
  String id();

  /** Dispatches on the kind of node. */
  <T> T match(
      Function<Start, T> start,
      Function<Check, T> check,
      Function<Outcome, T> outcome,
      Function<Connector, T> connector);

  /**
   * Where the chart begins.
   *
   * @param id identifier
   * @param title the symptom
   * @param scope equipment it is for; may be empty
   */
  record Start(String id, String title, String scope) implements Node {
    @Override
    public <T> T match(
        Function<Start, T> start,
        Function<Check, T> check,
        Function<Outcome, T> outcome,
        Function<Connector, T> connector) {
      return start.apply(this);
    }
  }

  /**
   * A reading to take, or a fact of the machine to look up.
   *
   * @param id identifier
   * @param warnings to be read before the steps, gravest first
   * @param steps how it is done, in order
   * @param question what decides
   */
  record Check(String id, List<Warning> warnings, List<String> steps, String question)
      implements Node {
    public Check {
      warnings = List.copyOf(warnings);
      steps = List.copyOf(steps);
    }

    @Override
    public <T> T match(
        Function<Start, T> start,
        Function<Check, T> check,
        Function<Outcome, T> outcome,
        Function<Connector, T> connector) {
      return check.apply(this);
    }
  }

  /**
   * Where the chart ends.
   *
   * @param id identifier
   * @param ending what kind of end
   * @param title what is the matter, or what to do
   * @param advice where to read on; may be empty
   */
  record Outcome(String id, Ending ending, String title, String advice) implements Node {
    @Override
    public <T> T match(
        Function<Start, T> start,
        Function<Check, T> check,
        Function<Outcome, T> outcome,
        Function<Connector, T> connector) {
      return outcome.apply(this);
    }
  }

  /**
   * An exit to, or an entry from, another part of the chart; both ends carry the same mark.
   *
   * @param id identifier
   * @param mark letter that names the jump
   * @param side which end of the jump
   * @param pages pages of the other ends: one for an exit, one or more for an entry
   */
  record Connector(String id, String mark, Side side, List<Integer> pages) implements Node {
    public Connector {
      pages = List.copyOf(pages);
    }

    /** The two ends of a jump. */
    public enum Side {
      EXIT,
      ENTRY
    }

    @Override
    public <T> T match(
        Function<Start, T> start,
        Function<Check, T> check,
        Function<Outcome, T> outcome,
        Function<Connector, T> connector) {
      return connector.apply(this);
    }
  }

  /** Kinds of outcome. */
  enum Ending {
    /** A fault is found. */
    FAULT,
    /** Another symptom is to be worked. */
    REFERRAL,
    /** The rules end here; someone is to be asked. */
    ESCALATION
  }
}
