package io.faultwright.resolve;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A knowledge base that can also read cases from outside its folder. */
public final class Resolution {
  private final KnowledgeBase knowledge;
  private final Outline outline;

  Resolution(KnowledgeBase knowledge, Outline outline) {
    this.knowledge = knowledge;
    this.outline = outline;
  }

  public KnowledgeBase knowledge() {
    return knowledge;
  }

  /** Reads cases, from their id to what is written below it; one that is wrong spoils no other. */
  public GivenCases cases(List<Entry> entries) {
    List<GivenCase> cases = new ArrayList<>();
    List<Problem> found = new ArrayList<>();
    Map<String, Entry> seen = new LinkedHashMap<>();
    for (Entry entry : entries) {
      Problems problems = new Problems();
      Optional.ofNullable(seen.putIfAbsent(entry.name(), entry))
          .ifPresent(earlier -> twice(entry.key(), earlier.key(), problems));
      GivenCase given = resolver(problems).given(Definition.of(Kind.CASE, entry));
      if (problems.isEmpty()) {
        cases.add(given);
      }
      found.addAll(problems.sorted());
    }
    return new GivenCases(cases, found);
  }

  /** What is wrong with rows that are to stand in a table of limits instead of its own. */
  public List<Problem> rowProblems(String reading, List<Node> rows) {
    Problems problems = new Problems();
    Context context = Context.of(outline, problems);
    Definition table = outline.of(Kind.LIMITS).get(reading);
    new LimitsResolver(context, subjects(context)).resolve(withRows(table, rows));
    return problems.sorted();
  }

  private static Definition withRows(Definition table, List<Node> rows) {
    List<Entry> entries = new ArrayList<>();
    for (Entry entry : ((MapNode) table.body()).entries()) {
      boolean replaced = entry.name().equals("rows");
      Node value = replaced ? new ListNode(rows, entry.value().place()) : entry.value();
      entries.add(new Entry(entry.key(), value));
    }
    return new Definition(table.what(), table.key(), new MapNode(entries, table.place()));
  }

  private Subjects subjects(Context context) {
    Subjects subjects = new Subjects(context, knowledge.equipment(), true);
    knowledge.readings().values().forEach(subjects::add);
    return subjects;
  }

  private static void twice(Scalar key, Scalar earlier, Problems problems) {
    problems.add(
        new Problem(
            List.of(key.place(), earlier.place()),
            "case " + Words.quoted(key.text()) + " stands twice",
            "give one of the two another id"));
  }

  private CaseResolver resolver(Problems problems) {
    Context context = Context.of(outline, problems);
    return new CaseResolver(
        context, subjects(context), knowledge.symptoms(), Optional.of(knowledge.equipment()));
  }
}
