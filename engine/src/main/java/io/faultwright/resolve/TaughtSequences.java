package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Course;
import io.faultwright.model.Session.TaughtSequence;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads which sequences of operation a session shows, and which of their courses. */
final class TaughtSequences {
  private final Context context;
  private final KnowledgeBase knowledge;

  TaughtSequences(Context context, KnowledgeBase knowledge) {
    this.context = context;
    this.knowledge = knowledge;
  }

  /**
   * In the written order.
   *
   * @param families that are taught; none: all
   */
  List<TaughtSequence> resolve(Fields fields, Set<String> families) {
    Optional<Node> other = fields.find("sequences").filter(node -> !(node instanceof MapNode));
    if (other.isPresent()) {
      String found =
          "`sequences` takes each sequence with its courses, found " + other.get().kind();
      context.problems().add(other.get().place(), found, example());
      return List.of();
    }
    return fields.map("sequences").stream().map(entry -> resolve(entry, families)).toList();
  }

  private String example() {
    return "write "
        + knowledge.sequences().values().stream()
            .filter(sequence -> !sequence.courses().isEmpty())
            .findFirst()
            .map(one -> "`" + one.id() + ": [" + one.courses().get(0).id() + "]`")
            .orElse("`sequence-id: [course-id]`")
        + " on a line below it";
  }

  private TaughtSequence resolve(Entry entry, Set<String> families) {
    String id = context.names().reference(Kind.SEQUENCE, entry.key());
    Optional<Sequence> sequence = Optional.ofNullable(knowledge.sequences().get(id));
    sequence.ifPresent(known -> runs(entry, known, families));
    List<String> courses = new ArrayList<>();
    for (Scalar written : written(entry)) {
      sequence.ifPresent(known -> course(written, known, courses));
    }
    return new TaughtSequence(entry.key().place(), id, courses);
  }

  private List<Scalar> written(Entry entry) {
    MapNode alone = new MapNode(List.of(entry), entry.value().place());
    String what = "the sequence " + Words.quoted(entry.name());
    return new Fields(alone, what, entry.key().place(), List.of(entry.name()), context.problems())
        .oneOrMore(entry.name());
  }

  private void runs(Entry entry, Sequence sequence, Set<String> families) {
    boolean runs =
        knowledge.equipment().builds().stream()
            .filter(build -> families.isEmpty() || families.contains(build.model().family()))
            .anyMatch(build -> build.satisfies(sequence.applies()));
    if (!runs && !families.isEmpty()) {
      context
          .problems()
          .add(
              entry.key().place(),
              "no machine that is taught works by " + Words.quoted(sequence.id()),
              "leave it out, or teach other `families`");
    }
  }

  private void course(Scalar written, Sequence sequence, List<String> into) {
    List<String> known = sequence.courses().stream().map(Course::id).toList();
    String id = written.text().strip();
    if (!known.contains(id)) {
      context
          .problems()
          .add(
              written.place(),
              Words.quoted(sequence.id()) + " has no course " + Words.quoted(id),
              known.isEmpty() ? "write `courses:` in the sequence" : NearMatch.help(id, known));
    } else if (into.contains(id)) {
      context
          .problems()
          .add(written.place(), Words.quoted(id) + " is shown twice", "name every course once");
    } else {
      into.add(id);
    }
  }
}
