package io.faultwright.analysis.order;

import io.faultwright.analysis.outcome.Needs;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.AccessWeights;
import io.faultwright.model.Effort;
import io.faultwright.model.Efforts;
import io.faultwright.model.HazardOrder;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.sequence.Check;
import io.faultwright.sequence.Outlay;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What the questions of a symptom cost: each reading is taken once and what is set up for it is set
 * up once. Facts of the machine stand on its nameplate and cost nothing.
 */
final class Prices {
  private final KnowledgeBase knowledge;
  private final List<Question> questions;
  private final List<SortedSet<String>> taken = new ArrayList<>();
  private final List<SortedSet<String>> setUp = new ArrayList<>();
  private final List<String> readings;
  private final List<String> setUps;
  private final boolean hazardsLast;

  Prices(SymptomSpace symptom, List<Question> questions) {
    this.knowledge = symptom.space().knowledge();
    this.questions = questions;
    this.hazardsLast = symptom.symptom().hazards() == HazardOrder.LAST;
    List<SortedSet<String>> needs = new Needs(symptom.space()).all();
    Efforts efforts = new Efforts(knowledge);
    SortedSet<String> allTaken = new TreeSet<>();
    SortedSet<String> allSetUp = new TreeSet<>();
    for (Question question : questions) {
      taken.add(needs.get(question.axis()));
      setUp.add(efforts.setUps(needs.get(question.axis())));
      allTaken.addAll(taken.get(taken.size() - 1));
      allSetUp.addAll(setUp.get(setUp.size() - 1));
    }
    this.readings = List.copyOf(allTaken);
    this.setUps = List.copyOf(allSetUp);
  }

  /** What can be paid: readings taken, then set-ups made, each by id. */
  List<Outlay> outlays() {
    AccessWeights weights = knowledge.handbook().weights();
    List<Outlay> outlays = new ArrayList<>();
    readings.forEach(id -> outlays.add(of(Effort.of(knowledge.readings().get(id), weights))));
    setUps.forEach(id -> outlays.add(of(Effort.of(knowledge.setUps().get(id), weights))));
    return outlays;
  }

  private static Outlay of(Effort effort) {
    return new Outlay(effort.minutes().doubleValue(), effort.weighted().doubleValue());
  }

  /** The questions as checks, in their order. */
  List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    for (int i = 0; i < questions.size(); i++) {
      checks.add(new Check(paid(i), before(i), hazardsLast && isHazardous(i)));
    }
    return checks;
  }

  /** The questions that take something hazardous. */
  BitSet hazardous() {
    BitSet hazardous = new BitSet();
    for (int i = 0; i < questions.size(); i++) {
      hazardous.set(i, touches(i));
    }
    return hazardous;
  }

  private BitSet paid(int question) {
    BitSet paid = new BitSet();
    taken.get(question).forEach(id -> paid.set(readings.indexOf(id)));
    setUp.get(question).forEach(id -> paid.set(readings.size() + setUps.indexOf(id)));
    return paid;
  }

  /** Questions about readings that are asked before. */
  private BitSet before(int question) {
    SortedSet<String> before = knowledge.before(questions.get(question).subject());
    taken.get(question).forEach(id -> before.addAll(knowledge.before(id)));
    before.removeAll(taken.get(question));
    before.remove(questions.get(question).subject());
    BitSet waits = new BitSet();
    for (int i = 0; i < questions.size(); i++) {
      boolean mutual = taken.get(i).contains(questions.get(question).subject());
      waits.set(i, before.contains(questions.get(i).subject()) && !mutual);
    }
    return waits;
  }

  /** What waits for something hazardous counts as that, since it cannot come before. */
  private boolean isHazardous(int question) {
    return touches(question) || before(question).stream().anyMatch(this::touches);
  }

  private boolean touches(int question) {
    return taken.get(question).stream()
            .anyMatch(id -> knowledge.readings().get(id).access().hazardous())
        || setUp.get(question).stream()
            .anyMatch(id -> knowledge.setUps().get(id).access().hazardous());
  }
}
