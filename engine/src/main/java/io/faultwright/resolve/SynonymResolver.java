package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.model.Synonym;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads the section {@code synonyms}. */
final class SynonymResolver {
  private static final List<Kind> MEANT =
      List.of(Kind.SYMPTOM, Kind.FAULT, Kind.READING, Kind.PART);

  private final Context context;
  private final SortedSet<String> known = new TreeSet<>();

  SynonymResolver(Context context) {
    this.context = context;
    MEANT.forEach(kind -> known.addAll(context.names().all(kind)));
  }

  SortedMap<String, Synonym> resolveAll() {
    SortedMap<String, Synonym> synonyms = new TreeMap<>();
    context.outline().of(Kind.SYNONYM).forEach((text, one) -> synonyms.put(text, resolve(one)));
    return synonyms;
  }

  private Synonym resolve(Definition definition) {
    SortedSet<String> ids = new TreeSet<>();
    List<Node> meant = meant(definition);
    meant.forEach(node -> ids.add(id(definition, node)));
    if (meant.isEmpty()) {
      problem(
          definition.body(),
          definition.what() + " stands for nothing",
          "write the id of a symptom, fault, reading or part, or a list of ids");
    }
    return new Synonym(definition.id(), definition.place(), ids);
  }

  private static List<Node> meant(Definition definition) {
    return definition
        .body()
        .match(
            scalar -> scalar.isBlank() ? List.of() : List.<Node>of(scalar),
            ListNode::items,
            map -> List.<Node>of(map));
  }

  private String id(Definition synonym, Node node) {
    if (!(node instanceof Scalar scalar)) {
      problem(
          node,
          synonym.what() + " stands for ids, found " + node.kind(),
          node instanceof MapNode ? "write `words: [id, other-id]`" : "write one list of ids");
      return "";
    }
    String id = scalar.text().strip();
    if (!known.contains(id) && MEANT.stream().allMatch(context.names()::complete)) {
      problem(
          node,
          "unknown symptom, fault, reading or part " + Words.quoted(id),
          NearMatch.help(id, known));
    }
    return id;
  }

  private void problem(Node node, String message, String help) {
    context.problems().add(node.place(), message, help);
  }
}
