package io.faultwright.analysis.quiz;

import io.faultwright.model.Build;
import io.faultwright.model.Excerpts;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/** Every item that can be made of some symptoms, still without figures. */
final class ItemPool {
  private final KnowledgeBase kb;
  private final Excerpts excerpts;
  private final Assembly assembly;

  ItemPool(KnowledgeBase kb) {
    this.kb = kb;
    this.excerpts = new Excerpts(kb);
    this.assembly = new Assembly(kb);
  }

  /**
   * The drafts of some symptoms, by symptom.
   *
   * @param taught the machines of which items are made
   */
  SortedMap<String, List<Draft>> of(List<String> symptoms, Predicate<Build> taught) {
    SortedMap<String, List<Draft>> drafts = new TreeMap<>();
    symptoms.parallelStream()
        .map(id -> kb.symptoms().get(id))
        .map(symptom -> drafts(symptom, taught))
        .toList()
        .forEach(found -> found.forEach(draft -> add(drafts, draft)));
    symptoms.forEach(id -> drafts.putIfAbsent(id, List.of()));
    return drafts;
  }

  private static void add(SortedMap<String, List<Draft>> drafts, Draft draft) {
    drafts.computeIfAbsent(draft.symptom(), none -> new ArrayList<>()).add(draft);
  }

  private List<Draft> drafts(Symptom symptom, Predicate<Build> taught) {
    return Ground.of(excerpts, symptom, taught).map(this::drafts).orElse(List.of());
  }

  private List<Draft> drafts(Ground ground) {
    ChartPath path = new ChartPath(ground);
    Bases bases = new Bases(ground, path);
    List<Draft> drafts = new ArrayList<>(new FaultDrafts(ground, bases, assembly).drafts());
    drafts.addAll(new SeparationDrafts(ground, path, bases, assembly).drafts());
    drafts.addAll(new LimitsDrafts(ground, assembly).drafts());
    drafts.addAll(new FirstDrafts(ground, bases, assembly).drafts());
    drafts.addAll(new NextDrafts(ground, path, bases, assembly).drafts());
    drafts.addAll(new OrderDrafts(ground, assembly).drafts());
    return drafts;
  }
}
