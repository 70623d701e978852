package io.faultwright.resolve;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Session;
import io.faultwright.model.Session.OwnPage;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Scalar;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;

/** Reads the section {@code sessions}. */
final class SessionResolver {
  private static final List<String> KEYS =
      List.of(
          "title",
          "about",
          "date",
          "hand-in-by",
          "symptoms",
          "families",
          "pages",
          "sequences",
          "examples",
          "quiz");
  private static final List<String> PAGE_KEYS = List.of("title", "text");

  private final Context context;
  private final WorkedExampleResolver examples;
  private final TaughtSequences sequences;
  private final QuizPlanResolver quizzes;

  /**
   * @param knowledge what the sessions are about, as far as it can be read
   */
  SessionResolver(Context context, KnowledgeBase knowledge) {
    this.context = context;
    this.examples = new WorkedExampleResolver(context, knowledge);
    this.sequences = new TaughtSequences(context, knowledge);
    this.quizzes = new QuizPlanResolver(context, knowledge);
  }

  SortedMap<String, Session> resolveAll() {
    SortedMap<String, Session> sessions = new TreeMap<>();
    context.outline().of(Kind.SESSION).forEach((id, one) -> sessions.put(id, resolve(one)));
    return sessions;
  }

  private Session resolve(Definition definition) {
    Fields fields = Fields.of(definition, KEYS, context.problems());
    Optional<LocalDate> date = date(fields, "date");
    Optional<LocalDate> handInBy = date(fields, "hand-in-by");
    if (date.isPresent() && handInBy.isPresent() && handInBy.get().isBefore(date.get())) {
      problem(fields, "hand-in-by", "`hand-in-by` is before `date`", "correct one of the two");
    }
    List<String> symptoms = symptoms(definition, fields);
    SortedSet<String> families =
        context.names().references(Kind.FAMILY, fields.oneOrMore("families"));
    return new Session(
        definition.id(),
        definition.place(),
        fields.requireText("title"),
        fields.text("about").orElse(""),
        date,
        handInBy,
        symptoms,
        families,
        fields.list("pages").stream().map(this::page).toList(),
        sequences.resolve(fields, families),
        fields.list("examples").stream().map(examples::resolve).toList(),
        fields
            .find("quiz")
            .map(node -> quizzes.resolve(fields.place("quiz"), node, known(symptoms))));
  }

  private Optional<LocalDate> date(Fields fields, String key) {
    return fields.scalar(key).flatMap(written -> Dates.read(written, context.problems()));
  }

  private List<String> symptoms(Definition definition, Fields fields) {
    fields.require("symptoms");
    List<String> ids = new ArrayList<>();
    for (Scalar written : fields.oneOrMore("symptoms")) {
      String id = context.names().reference(Kind.SYMPTOM, written);
      if (ids.contains(id)) {
        context
            .problems()
            .add(
                written.place(),
                Words.quoted(id) + " is taught twice in " + definition.what(),
                "name every symptom once");
      } else {
        ids.add(id);
      }
    }
    return ids;
  }

  private List<String> known(List<String> symptoms) {
    return symptoms.stream().filter(id -> context.names().known(Kind.SYMPTOM, id)).toList();
  }

  private OwnPage page(Node node) {
    Fields fields = new Fields(node, "a page", node.place(), PAGE_KEYS, context.problems());
    return new OwnPage(node.place(), fields.requireText("title"), fields.requireText("text"));
  }

  private void problem(Fields fields, String key, String message, String help) {
    context.problems().add(fields.place(key), message, help);
  }
}
