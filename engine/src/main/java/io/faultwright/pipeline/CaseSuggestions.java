package io.faultwright.pipeline;

import io.faultwright.adequacy.Criterion;
import io.faultwright.adequacy.Measured.Done;
import io.faultwright.adequacy.Suggestion;
import io.faultwright.analysis.space.OutOfTime;
import io.faultwright.analysis.suggestion.SuggestionAnalysis;
import io.faultwright.model.Case;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Finds cases that would show what the recorded ones do not, symptom by symptom. Cases that nobody
 * has confirmed count as recorded here, so that none is suggested twice.
 */
public final class CaseSuggestions {
  private final Options options;
  private final Stop stop;
  private final Watch watch;

  /**
   * What is asked for.
   *
   * @param symptom the only symptom to look at; absent for all
   * @param wanted what the cases are measured by
   * @param mistakes whether every mistake should be noticed too
   * @param three whether a threshold has three boundary values, or two
   */
  public record Options(
      Optional<String> symptom, Set<Criterion> wanted, boolean mistakes, boolean three) {
    public Options {
      wanted = Set.copyOf(wanted);
    }
  }

  /**
   * What was found.
   *
   * @param cases suggested, symptom by symptom
   * @param done how far the work came
   */
  public record Suggested(List<Suggestion> cases, Done done) {
    public Suggested {
      cases = List.copyOf(cases);
    }
  }

  public CaseSuggestions(Options options, Stop stop, Watch watch) {
    this.options = options;
    this.stop = stop;
    this.watch = watch;
  }

  /** Suggested cases; those found until then where the work is stopped. */
  public Suggested suggest(KnowledgeBase kb) {
    Scope scope = new Scope(options.symptom(), Optional.empty());
    scope.requireSymptom(kb);
    SuggestionAnalysis analysis =
        new SuggestionAnalysis(
            kb,
            recorded(kb),
            options.wanted(),
            options.mistakes(),
            options.three(),
            stop.deadline());
    List<Supplier<List<Suggestion>>> pieces = new ArrayList<>();
    if (options.mistakes() && options.symptom().isEmpty()) {
      pieces.add(analysis::ofLimits);
    }
    for (Symptom symptom : scope.symptoms(kb)) {
      pieces.add(() -> analysis.of(symptom));
    }
    return inTurn(pieces);
  }

  private static List<Case> recorded(KnowledgeBase kb) {
    CountedCases cases = CountedCases.of(kb);
    List<Case> recorded = new ArrayList<>(cases.passing());
    recorded.addAll(cases.unconfirmed());
    return recorded;
  }

  /** One after the other: what one finds, the next need not. Mistakes in limits show boundaries. */
  private Suggested inTurn(List<Supplier<List<Suggestion>>> pieces) {
    List<Suggestion> found = new ArrayList<>();
    int done = 0;
    try {
      for (Supplier<List<Suggestion>> piece : pieces) {
        stop.deadline().check();
        found.addAll(piece.get());
        watch.step(++done, pieces.size());
      }
    } catch (OutOfTime late) {
      return new Suggested(found, new Done(done, pieces.size()));
    }
    return new Suggested(found, new Done(done, pieces.size()));
  }
}
