package io.faultwright.pipeline;

import io.faultwright.analysis.review.RuleRegions;
import io.faultwright.analysis.space.OutOfTime;
import io.faultwright.analysis.space.RulePair;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Case;
import io.faultwright.model.Excerpts;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Signed;
import io.faultwright.model.SignedKind;
import io.faultwright.model.Symptom;
import io.faultwright.review.LastChange;
import io.faultwright.review.Overlap;
import io.faultwright.review.Region;
import io.faultwright.review.RuleReview;
import io.faultwright.review.SymptomReview;
import io.faultwright.run.Runner;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What a reviewer is shown of every symptom: cases, regions, overlaps, last changes. */
public final class Reviewing {
  /** More pairs than a person reads; contradictions come first. */
  private static final int MOST = 60;

  private final KnowledgeBase kb;
  private final LastChanges changes;
  private final Stop stop;
  private final Watch watch;
  private final Set<Set<String>> contradictions;
  private final Map<String, SortedSet<String>> cases = new TreeMap<>();
  private final Map<Signed, LastChange> dates = new TreeMap<>();

  /**
   * What is shown.
   *
   * @param findings of a check of this knowledge base; they say which overlaps are contradictions
   * @param stop when regions that are not worked out yet are left out
   */
  public Reviewing(
      KnowledgeBase kb, LastChanges changes, List<Finding> findings, Stop stop, Watch watch) {
    this.kb = kb;
    this.changes = changes;
    this.stop = stop;
    this.watch = watch;
    this.contradictions =
        findings.stream()
            .filter(one -> one.kind() == FindingKind.CONTRADICTION)
            .map(one -> named(one.symptom().orElseThrow(), one.rules()))
            .collect(Collectors.toSet());
  }

  private static Set<String> named(String symptom, List<String> rules) {
    return rules.stream().map(rule -> key(symptom, rule)).collect(Collectors.toSet());
  }

  private static String key(String symptom, String rule) {
    return Signed.rule(symptom, rule).id();
  }

  /** Every symptom, by id. */
  public List<SymptomReview> all() {
    watch.phase("fired");
    runCases();
    watch.phase("history");
    kb.symptoms().values().forEach(this::date);
    watch.phase("regions");
    Excerpts excerpts = new Excerpts(kb);
    return kb.symptoms().values().parallelStream()
        .map(symptom -> of(symptom, excerpts.forProof(symptom)))
        .toList();
  }

  private void date(Symptom symptom) {
    Signed whole = new Signed(SignedKind.SYMPTOM, symptom.id());
    dates.put(whole, changes.of(whole));
    for (String rule : symptom.rules().keySet()) {
      Signed one = Signed.rule(symptom.id(), rule);
      dates.put(one, changes.of(one));
    }
  }

  private void runCases() {
    Runner runner = new Runner(kb, RuleCompiler.compile(kb));
    for (Case one : kb.cases().values()) {
      runner
          .run(one.symptom(), one.given())
          .fired()
          .forEach(rule -> firedBy(key(one.symptom(), rule)).add(one.id()));
    }
  }

  private SortedSet<String> firedBy(String rule) {
    return cases.computeIfAbsent(rule, none -> new TreeSet<>());
  }

  private SymptomReview of(Symptom symptom, KnowledgeBase excerpt) {
    try {
      SymptomSpace space = SymptomSpace.of(excerpt, symptom, stop.deadline());
      RuleRegions regions = new RuleRegions(space);
      return review(
          symptom, regions::of, overlaps(space, regions), space.meetings().size() <= MOST);
    } catch (OutOfTime late) {
      return review(symptom, rule -> Region.UNKNOWN, List.of(), false);
    }
  }

  private SymptomReview review(
      Symptom symptom, Function<String, Region> regions, List<Overlap> overlaps, boolean whole) {
    return new SymptomReview(
        symptom.id(),
        symptom.rules().keySet().stream()
            .map(rule -> rule(symptom, rule, regions.apply(rule)))
            .toList(),
        overlaps,
        whole,
        dates.get(new Signed(SignedKind.SYMPTOM, symptom.id())));
  }

  private RuleReview rule(Symptom symptom, String rule, Region region) {
    return new RuleReview(
        rule,
        cases.getOrDefault(key(symptom.id(), rule), new TreeSet<>()),
        region,
        dates.get(Signed.rule(symptom.id(), rule)));
  }

  private List<Overlap> overlaps(SymptomSpace space, RuleRegions regions) {
    String symptom = space.symptom().id();
    return space.meetings().stream()
        .sorted(Comparator.comparing((RulePair pair) -> !contradicts(symptom, pair)))
        .limit(MOST)
        .map(
            pair ->
                new Overlap(pair.one(), pair.other(), contradicts(symptom, pair), regions.of(pair)))
        .toList();
  }

  private boolean contradicts(String symptom, RulePair pair) {
    return contradictions.contains(named(symptom, List.of(pair.one(), pair.other())));
  }
}
