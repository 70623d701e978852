package io.faultwright.analysis.change;

import io.faultwright.change.Edit;
import io.faultwright.change.Edit.Concern;
import io.faultwright.change.SequenceChange;
import io.faultwright.model.Case;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.wording.RuleText;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds what is written differently in two revisions, whether or not it means something else. */
public final class Edits {
  private Edits() {}

  /** Things that came or went, and parts that changed; nothing for what only moved. */
  public static List<Edit> between(KnowledgeBase before, KnowledgeBase after) {
    return between(before, after, SequenceChanges.between(before, after));
  }

  /**
   * As above.
   *
   * @param sequences what sequences of operation do otherwise, where that is known
   */
  public static List<Edit> between(
      KnowledgeBase before, KnowledgeBase after, List<SequenceChange> sequences) {
    return Stream.concat(
            Passages.edits(passages(before), passages(after)).stream(),
            sequences.stream().filter(change -> !change.whole()).map(SequenceChange::edit))
        .toList();
  }

  private static Passages passages(KnowledgeBase kb) {
    Passages passages = new Passages();
    new RulePassages(kb, passages).write();
    new WorkPassages(kb, passages).write();
    new EquipmentPassages(kb, passages).write();
    new SequencePassages(kb, passages).write();
    kb.guides()
        .values()
        .forEach(
            guide ->
                passages
                    .thing(Concern.TEXT, "guide", guide.id(), guide.place())
                    .text("text", guide.markdown()));
    kb.cases().values().forEach(recorded -> recorded(passages, recorded));
    return passages;
  }

  private static void recorded(Passages passages, Case recorded) {
    String expected =
        recorded.expect().stream().map(RuleText::answer).collect(Collectors.joining(", "));
    passages
        .thing(Concern.CASES, "case", recorded.id(), recorded.place())
        .cases("symptom", recorded.symptom())
        .put(Concern.CASES, "given", recorded.given().toString(), "")
        .cases("expect", expected)
        .cases("note", recorded.note())
        .cases("origin", recorded.origin().orElse(""));
  }
}
