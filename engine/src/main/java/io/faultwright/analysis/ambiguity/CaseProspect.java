package io.faultwright.analysis.ambiguity;

import io.faultwright.ambiguity.Prospect;
import io.faultwright.ambiguity.Prospect.Open;
import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.outcome.Results;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.analysis.space.Witness;
import io.faultwright.model.Answer;
import io.faultwright.model.Case;
import io.faultwright.model.Rule;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** What a case leaves open, exactly: no situation that agrees with it comes out otherwise. */
public final class CaseProspect {
  private static final int MOST_RESULTS = 1_000;

  private final SymptomSpace all;
  private final List<Result> told;
  private final Case recorded;

  private CaseProspect(SymptomSpace all, List<Result> told, Case recorded) {
    this.all = all;
    this.told = told;
    this.recorded = recorded;
  }

  /**
   * What a case leaves open.
   *
   * @param all the whole space of its symptom
   * @return empty where the rules contradict each other in too many ways to follow
   */
  public static Optional<Prospect> of(SymptomSpace all, Case recorded) {
    return Results.upTo(MOST_RESULTS, all)
        .map(told -> new CaseProspect(all, told, recorded).prospect());
  }

  private Prospect prospect() {
    Optional<OpenCase> agreeing =
        OpenCase.of(all, told, recorded.given()).filter(OpenCase::isPossible);
    List<Open> open = agreeing.map(this::open).orElse(List.of());
    SortedSet<String> ruledOut =
        concluded(all.symptom().rules().values().stream().map(this::answers));
    ruledOut.removeAll(concluded(open.stream().map(Open::answers)));
    return new Prospect(
        recorded.id(),
        recorded.symptom(),
        open,
        ruledOut,
        agreeing.map(found -> new NextSteps(found).steps()).orElse(List.of()));
  }

  private SortedSet<Answer> answers(Rule rule) {
    return rule.conclusion().answers();
  }

  private static SortedSet<String> concluded(Stream<SortedSet<Answer>> answers) {
    SortedSet<String> faults = new TreeSet<>();
    answers
        .flatMap(SortedSet::stream)
        .filter(Answer.OfFault.class::isInstance)
        .forEach(answer -> faults.add(answer.name()));
    return faults;
  }

  private List<Open> open(OpenCase agreeing) {
    double whole = agreeing.results().stream().mapToDouble(Result::weight).sum();
    Witness witness = new Witness(agreeing.space().space());
    return agreeing.results().stream()
        .map(
            result ->
                new Open(
                    result.answers(),
                    Ratios.rounded(result.weight() / whole),
                    completed(witness.of(result.situations()))))
        .sorted(Comparator.comparing(Open::likelihood).reversed())
        .toList();
  }

  /** An example with what is given about readings that the symptom does not ask for. */
  private Situation completed(Situation example) {
    SortedMap<String, Value> readings = new TreeMap<>(recorded.given().readings());
    readings.putAll(example.readings());
    return new Situation(example.equipment(), readings);
  }
}
