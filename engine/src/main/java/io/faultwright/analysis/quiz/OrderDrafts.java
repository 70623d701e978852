package io.faultwright.analysis.quiz;

import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Caution;
import io.faultwright.model.Fault;
import io.faultwright.model.Rule;
import io.faultwright.model.Signed;
import io.faultwright.model.SignedKind;
import io.faultwright.model.Sorted;
import io.faultwright.quiz.Choice;
import io.faultwright.quiz.Choice.Content;
import io.faultwright.quiz.Choice.InOrder;
import io.faultwright.quiz.Item;
import io.faultwright.quiz.Item.Explanation;
import io.faultwright.quiz.Item.Origin;
import io.faultwright.quiz.Item.Rating;
import io.faultwright.quiz.ItemKind;
import io.faultwright.quiz.Link;
import io.faultwright.quiz.NearMiss;
import io.faultwright.quiz.NearMiss.Why;
import io.faultwright.quiz.Stem;
import io.faultwright.quiz.StepList;
import io.faultwright.quiz.StepList.Entry;
import io.faultwright.quiz.StepList.Part;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.stream.IntStream;

/**
 * Items that ask for the order of steps. The order of the handbook is the right one, and a caution
 * stands right before the first step that needs it; no two of the steps read the same.
 */
final class OrderDrafts {
  private static final int FEWEST_STEPS = 3;
  private static final int MOST_ENTRIES = 4;

  private final Ground ground;
  private final Assembly assembly;

  OrderDrafts(Ground ground, Assembly assembly) {
    this.ground = ground;
    this.assembly = assembly;
  }

  List<Draft> drafts() {
    List<Draft> drafts = new ArrayList<>();
    Set<String> guides = new LinkedHashSet<>();
    ground.symptom().guide().ifPresent(guides::add);
    Set<String> faults = new LinkedHashSet<>();
    for (Rule rule : ground.symptom().rules().values()) {
      for (Answer answer : rule.conclusion().answers()) {
        if (answer instanceof Answer.OfFault && faults.add(answer.name())) {
          ofFault(rule, ground.kb().faults().get(answer.name()), drafts, guides);
        }
      }
      rule.when()
          .tests()
          .flatMap(test -> Optional.ofNullable(ground.kb().readings().get(test.subject())).stream())
          .flatMap(reading -> reading.guide().stream())
          .forEach(guides::add);
    }
    guides.forEach(guide -> ofGuide(guide, drafts));
    return drafts;
  }

  private void ofFault(Rule rule, Fault fault, List<Draft> drafts, Collection<String> guides) {
    if (ground.builds().stream().noneMatch((Build build) -> build.satisfies(fault.applies()))) {
      return;
    }
    fault.guide().ifPresent(guides::add);
    StepList list = new StepList(Link.fault(fault.id()), Part.REMEDY, 0);
    add(list, Signed.rule(ground.symptom().id(), rule.id()), Set.of(rule.id()), drafts);
  }

  private void ofGuide(String guide, List<Draft> drafts) {
    for (int list = 0; list < StepList.lists(ground.kb().guides().get(guide)).size(); list++) {
      add(
          new StepList(Link.guide(guide), Part.GUIDE, list),
          new Signed(SignedKind.GUIDE, guide),
          Set.of(),
          drafts);
    }
  }

  private void add(StepList list, Signed footing, Set<String> rules, List<Draft> drafts) {
    List<String> texts = list.texts(ground.kb());
    boolean told = new HashSet<>(texts).size() == texts.size();
    if (texts.size() >= FEWEST_STEPS && told) {
      drafts.add(new OfList(list, footing, rules));
    }
  }

  /** The steps of one list. */
  private final class OfList implements Draft {
    private final StepList list;
    private final Signed footing;
    private final SortedSet<String> rules;

    OfList(StepList list, Signed footing, Set<String> rules) {
      this.list = list;
      this.footing = footing;
      this.rules = Sorted.set(rules);
    }

    @Override
    public ItemKind kind() {
      return ItemKind.SAFE_ORDER;
    }

    @Override
    public String symptom() {
      return ground.symptom().id();
    }

    @Override
    public String theme() {
      return list.page().toString();
    }

    @Override
    public String key() {
      return String.join(
          "|",
          kind().slug(),
          list.page().toString(),
          list.part().name(),
          Integer.toString(list.number()));
    }

    @Override
    public Optional<Item> item(long seed, int participant) {
      List<Entry> right = entries();
      Dice dice = Dice.of(key(), seed, participant);
      List<Entry> listed = dice.shuffled(right);
      return Optional.of(
          new Item(
              id(),
              new Stem.SafeOrder(list, listed),
              dice.shuffled(choices(right, listed)),
              new Origin(symptom(), rules, footing, assembly.meaning(footing)),
              new Explanation(List.of(), list.page()),
              Rating.of(right.size())));
    }

    /** Three or four entries that follow each other, with a caution where a step needs one. */
    private List<Entry> entries() {
      int count = list.texts(ground.kb()).size();
      Optional<Entry> caution = caution(count);
      int most = caution.isPresent() ? MOST_ENTRIES - 1 : MOST_ENTRIES;
      int from = caution.map(entry -> Math.min(entry.step(), count - FEWEST_STEPS)).orElse(0);
      List<Entry> entries = new ArrayList<>();
      for (int step = from; step < Math.min(count, from + most); step++) {
        int here = step;
        caution.filter(entry -> entry.step() == here).ifPresent(entries::add);
        entries.add(Entry.of(step));
      }
      return entries;
    }

    /** The gravest caution of the first step that has one, unless it stands on every step. */
    private Optional<Entry> caution(int count) {
      List<Fault.Step> steps = list.steps(ground.kb());
      return IntStream.range(0, Math.min(count, steps.size()))
          .filter(step -> !steps.get(step).cautions().isEmpty())
          .mapToObj(step -> new Entry(step, gravest(steps.get(step).cautions())))
          .findFirst();
    }

    /** That of flammable refrigerants only where there is no other: it is not for every machine. */
    private Optional<String> gravest(SortedSet<String> cautions) {
      return cautions.stream()
          .map(ground.kb().cautions()::get)
          .filter(caution -> caution != null)
          .min(
              Comparator.comparing((Caution one) -> one.id().equals(Caution.FLAMMABLE_REFRIGERANT))
                  .thenComparing(Caution::signal))
          .map(Caution::id);
    }

    /**
     * The right order, two with neighbours swapped, and one with both swaps: none of the four can
     * be told by being like all others.
     */
    private List<Choice> choices(List<Entry> right, List<Entry> listed) {
      int last = right.size() - 2;
      List<Entry> early = swapped(right, 0);
      List<Entry> late = swapped(right, last);
      return List.of(
          Choice.right(order(right, listed)),
          Choice.near(order(early, listed), near(right, 0)),
          Choice.near(order(late, listed), near(right, last)),
          Choice.wrong(order(swapped(early, last), listed)));
    }

    private static List<Entry> swapped(List<Entry> entries, int at) {
      List<Entry> swapped = new ArrayList<>(entries);
      Collections.swap(swapped, at, at + 1);
      return swapped;
    }

    private static NearMiss near(List<Entry> right, int at) {
      Why why = right.get(at).caution().isPresent() ? Why.CAUTION_TOO_LATE : Why.SWAPPED;
      return new NearMiss(why, "");
    }

    private Content order(List<Entry> entries, List<Entry> listed) {
      return new InOrder(entries.stream().map(listed::indexOf).toList());
    }
  }
}
