package io.faultwright.report;

import io.faultwright.logbook.Came;
import io.faultwright.logbook.Followed;
import io.faultwright.logbook.Parting;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.model.Sequence.Transition;
import io.faultwright.operation.Program;
import io.faultwright.resolve.Told;
import io.faultwright.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** What a sequence did along a log, and where the two part, for people. */
public final class FollowText {
  private final Program program;
  private final Sequence sequence;
  private final String build;
  private final StepTimes times;
  private final ReasonWords reasons;
  private final ToldWords words;
  private final Ink ink;

  public FollowText(KnowledgeBase kb, Program program, Ink ink) {
    this.program = program;
    this.sequence = program.sequence();
    this.build = new Wording(kb).build(program.build());
    this.times = new StepTimes(program);
    this.reasons = new ReasonWords(program);
    this.words = new ToldWords(sequence);
    this.ink = ink;
  }

  /** All of it. */
  public String write(Followed followed) {
    return ink.strong(Columns.printable(sequence.title() + ", " + build))
        + "\n"
        + phases(followed)
        + stops(followed)
        + counters(followed)
        + partings(followed)
        + closing(followed);
  }

  private String phases(Followed followed) {
    List<Came> kept = followed.phases().kept();
    if (kept.isEmpty()) {
      return "";
    }
    long left = followed.phases().all() - kept.size();
    AlignedRows rows = new AlignedRows(column -> column == 0);
    kept.forEach(came -> rows.add(cells(came)));
    return "\n"
        + (left == 0 ? "" : "  " + Counts.of(left, "earlier phase") + " not shown (`--last`)\n")
        + rows.text()
        + "\n";
  }

  private List<String> cells(Came came) {
    Phase phase = phase(came);
    return List.of(
        times.clock(came.now().step()),
        phase.title(),
        phase.display().orElse(""),
        (phase.stop() ? "stop: " : "") + reasons.why(came));
  }

  private Phase phase(Came came) {
    return program.phase(came.now().phase());
  }

  private String stops(Followed followed) {
    List<Came> kept = followed.stops().kept();
    if (kept.isEmpty()) {
      return Block.of("stopped", "not once");
    }
    Came last = kept.get(kept.size() - 1);
    List<String> lines = new ArrayList<>();
    lines.add(stopped(last));
    lines.add(reasons.why(last));
    last.now()
        .reason()
        .line()
        .map(Transition::because)
        .filter(because -> !because.isEmpty())
        .ifPresent(lines::add);
    return Block.of("stopped", lines) + earlier(followed);
  }

  private String stopped(Came came) {
    Phase phase = phase(came);
    return times.clock(came.now().step()) + " " + phase.title() + " (" + phase.id() + ")";
  }

  private String earlier(Followed followed) {
    List<Came> kept = followed.stops().kept();
    List<String> lines = new ArrayList<>();
    for (Came came : kept.subList(0, kept.size() - 1)) {
      lines.add(stopped(came));
    }
    long left = followed.stops().all() - kept.size();
    if (left > 0) {
      lines.add(0, Counts.of(left, "stop") + " before");
    }
    return Block.of("before", lines);
  }

  private String counters(Followed followed) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < program.counterCount(); i++) {
      Sequence.Counter counter = program.counter(i);
      String limit = program.limit(i) == Program.NEVER ? "" : " of " + program.limit(i);
      lines.add(counter.title() + ": " + followed.counts().get(counter.id()) + limit);
    }
    return Block.of("counted", lines);
  }

  private String partings(Followed followed) {
    List<Parting> kept = followed.partings().kept();
    if (kept.isEmpty()) {
      return waiting(followed);
    }
    Parting first = kept.get(0);
    List<String> others = new ArrayList<>();
    kept.stream().skip(1).forEach(one -> others.add(shortly(one)));
    long left = followed.partings().all() - kept.size();
    if (left > 0) {
      others.add("and " + left + " more");
    }
    return "\n"
        + ink.bad("log and model part at " + times.clock(first.step()))
        + "\n"
        + Block.of("log says", log(first))
        + Block.of("model says", model(first))
        + Block.of("it waited for", reasons.waiting(first.came().now()))
        + Block.of("they part too", others);
  }

  private String waiting(Followed followed) {
    List<Came> kept = followed.phases().kept();
    return kept.isEmpty()
        ? ""
        : Block.of("now waits for", reasons.waiting(kept.get(kept.size() - 1).now()));
  }

  private String log(Parting one) {
    boolean held = one.step() > one.entry().step();
    return (one.changed() ? "now " : "")
        + words.of(one.entry().told())
        + (held ? " since " + times.clock(one.entry().step()) : "")
        + " ("
        + one.entry().place()
        + ")";
  }

  private List<String> model(Parting one) {
    boolean early = one.changed() && one.model().equals(one.entry().told());
    String says =
        words.of(one.model())
            + " since "
            + times.clock(one.since())
            + (early ? ", " + times.lasting(one.step() - one.since()) + " earlier" : "");
    Came came = one.came();
    String phase =
        one.model() instanceof Told.PhaseIs
            ? ""
            : ", in " + phase(came).title() + " since " + times.clock(came.now().step());
    return List.of(says + phase, reasons.why(came));
  }

  private String shortly(Parting one) {
    return times.clock(one.step())
        + " log: "
        + words.of(one.entry().told())
        + "; model: "
        + words.of(one.model())
        + " since "
        + times.clock(one.since());
  }

  private String closing(Followed followed) {
    String counts =
        Counts.of(followed.entries(), "entry")
            + " up to "
            + times.clock(followed.end())
            + ", "
            + followed.seen()
            + " of them observed, clock within "
            + times.lasting(followed.within());
    if (followed.seen() == 0) {
      return "\nthe log tells no phase, display or output, so there is nothing to compare: "
          + counts
          + "\n";
    }
    UnaryOperator<String> paint = followed.agrees() ? ink::good : ink::bad;
    String verdict =
        followed.agrees()
            ? "log and model agree"
            : "log and model part "
                + (followed.partings().all() == 1 ? "once" : followed.partings().all() + " times");
    return "\n" + paint.apply(verdict) + ": " + counts + "\n";
  }
}
