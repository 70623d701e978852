package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Answer;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Symptom;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/** Reads what a case expects. */
final class ExpectResolver {
  private static final String EXPECT = "expect";
  private static final String NOTHING = "nothing yet";
  private static final String UNCONFIRMED = "unconfirmed";
  private static final String RULES_SAY = "rules-say";
  private static final String ESCALATE = "escalate";
  private static final String REFER = "refer";
  private static final String HOTLINE = "hotline";

  private final Context context;
  private final Problems problems;

  ExpectResolver(Context context) {
    this.context = context;
    this.problems = context.problems();
  }

  /**
   * The answers expected of a symptom, or what the rules said while nobody has confirmed it; none
   * for {@code nothing yet}.
   */
  SortedSet<Answer> resolve(Fields fields, Optional<Symptom> symptom) {
    boolean unconfirmed = isUnconfirmed(fields);
    if (!unconfirmed && fields.has(RULES_SAY)) {
      problems.add(
          fields.place(RULES_SAY),
          "`rules-say` stands beside an expected outcome",
          "leave it out; it is for a case with `expect: unconfirmed`");
    }
    String key = unconfirmed ? RULES_SAY : EXPECT;
    return fields
        .require(key)
        .map(node -> answers(node, key, fields, symptom))
        .orElseGet(TreeSet::new);
  }

  /** Whether nobody has said yet that the outcome is right. */
  boolean isUnconfirmed(Fields fields) {
    return fields.find(EXPECT).filter(node -> says(node, UNCONFIRMED)).isPresent();
  }

  private static boolean says(Node node, String word) {
    return node instanceof Scalar scalar && scalar.text().strip().equals(word);
  }

  private SortedSet<Answer> answers(
      Node node, String key, Fields fields, Optional<Symptom> symptom) {
    if (node instanceof MapNode map) {
      return outcome(map, key);
    }
    if (says(node, NOTHING)) {
      return new TreeSet<>();
    }
    if (node instanceof Scalar word && word.text().strip().equals(ESCALATE)) {
      return escalation(word, symptom);
    }
    SortedSet<Answer> faults = new TreeSet<>();
    List<Scalar> written = fields.oneOrMore(key);
    if (written.isEmpty()) {
      problems.add(node.place(), "`" + key + "` names no fault", "write a fault or `nothing yet`");
    }
    written.forEach(one -> faults.add(new Answer.OfFault(fault(one))));
    return faults;
  }

  private String fault(Scalar written) {
    return context.names().reference(Kind.FAULT, written);
  }

  private SortedSet<Answer> outcome(MapNode map, String key) {
    Fields fields =
        new Fields(map, "`" + key + "`", map.place(), List.of(REFER, ESCALATE), problems);
    SortedSet<Answer> answers = new TreeSet<>();
    fields
        .scalar(REFER)
        .map(symptom -> context.names().reference(Kind.SYMPTOM, symptom))
        .ifPresent(symptom -> answers.add(new Answer.OfReferral(symptom)));
    fields.text(ESCALATE).ifPresent(to -> answers.add(new Answer.OfEscalation(to)));
    if (map.entries().size() != 1) {
      problems.add(
          map.place(),
          "`" + key + "` takes one outcome",
          "write a fault, a list of faults, `refer: symptom`, `escalate: hotline` or `nothing yet`");
    }
    return answers;
  }

  /** The word alone means the only place the symptom's rules escalate to. */
  private SortedSet<Answer> escalation(Scalar word, Optional<Symptom> symptom) {
    SortedSet<String> targets = new TreeSet<>();
    symptom.ifPresent(
        known -> known.rules().values().forEach(rule -> target(rule.conclusion(), targets)));
    if (targets.size() > 1) {
      problems.add(
          word.place(),
          "the rules of this symptom escalate to " + Words.quoted(targets),
          "write which one is expected, as in `escalate: " + targets.first() + "`");
    }
    SortedSet<Answer> answers = new TreeSet<>();
    answers.add(new Answer.OfEscalation(targets.isEmpty() ? HOTLINE : targets.first()));
    return answers;
  }

  private static void target(Conclusion conclusion, SortedSet<String> targets) {
    if (conclusion instanceof Conclusion.Escalate escalate) {
      targets.add(escalate.to());
    }
  }
}
