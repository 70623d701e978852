package io.faultwright.resolve;

import io.faultwright.model.Answer;
import io.faultwright.model.Case;
import io.faultwright.model.Difficulty;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.OwnItem;
import io.faultwright.model.OwnItem.Reply;
import io.faultwright.model.Situation;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the items of a quiz that a trainer wrote. */
final class OwnItemResolver {
  private static final List<String> KEYS =
      List.of(
          "symptom",
          "question",
          "right",
          "wrong",
          "because",
          "difficulty",
          "case",
          "given",
          "from",
          "meaning");
  private static final List<String> REPLY_KEYS = List.of("fault", "refer", "escalate");
  private static final int FEWEST = 2;
  private static final int MOST = 4;

  private final Context context;
  private final KnowledgeBase knowledge;
  private final FootingResolver footings;
  private final SituationResolver situations;

  OwnItemResolver(Context context, KnowledgeBase knowledge, FootingResolver footings) {
    this.context = context;
    this.knowledge = knowledge;
    this.footings = footings;
    Subjects subjects = new Subjects(context, knowledge.equipment(), context.problems().isEmpty());
    knowledge.readings().values().forEach(subjects::add);
    this.situations = new SituationResolver(context, subjects);
  }

  OwnItem resolve(Definition definition, List<String> symptoms) {
    Fields fields = Fields.of(definition, KEYS, context.problems());
    Optional<Case> recorded = recorded(fields);
    Optional<Situation> given =
        recorded
            .map(Case::given)
            .or(() -> fields.find("given").map(n -> situations.resolve(fields.map("given"))));
    if (fields.has("case") && fields.has("given")) {
      problem(fields, "given", "`given` stands beside `case`", "keep one of the two");
    }
    Reply right = fields.require("right").map(this::reply).orElseGet(() -> nothing(definition));
    if (given.isPresent() && right.answer().isEmpty() && fields.has("right")) {
      problem(
          fields,
          "right",
          definition.what() + " has a situation, and its right answer is only a text",
          "write `right: { fault: … }`, `{ refer: … }` or `{ escalate: … }`, or take the situation"
              + " out");
    }
    return new OwnItem(
        definition.id(),
        definition.place(),
        symptom(definition, fields, recorded, symptoms),
        fields.requireText("question"),
        right,
        wrong(definition, fields, right),
        fields.text("because").orElse(""),
        fields
            .scalar("difficulty")
            .flatMap(written -> QuizPlanResolver.difficulty(written, context))
            .orElse(Difficulty.MEDIUM),
        given,
        footings.resolve(fields, false));
  }

  private static Reply nothing(Definition definition) {
    return new Reply(definition.place(), Optional.empty(), "");
  }

  private Optional<Case> recorded(Fields fields) {
    return fields
        .scalar("case")
        .map(named -> context.names().reference(Kind.CASE, named))
        .flatMap(id -> Optional.ofNullable(knowledge.cases().get(id)));
  }

  /** That of its case, else the one that is written, else the only one of the session. */
  private String symptom(
      Definition definition, Fields fields, Optional<Case> recorded, List<String> symptoms) {
    Optional<String> written =
        fields.scalar("symptom").map(one -> context.names().reference(Kind.SYMPTOM, one));
    if (recorded.isPresent()) {
      String own = recorded.get().symptom();
      if (written.filter(id -> !id.equals(own)).isPresent()) {
        problem(
            fields,
            "symptom",
            "the case of " + definition.what() + " is about " + Words.quoted(own),
            "leave `symptom` out, or name another case");
      }
      return own;
    }
    if (written.isEmpty() && !fields.mentions("symptom") && symptoms.size() != 1) {
      problem(fields, "symptom", definition.what() + " has no `symptom`", "add `symptom:`");
    }
    return written.orElse(symptoms.isEmpty() ? "" : symptoms.get(0));
  }

  private List<Reply> wrong(Definition definition, Fields fields, Reply right) {
    fields.require("wrong");
    List<Reply> wrong = new ArrayList<>();
    Set<Object> seen = new HashSet<>();
    seen.add(said(right));
    for (Node node : fields.list("wrong")) {
      Reply reply = reply(node);
      if (!seen.add(said(reply))) {
        context
            .problems()
            .add(
                node.place(),
                definition.what() + " has one answer twice",
                "give every answer once; exactly one is right");
      }
      wrong.add(reply);
    }
    if (fields.has("wrong") && (wrong.size() < FEWEST || wrong.size() > MOST)) {
      problem(
          fields,
          "wrong",
          definition.what() + " has " + wrong.size() + " wrong answers",
          "write " + FEWEST + " to " + MOST);
    }
    return wrong;
  }

  private static Object said(Reply reply) {
    return reply.answer().<Object>map(answer -> answer).orElse(reply.text());
  }

  private Reply reply(Node node) {
    if (node instanceof Scalar text && !text.isBlank()) {
      return new Reply(text.place(), Optional.empty(), text.text().strip());
    }
    Fields fields = new Fields(node, "an answer", node.place(), REPLY_KEYS, context.problems());
    if (node instanceof MapNode map && map.entries().size() != 1) {
      context
          .problems()
          .add(node.place(), "an answer takes one outcome", "write each answer by itself");
    }
    return new Reply(node.place(), answer(fields), "");
  }

  private Optional<Answer> answer(Fields fields) {
    Optional<Answer> fault =
        fields
            .scalar("fault")
            .map(id -> new Answer.OfFault(context.names().reference(Kind.FAULT, id)));
    Optional<Answer> referral =
        fields
            .scalar("refer")
            .map(id -> new Answer.OfReferral(context.names().reference(Kind.SYMPTOM, id)));
    return fault.or(() -> referral).or(() -> fields.text("escalate").map(Answer.OfEscalation::new));
  }

  private void problem(Fields fields, String key, String message, String help) {
    context.problems().add(fields.place(key), message, help);
  }
}
