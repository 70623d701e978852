package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Condition;
import io.faultwright.model.Rule;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads the rules of a symptom, those below {@code rules} and those in its table. */
final class RulesResolver {
  private static final String WHEN = "when";
  private static final String INSTEAD_OF = "instead-of";

  private final Context context;
  private final ConditionResolver situation;
  private final ConclusionResolver conclusions;
  private final Problems problems;

  RulesResolver(Context context, ConditionResolver situation) {
    this.context = context;
    this.situation = situation;
    this.conclusions = new ConclusionResolver(context);
    this.problems = context.problems();
  }

  /** Keys of a rule, with one more in front where it is written as a row. */
  static List<String> keys(String... more) {
    List<String> keys = new ArrayList<>(List.of(more));
    keys.add(WHEN);
    keys.addAll(ConclusionResolver.KEYS);
    keys.addAll(List.of("because", INSTEAD_OF));
    return keys;
  }

  SortedMap<String, Rule> resolve(Definition symptom, Fields fields) {
    RuleTable table = new RuleTable(context, situation);
    List<RuleDraft> written = new ArrayList<>();
    fields.map("rules").forEach(entry -> written.add(draft(entry)));
    fields.find("table").ifPresent(node -> written.addAll(table.drafts(symptom, node)));
    SortedMap<String, RuleDraft> drafts = byId(written);
    SortedMap<String, Rule> rules = new TreeMap<>();
    drafts.forEach((id, draft) -> rules.put(id, rule(symptom, draft, drafts.keySet())));
    reportCycles(rules);
    return rules;
  }

  private RuleDraft draft(Entry entry) {
    Definition definition = Definition.of(Kind.RULE, entry);
    Fields fields = Fields.of(definition, keys(), problems);
    Condition when = fields.require(WHEN).map(situation::all).orElse(Condition.ALWAYS);
    return new RuleDraft(definition, definition.place(), fields, when);
  }

  private SortedMap<String, RuleDraft> byId(List<RuleDraft> written) {
    SortedMap<String, RuleDraft> drafts = new TreeMap<>();
    for (RuleDraft draft : written) {
      Ids.check(Kind.RULE, draft.definition().key(), problems);
      RuleDraft earlier = drafts.putIfAbsent(draft.id(), draft);
      if (earlier != null) {
        problems.add(
            new Problem(
                List.of(draft.definition().place(), earlier.definition().place()),
                draft.definition().what() + " stands twice in this symptom",
                "give one of the two another id"));
      }
    }
    return drafts;
  }

  private Rule rule(Definition symptom, RuleDraft draft, Set<String> ids) {
    return new Rule(
        draft.id(),
        draft.place(),
        draft.when(),
        conclusions.resolve(symptom, draft.definition(), draft.fields()),
        draft.fields().requireText("because"),
        insteadOf(draft, ids));
  }

  private SortedSet<String> insteadOf(RuleDraft draft, Set<String> ids) {
    SortedSet<String> others = new TreeSet<>();
    for (Scalar other : draft.fields().oneOrMore(INSTEAD_OF)) {
      if (other.text().equals(draft.id())) {
        problems.add(
            other.place(), draft.definition().what() + " stands instead of itself", "remove it");
      } else if (ids.contains(other.text())) {
        others.add(other.text());
      } else {
        problems.add(
            other.place(),
            "this symptom has no rule " + Words.quoted(other.text()),
            NearMatch.help(other.text(), ids));
      }
    }
    return others;
  }

  private void reportCycles(SortedMap<String, Rule> rules) {
    SortedMap<String, SortedSet<String>> insteadOf = new TreeMap<>();
    rules.forEach((id, rule) -> insteadOf.put(id, rule.insteadOf()));
    for (List<String> cycle : Cycles.of(insteadOf)) {
      List<Place> places = new ArrayList<>();
      cycle.subList(0, cycle.size() - 1).forEach(id -> places.add(rules.get(id).place()));
      problems.add(
          new Problem(
              places,
              "rules silence each other in a circle: `"
                  + String.join("` instead of `", cycle)
                  + "`",
              "decide which rule wins, and remove the other `instead-of`"));
    }
  }
}
