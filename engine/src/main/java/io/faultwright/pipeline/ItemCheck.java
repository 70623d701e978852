package io.faultwright.pipeline;

import io.faultwright.analysis.coverage.CaseAnalysis;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Answer;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.OwnItem;
import io.faultwright.model.QuizPlan;
import io.faultwright.model.QuizPlan.Footing;
import io.faultwright.model.Session;
import io.faultwright.model.Signed;
import io.faultwright.model.Situation;
import io.faultwright.release.Meanings;
import io.faultwright.run.Runner;
import io.faultwright.run.Trace;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Holds the items of quizzes against the rules as they are now; Drools judges. */
public final class ItemCheck {
  private final KnowledgeBase kb;
  private final Runner runner;
  private final Meanings meanings;
  private final List<Finding> findings = new ArrayList<>();

  private ItemCheck(KnowledgeBase kb) {
    this.kb = kb;
    this.runner = new Runner(kb, RuleCompiler.compile(kb));
    this.meanings = new Meanings(kb, new TreeMap<>());
  }

  /** What was found, with what is wrong with the items of its sessions. */
  public static Checked checked(Checked checked, Scope scope) {
    List<Finding> findings = findings(checked.knowledge(), checked.sessions().values());
    return checked.with(findings.stream().filter(scope::concerns).toList());
  }

  /** What is wrong with the items of some sessions. */
  static List<Finding> findings(KnowledgeBase kb, Collection<Session> sessions) {
    List<QuizPlan> plans = sessions.stream().flatMap(one -> one.quiz().stream()).toList();
    if (plans.stream().allMatch(plan -> plan.own().isEmpty() && plan.issued().isEmpty())) {
      return List.of();
    }
    ItemCheck check = new ItemCheck(kb);
    plans.forEach(check::look);
    return check.findings;
  }

  private void look(QuizPlan plan) {
    for (OwnItem item : plan.own().values()) {
      item.given().ifPresent(given -> compare(item, given));
      item.footing().ifPresent(footing -> compare(item.id(), item.place(), footing));
    }
    plan.issued().values().forEach(one -> compare(one.id(), one.place(), one.footing()));
  }

  private void compare(OwnItem item, Situation given) {
    if (item.right().answer().isEmpty()) {
      return;
    }
    Set<Answer> right = Set.of(item.right().answer().get());
    Trace trace = runner.run(item.symptom(), given);
    if (!right.equals(trace.answers())) {
      findings.add(
          Finding.of(
                  FindingKind.ITEM_DIFFERS,
                  List.of(item.right().place(), item.place()),
                  "item `"
                      + item.id()
                      + "` says "
                      + CaseAnalysis.words(right)
                      + ", the rules conclude "
                      + CaseAnalysis.words(trace.answers()),
                  "correct the right answer or the situation; if the item is right, mend the rule")
              .in(item.symptom(), List.copyOf(trace.fired()))
              .shownBy(given, List.of(), Optional.empty())
              .confirmed());
    }
  }

  private void compare(String id, Place place, Footing footing) {
    Signed on = footing.on();
    boolean there = on.place(kb).isPresent();
    if (there && meanings.of(on).hash().startsWith(footing.meaning())) {
      return;
    }
    Finding finding =
        Finding.of(
            FindingKind.WITHDRAWN_ITEM,
            place(place, footing),
            "item `"
                + id
                + "` is withdrawn: "
                + on.words()
                + (there ? " means something else now" : " is gone"),
            there
                ? "read the rule again; then take the item out, or write `meaning: \""
                    + meanings.of(on).hash().substring(0, Footing.DIGITS)
                    + "\"` where it is still right"
                : "take the item out, or make a new one");
    findings.add(
        on.symptom(kb)
            .filter(kb.symptoms()::containsKey)
            .map(symptom -> finding.in(symptom, rules(on)))
            .orElse(finding));
  }

  private static List<Place> place(Place item, Footing footing) {
    return item.equals(footing.place()) ? List.of(item) : List.of(item, footing.place());
  }

  private List<String> rules(Signed on) {
    return on.rule(kb).map(rule -> List.of(rule.id())).orElse(List.of());
  }
}
