package io.faultwright.page;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.finding.RegionTest;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.page.DecisionTable.Group;
import io.faultwright.page.DecisionTable.Kind;
import io.faultwright.review.Overlap;
import io.faultwright.review.Region;
import io.faultwright.review.RuleReview;
import io.faultwright.review.SymptomReview;
import io.faultwright.wording.Wording;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The rules of a symptom as a table: a line for each box of situations in which one answers. */
final class DecisionTables {
  private static final Set<FindingKind> GAPS =
      EnumSet.of(FindingKind.GAP, FindingKind.LIMITS_MISSING);

  private static final Pattern UNIT = Pattern.compile("(\\d) (?=\\S{1,7}(\\s|$))");

  private final KnowledgeBase kb;
  private final Wording words;
  private final RegionFacts facts;
  private final Symptom symptom;
  private final SymptomReview review;
  private final List<Finding> gaps;
  private final List<String> subjects;

  DecisionTables(
      KnowledgeBase kb, Symptom symptom, SymptomReview review, Collection<Finding> findings) {
    this.kb = kb;
    this.words = new Wording(kb);
    this.facts = new RegionFacts(words);
    this.symptom = symptom;
    this.review = review;
    this.gaps =
        findings.stream()
            .filter(one -> GAPS.contains(one.kind()))
            .filter(one -> one.symptom().equals(Optional.of(symptom.id())))
            .toList();
    this.subjects = subjects();
  }

  DecisionTable table() {
    List<Group> groups = new ArrayList<>();
    rules().forEach(rule -> groups.add(ofRule(rule)));
    gaps.forEach(gap -> groups.add(ofGap(gap)));
    review.overlaps().forEach(overlap -> groups.add(ofOverlap(overlap)));
    return new DecisionTable(
        subjects.stream().map(words::subject).toList(), groups, review.overlapsWhole());
  }

  /** In the written order. */
  private List<Rule> rules() {
    return Written.order(symptom.rules().values(), Rule::place);
  }

  /** Facts of the equipment first, then readings as the rules name them one after the other. */
  private List<String> subjects() {
    SortedSet<String> asked = asked();
    List<Reading> readings =
        asked.stream().map(kb.readings()::get).filter(Objects::nonNull).toList();
    return Stream.of(
            asked.stream().filter(id -> !kb.readings().containsKey(id)),
            rules().stream().flatMap(rule -> rule.when().tests()).map(Condition.Test::subject),
            ReadingSections.easiestFirst(readings).stream().map(Reading::id))
        .flatMap(ids -> ids)
        .filter(asked::contains)
        .distinct()
        .sorted(Comparator.comparing(kb.readings()::containsKey))
        .toList();
  }

  private SortedSet<String> asked() {
    return Stream.of(
            review.rules().stream().map(RuleReview::region).flatMap(DecisionTables::tests),
            review.overlaps().stream().map(Overlap::region).flatMap(DecisionTables::tests),
            gaps.stream().flatMap(gap -> gap.region().stream()))
        .flatMap(tests -> tests)
        .map(RegionTest::reading)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Stream<RegionTest> tests(Region region) {
    return region.boxes().stream().flatMap(List::stream);
  }

  private Group ofRule(Rule rule) {
    return new Group(
        Kind.RULE.word(),
        List.of(new Link(link(rule.id()).text() + " " + rule.id(), link(rule.id()).href())),
        words.conclusion(rule.conclusion()),
        beside(rule, true),
        beside(rule, false),
        rows(regions().get(rule.id()).boxes()),
        regions().get(rule.id()).whole());
  }

  private Map<String, Region> regions() {
    return review.rules().stream().collect(Collectors.toMap(RuleReview::rule, RuleReview::region));
  }

  private List<Link> beside(Rule rule, boolean contradiction) {
    return review.overlaps().stream()
        .filter(overlap -> overlap.contradiction() == contradiction && overlap.concerns(rule.id()))
        .map(overlap -> link(overlap.beside(rule.id())))
        .toList();
  }

  private Group ofGap(Finding gap) {
    return new Group(
        Kind.GAP.word(),
        List.of(),
        gap.kind() == FindingKind.GAP ? "no rule answers" : "no figure in the limits",
        List.of(),
        List.of(),
        rows(List.of(gap.region())),
        true);
  }

  private Group ofOverlap(Overlap overlap) {
    Kind kind = overlap.contradiction() ? Kind.CLASH : Kind.BOTH;
    return new Group(
        kind.word(),
        List.of(link(overlap.one()), link(overlap.other())),
        Stream.of(overlap.one(), overlap.other())
            .map(id -> words.conclusion(symptom.rules().get(id).conclusion()))
            .distinct()
            .collect(Collectors.joining(kind == Kind.CLASH ? " against " : "; ")),
        List.of(),
        List.of(),
        rows(overlap.region().boxes()),
        overlap.region().whole());
  }

  private Link link(String rule) {
    int number = rules().indexOf(symptom.rules().get(rule)) + 1;
    return new Link(Integer.toString(number), "#rule-" + rule);
  }

  private List<List<String>> rows(List<List<RegionTest>> boxes) {
    return boxes.stream().map(this::row).toList();
  }

  private List<String> row(List<RegionTest> box) {
    Map<String, String> cells =
        box.stream()
            .collect(
                Collectors.toMap(
                    RegionTest::reading,
                    test -> unbroken(facts.of(List.of(test)).get(0).text()),
                    (one, other) -> one + "; " + other));
    return subjects.stream().map(cellOf(cells)).toList();
  }

  /** With no line ending between a number and its unit. */
  private static String unbroken(String text) {
    return UNIT.matcher(text).replaceAll("$1\u00a0");
  }

  private static Function<String, String> cellOf(Map<String, String> cells) {
    return subject -> cells.getOrDefault(subject, "");
  }
}
