package io.faultwright.analysis.contradiction;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Evidence;
import io.faultwright.analysis.space.RulePair;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.analysis.space.Union;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.finding.Share;
import io.faultwright.model.Rule;
import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;

/** Finds every pair of rules that fire together with answers that exclude each other. */
public final class ContradictionAnalysis {
  private ContradictionAnalysis() {}

  /** One finding per pair of rules; none is a proof that there is no contradiction. */
  public static List<Finding> findings(SymptomSpace symptom) {
    Evidence evidence = new Evidence(symptom);
    return clashes(symptom).map(clash -> shown(symptom, evidence, clash)).toList();
  }

  /** The share of the situations that get two answers which exclude each other. */
  public static Share share(SymptomSpace symptom) {
    int[] situations = clashes(symptom).mapToInt(clash -> common(symptom, clash.pair())).toArray();
    return symptom.share(new Union(symptom.space().diagrams(), situations));
  }

  private record Clash(RulePair pair, Conflict conflict) {}

  private static Stream<Clash> clashes(SymptomSpace symptom) {
    SortedMap<String, Rule> rules = symptom.symptom().rules();
    Conflicts conflicts = new Conflicts(symptom.symptom().together());
    return pairs(symptom)
        .flatMap(
            pair ->
                conflicts
                    .between(
                        rules.get(pair.one()).conclusion(), rules.get(pair.other()).conclusion())
                    .map(conflict -> new Clash(pair, conflict))
                    .stream());
  }

  private static int common(SymptomSpace symptom, RulePair pair) {
    return symptom.space().diagrams().and(symptom.firing(pair.one()), symptom.firing(pair.other()));
  }

  /** Pairs that fire together, each rule that fires at all also with itself. */
  private static Stream<RulePair> pairs(SymptomSpace symptom) {
    Stream<RulePair> alone =
        symptom.symptom().rules().keySet().stream()
            .filter(rule -> symptom.firing(rule) != Diagrams.NONE)
            .map(rule -> new RulePair(rule, rule));
    return Stream.concat(alone, symptom.meetings().stream()).sorted();
  }

  private static Finding shown(SymptomSpace symptom, Evidence evidence, Clash clash) {
    Rule a = symptom.symptom().rules().get(clash.pair().one());
    Rule b = symptom.symptom().rules().get(clash.pair().other());
    Conflict conflict = clash.conflict();
    List<Rule> rules = a == b ? List.of(a) : List.of(a, b);
    Finding finding =
        Finding.of(
                FindingKind.CONTRADICTION,
                rules.stream().map(Rule::place).toList(),
                message(a, b, conflict),
                conflict.help())
            .in(symptom.symptom().id(), rules.stream().map(Rule::id).toList());
    return evidence.show(finding, common(symptom, clash.pair()));
  }

  private static String message(Rule a, Rule b, Conflict conflict) {
    String who =
        a == b
            ? "rule `" + a.id() + "` gives"
            : "rules `" + a.id() + "` and `" + b.id() + "` fire in one situation and give";
    return who + " " + conflict.words();
  }
}
