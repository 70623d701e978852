package io.faultwright.analysis.mutation;

import io.faultwright.adequacy.Difference;
import io.faultwright.adequacy.Mutant;
import io.faultwright.adequacy.MutantStatus;
import io.faultwright.analysis.change.ChangeAnalysis;
import io.faultwright.analysis.change.Joined;
import io.faultwright.analysis.coverage.RowReach;
import io.faultwright.analysis.coverage.Sighting;
import io.faultwright.analysis.judge.Judge;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.change.ChangedRegion;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Never;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The mistakes in one table of limits, and what the cases notice of them. */
final class LimitsMutants {
  private final Judge judge;
  private final KnowledgeBase kb;
  private final LimitsTable table;
  private final List<Symptom> symptoms;
  private final List<Witnessed> cases;
  private final Deadline deadline;
  private final Map<String, List<Sighting>> near = new HashMap<>();
  private final List<Sighting> found = new ArrayList<>();

  /**
   * @param cases those of all symptoms
   */
  LimitsMutants(Judge judge, LimitsTable table, List<Witnessed> cases, Deadline deadline) {
    this.judge = judge;
    this.kb = judge.knowledge();
    this.table = table;
    this.symptoms =
        kb.symptoms().values().stream().filter(one -> tests(one).findAny().isPresent()).toList();
    this.cases = cases.stream().filter(one -> isAsked(one.sighting())).toList();
    this.deadline = deadline;
  }

  private boolean isAsked(Sighting one) {
    return symptoms.stream().anyMatch(symptom -> symptom.id().equals(one.symptom()));
  }

  private Stream<Test> tests(Symptom symptom) {
    return Stream.of(
            symptom.first().stream().map(Symptom.First::when),
            symptom.rules().values().stream().map(Rule::when),
            symptom.nevers().values().stream().map(Never::when),
            kb.nevers().values().stream().map(Never::when),
            Stream.of(symptom.recognise()))
        .flatMap(conditions -> conditions)
        .flatMap(Condition::tests)
        .filter(test -> test.pattern() instanceof AgainstLimits)
        .filter(test -> test.subject().equals(table.reading()));
  }

  List<MutantStatus> all() {
    return new LimitsVariants(kb, table).all().stream().map(this::status).toList();
  }

  private MutantStatus status(Variant<LimitsTable> variant) {
    Mutant mutant =
        new Mutant(
            variant.operator(),
            Optional.empty(),
            Optional.empty(),
            variant.words(),
            variant.place());
    KnowledgeBase changed = kb.with(variant.changed());
    Judge wrong = new Judge(changed);
    return cases.stream()
        .filter(one -> differs(one.sighting(), wrong))
        .findFirst()
        .map(by -> MutantStatus.killed(mutant, by.recorded().id()))
        .or(() -> nearby(wrong, variant.changed()).map(one -> MutantStatus.survived(mutant, one)))
        .orElseGet(() -> everywhere(mutant, changed, wrong));
  }

  private boolean differs(Sighting one, Judge wrong) {
    return !again(one, wrong).ruling().answers().equals(one.ruling().answers());
  }

  private Sighting again(Sighting one, Judge wrong) {
    return Sighting.of(wrong, kb.symptoms().get(one.symptom()), one.observed().given());
  }

  private Difference difference(Sighting one, Judge wrong) {
    return new Difference(
        one.symptom(),
        one.observed().given(),
        one.ruling().answers(),
        again(one, wrong).ruling().answers());
  }

  private Optional<Difference> nearby(Judge wrong, LimitsTable changed) {
    List<RowReach> reaches =
        table.rows().stream()
            .filter(row -> !changed.rows().contains(row))
            .map(row -> new RowReach(table, row))
            .toList();
    Optional<Sighting> shows =
        Stream.concat(found.stream(), symptoms.stream().flatMap(one -> near(one).stream()))
            .filter(one -> reaches.stream().anyMatch(reach -> reach.includes(one.observed())))
            .filter(one -> differs(one, wrong))
            .findFirst();
    shows.filter(one -> !found.contains(one)).ifPresent(found::add);
    return shows.map(one -> difference(one, wrong));
  }

  private List<Sighting> near(Symptom symptom) {
    return near.computeIfAbsent(
        symptom.id(),
        id -> {
          List<Sighting> own =
              cases.stream()
                  .map(Witnessed::sighting)
                  .filter(one -> one.symptom().equals(id))
                  .toList();
          return new NearCases(judge, symptom).besideLimits(own, table);
        });
  }

  /** By the comparison of two revisions; nowhere is a proof. */
  private MutantStatus everywhere(Mutant mutant, KnowledgeBase changed, Judge wrong) {
    Joined joined = new Joined(kb, changed);
    for (Symptom symptom : symptoms) {
      if (deadline.nanosLeft() < 0) {
        return MutantStatus.undecided(mutant);
      }
      ChangeAnalysis analysis = new ChangeAnalysis(joined, symptom.id());
      List<Difference> found = new ArrayList<>();
      for (ChangedRegion region : analysis.change().regions()) {
        Sighting one = Sighting.of(judge, symptom, analysis.asBefore(region.witness()));
        if (differs(one, wrong)) {
          found.add(difference(one, wrong));
        }
      }
      if (!found.isEmpty()) {
        return MutantStatus.survived(mutant, found.get(0));
      }
    }
    return MutantStatus.equivalent(mutant);
  }
}
