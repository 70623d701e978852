package io.faultwright.analysis.space;

import io.faultwright.finding.Share;
import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Never;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** A symptom's situations, and where its rules fire among them. */
public final class SymptomSpace {
  private final Symptom symptom;
  private final Space space;
  private final Diagrams diagrams;
  private final List<Never> nevers;
  private final Map<String, Truth> whens = new TreeMap<>();
  private final int possible;
  private final List<Integer> referrals = new ArrayList<>();
  private final int workable;

  private SymptomSpace(Symptom symptom, Space space, List<Never> nevers, int real) {
    this.symptom = symptom;
    this.space = space;
    this.diagrams = space.diagrams();
    this.nevers = nevers;
    this.possible = withoutNevers(diagrams.and(real, space.truth(symptom.recognise()).isTrue()));
    int open = possible;
    for (Symptom.First first : symptom.first()) {
      Truth truth = space.truth(first.when());
      referrals.add(diagrams.minus(open, truth.mayBeTrue()));
      open = diagrams.and(open, truth.isTrue());
    }
    this.workable = open;
    symptom.rules().forEach((id, rule) -> whens.put(id, space.truth(rule.when())));
  }

  /** The space of a symptom over all published equipment it applies to. */
  public static SymptomSpace of(KnowledgeBase knowledge, Symptom symptom) {
    List<Condition> counted = conditions(symptom);
    RelevantNevers nevers = RelevantNevers.of(knowledge, symptom, counted);
    List<Build> offered = builds(knowledge, symptom);
    List<Build> left = nevers.left(knowledge, offered);
    Space space =
        Space.of(
            knowledge,
            left.isEmpty() ? offered : left,
            counted,
            nevers.related().stream().map(Never::when).toList());
    return new SymptomSpace(
        symptom, space, nevers.related(), left.isEmpty() ? Diagrams.NONE : space.consistent());
  }

  /**
   * A symptom's rules over a space that may hold more than this symptom asks about.
   *
   * @param nevers statements that restrict what is possible
   * @param real the situations in question; recognition restricts them further
   */
  public static SymptomSpace within(Space space, Symptom symptom, List<Never> nevers, int real) {
    return new SymptomSpace(symptom, space, nevers, real);
  }

  /** Published equipment to which a symptom applies. */
  public static List<Build> builds(KnowledgeBase knowledge, Symptom symptom) {
    return knowledge.equipment().builds().stream()
        .filter(build -> build.satisfies(symptom.applies()))
        .toList();
  }

  private static List<Condition> conditions(Symptom symptom) {
    List<Condition> conditions = new ArrayList<>();
    conditions.add(symptom.recognise());
    symptom.first().forEach(first -> conditions.add(first.when()));
    symptom.rules().values().forEach(rule -> conditions.add(rule.when()));
    return conditions;
  }

  private int withoutNevers(int start) {
    int left = start;
    for (Never never : nevers) {
      left = diagrams.minus(left, space.truth(never.when()).isTrue());
    }
    return left;
  }

  public Symptom symptom() {
    return symptom;
  }

  public Space space() {
    return space;
  }

  /** The statements that restrict what is possible here, the symptom's own and the general ones. */
  public List<Never> nevers() {
    return nevers;
  }

  /** Situations that can happen and show the symptom. */
  public int possible() {
    return possible;
  }

  /** For each {@code first}, in order: possible situations that it sends elsewhere. */
  public List<Integer> referrals() {
    return List.copyOf(referrals);
  }

  /** Possible situations in which everything that must be right first is right. */
  public int workable() {
    return workable;
  }

  /** Where a rule's conditions hold, whether or not that is possible. */
  public int when(String rule) {
    return whens.get(rule).isTrue();
  }

  /** Where a rule's conditions hold or may hold; there it silences what it stands instead of. */
  public int mayHold(String rule) {
    return whens.get(rule).mayBeTrue();
  }

  /** Where a rule fires: its conditions hold and no rule that speaks instead of it may hold. */
  public int fires(String rule) {
    return fires(rule, when(rule));
  }

  /** Where a rule would fire if its conditions held in another set. */
  public int fires(String rule, int when) {
    int fires = when;
    for (Rule other : symptom.rules().values()) {
      if (other.insteadOf().contains(rule)) {
        fires = diagrams.minus(fires, mayHold(other.id()));
      }
    }
    return fires;
  }

  /** For every answer the rules can give: the workable situations that get it. */
  public SortedMap<Answer, Integer> answers() {
    SortedMap<Answer, Integer> answers = new TreeMap<>();
    for (Rule rule : symptom.rules().values()) {
      int fires = diagrams.and(workable, fires(rule.id()));
      rule.conclusion().answers().forEach(answer -> answers.merge(answer, fires, diagrams::or));
    }
    return answers;
  }

  /** Possible situations in which the symptom says something: an answer, or work this first. */
  public int answered() {
    int answered = referrals.stream().reduce(Diagrams.NONE, diagrams::or);
    return answers().values().stream().reduce(answered, diagrams::or);
  }

  /** The part of the possible situations not sent elsewhere first that a diagram holds; exact. */
  public Share share(int diagram) {
    int here = referrals.stream().reduce(possible, diagrams::minus);
    BigInteger all = space.distinguishable(here);
    BigInteger part = space.distinguishable(diagrams.and(diagram, here));
    double figure = all.signum() == 0 ? 0 : ratio(part, all);
    return new Share(figure, figure, true);
  }

  private static double ratio(BigInteger part, BigInteger all) {
    return new BigDecimal(part)
        .divide(new BigDecimal(all), MathContext.DECIMAL64)
        .round(new MathContext(9))
        .doubleValue();
  }
}
