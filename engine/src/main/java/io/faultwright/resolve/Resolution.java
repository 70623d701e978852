package io.faultwright.resolve;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.syntax.Node.Entry;
import java.util.ArrayList;
import java.util.List;
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
    CaseIntake intake = intake();
    List<GivenCase> cases = new ArrayList<>();
    List<Problem> found = new ArrayList<>();
    for (Entry entry : entries) {
      GivenCases read = intake.read(entry);
      cases.addAll(read.cases());
      found.addAll(read.problems());
    }
    return new GivenCases(cases, found);
  }

  /** Reads cases one after the other. */
  public CaseIntake intake() {
    return new CaseIntake(this::resolver);
  }

  private CaseResolver resolver(Problems problems) {
    Context context = Context.of(outline, problems);
    Subjects subjects = new Subjects(context, knowledge.equipment(), true);
    knowledge.readings().values().forEach(subjects::add);
    return new CaseResolver(
        context, subjects, knowledge.symptoms(), Optional.of(knowledge.equipment()));
  }
}
