package io.faultwright.analysis.mutation;

import io.faultwright.adequacy.MutantStatus;
import io.faultwright.analysis.coverage.Sighting;
import io.faultwright.analysis.judge.Judge;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.model.Case;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Supplier;

/**
 * Puts mistakes into a knowledge base, one at a time, and asks whether a case comes out otherwise.
 * Where none does, the comparison of both outcomes over all situations either finds one that would
 * show the mistake, or proves that it changes nothing.
 */
public final class MutationAnalysis {
  private final KnowledgeBase kb;
  private final Judge judge;
  private final List<Witnessed> cases;
  private final Deadline deadline;

  /**
   * @param recorded the cases that count; those that fail are left out
   * @param deadline after which mistakes that no case notices stay undecided
   */
  public MutationAnalysis(KnowledgeBase kb, Collection<Case> recorded, Deadline deadline) {
    this.kb = kb;
    this.judge = new Judge(kb);
    this.deadline = deadline;
    this.cases =
        recorded.stream()
            .map(one -> new Witnessed(one, sighting(one)))
            .filter(one -> one.sighting().ruling().answers().equals(one.recorded().expect()))
            .toList();
  }

  private Sighting sighting(Case one) {
    return Sighting.of(judge, kb.symptoms().get(one.symptom()), one.given());
  }

  /**
   * The work, in pieces that can be done side by side in any order, each with its mistakes judged.
   * One for every rule, for what must be right first, and for every table of limits.
   */
  public List<Supplier<List<MutantStatus>>> pieces(Collection<Symptom> symptoms) {
    List<Supplier<List<MutantStatus>>> pieces = new ArrayList<>();
    for (Symptom symptom : symptoms) {
      List<Case> own = recorded(symptom);
      pieces.add(() -> mutants(symptom, own).ofFirst());
      for (Rule rule : symptom.rules().values()) {
        pieces.add(() -> mutants(symptom, own).of(rule));
      }
    }
    return pieces;
  }

  /** As above, for every table of limits. */
  public List<Supplier<List<MutantStatus>>> limits() {
    List<Supplier<List<MutantStatus>>> pieces = new ArrayList<>();
    for (LimitsTable table : kb.limits().values()) {
      List<Case> all = cases.stream().map(Witnessed::recorded).toList();
      pieces.add(() -> new LimitsMutants(judge, table, observed(all), deadline).all());
    }
    return pieces;
  }

  private List<Case> recorded(Symptom symptom) {
    return cases.stream()
        .map(Witnessed::recorded)
        .filter(one -> one.symptom().equals(symptom.id()))
        .toList();
  }

  private SymptomMutants mutants(Symptom symptom, List<Case> own) {
    return new SymptomMutants(judge, symptom, observed(own), deadline);
  }

  /** Anew for each piece of work: what was observed is for one thread. */
  private List<Witnessed> observed(List<Case> some) {
    return some.stream().map(one -> new Witnessed(one, sighting(one))).toList();
  }
}
