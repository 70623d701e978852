package io.faultwright.analysis.referral;

import io.faultwright.analysis.space.BoxWords;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Regions;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.Truth;
import io.faultwright.analysis.space.Witness;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Build;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Never;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds circles of referrals that one possible situation really runs through. The symptom one is
 * sent to is worked whether or not the caller recognised it.
 */
public final class CircularReferralAnalysis {
  private CircularReferralAnalysis() {}

  /** One finding per circle. */
  public static List<Finding> findings(KnowledgeBase knowledge) {
    return ReferralCircles.of(knowledge).stream()
        .flatMap(circle -> finding(knowledge, circle).stream())
        .toList();
  }

  private static Optional<Finding> finding(KnowledgeBase knowledge, List<Symptom> circle) {
    List<Build> builds =
        knowledge.equipment().builds().stream()
            .filter(
                build -> circle.stream().allMatch(symptom -> build.satisfies(symptom.applies())))
            .toList();
    if (builds.isEmpty()) {
      return Optional.empty();
    }
    Space space = space(knowledge, circle, builds);
    int possible = possible(space, knowledge, circle);
    int round = possible;
    for (int i = 0; i < circle.size(); i++) {
      Symptom next = circle.get((i + 1) % circle.size());
      round = space.diagrams().and(round, sends(space, circle.get(i), next.id()));
    }
    return round == Diagrams.NONE
        ? Optional.empty()
        : Optional.of(finding(space, circle, round, possible));
  }

  private static Space space(KnowledgeBase knowledge, List<Symptom> circle, List<Build> builds) {
    List<Condition> asked = circle.stream().flatMap(CircularReferralAnalysis::conditions).toList();
    return Space.of(knowledge, builds, asked, nevers(knowledge, circle).toList());
  }

  private static Stream<Condition> conditions(Symptom symptom) {
    return Stream.concat(
        symptom.first().stream().map(Symptom.First::when),
        symptom.rules().values().stream().map(Rule::when));
  }

  private static Stream<Condition> nevers(KnowledgeBase knowledge, List<Symptom> circle) {
    return Stream.concat(
            knowledge.nevers().values().stream(),
            circle.stream().flatMap(symptom -> symptom.nevers().values().stream()))
        .map(Never::when);
  }

  private static int possible(Space space, KnowledgeBase knowledge, List<Symptom> circle) {
    return nevers(knowledge, circle)
        .map(never -> space.truth(never).isTrue())
        .reduce(space.consistent(), space.diagrams()::minus);
  }

  /** Where a symptom sends the technician to another one, by {@code first} or by a rule. */
  private static int sends(Space space, Symptom from, String to) {
    Diagrams diagrams = space.diagrams();
    int sent = Diagrams.NONE;
    int open = Diagrams.ALL;
    for (Symptom.First first : from.first()) {
      Truth truth = space.truth(first.when());
      if (first.otherwise().equals(to)) {
        sent = diagrams.or(sent, diagrams.minus(open, truth.mayBeTrue()));
      }
      open = diagrams.and(open, truth.isTrue());
    }
    for (Rule rule : from.rules().values()) {
      if (rule.conclusion() instanceof Conclusion.Refer refer && refer.symptom().equals(to)) {
        sent = diagrams.or(sent, diagrams.and(open, fires(space, from, rule)));
      }
    }
    return sent;
  }

  private static int fires(Space space, Symptom symptom, Rule rule) {
    return symptom.rules().values().stream()
        .filter(other -> other.insteadOf().contains(rule.id()))
        .map(other -> space.truth(other.when()).mayBeTrue())
        .reduce(space.truth(rule.when()).isTrue(), space.diagrams()::minus);
  }

  private static Finding finding(Space space, List<Symptom> circle, int round, int possible) {
    String path =
        Stream.concat(circle.stream(), Stream.of(circle.get(0)))
            .map(symptom -> "`" + symptom.id() + "`")
            .collect(Collectors.joining(" → "));
    List<Symptom> places = new ArrayList<>(circle);
    Finding finding =
        Finding.of(
                FindingKind.CIRCULAR_REFERRAL,
                places.stream().map(Symptom::place).toList(),
                "the referrals " + path + " run in a circle",
                "let one of these symptoms answer the situation itself")
            .in(circle.get(0).id(), List.of());
    return finding.shownBy(
        new Witness(space).of(round),
        new BoxWords(space, possible).tests(new Regions(space).cover(round, possible).get(0)),
        Optional.empty());
  }
}
