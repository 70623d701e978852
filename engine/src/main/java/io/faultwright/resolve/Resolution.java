package io.faultwright.resolve;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.syntax.Node.Entry;
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

  private static void twice(Scalar key, Scalar earlier, Problems problems) {
    problems.add(
        new Problem(
            List.of(key.place(), earlier.place()),
            "case " + Words.quoted(key.text()) + " stands twice",
            "give one of the two another id"));
  }

  private CaseResolver resolver(Problems problems) {
    Context context = Context.of(outline, problems);
    Subjects subjects = new Subjects(context, knowledge.equipment(), true);
    knowledge.readings().values().forEach(subjects::add);
    return new CaseResolver(
        context, subjects, knowledge.symptoms(), Optional.of(knowledge.equipment()));
  }
}
