package io.faultwright.pipeline;

import io.faultwright.adequacy.Coverage;
import io.faultwright.adequacy.GoalStatus;
import io.faultwright.adequacy.Measured;
import io.faultwright.adequacy.Measured.Counts;
import io.faultwright.adequacy.Measured.Done;
import io.faultwright.adequacy.MutantStatus;
import io.faultwright.analysis.coverage.CoverageAnalysis;
import io.faultwright.analysis.coverage.Sighting;
import io.faultwright.analysis.judge.Judge;
import io.faultwright.analysis.mutation.MutationAnalysis;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.OutOfTime;
import io.faultwright.model.Case;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Measures the cases of a knowledge base, a line for each phase.
 *
 * <pre>
 * cases that pass ─┬─ what they show, symptom by symptom, also of goals from elsewhere
 *                  \- mistakes in rules and limits, and which of them they notice
 * </pre>
 */
public final class CaseMeasure {
  private final Options options;
  private final Further further;
  private final Stop stop;
  private final Watch watch;

  /** Goals that the engine knows nothing of. */
  @FunctionalInterface
  public interface Further {
    /**
     * Those of a symptom.
     *
     * @param cases all that pass, also those of other symptoms
     * @param deadline after which it throws {@link OutOfTime}
     */
    List<GoalStatus> goals(
        KnowledgeBase kb, Symptom symptom, List<Sighting> cases, Deadline deadline);
  }

  /**
   * What is asked for.
   *
   * @param symptom the only symptom to look at; absent for all
   * @param mutants whether mistakes are put in, too
   * @param three whether a threshold has three boundary values, or two
   */
  public record Options(Optional<String> symptom, boolean mutants, boolean three) {}

  public CaseMeasure(Options options, Further further, Stop stop, Watch watch) {
    this.options = options;
    this.further = further;
    this.stop = stop;
    this.watch = watch;
  }

  /**
   * How good they are; what was done until then where it is stopped.
   *
   * @throws io.faultwright.diagnostic.Unreadable where the symptom asked for is not there
   */
  public Measured measure(KnowledgeBase kb) {
    Scope scope = new Scope(options.symptom(), Optional.empty());
    scope.requireSymptom(kb);
    List<Symptom> symptoms = scope.symptoms(kb);
    watch.phase("cases");
    CountedCases cases = CountedCases.of(kb);
    watch.phase("coverage");
    List<Coverage> coverage = coverage(kb, symptoms, cases.passing());
    watch.phase("mistakes");
    List<Supplier<List<MutantStatus>>> pieces = pieces(kb, symptoms, cases.passing());
    List<MutantStatus> mutants = new ArrayList<>();
    int judged = new SideBySide(stop, watch).run(pieces, mutants::addAll);
    return new Measured(
        kb.handbook().title(),
        new Counts(cases.passing().size(), cases.failed(), cases.unconfirmed().size()),
        kb.equipment().builds(),
        coverage,
        options.mutants() ? Optional.of(mutants) : Optional.empty(),
        new Done(coverage.size() + judged, symptoms.size() + pieces.size()));
  }

  private List<Coverage> coverage(KnowledgeBase kb, List<Symptom> symptoms, List<Case> cases) {
    Judge judge = new Judge(kb);
    List<Sighting> sightings =
        cases.stream()
            .map(one -> Sighting.of(judge, kb.symptoms().get(one.symptom()), one.given()))
            .toList();
    Set<String> limits = new HashSet<>();
    List<Coverage> coverage = new ArrayList<>();
    for (Symptom symptom : symptoms) {
      try {
        stop.deadline().check();
        Coverage own =
            new CoverageAnalysis(kb, symptom, options.three(), limits, stop.deadline())
                .of(sightings);
        coverage.add(own.with(further.goals(kb, symptom, sightings, stop.deadline())));
        watch.step(coverage.size(), symptoms.size());
      } catch (OutOfTime late) {
        return coverage;
      }
    }
    return coverage;
  }

  private List<Supplier<List<MutantStatus>>> pieces(
      KnowledgeBase kb, List<Symptom> symptoms, List<Case> cases) {
    if (!options.mutants()) {
      return List.of();
    }
    MutationAnalysis analysis = new MutationAnalysis(kb, cases, stop.deadline());
    List<Supplier<List<MutantStatus>>> pieces = new ArrayList<>(analysis.pieces(symptoms));
    if (options.symptom().isEmpty()) {
      pieces.addAll(analysis.limits());
    }
    return pieces;
  }
}
