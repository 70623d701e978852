package io.faultwright.analysis.quiz;

import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Rule;
import io.faultwright.model.Signed;
import io.faultwright.model.Situation;
import io.faultwright.model.Sorted;
import io.faultwright.quiz.Choice.Content;
import io.faultwright.quiz.Choice.Outcome;
import io.faultwright.quiz.Item;
import io.faultwright.quiz.Item.Explanation;
import io.faultwright.quiz.Item.Origin;
import io.faultwright.quiz.Item.Rating;
import io.faultwright.quiz.ItemKind;
import io.faultwright.quiz.Link;
import io.faultwright.quiz.NearMiss;
import io.faultwright.quiz.Stem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Items that ask what the readings point to. */
final class FaultDrafts {
  /** Situations of each rule on each group of machines. */
  private static final int VARIANTS = 2;

  private static final int FEWEST_WRONG = Item.FEWEST - 1;

  private final Ground ground;
  private final Bases bases;
  private final NearFaults near;
  private final Assembly assembly;

  FaultDrafts(Ground ground, Bases bases, Assembly assembly) {
    this.ground = ground;
    this.bases = bases;
    this.near = new NearFaults(ground);
    this.assembly = assembly;
  }

  List<Draft> drafts() {
    List<Draft> drafts = new ArrayList<>();
    for (Rule rule : ground.symptom().rules().values()) {
      for (Result result : ground.single()) {
        if (rule.conclusion().answers().contains(Ground.only(result))) {
          ground.groups().forEach(group -> add(rule, result, group, drafts));
        }
      }
    }
    return drafts;
  }

  private void add(Rule rule, Result result, List<Build> group, List<Draft> drafts) {
    int region = region(rule, result, group.get(0));
    for (int variant = 0; variant < VARIANTS && region != Diagrams.NONE; variant++) {
      String key =
          String.join(
              "|",
              ItemKind.WHICH_FAULT.slug(),
              ground.symptom().id(),
              rule.id(),
              group.get(0).toString(),
              Integer.toString(variant));
      drafts.add(new OfRule(rule, result, group, region, variant, key));
    }
  }

  /** Where a rule fires on a machine and nothing else is told. */
  private int region(Rule rule, Result result, Build build) {
    Diagrams diagrams = ground.diagrams();
    return diagrams.and(
        diagrams.and(result.situations(), ground.symptomSpace().firing(rule.id())),
        ground.on(build));
  }

  /** One rule on one group of machines. */
  private final class OfRule implements Draft {
    private final Rule rule;
    private final Result result;
    private final List<Build> group;
    private final int region;
    private final int variant;
    private final String key;
    private Optional<Optional<Basis>> basis = Optional.empty();

    OfRule(Rule rule, Result result, List<Build> group, int region, int variant, String key) {
      this.rule = rule;
      this.result = result;
      this.group = group;
      this.region = region;
      this.variant = variant;
      this.key = key;
    }

    @Override
    public ItemKind kind() {
      return ItemKind.WHICH_FAULT;
    }

    @Override
    public String symptom() {
      return ground.symptom().id();
    }

    @Override
    public String theme() {
      return symptom() + "/" + rule.id();
    }

    @Override
    public String key() {
      return key;
    }

    private Optional<Basis> basis() {
      if (basis.isEmpty()) {
        Dice dice = Dice.of(key);
        basis = Optional.of(bases.in(region, result, dice.one(group), variant == 0, dice));
      }
      return basis.get();
    }

    @Override
    public Optional<Item> item(long seed, int participant) {
      return basis().flatMap(found -> item(found, seed, participant));
    }

    private Optional<Item> item(Basis found, long seed, int participant) {
      Dice dice = Dice.of(key, seed, participant);
      List<Content> wrong =
          Assembly.wrong(near(found, found.full()), others(found), Dice.of(key, seed));
      return bases
          .figures()
          .vary(found.full(), found.order(), dice)
          .filter(varied -> bases.says(varied, found.order(), result))
          .filter(varied -> wrong.size() >= FEWEST_WRONG)
          .map(varied -> assembled(found, varied, wrong, dice));
    }

