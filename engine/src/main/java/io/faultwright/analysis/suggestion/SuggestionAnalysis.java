package io.faultwright.analysis.suggestion;

import io.faultwright.adequacy.Criterion;
import io.faultwright.adequacy.MutantStatus;
import io.faultwright.adequacy.Suggestion;
import io.faultwright.analysis.coverage.CoverageAnalysis;
import io.faultwright.analysis.coverage.Sighting;
import io.faultwright.analysis.judge.Judge;
import io.faultwright.analysis.mutation.MutationAnalysis;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.model.Case;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;

/** Finds few cases that would show what the recorded ones do not. */
public final class SuggestionAnalysis {
  private final KnowledgeBase kb;
  private final Judge judge;
  private final Set<Criterion> wanted;
  private final boolean mutants;
  private final boolean three;
  private final Deadline deadline;
  private final Set<String> limits = new HashSet<>();
  private final Set<String> ids = new TreeSet<>();
  private final List<Case> recorded;
  private final List<Sighting> sightings = new ArrayList<>();

  /**
   * @param recorded the cases that count
   * @param wanted what the cases are measured by
   * @param mutants whether every mistake should be noticed too
   * @param three whether a threshold has three boundary values, or two
   * @param deadline after which no more mistakes are looked at
   */
  public SuggestionAnalysis(
      KnowledgeBase kb,
      Collection<Case> recorded,
      Set<Criterion> wanted,
      boolean mutants,
      boolean three,
      Deadline deadline) {
    this.kb = kb;
    this.judge = new Judge(kb);
    this.wanted = Set.copyOf(wanted);
    this.mutants = mutants;
    this.three = three;
    this.deadline = deadline;
    this.recorded = new ArrayList<>(recorded);
    recorded.forEach(
        one -> sightings.add(Sighting.of(judge, kb.symptoms().get(one.symptom()), one.given())));
    ids.addAll(kb.cases().keySet());
  }

  /** Cases for one symptom; what was suggested for others counts as recorded. */
  public List<Suggestion> of(Symptom symptom) {
    CoverageAnalysis coverage = new CoverageAnalysis(kb, symptom, three, limits, deadline);
    SymptomSuggestions open =
        new SymptomSuggestions(judge, symptom, coverage, three, sightings, deadline);
    if (wanted.contains(Criterion.MC_DC)) {
      open.closeEffects();
    }
    open.closeSituations(wanted);
    if (wanted.contains(Criterion.PAIRS)) {
      open.closePairs();
    }
    open.dropSuperfluous();
    if (mutants) {
      open.closeMutants(ofRules(symptom, open.drafts()));
    }
    return kept(symptom, open.drafts());
  }

  /** Cases, of any symptom, that notice mistakes in the limits. */
  public List<Suggestion> ofLimits() {
    List<Suggestion> suggestions = new ArrayList<>();
    List<MutantStatus> mutants = judged(new MutationAnalysis(kb, recorded, deadline).limits());
    MutantDrafts.of(judge, mutants)
        .forEach((id, drafts) -> suggestions.addAll(kept(kb.symptoms().get(id), drafts)));
    return suggestions;
  }

  private List<MutantStatus> ofRules(Symptom symptom, List<Draft> drafts) {
    List<Case> cases = new ArrayList<>(recorded);
    drafts.forEach(draft -> cases.add(asCase(symptom, "draft", draft)));
    return judged(new MutationAnalysis(kb, cases, deadline).pieces(List.of(symptom)));
  }

  private static List<MutantStatus> judged(List<Supplier<List<MutantStatus>>> pieces) {
    return pieces.parallelStream().flatMap(piece -> piece.get().stream()).toList();
  }

  private List<Suggestion> kept(Symptom symptom, List<Draft> drafts) {
    List<Suggestion> suggestions = new ArrayList<>();
    for (Draft draft : drafts) {
      String id = id(symptom, draft);
      recorded.add(asCase(symptom, id, draft));
      sightings.add(draft.sighting());
      suggestions.add(
          new Suggestion(
              id,
              symptom.id(),
              draft.situation(),
              draft.sighting().ruling().answers(),
              draft.closes()));
    }
    return suggestions;
  }

  private static Case asCase(Symptom symptom, String id, Draft draft) {
    return new Case(
        id,
        symptom.place(),
        symptom.id(),
        draft.situation(),
        draft.sighting().ruling().answers(),
        true,
        "",
        Optional.empty(),
        List.of());
  }

  /** Model, rule or symptom, and a number where that is not one of its own. */
  private String id(Symptom symptom, Draft draft) {
    Situation situation = draft.situation();
    String about = draft.sighting().ruling().fired().stream().findFirst().orElse(symptom.id());
    String machine = situation.equipment().getOrDefault("model", "").toLowerCase(Locale.ROOT);
    String start = machine.isEmpty() ? about : machine + "-" + about;
    String id = start;
    for (int number = 2; !ids.add(id); number++) {
      id = start + "-" + number;
    }
    return id;
  }
}
