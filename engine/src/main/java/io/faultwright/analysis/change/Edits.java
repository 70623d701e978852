package io.faultwright.analysis.change;

import io.faultwright.change.Edit;
import io.faultwright.change.Edit.Concern;
import io.faultwright.model.KnowledgeBase;
import java.util.List;
import java.util.TreeSet;

/** Finds what is written differently in two revisions, whether or not it means something else. */
public final class Edits {
  private Edits() {}

  /** Things that came or went, and parts that changed; nothing for what only moved. */
  public static List<Edit> between(KnowledgeBase before, KnowledgeBase after) {
    return Passages.edits(passages(before), passages(after));
  }

  private static Passages passages(KnowledgeBase kb) {
    Passages passages = new Passages();
    new RulePassages(kb, passages).write();
    new WorkPassages(kb, passages).write();
    new EquipmentPassages(kb, passages).write();
    kb.guides()
        .values()
        .forEach(
            guide ->
                passages
                    .thing(Concern.TEXT, "guide", guide.id(), guide.place())
                    .text("text", guide.markdown()));
    kb.cases()
        .values()
        .forEach(
            one ->
                passages
                    .thing(Concern.CASES, "case", one.id(), one.place())
                    .put(Concern.CASES, "symptom", one.symptom(), one.symptom())
                    .put(Concern.CASES, "given", one.given().toString(), "")
                    .put(
                        Concern.CASES,
                        "expect",
                        one.expect().toString(),
                        String.join(
                            ", ",
                            new TreeSet<>(
                                one.expect().stream()
                                    .map(io.faultwright.wording.RuleText::answer)
                                    .toList())))
                    .put(Concern.CASES, "note", one.note(), one.note())
                    .put(
                        Concern.CASES, "origin", one.origin().orElse(""), one.origin().orElse("")));
    return passages;
  }
}
