package io.faultwright.analysis.quiz;

import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.quiz.ChartPath.Stop;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.model.Build;
import io.faultwright.model.Signed;
import io.faultwright.model.SignedKind;
import io.faultwright.model.Situation;
import io.faultwright.model.Sorted;
import io.faultwright.quiz.Choice.Content;
import io.faultwright.quiz.Choice.Take;
import io.faultwright.quiz.Item;
import io.faultwright.quiz.Item.Explanation;
import io.faultwright.quiz.Item.Origin;
import io.faultwright.quiz.Item.Rating;
import io.faultwright.quiz.ItemKind;
import io.faultwright.quiz.Link;
import io.faultwright.quiz.NearMiss;
import io.faultwright.quiz.NearMiss.Why;
import io.faultwright.quiz.Shown;
import io.faultwright.quiz.Stem;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Items that ask what the chart asks next, for symptoms whose chart is the derived one. */
final class NextDrafts {
  private final Ground ground;
  private final ChartPath path;
  private final Bases bases;
  private final Assembly assembly;

  NextDrafts(Ground ground, ChartPath path, Bases bases, Assembly assembly) {
    this.ground = ground;
    this.path = path;
    this.bases = bases;
    this.assembly = assembly;
  }

  /** One for each check after the first that the way of some situation comes to. */
  List<Draft> drafts() {
    Map<String, Draft> drafts = new TreeMap<>();
    if (ground.kb().charts(ground.symptom().id()).isEmpty()) {
      for (List<Build> group : ground.groups()) {
        for (Result result : ground.single()) {
          ways(group, result, drafts);
        }
      }
    }
    return List.copyOf(drafts.values());
  }

  private void ways(List<Build> group, Result result, Map<String, Draft> drafts) {
    Build build = Dice.of(ground.symptom().id(), group.get(0), result.answers()).one(group);
    int region = ground.diagrams().and(result.situations(), ground.on(build));
    if (region == Diagrams.NONE) {
      return;
    }
    Dice dice = Dice.of("way", ground.symptom().id(), group.get(0), result.answers());
    bases.in(region, result, build, true, dice).ifPresent(basis -> stops(basis, drafts));
  }

  private void stops(Basis basis, Map<String, Draft> drafts) {
    List<Stop> stops = path.of(basis.build(), ground.cells(basis.full()));
    for (int next = 1; next < stops.size(); next++) {
      Stop stop = stops.get(next);
      String key =
          String.join(
              "|",
              ItemKind.NEXT_CHECK.slug(),
              ground.symptom().id(),
              Integer.toString(stop.scope()),
              Integer.toString(stop.decision()),
              stop.subject());
      drafts.putIfAbsent(key, new AtStop(basis, stops, next, key));
    }
  }

  /** A check on the way of a situation. */
  private final class AtStop implements Draft {
    private final Basis basis;
    private final List<Stop> stops;
    private final int next;
    private final String key;

    AtStop(Basis basis, List<Stop> stops, int next, String key) {
      this.basis = basis;
      this.stops = List.copyOf(stops);
      this.next = next;
      this.key = key;
    }

    @Override
    public ItemKind kind() {
      return ItemKind.NEXT_CHECK;
    }

    @Override
    public String symptom() {
      return ground.symptom().id();
    }

    @Override
    public String theme() {
      return symptom() + "/" + stops.get(next).subject();
    }

    @Override
    public String key() {
      return key;
    }

    private List<String> before() {
      Set<String> before = new LinkedHashSet<>();
      stops.subList(0, next).forEach(stop -> before.addAll(stop.takes()));
      before.retainAll(basis.full().readings().keySet());
      return List.copyOf(before);
    }

    @Override
    public Optional<Item> item(long seed, int participant) {
      List<String> before = before();
      Map<Content, NearMiss> near = later(before);
      List<Content> wrong = Assembly.wrong(near, others(before, near), Dice.of(key, seed));
      Dice dice = Dice.of(key, seed, participant);
      boolean known = before.contains(stops.get(next).subject());
      return bases
          .figures()
          .vary(basis.full(), before, dice)
          .filter(varied -> !known && wrong.size() >= Item.FEWEST - 1)
          .map(varied -> assembled(varied, before, near, wrong, dice));
    }

    /** What is asked further on, on the same way. */
    private Map<Content, NearMiss> later(List<String> before) {
      Map<Content, NearMiss> later = new LinkedHashMap<>();
      stops.subList(next + 1, stops.size()).stream()
          .map(Stop::subject)
          .filter(subject -> isChoice(subject, before))
          .forEach(subject -> later.put(new Take(subject), new NearMiss(Why.LATER, "")));
      return later;
    }

    /** What is asked on other ways. */
    private List<Content> others(List<String> before, Map<Content, NearMiss> near) {
      return path.subjects(basis.build()).stream()
          .filter(subject -> isChoice(subject, before))
          .<Content>map(Take::new)
          .filter(take -> !near.containsKey(take))
          .toList();
    }

    private boolean isChoice(String subject, List<String> before) {
      return !before.contains(subject)
          && !subject.equals(stops.get(next).subject())
          && ground.has(basis.build(), subject);
    }

    private Item assembled(
        Situation varied,
        List<String> before,
        Map<Content, NearMiss> near,
        List<Content> wrong,
        Dice dice) {
      Signed footing = new Signed(SignedKind.SYMPTOM, symptom());
      Map<Content, NearMiss> missed = new LinkedHashMap<>(near);
      missed.keySet().retainAll(wrong);
      return new Item(
          id(),
          new Stem.NextCheck(symptom(), new Shown(Ground.showing(varied, before), before)),
          Assembly.choices(new Take(stops.get(next).subject()), wrong, missed, dice),
          new Origin(symptom(), Sorted.set(Set.of()), footing, assembly.meaning(footing)),
          new Explanation(List.of(stops.get(next).subject()), Link.symptom(symptom())),
          Rating.of(before.size() + missed.size()));
    }
  }
}
