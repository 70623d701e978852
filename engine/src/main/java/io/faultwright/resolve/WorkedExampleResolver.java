package io.faultwright.resolve;

import io.faultwright.model.Case;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Session.Phase;
import io.faultwright.model.Session.WorkedExample;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Scalar;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the worked examples of a session. */
final class WorkedExampleResolver {
  private static final List<String> KEYS = List.of("title", "case", "steps");
  private static final List<String> STEP_KEYS = List.of("phase", "readings", "text");

  private final Context context;
  private final Map<String, Case> cases;

  WorkedExampleResolver(Context context, KnowledgeBase knowledge) {
    this.context = context;
    this.cases = knowledge.cases();
  }

  WorkedExample resolve(Node node) {
    Fields fields = new Fields(node, "an example", node.place(), KEYS, context.problems());
    Optional<Scalar> named = fields.requireScalar("case");
    String id = named.map(one -> context.names().reference(Kind.CASE, one)).orElse("");
    Optional<Case> recorded = Optional.ofNullable(cases.get(id));
    fields.require("steps");
    return new WorkedExample(
        node.place(),
        fields.text("title").orElse(Words.title(id)),
        id,
        fields.list("steps").stream().map(step -> phase(step, recorded)).toList());
  }

  private Phase phase(Node node, Optional<Case> recorded) {
    Fields fields = new Fields(node, "a step", node.place(), STEP_KEYS, context.problems());
    Optional<Collection<String>> given = recorded.map(one -> one.given().readings().keySet());
    return new Phase(
        node.place(),
        fields.requireText("phase"),
        fields.oneOrMore("readings").stream().map(one -> reading(one, given)).toList(),
        fields.text("text").orElse(""));
  }

  /** A reading that the case gives. */
  private String reading(Scalar written, Optional<Collection<String>> given) {
    String id = context.names().reference(Kind.READING, written);
    if (context.names().known(Kind.READING, id) && given.isPresent()) {
      if (!given.get().contains(id)) {
        context
            .problems()
            .add(
                written.place(),
                "the case of this example does not give " + Words.quoted(id),
                given.get().isEmpty()
                    ? "give the reading in the case"
                    : "it gives " + Words.quoted(given.get()));
      }
    }
    return id;
  }
}
