package io.faultwright.analysis.space;

import io.faultwright.finding.Share;
import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Never;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A symptom's situations, and where its rules fire among them. */
public final class SymptomSpace {
  private final Symptom symptom;
  private final Space space;
  private final Diagrams diagrams;
  private final List<Never> nevers;
  private final Map<String, List<String>> silencers = new HashMap<>();
  private final Map<String, Integer> fires = new HashMap<>();
  private final Map<String, Integer> firing = new HashMap<>();
  private final int possible;
  private final List<Integer> referrals = new ArrayList<>();
  private final int workable;
  private final int here;
  private Optional<Remainder> unanswered = Optional.empty();
  private Optional<Parts> parts = Optional.empty();
  private Optional<List<RulePair>> meetings = Optional.empty();

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
    this.here = referrals.stream().reduce(possible, diagrams::minus);
    symptom.rules().values().forEach(this::noteSilenced);
  }

  /** The space of a symptom over all published equipment it applies to. */
  public static SymptomSpace of(KnowledgeBase knowledge, Symptom symptom) {
    return of(knowledge, symptom, Deadline.NEVER);
  }

  /**
   * The space of a symptom over all published equipment it applies to.
   *
   * @param deadline after which everything asked of it throws {@link OutOfTime}
   */
  public static SymptomSpace of(KnowledgeBase knowledge, Symptom symptom, Deadline deadline) {
    return of(knowledge, symptom, List.of(), deadline);
  }

  /**
   * The space of a symptom in which further conditions can be asked about.
   *
   * @param further conditions that the symptom does not have; they make no situation
   *     distinguishable
   */
  public static SymptomSpace of(
      KnowledgeBase knowledge, Symptom symptom, List<Condition> further, Deadline deadline) {
    return of(knowledge, symptom, builds(knowledge, symptom), further, deadline);
  }

  /**
   * The space of a symptom on some equipment, in which further conditions can be asked about.
   *
   * @param offered the equipment in question, at least one
   */
  public static SymptomSpace of(
      KnowledgeBase knowledge,
      Symptom symptom,
      List<Build> offered,
      List<Condition> further,
      Deadline deadline) {
    return of(knowledge, symptom, offered, further, List.of(), deadline);
  }

  /**
   * The part of a symptom's space in which further conditions hold. They do not count when
   * situations are told apart.
   *
   * @param offered the equipment in question, at least one
   */
  public static SymptomSpace where(
      KnowledgeBase knowledge,
      Symptom symptom,
      List<Build> offered,
      List<Condition> further,
      Deadline deadline) {
    return of(knowledge, symptom, offered, further, further, deadline);
  }

  private static SymptomSpace of(
      KnowledgeBase knowledge,
      Symptom symptom,
      List<Build> offered,
      List<Condition> further,
      List<Condition> holding,
      Deadline deadline) {
    List<Condition> counted = conditions(symptom);
    List<Condition> asked = Stream.concat(counted.stream(), further.stream()).toList();
    RelevantNevers nevers = RelevantNevers.of(knowledge, symptom, asked);
    List<Build> left = nevers.left(knowledge, offered);
    List<Condition> others = new ArrayList<>(further);
    nevers.related().forEach(never -> others.add(never.when()));
    Space space = Space.of(knowledge, left.isEmpty() ? offered : left, counted, others, deadline);
    int real =
        holding.stream()
            .map(condition -> space.truth(condition).isTrue())
            .reduce(space.consistent(), space.diagrams()::and);
    return new SymptomSpace(
        symptom, space, nevers.related(), left.isEmpty() ? Diagrams.NONE : real);
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

  private void noteSilenced(Rule rule) {
    rule.insteadOf()
        .forEach(id -> silencers.computeIfAbsent(id, key -> new ArrayList<>()).add(rule.id()));
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
    return truth(rule).isTrue();
  }

  /** Where a rule's conditions hold or may hold; there it silences what it stands instead of. */
  public int mayHold(String rule) {
    return truth(rule).mayBeTrue();
  }

  private Truth truth(String rule) {
    return space.truth(symptom.rules().get(rule).when());
  }

  /** Where a rule fires: its conditions hold and no rule that speaks instead of it may hold. */
  public int fires(String rule) {
    return fires.computeIfAbsent(rule, id -> fires(id, when(id)));
  }

  /** Where a rule would fire if its conditions held in another set. */
  public int fires(String rule, int when) {
    return silencers.getOrDefault(rule, List.of()).stream()
        .map(this::mayHold)
        .reduce(when, diagrams::minus);
  }

  /** Workable situations in which a rule fires. */
  public int firing(String rule) {
    return firing.computeIfAbsent(rule, id -> diagrams.and(workable, fires(id)));
  }

  /** For every answer the rules can give: the workable situations that get it. */
  public SortedMap<Answer, Integer> answers() {
    SortedMap<Answer, Integer> answers = new TreeMap<>();
    for (Rule rule : symptom.rules().values()) {
      int firing = firing(rule.id());
      rule.conclusion().answers().forEach(answer -> answers.merge(answer, firing, diagrams::or));
    }
    return answers;
  }

  /** Possible situations in which the symptom says nothing: no answer, no work this first. */
  public Remainder unanswered() {
    if (unanswered.isEmpty()) {
      List<String> alive = alive();
      unanswered =
          Optional.of(new Remainder(diagrams, parts(), position -> answers(alive.get(position))));
    }
    return unanswered.get();
  }

  private boolean answers(String rule) {
    return !(symptom.rules().get(rule).conclusion() instanceof Conclusion.Exclude);
  }

  /** Some situations without those in which one of the rules fires. */
  public int without(int situations, Collection<String> rules) {
    BitSet[] around = diagrams.occurring(situations);
    int[] sets =
        rules.stream().mapToInt(this::firing).filter(set -> diagrams.meets(set, around)).toArray();
    return new Remainder(diagrams, Parts.of(diagrams, situations, sets)).whole();
  }

  /** The rules that ever fire, in the order of their ids. */
  private List<String> alive() {
    return symptom.rules().keySet().stream().filter(rule -> firing(rule) != Diagrams.NONE).toList();
  }

  /** The situations split by the rules that ever fire. */
  private Parts parts() {
    if (parts.isEmpty()) {
      int[] sets = alive().stream().mapToInt(this::firing).toArray();
      parts = Optional.of(Parts.of(diagrams, here, sets));
    }
    return parts.get();
  }

  /** Pairs of rules that fire in one workable situation, each once, in the order of the rules. */
  public List<RulePair> meetings() {
    if (meetings.isEmpty()) {
      meetings = Optional.of(pairs());
    }
    return meetings.get();
  }

  private List<RulePair> pairs() {
    List<String> alive = alive();
    return new Meetings(diagrams, parts())
        .pairs().stream()
            .map(pair -> new RulePair(alive.get(pair.one()), alive.get(pair.other())))
            .toList();
  }

  /** The part of the possible situations not sent elsewhere first that a diagram holds; exact. */
  public Share share(int diagram) {
    BigInteger all = space.distinguishable(here);
    BigInteger part = space.distinguishable(diagrams.and(diagram, here));
    double figure = all.signum() == 0 ? 0 : ratio(part, all);
    return new Share(figure, figure, true);
  }

  /**
   * As {@link #share(int)}; bounds where the time is over before the set is whole.
   *
   * @throws OutOfTime where there are no bounds either
   */
  public Share share(Bounded set) {
    try {
      return share(set.whole());
    } catch (OutOfTime late) {
      if (!space.everyCellCounts()) {
        throw late;
      }
      Fractions all = new Fractions(diagrams, here);
      BitSet[] everything = diagrams.everything();
      double low = set.atLeast() / all.atMost(everything);
      double high = set.atMost() / all.atLeast(everything);
      return new Share(Math.min(1, low), Math.min(1, high), false);
    }
  }

  private static double ratio(BigInteger part, BigInteger all) {
    return new BigDecimal(part)
        .divide(new BigDecimal(all), MathContext.DECIMAL64)
        .round(new MathContext(9))
        .doubleValue();
  }
}
