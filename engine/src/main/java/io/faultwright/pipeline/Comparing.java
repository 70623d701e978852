package io.faultwright.pipeline;

import io.faultwright.analysis.change.ChangeAnalysis;
import io.faultwright.analysis.change.Edits;
import io.faultwright.analysis.change.Joined;
import io.faultwright.analysis.change.SequenceChanges;
import io.faultwright.analysis.change.SharedEquipment;
import io.faultwright.change.Comparison;
import io.faultwright.change.Comparison.Revision;
import io.faultwright.change.SequenceChange;
import io.faultwright.change.SymptomChange;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Handbook;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.run.Runner;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Compares two revisions of a knowledge base, a line for each phase.
 *
 * <pre>
 * old ─┬─ joined ─ outcomes of both ─ regions that differ ─ replayed in Drools on both ─┬─ comparison
 * new ─┘  \- what is written differently -----------------------------------------------┘
 * </pre>
 */
public final class Comparing {
  private final Watch watch;

  public Comparing(Watch watch) {
    this.watch = watch;
  }

  /**
   * What differs.
   *
   * @throws InternalDisagreement where the analysis and Drools disagree
   */
  public Compared compare(KnowledgeBase before, KnowledgeBase after) {
    watch.phase("join");
    Joined joined = new Joined(before, after);
    watch.phase("compile");
    ChangeReplay replay = new ChangeReplay(runner(before), runner(after));
    watch.phase("analyses");
    List<SymptomChange> symptoms = symptoms(joined, before, after, replay);
    watch.phase("texts");
    List<SequenceChange> sequences = SequenceChanges.between(before, after);
    Comparison comparison =
        new Comparison(
            after.handbook().title(),
            revision(before.handbook()),
            revision(after.handbook()),
            SharedEquipment.missing(before.equipment(), after.equipment()),
            SharedEquipment.missing(after.equipment(), before.equipment()),
            symptoms,
            sequences,
            Edits.between(before, after, sequences));
    return new Compared(before, after, joined.knowledge(), comparison);
  }

  private static Runner runner(KnowledgeBase kb) {
    return new Runner(kb, RuleCompiler.compile(kb));
  }

  private static Revision revision(Handbook handbook) {
    return new Revision(handbook.revision(), handbook.date());
  }

  private List<SymptomChange> symptoms(
      Joined joined, KnowledgeBase before, KnowledgeBase after, ChangeReplay replay) {
    List<String> both = new ArrayList<>(after.symptoms().keySet());
    both.retainAll(before.symptoms().keySet());
    AtomicInteger done = new AtomicInteger();
    return both.parallelStream()
        .map(
            id -> {
              SymptomChange change = replay.confirm(new ChangeAnalysis(joined, id));
              watch.step(done.incrementAndGet(), both.size());
              return change;
            })
        .toList();
  }
}