    private Item assembled(Basis found, Situation varied, List<Content> wrong, Dice dice) {
      Map<Content, NearMiss> missed = near(found, varied);
      missed.keySet().retainAll(wrong);
      Signed footing = Signed.rule(symptom(), rule.id());
      return new Item(
          id(),
          new Stem.WhichFault(symptom(), found.shown(varied)),
          Assembly.choices(new Outcome(Ground.only(result)), wrong, missed, dice),
          new Origin(symptom(), Sorted.set(Set.of(rule.id())), footing, assembly.meaning(footing)),
          new Explanation(deciding(found), page()),
          Rating.of(points(found, missed.size())));
    }

    private Map<Content, NearMiss> near(Basis found, Situation varied) {
      Map<Content, NearMiss> contents = new LinkedHashMap<>();
      near.of(Ground.showing(varied, found.needed()), found.needed(), result.answers())
          .forEach((answer, why) -> contents.put(new Outcome(answer), why));
      return contents;
    }

    /** What else can be told on such a machine; of other complaints where that is too little. */
    private List<Content> others(Basis found) {
      int machine =
          ground.diagrams().and(ground.symptomSpace().workable(), ground.on(found.build()));
      List<Content> others =
          contents(ground.met(machine).stream().flatMap(other -> other.answers().stream()));
      return others.size() < FEWEST_WRONG
          ? contents(Stream.concat(others.stream().map(OfRule::answer), elsewhere(found.build())))
          : others;
    }

    private List<Content> contents(Stream<Answer> answers) {
      return answers
          .distinct()
          .filter(answer -> !result.answers().contains(answer))
          .<Content>map(Outcome::new)
          .toList();
    }

    private static Answer answer(Content content) {
      return ((Outcome) content).answer();
    }

    /** The faults that other complaints can have on a machine. */
    private Stream<Answer> elsewhere(Build build) {
      return ground.kb().symptoms().values().stream()
          .filter(symptom -> build.satisfies(symptom.applies()))
          .flatMap(symptom -> symptom.rules().values().stream())
          .flatMap(rule -> rule.conclusion().answers().stream())
          .filter(Answer.OfFault.class::isInstance)
          .filter(answer -> build.satisfies(ground.kb().faults().get(answer.name()).applies()));
    }

    private Link page() {
      Answer answer = Ground.only(result);
      return answer instanceof Answer.OfFault ? Link.fault(answer.name()) : Link.symptom(symptom());
    }

    /** What the rule asks for, of the machine and of the readings that are shown. */
    private List<String> deciding(Basis found) {
      Set<String> asked = rule.when().tests().map(Test::subject).collect(Collectors.toSet());
      Set<String> taken =
          asked.stream().flatMap(id -> withOperands(id).stream()).collect(Collectors.toSet());
      List<String> facts = ground.kb().equipment().attributes();
      return Stream.concat(
              facts.stream().filter(asked::contains),
              found.needed().stream().filter(taken::contains))
          .toList();
    }

    private Set<String> withOperands(String subject) {
      return Optional.ofNullable(ground.kb().readings().get(subject))
          .map(reading -> reading.operands())
          .filter(operands -> !operands.isEmpty())
          .map(Set::copyOf)
          .orElse(Set.of(subject));
    }

    private int points(Basis found, int nearMisses) {
      long limits =
          rule.when()
              .tests()
              .filter(test -> test.pattern() instanceof AgainstLimits)
              .map(Test::subject)
              .distinct()
              .filter(subject -> found.needed().containsAll(withOperands(subject)))
              .count();
      int idle = found.order().size() - found.needed().size();
      return found.needed().size() + nearMisses + (int) limits + idle;
    }
  }
}
