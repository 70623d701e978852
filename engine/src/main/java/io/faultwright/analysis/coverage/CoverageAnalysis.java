package io.faultwright.analysis.coverage;

import io.faultwright.adequacy.Coverage;
import io.faultwright.adequacy.GoalStatus;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Measures what the cases of a symptom show. */
public final class CoverageAnalysis {
  private final Symptom symptom;
  private final SymptomAims aims;
  private final Pairs pairs;

  /**
   * Works out what can be shown at all.
   *
   * @param three whether a threshold has three boundary values, or two
   * @param limits boundaries of limits that another symptom's analysis has already; is added to
   * @param deadline after which this throws {@link io.faultwright.analysis.space.OutOfTime}
   */
  public CoverageAnalysis(
      KnowledgeBase kb, Symptom symptom, boolean three, Set<String> limits, Deadline deadline) {
    this.symptom = symptom;
    SymptomSpace space = SymptomSpace.of(kb, symptom, deadline);
    this.aims = new SymptomAims(kb, AimSpace.whole(space), symptom, three, limits, deadline);
    this.pairs = new Pairs(kb, space);
  }

  /** What the cases of all symptoms show of it. */
  public Coverage of(List<Sighting> cases) {
    List<GoalStatus> goals = new ArrayList<>();
    aims.all().forEach(aim -> goals.add(status(aim, cases)));
    BitSet shown = pairs.shownBy(cases);
    pairs.possible().stream().forEach(pair -> goals.add(status(pair, shown)));
    goals.sort(Comparator.comparing(status -> status.goal().criterion()));
    return new Coverage(symptom.id(), symptom.title(), own(cases), goals);
  }

  private int own(List<Sighting> cases) {
    return (int) cases.stream().filter(one -> one.symptom().equals(symptom.id())).count();
  }

  private GoalStatus status(int pair, BitSet shown) {
    return new GoalStatus(pairs.goal(pair), shown.get(pair), new TreeSet<>(), new TreeSet<>());
  }

  private static GoalStatus status(Aim aim, List<Sighting> cases) {
    SortedSet<Build> shown = new TreeSet<>();
    Map<SortedSet<Build>, List<Sighting>> classes =
        cases.stream().collect(Collectors.groupingBy(aim::alike));
    classes.forEach((builds, alike) -> shown.addAll(shownOn(aim, builds, alike)));
    shown.retainAll(aim.possible());
    return new GoalStatus(aim.goal(), aim.isShownBy(cases), aim.possible(), shown);
  }

  private static Collection<Build> shownOn(Aim aim, SortedSet<Build> builds, List<Sighting> alike) {
    return aim.isShownBy(alike) ? builds : List.of();
  }

  /** What single cases, or two of them, can show. */
  public SymptomAims aims() {
    return aims;
  }

  /** The pairs of readings. */
  public Pairs pairs() {
    return pairs;
  }
}
