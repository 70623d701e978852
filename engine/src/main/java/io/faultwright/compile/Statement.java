package io.faultwright.compile;

import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Never;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A condition of a symptom that Drools decides.
 *
 * @param kind what it is for
 * @param id unique among the statements of its kind
 * @param condition what is to be decided
 */
public record Statement(Kind kind, String id, Condition condition) {
  /** What a statement is for. */
  public enum Kind {
    RECOGNISE,
    /** A combination that cannot happen in any symptom. */
    NEVER_ANYWHERE,
    /** A combination that cannot happen in this symptom. */
    NEVER,
    /** Its id is its position in the written order. */
    FIRST,
    RULE
  }

  /** Every statement of a symptom, in a fixed order. */
  static List<Statement> of(KnowledgeBase base, Symptom symptom) {
    List<Statement> all = new ArrayList<>();
    all.add(new Statement(Kind.RECOGNISE, "", symptom.recognise()));
    base.nevers().values().forEach(never -> all.add(of(Kind.NEVER_ANYWHERE, never)));
    symptom.nevers().values().forEach(never -> all.add(of(Kind.NEVER, never)));
    for (int i = 0; i < symptom.first().size(); i++) {
      all.add(new Statement(Kind.FIRST, String.valueOf(i), symptom.first().get(i).when()));
    }
    symptom.rules().values().forEach(rule -> all.add(of(rule)));
    return List.copyOf(all);
  }

  private static Statement of(Kind kind, Never never) {
    return new Statement(kind, never.id(), never.when());
  }

  private static Statement of(Rule rule) {
    return new Statement(Kind.RULE, rule.id(), rule.when());
  }

  /** A name unique in its symptom. */
  String name() {
    return kind.name().toLowerCase(Locale.ROOT) + " " + id;
  }
}
